package agro.notebook.kernel;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import jdk.jshell.JShell;

/**
 * The lines of a cell that may be calls of magics. Where both readings are Java, as in {@code a}
 * and below it {@code % b}, the code is a remainder and no magic.
 */
final class CellMagicLines {

  private static final Pattern CALL = Pattern.compile("(?m)^[ \\t]*%([A-Za-z][\\w-]*)");

  private record Line(int start, String name) {}

  private final EvaluatorState state;
  private final String code;
  private final List<Line> lines;
  private Set<String> names;

  CellMagicLines(EvaluatorState state, String code) {
    this.state = state;
    this.code = code;
    this.lines =
        CALL.matcher(code).results().map(call -> new Line(call.start(), call.group(1))).toList();
  }

  /**
   * How far a statement can reach.
   *
   * @param at where the statement begins
   * @return where the next magic's line begins, when what stands before it is complete; else the
   *     length of the code
   */
  int limit(int at) {
    for (var line : lines) {
      if (line.start() > at && isMagic(line) && isComplete(code.substring(at, line.start()))) {
        return isRemainder(at, line) ? code.length() : line.start();
      }
    }
    return code.length();
  }

  private boolean isMagic(Line line) {
    if (names == null) {
      names = state.magics().names();
    }
    return names.contains(line.name());
  }

  private boolean isComplete(String statement) {
    var completion = shell().sourceCodeAnalysis().analyzeCompletion(statement);
    return completion.completeness().isComplete() && completion.remaining().isBlank();
  }

  /** Whether the statement goes on through the line as Java: with a variable of that name. */
  private boolean isRemainder(int at, Line line) {
    var completion = shell().sourceCodeAnalysis().analyzeCompletion(code.substring(at));
    var end = code.length() - completion.remaining().length();
    var after = completion.remaining().lines().findFirst().orElse("");
    var cutShort = !after.isBlank() && !code.substring(at, end).stripTrailing().endsWith(";");
    return end > line.start()
        && !cutShort
        && shell().variables().anyMatch(variable -> variable.name().equals(line.name()));
  }

  private JShell shell() {
    return state.shell();
  }
}
