package agro.notebook.run;

import static agro.notebook.run.MathElement.leaf;
import static agro.notebook.run.MathElement.operator;
import static agro.notebook.run.MathElement.still;

import java.util.ArrayList;
import java.util.List;

/** Commands of TeX: signs, and structures with their parts. */
final class MathStructures {

  private static final String NOTHING = "<mrow></mrow>";

  private final MathMarkup markup;
  private final TexReader reader;

  MathStructures(MathMarkup markup, TexReader reader) {
    this.markup = markup;
    this.reader = reader;
  }

  /** The command that comes next. */
  String command() {
    var name = reader.command();
    if (MathSymbols.LETTERS.containsKey(name)) {
      return leaf("mi", MathSymbols.LETTERS.get(name));
    }
    if (MathSymbols.OPERATORS.containsKey(name)) {
      var sign = MathSymbols.OPERATORS.get(name);
      return "{}[]|‖⟨⟩⌊⌋⌈⌉".contains(sign) ? still(sign) : operator(sign);
    }
    if (MathSymbols.SPACES.containsKey(name)) {
      return MathElement.space(MathSymbols.SPACES.get(name));
    }
    if (MathSymbols.FUNCTIONS.contains(name)) {
      return leaf("mi", name);
    }
    if (MathSymbols.WITHOUT_MEANING.contains(name)) {
      return NOTHING;
    }
    return MathLetters.isShape(name) ? shaped(name) : dressed(name);
  }

  private String shaped(String name) {
    var text = reader.group();
    return text.matches("[\\p{L}\\p{N}.]+")
        ? leaf(text.matches("[\\d.]+") ? "mn" : "mi", MathLetters.shaped(name, text))
        : markup.part(text);
  }

  private String dressed(String name) {
    if (MathSymbols.LINES.containsKey(name)) {
      return "<mrow style=\"" + MathSymbols.LINES.get(name) + "\">" + markup.argument() + "</mrow>";
    }
    if (MathSymbols.ACCENTS.containsKey(name)) {
      return MathElement.of("mover", markup.argument(), operator(MathSymbols.ACCENTS.get(name)));
    }
    if (MathSymbols.BELOW.containsKey(name)) {
      return MathElement.of("munder", markup.argument(), operator(MathSymbols.BELOW.get(name)));
    }
    if (MathSymbols.BIGGER.contains(name)) {
      return operator(bracket());
    }
    return structure(name);
  }

  private String structure(String name) {
    return switch (name) {
      case "frac", "dfrac", "tfrac", "cfrac" ->
          MathElement.of("mfrac", markup.argument(), markup.argument());
      case "binom", "dbinom", "tbinom" -> binomial();
      case "sqrt" -> root();
      case "text", "textrm", "textbf", "textit", "textsf", "texttt", "mathrm", "mbox", "hbox" ->
          words(reader.group());
      case "operatorname" -> operatorName();
      case "left" -> grown();
      case "begin" -> MathTables.environment(markup, reader);
      case "overset", "stackrel" -> stacked("mover");
      case "underset" -> stacked("munder");
      case "not" -> negated();
      default -> rare(name);
    };
  }

  private String rare(String name) {
    return switch (name) {
      case "mathop", "mathrel", "mathbin", "mathord", "mathopen", "mathclose", "boxed", "cancel" ->
          markup.argument();
      case "phantom" -> MathElement.of("mphantom", markup.argument());
      case "color" -> ignoring(reader.group());
      case "textcolor" -> ignoring(reader.group()) + markup.argument();
      case "label", "hspace", "vspace" -> ignoring(reader.group());
      case "tag" -> MathElement.space("2em") + words("(" + reader.group() + ")");
      case "bmod", "mod" -> leaf("mo", "mod");
      case "pmod" ->
          still("(")
              + leaf("mo", "mod")
              + MathElement.space("0.33em")
              + markup.argument()
              + still(")");
      default -> leaf("mtext", "\\" + name);
    };
  }

  private static String ignoring(String text) {
    return text.isEmpty() ? NOTHING : "";
  }

  private String binomial() {
    var parts = markup.argument() + markup.argument();
    return MathElement.row(
        List.of(operator("("), "<mfrac linethickness=\"0\">" + parts + "</mfrac>", operator(")")));
  }

  private String root() {
    reader.skipSpaces();
    var degree = reader.option();
    var inside = markup.argument();
    return degree.isEmpty()
        ? MathElement.of("msqrt", inside)
        : MathElement.of("mroot", inside, markup.part(degree));
  }

  /** Words may hold formulas between dollars. */
  private String words(String text) {
    if (text.indexOf('$') < 0) {
      return MathElement.words(unescaped(text));
    }
    var pieces = text.split("(?<!\\\\)\\$", -1);
    var parts = new ArrayList<String>();
    for (var i = 0; i < pieces.length; i++) {
      parts.add(i % 2 == 0 ? MathElement.words(unescaped(pieces[i])) : markup.part(pieces[i]));
    }
    return MathElement.row(parts);
  }

  private static String unescaped(String text) {
    return text.replaceAll("\\\\([%$#&_{} ,;])", "$1").replace("~", "\u00a0");
  }

  private String operatorName() {
    reader.skip("*");
    return leaf("mi", unescaped(reader.group()).replaceAll("\\\\?\\s+", "\u00a0"));
  }

  private String stacked(String element) {
    var script = markup.argument();
    return MathElement.of(element, markup.argument(), script);
  }

  private String negated() {
    var sign = markup.argument();
    return sign.replaceFirst("([^<>])</m([oi])>$", "$1\u0338</m$2>");
  }

  private String grown() {
    var parts = new ArrayList<String>();
    parts.add(operator(bracket()));
    parts.add(markup.row());
    while (reader.skipCommand("middle")) {
      parts.add(operator(bracket()));
      parts.add(markup.row());
    }
    parts.add(operator(reader.skipCommand("right") ? bracket() : ""));
    return MathElement.row(parts);
  }

  private String bracket() {
    reader.skipSpaces();
    if (reader.peek() == '\\') {
      var name = reader.command();
      return MathSymbols.OPERATORS.getOrDefault(name, name);
    }
    var sign = reader.sign();
    return switch (sign) {
      case "." -> "";
      case "<" -> "⟨";
      case ">" -> "⟩";
      default -> sign;
    };
  }
}
