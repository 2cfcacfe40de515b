package agro.notebook.kernel;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Cuts a cell into statements and declarations. The shell's own analysis decides; but it is shown
 * only as much of the cell as it may need, because it reads all that it is shown.
 */
final class CellStatements {

  private static final Pattern NON_SEALED = Pattern.compile("\\bnon-sealed\\b");
  private static final int LONG_RUN = 30;
  private static final int LONGEST_RUN = 500;

  /** An assignment, a count or a call: a name, possibly an index, and what cannot follow a type. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "[\\p{javaJavaIdentifierStart}][\\w.$]*\\s*(?:\\[[^\\]]+\\]\\s*)*"
              + "(?:\\(|\\+\\+|--|=(?!=)|(?:[-+*/%&|^]|<<|>>>?)=).*;",
          Pattern.DOTALL);

  private static final Set<String> KEYWORDS =
      Set.of(
          "if",
          "for",
          "while",
          "do",
          "try",
          "switch",
          "synchronized",
          "throw",
          "return",
          "assert",
          "new",
          "else",
          "catch",
          "finally",
          "super",
          "this",
          "yield",
          "break",
          "continue",
          "record");

  private static final Set<String> GO_ON = Set.of("else", "catch", "finally");

  /**
   * A statement or declaration.
   *
   * @param source what the shell evaluates
   * @param end the position behind it in the cell
   */
  record Statement(String source, int end) {}

  private final String code;
  private final SourceCodeAnalysis analysis;
  private final int[] lineStarts;

  CellStatements(String code, SourceCodeAnalysis analysis) {
    this.code = code;
    this.analysis = analysis;
    this.lineStarts =
        IntStream.concat(
                IntStream.of(0),
                IntStream.range(0, code.length())
                    .filter(at -> code.charAt(at) == '\n')
                    .map(at -> at + 1))
            .toArray();
  }

  /**
   * The line of a position.
   *
   * @param at a position in the cell
   * @return the line, counted from 1
   */
  int lineOf(int at) {
    var found = Arrays.binarySearch(lineStarts, at);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /**
   * The statement that begins at a position. The analysis is shown the text up to where the
   * statement may end, then up to twice as many such places, and so on.
   *
   * @param at the beginning of a token
   * @param limit how far the statement can reach
   * @return the statement
   */
  Statement from(int at, int limit) {
    return limit < code.length()
        ? new CellStatements(code.substring(0, limit), analysis).from(at)
        : from(at);
  }

  private Statement from(int at) {
    var end = at;
    for (var step = 1; ; step *= 2) {
      for (var count = 0; count < step && end < code.length(); count++) {
        end = possibleEnd(end);
      }
      var shownAll = JavaText.skipBlank(code, end) >= code.length();
      var shown = code.substring(at, shownAll ? code.length() : end);
      var completion = analysis.analyzeCompletion(masked(shown));
      if (shownAll) {
        return lastOf(shown, at, completion);
      }
      var rest = completion.remaining() == null ? "" : completion.remaining();
      if (isWhole(completion.completeness(), rest.isBlank(), at, end)) {
        return new Statement(rest.isBlank() ? shown : completion.source(), end - rest.length());
      }
    }
  }

  /**
   * Many assignments and calls, one after the other, as one block, because compiling each by itself
   * would take long. The shell may refuse the block although it takes the single statements.
   *
   * @param at the beginning of a token
   * @return the block; empty when there are only a few such statements
   */
  Optional<Statement> longRun(int at) {
    var count = 0;
    var end = at;
    while (count < LONGEST_RUN) {
      var begin = JavaText.skipBlank(code, end);
      var next = begin < code.length() ? possibleEnd(begin) : begin;
      if (next == begin || !isPlain(code.substring(begin, next))) {
        break;
      }
      count++;
      end = next;
    }
    return count < LONG_RUN
        ? Optional.empty()
        : Optional.of(new Statement("{" + code.substring(at, end) + "}", end));
  }

  private static boolean isPlain(String text) {
    return PLAIN.matcher(text).matches()
        && !text.contains("instanceof")
        && !KEYWORDS.contains(text.split("\\W", 2)[0]);
  }

  /** The analysis of JDK 17 knows no {@code non-sealed}, the compiler does. */
  private static String masked(String shown) {
    return NON_SEALED.matcher(shown).replaceAll(found -> " ".repeat(found.group().length()));
  }

  private Statement lastOf(String rest, int at, CompletionInfo completion) {
    if (completion.source() == null || !completion.completeness().isComplete()) {
      return new Statement(rest, code.length());
    }
    var end = code.length() - completion.remaining().length();
    return new Statement(
        completion.completeness() == Completeness.COMPLETE_WITH_SEMI
            ? completion.source()
            : code.substring(at, end),
        end);
  }

  private boolean isWhole(Completeness completeness, boolean all, int at, int end) {
    if (!all) {
      return completeness == Completeness.COMPLETE;
    }
    return (completeness == Completeness.COMPLETE
            || completeness == Completeness.CONSIDERED_INCOMPLETE)
        && !goesOn(at, end);
  }

  /** Whether what follows belongs to a statement that might have ended. */
  private boolean goesOn(int at, int end) {
    var next = JavaText.skipBlank(code, end);
    var word = wordAt(next);
    if (GO_ON.contains(word) || (word.equals("while") && wordAt(at).equals("do"))) {
      return true;
    }
    return word.isEmpty()
        && code.charAt(end - 1) == '}'
        && ".,?:=<>*/%&|^)]".indexOf(code.charAt(next)) >= 0;
  }

  private String wordAt(int at) {
    var end = at;
    while (end < code.length() && Character.isJavaIdentifierPart(code.charAt(end))) {
      end++;
    }
    return code.substring(at, end);
  }

  /** Behind the next semicolon or closing brace that is not within brackets. */
  private int possibleEnd(int from) {
    var depth = 0;
    for (var at = from; at < code.length(); ) {
      var next = JavaText.endOfToken(code, at);
      var token = next == at + 1 ? code.charAt(at) : ' ';
      depth = Math.max(0, depth + change(token));
      if (depth == 0 && (token == ';' || token == '}')) {
        return next;
      }
      at = next;
    }
    return code.length();
  }

  private static int change(char token) {
    return "([{".indexOf(token) >= 0 ? 1 : ")]}".indexOf(token) >= 0 ? -1 : 0;
  }
}
