package agro.notebook.kernel;

import agro.notebook.bytecode.StopCheck;
import agro.notebook.insight.CodeInsight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import jdk.jshell.JShell;

/**
 * What the cells of one evaluator share, and the thread that drives the shell. The compiler runs on
 * that thread, the code of cells on another, so that whoever waits for a cell never waits for more
 * than the patience that an interrupted cell is given.
 */
final class EvaluatorState implements AutoCloseable {

  private static final long COMPILER_STACK_BYTES = 16L << 20;
  private static final long LOOK_MILLIS = 50;
  private static final long MORE_PATIENCE_MILLIS = 60;

  private final OutputSession session = new OutputSession();
  private final SnippetLoader loader = new SnippetLoader(EvaluatorState.class.getClassLoader());
  private final CellThread thread = new CellThread(session, loader);
  private final MemoryReserve reserve = new MemoryReserve();
  private final SnippetControl control = new SnippetControl(loader, thread, reserve);
  private final SnippetPlaces places = new SnippetPlaces();
  private final Worker driver =
      new Worker(
          Thread.currentThread().getThreadGroup(), "cell compiler", COMPILER_STACK_BYTES, loader);
  private final CellMagics magics = new CellMagics(this);
  private final Task<Shell> shell;
  private final List<RunningCell> leftBehind = new ArrayList<>();
  private Task<CellResult> last;
  private long cells;

  /** The shell and what knows about its variables. */
  private record Shell(
      JShell engine, VariableGuard guard, UnnamedResults unnamed, CodeInsight insight) {}

  /**
   * Begins to start the shell, on its own thread.
   *
   * @param imports what every cell may use
   */
  EvaluatorState(List<String> imports) {
    shell = driver.submit(() -> started(imports));
  }

  private Shell started(List<String> imports) {
    var engine =
        JShell.builder()
            .executionEngine(new SnippetEngine(control), null)
            .compilerOptions("-proc:none")
            .fileManager(ShellFileManager::over)
            .build();
    imports.forEach(name -> engine.eval("import " + name + ";"));
    var guard = new VariableGuard(engine, control);
    return new Shell(engine, guard, new UnnamedResults(engine, guard), new CodeInsight(engine));
  }

  /**
   * Evaluates a cell.
   *
   * @param source the cell
   * @param sink where what it prints and shows goes
   * @param input who answers when it asks
   * @return how it ended
   */
  CellResult evaluate(CellSource source, OutputSink sink, CellInput input) {
    StandardStreams.install();
    StopCheck.forgetWhatIsOver();
    session.leadTo(sink);
    var before = loader.running();
    var cell = new RunningCell(source, ++cells, loader, session, input);
    loader.serve(cell);
    var remarks = remarksOnEarlier(before);
    last = driver.submit(() -> new CellRun(this, cell, remarks).run());
    try {
      return awaited(last, cell);
    } finally {
      cell.end();
      StandardStreams.putBack();
    }
  }

  /**
   * Runs code that a cell left behind as if it stood in a cell of its own.
   *
   * @param code the code
   * @param sink where its output goes
   * @return what it threw, if it did
   */
  Optional<Throwable> call(Runnable code, OutputSink sink) {
    StandardStreams.install();
    session.leadTo(sink);
    var source = new CellSource("a listener", "");
    var cell = new RunningCell(source, ++cells, loader, session, CellInput.none());
    loader.serve(cell);
    try {
      thread.call(cell, Executors.callable(code)::call);
      return Optional.empty();
    } catch (Throwable thrown) {
      return Optional.of(thrown);
    } finally {
      cell.end();
      StandardStreams.putBack();
    }
  }

  private List<String> remarksOnEarlier(RunningCell before) {
    var remarks = new ArrayList<String>();
    if (last != null && !last.isDone()) {
      remarks.add(
          "this cell waits for the compiler, which is still at work for "
              + before.name()
              + ", although that was interrupted");
    }
    if (before != null && before.isAbandoned()) {
      leftBehind.add(before);
    }
    for (var cell : leftBehind) {
      if (cell.isStillAtWork()) {
        remarks.add(
            cell.name()
                + " was interrupted but has not ended, for example because it is within a library;"
                + " it goes on by itself, and this cell runs on a new thread");
      }
    }
    leftBehind.clear();
    remarks.forEach(sentence -> session.remark("Note: " + sentence + "."));
    return remarks;
  }

  private CellResult awaited(Task<CellResult> running, RunningCell cell) {
    while (!ended(running, cell)) {
      if (cell.isOverdue(MORE_PATIENCE_MILLIS)) {
        return CellRun.failed(
            new FailureReport(cell.source(), places, this::insight).interrupted(null));
      }
    }
    try {
      return running.result();
    } catch (Throwable trouble) {
      reserve.release();
      return CellRun.failed(
          new FailureReport(cell.source(), places, this::insight).evaluator(trouble, 0));
    }
  }

  private static boolean ended(Task<?> running, RunningCell cell) {
    try {
      return running.ended(LOOK_MILLIS);
    } catch (InterruptedException passedOn) {
      cell.stop();
      return false;
    }
  }

  /** Interrupts the cell that runs now. */
  void interrupt() {
    var cell = loader.running();
    if (cell != null) {
      cell.stop();
    }
  }

  /**
   * Asks the shell something, on its thread, when it has nothing else to do.
   *
   * @param question the question
   * @return the answer
   */
  <T> T asked(Task.Code<T> question) {
    return result(driver.submit(question));
  }

  JShell shell() {
    return result(shell).engine();
  }

  VariableGuard guard() {
    return result(shell).guard();
  }

  CodeInsight insight() {
    return result(shell).insight();
  }

  UnnamedResults unnamed() {
    return result(shell).unnamed();
  }

  private static <T> T result(Task<T> task) {
    var interrupted = false;
    while (!task.isDone()) {
      try {
        task.ended(0);
      } catch (InterruptedException later) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    try {
      return task.result();
    } catch (Throwable trouble) {
      throw new IllegalStateException("the shell of the cells failed", trouble);
    }
  }

  OutputSession session() {
    return session;
  }

  SnippetControl control() {
    return control;
  }

  SnippetPlaces places() {
    return places;
  }

  CellThread thread() {
    return thread;
  }

  SnippetLoader loader() {
    return loader;
  }

  CellMagics magics() {
    return magics;
  }

  MemoryReserve reserve() {
    return reserve;
  }

  @Override
  public void close() {
    interrupt();
    session.close();
    if (RunningCell.haveStartedThreads()) {
      StopCheck.raise(new ClosedEvaluator(loader));
    }
    thread.close();
    driver.submit(this::closed);
    driver.letGoWhenDone();
  }

  private Void closed() {
    shell().close();
    return null;
  }
}
