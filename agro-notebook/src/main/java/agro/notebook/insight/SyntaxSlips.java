package agro.notebook.insight;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Hints to text that is no Java. */
final class SyntaxSlips {

  private static final Map<String, String> LOOKALIKES =
      Map.ofEntries(
          Map.entry("\u201c", "\""),
          Map.entry("\u201d", "\""),
          Map.entry("\u201e", "\""),
          Map.entry("\u00ab", "\""),
          Map.entry("\u00bb", "\""),
          Map.entry("\u2018", "'"),
          Map.entry("\u2019", "'"),
          Map.entry("\u2013", "-"),
          Map.entry("\u2212", "-"),
          Map.entry("\u00d7", "*"),
          Map.entry("\u00b7", "*"),
          Map.entry("\u00f7", "/"),
          Map.entry("\u2264", "<="),
          Map.entry("\u2265", ">="),
          Map.entry("\u2260", "!="));
  private static final Map<String, String> OTHER_LANGUAGES =
      Map.of(
          "then",
              "Java has no word 'then': the statement follows the closing parenthesis of the if.",
          "elif", "In Java it is 'else if'.",
          "elsif", "In Java it is 'else if'.",
          "def",
              "A method begins with the type of its result, for example: double twice(double x) { ... }",
          "function",
              "A method begins with the type of its result, for example: double twice(double x) { ... }",
          "let", "A variable is declared with its type or with 'var'.",
          "const", "A constant is declared with 'final', for example: final double BASE = 10;",
          "end", "A block ends with }.");
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("(?<![\\w.])(\\d+),(\\d+)(?![\\w.])");

  private SyntaxSlips() {}

  static Optional<String> hint(CompilerSlip slip) {
    if (slip.is("unclosed.str.lit")) {
      return Optional.of(
          "The text that begins in line "
              + slip.lineOf(slip.position())
              + " has no closing quote (\"); text of several lines stands between three quotes.");
    }
    if (slip.is("unclosed.text.block", "unclosed.comment")) {
      var what =
          slip.is("unclosed.comment") ? "The comment has no */" : "The text has no closing \"\"\"";
      return Optional.of(what + " at its end.");
    }
    if (slip.is(
        "unclosed.char.lit", "empty.char.lit", "illegal.char.literal.multiple.surrogates")) {
      return Optional.of(
          "Text stands in double quotes, \"like this\"; single quotes hold one letter.");
    }
    if (slip.is("int.number.too.large")) {
      return Optional.of(
          "An int ends at 2147483647. Put an L behind the number and declare it as long, or write it as"
              + " a double.");
    }
    if (slip.is("illegal.char")) {
      return lookalike(slip);
    }
    return isGrammar(slip) ? grammar(slip) : Optional.empty();
  }

  private static boolean isGrammar(CompilerSlip slip) {
    return slip.code().startsWith("compiler.err.expected")
        || slip.code().startsWith("compiler.err.illegal.start")
        || slip.code().contains("without")
        || slip.is(
            "not.stmt",
            "premature.eof",
            "dot.class.expected",
            "orphaned",
            "unexpected.type",
            "variable.not.allowed",
            "invalid.meth.decl.ret.type.req",
            "class.public.should.be.in.file",
            "restricted.type.not.allowed",
            "restricted.type.not.allowed.here",
            "underscore.as.identifier");
  }

  private static Optional<String> lookalike(CompilerSlip slip) {
    var at = slip.position();
    var letter = at < slip.text().length() ? Character.toString(slip.text().codePointAt(at)) : "";
    var plain = LOOKALIKES.get(letter);
    return Optional.of(
        plain == null
            ? "The letter '" + letter + "' has no meaning in Java here."
            : "The letter " + letter + " only looks like Java: write " + plain + " instead.");
  }

  private static Optional<String> grammar(CompilerSlip slip) {
    return first(
        orphan(slip),
        brackets(slip),
        decimalComma(slip),
        otherLanguage(slip),
        reservedName(slip),
        nameWithDigit(slip),
        spacedSign(slip),
        semicolon(slip));
  }

  @SafeVarargs
  private static Optional<String> first(Optional<String>... hints) {
    for (var hint : hints) {
      if (hint.isPresent()) {
        return hint;
      }
    }
    return Optional.empty();
  }

  /**
   * A number with a decimal comma.
   *
   * @param slip where it may stand
   * @return the hint; empty when the line has no such number
   */
  static Optional<String> decimalComma(CompilerSlip slip) {
    var line = JavaTokens.masked(slip.line());
    var number = DECIMAL_COMMA.matcher(line);
    return number.find()
        ? Optional.of(
            "Decimals follow a point: write "
                + number.group(1)
                + "."
                + number.group(2)
                + ", not "
                + number.group()
                + ".")
        : Optional.empty();
  }

