package agro.notebook.kernel;

import agro.notebook.kernel.CellFailure.Kind;
import agro.notebook.kernel.CellFailure.Place;
import agro.notebook.kernel.CellMagic.Form;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;

/** The run of one magic of a cell, with the code that it evaluates. */
final class CellMagicRun {

  /** The cell around a magic, which evaluates code on its behalf. */
  interface Host {

    /** Evaluates code that stands elsewhere, under its own name. */
    CellResult evaluated(CellSource source);

    /** Evaluates a part of the cell, whose other lines are blank. */
    CellResult evaluatedPart(String code);

    /** Runs something on the thread of the cells. */
    <T> T onThread(Callable<T> work) throws Throwable;

    /** Whether the reader has stopped the cell. */
    boolean isStopped();
  }

  private static final Pattern CALL = Pattern.compile("(?s)(%%?)([A-Za-z][\\w-]*)(.*)");

  private final EvaluatorState state;
  private final Host host;
  private final CellSource cell;
  private final String code;
  private final int at;
  private final int lineEnd;
  private final int argumentsAt;
  private final CellMagicCall call;
  private final List<String> remarks = new ArrayList<>();
  private final Map<String, DeclaredVariable> declared = new LinkedHashMap<>();
  private CellResult.Value value = CellResult.Value.NONE;
  private CellFailure failure;
  private int end;

  /**
   * Prepares the run.
   *
   * @param state the evaluator
   * @param host the cell that runs
   * @param cell the cell as it was written
   * @param code the code of the cell as it is evaluated, with the same lines
   * @param at where the magic begins in the code
   */
  CellMagicRun(EvaluatorState state, Host host, CellSource cell, String code, int at) {
    this.state = state;
    this.host = host;
    this.cell = cell;
    this.code = code;
    this.at = at;
    lineEnd = code.indexOf('\n', at) < 0 ? code.length() : code.indexOf('\n', at);
    var written = CALL.matcher(code.substring(at, lineEnd).stripTrailing());
    if (!written.matches()) {
      throw new IllegalArgumentException("no magic begins there");
    }
    argumentsAt = at + written.start(3);
    var form = written.group(1).length() == 1 ? Form.LINE : Form.CELL;
    end = form == Form.LINE ? lineEnd : code.length();
    call =
        new CellMagicCall(
            form, written.group(2), written.group(3).strip(), form == Form.LINE ? "" : body());
  }

  /**
   * Whether a magic begins at the beginning of a statement.
   *
   * @param code the code of a cell
   * @param at where a statement begins
   * @return true for one or two per cent signs and a name, first on their line
   */
  static boolean beginsAt(String code, int at) {
    var lineStart = code.lastIndexOf('\n', at - 1) + 1;
    var name = at + (code.startsWith("%%", at) ? 2 : 1);
    return code.startsWith("%", at)
        && name < code.length()
        && Character.toString(code.charAt(name)).matches("[A-Za-z]")
        && code.substring(lineStart, at).isBlank();
  }

  /** The body as it was written: for text that is not Java. */
  private String body() {
    var lines = cell.code().split("\n", -1);
    var first = JavaText.lineOf(code, at);
    return String.join("\n", List.of(lines).subList(Math.min(first, lines.length), lines.length));
  }

  /**
   * Where the code behind the magic begins; known after {@link #run}.
   *
   * @return a position in the code
   */
  int end() {
    return end;
  }

  /** Runs the magic and what it asks for. */
  CellResult run() {
    try {
      if (call.form() == Form.CELL && !code.substring(0, at).isBlank()) {
        throw new CellMagicProblem(call.written() + " must be on the first line of its cell");
      }
      var magic = state.magics().find(call.form(), call.name());
      var context = state.magics().context();
      follow(host.onThread(() -> magic.run(call, context)));
    } catch (Throwable trouble) {
      failure = failed(trouble);
    }
    return new CellResult(
        value, Optional.ofNullable(failure), remarks, List.copyOf(declared.values()));
  }

  private void follow(CellMagicAnswer answer) throws Throwable {
    state.magics().addToClassPath(answer.classPath(), host);
    state.magics().enter();
    try {
      for (var source : answer.sources()) {
        if (failure == null) {
          take(host.evaluated(source));
        }
      }
      if (answer.evaluatesOwnCode()) {
        end = call.form() == Form.LINE ? endOfOwnCode() : end;
        take(host.evaluatedPart(ownCode()));
      }
    } finally {
      state.magics().leave();
    }
    if (failure == null || failure.kind() != Kind.INTERRUPTED) {
      host.onThread(
          () -> {
            answer.afterwards().run();
            return null;
          });
    }
  }

  private void take(CellResult result) {
    failure = result.failure().orElse(null);
    value = result.value();
    remarks.addAll(result.remarks());
    result.declared().forEach(variable -> declared.put(variable.name(), variable));
  }

  /** The cell with everything but the code of this call blanked, so that its places stay. */
  private String ownCode() {
    return blank(code.substring(0, argumentsAt))
        + code.substring(argumentsAt, end)
        + blank(code.substring(end));
  }

  private static String blank(String text) {
    return text.replaceAll("[^\\n]", " ");
  }

  /** The end of the line, or of the statement that begins on it and goes on below. */
  private int endOfOwnCode() {
    var analysis = state.shell().sourceCodeAnalysis();
    var from = JavaText.skipBlank(code.substring(0, lineEnd), argumentsAt);
    while (from < lineEnd) {
      var inLine = analysis.analyzeCompletion(code.substring(from, lineEnd));
      if (!inLine.completeness().isComplete() || inLine.source() == null) {
        var beyond = analysis.analyzeCompletion(code.substring(from));
        return beyond.completeness().isComplete() && beyond.source() != null
            ? code.length() - beyond.remaining().length()
            : lineEnd;
      }
      from = JavaText.skipBlank(code.substring(0, lineEnd), lineEnd - inLine.remaining().length());
    }
    return lineEnd;
  }

  private CellFailure failed(Throwable trouble) {
    if (host.isStopped()) {
      return new FailureReport(cell, state.places(), state::insight).interrupted(trouble);
    }
    var expected = trouble instanceof CellMagicProblem;
    var message = ThrownText.message(trouble);
    var said = expected ? message : trouble.getClass().getName() + ": " + message;
    var place = new Place(cell.name(), JavaText.lineOf(code, at));
    var written = code.substring(at, lineEnd).stripTrailing();
    var trace = new ArrayList<String>();
    trace.addAll((place + ": " + said).lines().toList());
    trace.add("    " + written);
    trace.add("    " + "^".repeat(call.written().length()));
    return new CellFailure(
        expected ? Kind.COMPILATION : Kind.EXCEPTION,
        call.written(),
        said,
        place,
        trace,
        Optional.of(trouble));
  }
}
