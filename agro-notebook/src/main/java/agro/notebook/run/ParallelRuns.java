package agro.notebook.run;

import agro.notebook.run.RunReport.Ending;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs several notebooks, each in a process of its own, some of them at the same time. */
public final class ParallelRuns {

  static final String STOPPED = "stopped, because another notebook had failed";

  /** Who hears how far the runs are. Called from any thread, one call at a time. */
  public interface Audience {
    /**
     * A cell of code is about to run.
     *
     * @param task its notebook
     * @param number its place among the cells of code, counted from 1
     * @param total cells of code in all
     */
    void cellStarts(RunTask task, int number, int total);

    /**
     * A notebook is over; called in the order in which they end.
     *
     * @param report how
     */
    void ended(RunReport report);

    /**
     * What came of a notebook; called in the order of the notebooks.
     *
     * @param report how it ended
     * @param stray what its process printed besides the output of cells
     */
    void told(RunReport report, List<String> stray);
  }

  /** What happens to the other notebooks when one fails. */
  public enum OtherNotebooks {
    /** They run to their end. */
    GO_ON,
    /** They are stopped, or not begun. */
    STOP
  }

  private record Ended(RunReport report, List<String> stray) {}

  private final List<String> command;
  private final OtherNotebooks others;
  private final Audience audience;
  private final Set<ProcessRun> running = ConcurrentHashMap.newKeySet();
  private boolean failed;
  private boolean leaving;

  /**
   * Runs that are started in one way.
   *
   * @param command starts a process that does the work of a {@link WorkerProcess}
   * @param others what happens to the others when one fails
   * @param audience who hears how far they are
   */
  public ParallelRuns(List<String> command, OtherNotebooks others, Audience audience) {
    this.command = List.copyOf(command);
    this.others = others;
    this.audience = new OneAtATime(audience);
  }

  /**
   * Runs notebooks. When this process is ended meanwhile, those of the notebooks end too.
   *
   * @param tasks the notebooks
   * @param atOnce how many may run at the same time, at least 1
   * @return what came of them, in their order
   */
  public List<RunReport> run(List<RunTask> tasks, int atOnce) {
    var end = new Thread(this::leave, "end of notebooks");
    Runtime.getRuntime().addShutdownHook(end);
    var workers = Executors.newFixedThreadPool(atOnce);
    try {
      return inOrder(tasks, workers);
    } finally {
      workers.shutdownNow();
      running.forEach(ProcessRun::stop);
      forget(end);
    }
  }

  private static void forget(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException ending) {
      // The process is ending: the hook runs already.
    }
  }

  private List<RunReport> inOrder(List<RunTask> tasks, ExecutorService workers) {
    var futures = new ArrayList<Future<Ended>>();
    tasks.forEach(task -> futures.add(workers.submit(() -> one(task))));
    var reports = new ArrayList<RunReport>();
    try {
      for (var future : futures) {
        var ended = future.get();
        audience.told(ended.report(), ended.stray());
        reports.add(ended.report());
      }
      return reports;
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the runs were given up", ended);
    } catch (ExecutionException unforeseen) {
      throw new IllegalStateException("a run could not be followed", unforeseen.getCause());
    }
  }

  private Ended one(RunTask task) throws InterruptedException {
    ProcessRun run;
    try {
      run = started(task);
    } catch (IOException notStarted) {
      return over(
          RunReport.without(
              task.notebook(),
              Ending.REFUSED,
              "a process for it could not be started: " + notStarted.getMessage()),
          List.of());
    }
    if (run == null) {
      return over(RunReport.without(task.notebook(), Ending.STOPPED, STOPPED), List.of());
    }
    try {
      var report = run.await();
      return over(report, run.stray());
    } finally {
      running.remove(run);
    }
  }

  private synchronized ProcessRun started(RunTask task) throws IOException {
    if (leaving || (failed && others == OtherNotebooks.STOP)) {
      return null;
    }
    var run = new ProcessRun(command, task, audience);
    running.add(run);
    return run;
  }

  private Ended over(RunReport report, List<String> stray) {
    audience.ended(report);
    if (!report.succeeded()) {
      fail();
    }
    return new Ended(report, stray);
  }

  private synchronized void fail() {
    failed = true;
    if (others == OtherNotebooks.STOP) {
      var asked = List.copyOf(running);
      asked.forEach(ProcessRun::leave);
      var force = new Thread(() -> asked.forEach(ProcessRun::stop), "end of notebooks");
      force.setDaemon(true);
      force.start();
    }
  }

  private synchronized void leave() {
    leaving = true;
    running.forEach(ProcessRun::leave);
    running.forEach(ProcessRun::stop);
  }

  /**
   * Calls an audience for one thread at a time.
   *
   * @param audience the audience
   */
  private record OneAtATime(Audience audience) implements Audience {
    @Override
    public void cellStarts(RunTask task, int number, int total) {
      synchronized (this) {
        audience.cellStarts(task, number, total);
      }
    }

    @Override
    public void ended(RunReport report) {
      synchronized (this) {
        audience.ended(report);
      }
    }

    @Override
    public void told(RunReport report, List<String> stray) {
      synchronized (this) {
        audience.told(report, stray);
      }
    }
  }
}