  private static Optional<String> otherLanguage(CompilerSlip slip) {
    for (var token : JavaTokens.codeIn(slip.line())) {
      var known = OTHER_LANGUAGES.get(token.in(slip.line()));
      if (known != null) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  private static Optional<String> reservedName(CompilerSlip slip) {
    var found =
        Pattern.compile(
                "\\b(?:boolean|byte|char|double|float|int|long|short|var|String)\\s+(\\w+)\\s*[=;,)]")
            .matcher(slip.line());
    while (found.find()) {
      if (JavaWords.isReserved(found.group(1))) {
        return Optional.of(
            "'" + found.group(1) + "' is a word of Java and cannot be a name: choose another.");
      }
    }
    return Optional.empty();
  }

  private static Optional<String> nameWithDigit(CompilerSlip slip) {
    var found =
        Pattern.compile(
                "\\b(?:boolean|byte|char|double|float|int|long|short|var|String)\\s+(\\d\\w*)\\b")
            .matcher(slip.line());
    return found.find()
        ? Optional.of(
            "A name begins with a letter, not with a digit: " + found.group(1) + " is none.")
        : Optional.empty();
  }

  private static Optional<String> spacedSign(CompilerSlip slip) {
    var found = Pattern.compile("([=!<>+&|-]) +([=+&|-])(?![\\w(])").matcher(slip.line());
    if (found.find() && slip.is("illegal.start.of.expr")) {
      var sign = found.group(1) + found.group(2);
      return Optional.of(
          sign.equals("==")
              ? "One = assigns a value, two without a space (==) compare."
              : "If " + sign + " is meant, write it without the space.");
    }
    return Optional.empty();
  }

  private static Optional<String> brackets(CompilerSlip slip) {
    var brackets = Brackets.in(slip.text());
    if (brackets.stray().isPresent()) {
      var stray = brackets.stray().get();
      return Optional.of(
          "The "
              + stray.in(slip.text())
              + " in line "
              + slip.lineOf(stray.start())
              + " closes nothing that is open there.");
    }
    if (brackets.open().isEmpty()) {
      return Optional.empty();
    }
    var open = brackets.open().get(brackets.open().size() - 1);
    return Optional.of(
        "The "
            + open.in(slip.text())
            + " in line "
            + slip.lineOf(open.start())
            + " is never closed.");
  }

  private static Optional<String> orphan(CompilerSlip slip) {
    var first = slip.wordAt(Math.min(slip.start(), slip.position()));
    if (slip.code().contains("else.without.if") || first.equals("else")) {
      return Optional.of(
          "An else belongs to an if: both have to stand in one statement of one cell.");
    }
    if (slip.code().contains("try.without")) {
      return Optional.of("A try needs a catch or a finally behind its block.");
    }
    if (slip.code().contains("without.try") || first.equals("catch") || first.equals("finally")) {
      return Optional.of("A catch or finally follows the block of a try.");
    }
    if (slip.is("variable.not.allowed")) {
      return Optional.of("Behind an if or a loop a declaration needs braces: { ... }.");
    }
    return slip.is("orphaned")
        ? Optional.of("A case stands inside the braces of a switch.")
        : Optional.empty();
  }

  private static Optional<String> semicolon(CompilerSlip slip) {
    if (!slip.message().contains("';'") && !slip.is("not.stmt")) {
      return slip.message().contains("expected")
          ? Optional.of(
              "Something is missing in line "
                  + slip.lineOf(slip.position())
                  + ": "
                  + slip.message().lines().findFirst().orElse("")
                  + ".")
          : Optional.empty();
    }
    if (slip.line().strip().matches("for\\s*\\(.*")) {
      return Optional.of("The three parts of a for loop are separated by semicolons.");
    }
    if (slip.is("not.stmt")) {
      return Optional.of(
          "This computes something and does nothing with it: assign it to a variable, or make it the"
              + " last line of the cell.");
    }
    var rest = slip.text().substring(slip.position());
    var endsLine = rest.isBlank() || rest.lines().findFirst().orElse("").isBlank();
    var line = slip.lineOf(slip.position());
    return Optional.of(
        endsLine
            ? "Line " + line + " needs a semicolon at its end."
            : "A semicolon is missing in line "
                + line
                + " before "
                + slip.wordAt(slip.position())
                + ".");
  }
}
