package agro.notebook.kernel;

import agro.notebook.insight.CodeInsight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
          "agro.notebook.display.*",
          "static agro.notebook.display.Display.*",
          "static agro.notebook.kernel.Questions.*");

  private final EvaluatorState state;

  private CellEvaluator(EvaluatorState state) {
    this.state = state;
  }

  /**
   * Starts an evaluator with the standard imports. Returns at once: the compiler starts on a thread
   * of its own, and the first cell waits for it.
   *
   * @return an open evaluator
   */
  public static CellEvaluator open() {
    StandardStreams.install();
    return new CellEvaluator(new EvaluatorState(IMPORTS));
  }

  /**
   * Evaluates a cell and waits for its end.
   *
   * @param cell the cell
   * @param sink where what it prints and shows goes while it runs
   * @return how it ended; failures of the cell are told, never thrown
   */
  public CellResult evaluate(CellSource cell, OutputSink sink) {
    return evaluate(cell, sink, CellInput.none());
  }

  /**
   * Evaluates a cell that may ask its reader for something, and waits for its end.
   *
   * @param cell the cell
   * @param sink where what it prints and shows goes while it runs
   * @param input who answers when the cell reads from {@code System.in}
   * @return how it ended; failures of the cell are told, never thrown
   */
  public synchronized CellResult evaluate(CellSource cell, OutputSink sink, CellInput input) {
    return state.evaluate(cell, sink, input);
  }

  /**
   * Runs code that a cell left behind, such as a listener, as if it stood in a cell, and waits for
   * its end.
   *
   * @param code the code
   * @param sink where what it prints and shows goes while it runs
   * @return what it threw, if it did
   */
  public synchronized Optional<Throwable> call(Runnable code, OutputSink sink) {
    return state.call(code, sink);
  }

  /** Interrupts the cell that runs now, from any thread. Without a running cell it does nothing. */
  public void interrupt() {
    state.interrupt();
  }

  /**
   * The variables that cells have declared so far.
   *
   * @return name and type of each, in the order of declaration
   */
  public synchronized List<DeclaredVariable> variables() {
    return state.asked(this::declaredVariables);
  }

  private List<DeclaredVariable> declaredVariables() {
    var all = new ArrayList<DeclaredVariable>();
    state
        .shell()
        .variables()
        .filter(variable -> variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND)
        .forEach(variable -> all.add(new DeclaredVariable(variable.name(), variable.typeName())));
    return all;
  }

  /**
   * How the magics may be called.
   *
   * @return names with their per cent signs, such as {@code %maven} and {@code %%time}
   */
  public List<String> magicNames() {
    return state.magics().calls();
  }

  /**
   * What can be said about code in the light of what cells have declared. Not to be asked while a
   * cell runs.
   *
   * @return the insight into the code of this evaluator
   */
  public CodeInsight insight() {
    return state.insight();
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
