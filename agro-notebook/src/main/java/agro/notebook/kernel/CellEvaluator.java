package agro.notebook.kernel;

import java.util.ArrayList;
import java.util.List;
import jdk.jshell.Snippet.SubKind;

/**
 * Evaluates cells of Java one after the other; what a cell declares, later cells see. Cells run on
 * a thread of their own in this process and see its class path. Running a cell again never takes
 * the value of a variable away unless the class of that value had to be replaced, and then the
 * cell's result says so.
 *
 * <p>Cells see the packages that the JDK's shell imports and {@code java.time}: {@link #IMPORTS}.
 */
public final class CellEvaluator implements AutoCloseable {

  /** What every cell may use without an import. */
  public static final List<String> IMPORTS =
      List.of(
          "java.io.*",
          "java.math.*",
          "java.nio.file.*",
          "java.time.*",
          "java.util.*",
          "java.util.concurrent.*",
          "java.util.function.*",
          "java.util.regex.*",
          "java.util.stream.*",
          "static agro.notebook.display.Display.display",
          "static agro.notebook.display.Display.updateDisplay");

  private final EvaluatorState state;

  private CellEvaluator(EvaluatorState state) {
    this.state = state;
  }

  /**
   * Starts an evaluator with the standard imports.
   *
   * @return an open evaluator
   */
  public static CellEvaluator open() {
    StandardStreams.install();
    var evaluator = new CellEvaluator(new EvaluatorState());
    for (var name : IMPORTS) {
      evaluator.state.shell().eval("import " + name + ";");
    }
    return evaluator;
  }

  /**
   * Evaluates a cell and waits for its end.
   *
   * @param cell the cell
   * @param sink where what it prints and shows goes while it runs
   * @return how it ended; failures of the cell are told, never thrown
   */
  public synchronized CellResult evaluate(CellSource cell, OutputSink sink) {
    StandardStreams.install();
    state.session().leadTo(sink);
    state.thread().beginCell();
    return new CellRun(state, cell).run();
  }

  /** Interrupts the cell that runs now, from any thread. Without a running cell it does nothing. */
  public void interrupt() {
    state.thread().interrupt();
  }

  /**
   * The variables that cells have declared so far.
   *
   * @return name and type of each, in the order of declaration
   */
  public synchronized List<DeclaredVariable> variables() {
    var all = new ArrayList<DeclaredVariable>();
    state
        .shell()
        .variables()
        .filter(variable -> variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND)
        .forEach(variable -> all.add(new DeclaredVariable(variable.name(), variable.typeName())));
    return all;
  }

  /**
   * Whether changed classes are swapped in place, which needs the {@link RedefinitionAgent}.
   * Without it values are kept all the same, but objects of a changed class are lost.
   *
   * @return true when the agent is there
   */
  public static boolean redefinesClasses() {
    return RedefinitionAgent.instrumentation().isPresent();
  }

  /** Ends the evaluator; its threads are gone and its cells' variables with them. */
  @Override
  public void close() {
    state.close();
  }
}
