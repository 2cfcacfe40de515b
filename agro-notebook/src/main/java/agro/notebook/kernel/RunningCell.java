package agro.notebook.kernel;

import agro.notebook.bytecode.StopCheck;
import agro.notebook.bytecode.StopRequest;
import java.util.Set;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.TimeUnit;

/**
 * One cell while it runs, and afterwards for the threads that it has left behind. Every thread that
 * code of a cell starts belongs to that cell for good; the worker of a pool, which outlives cells,
 * belongs to the cell whose code it runs.
 */
final class RunningCell implements StopRequest {

  /** How long a stopped cell may take before its thread is left alone. */
  static final long PATIENCE_MILLIS = 800;

  private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(2);
  private static final ThreadMark MARK = new ThreadMark();

  /** Tells the threads of cells apart; a thread passes its mark on to those that it starts. */
  private static final class ThreadMark extends InheritableThreadLocal<RunningCell> {
    private volatile boolean passedOn;

    @Override
    protected RunningCell childValue(RunningCell ofParent) {
      passedOn = true;
      return ofParent;
    }
  }

  private final CellSource source;
  private final long number;
  private final SnippetLoader loader;
  private final OutputSession session;
  private final CellStreams streams;
  private final TypedLines typed;
  private final Set<Thread> busyBefore;
  private volatile Thread main;
  private volatile boolean stopped;
  private volatile boolean ended;
  private volatile boolean abandoned;
  private volatile long stoppedAt;
  private boolean atWork;
  private boolean interruptedItself;

  /**
   * A cell that is about to run.
   *
   * @param source its code
   * @param number how many cells the evaluator has run up to this one
   * @param loader the loader of the classes of its evaluator
   * @param session where the evaluator's output goes
   * @param input who answers its questions
   */
  RunningCell(
      CellSource source,
      long number,
      SnippetLoader loader,
      OutputSession session,
      CellInput input) {
    this.source = source;
    this.number = number;
    this.loader = loader;
    this.session = session;
    this.streams = new CellStreams(session);
    this.typed = new TypedLines(input, this);
    this.busyBefore = MARK.passedOn ? SnippetFrames.busyThreads() : Set.of();
  }

  /**
   * The cell that the calling thread works for.
   *
   * @return the cell, or null for a thread of no cell
   */
  static RunningCell ofThisThread() {
    if (Thread.currentThread() instanceof ForkJoinWorkerThread) {
      var entry = SnippetFrames.entry();
      if (entry != null && SnippetFrames.loader(entry).running() != null) {
        return SnippetFrames.loader(entry).running();
      }
    }
    return MARK.get();
  }

  /** Whether the calling thread is the one that runs a cell of another evaluator. */
  static boolean isMainOfOther(SnippetLoader loader) {
    var mark = MARK.get();
    return mark != null && mark.loader != loader && mark.main == Thread.currentThread();
  }

  /** Whether code of cells has started threads of its own in this process. */
  static boolean haveStartedThreads() {
    return MARK.passedOn;
  }

  /** Makes the calling thread the one that runs this cell, until {@link #leave}. */
  synchronized void enter() {
    MARK.set(this);
    main = Thread.currentThread();
    atWork = true;
    if (stopped || interruptedItself) {
      main.interrupt();
    }
  }

  /** Ends the work of the calling thread for this cell, or for one statement of it. */
  synchronized void leave() {
    atWork = false;
    interruptedItself = Thread.interrupted();
  }

  /** Stops the cell: its waits end by an interrupt, its loops by their checks. */
  synchronized void stop() {
    if (ended) {
      return;
    }
    if (!stopped) {
      stoppedAt = System.nanoTime();
      stopped = true;
      StopCheck.raise(this);
    }
    if (atWork) {
      main.interrupt();
    }
  }

  boolean isStopped() {
    return stopped;
  }

  /** Whether the cell has had its time to end after it was stopped, and some more. */
  boolean isOverdue(long moreMillis) {
    return stopped
        && System.nanoTime() - stoppedAt
            > TimeUnit.MILLISECONDS.toNanos(PATIENCE_MILLIS + moreMillis);
  }

  /** The cell's result is known. */
  void end() {
    ended = true;
  }

  /** Nobody waits for the cell's thread any more. */
  void abandon() {
    abandoned = true;
  }

  boolean isAbandoned() {
    return abandoned;
  }

  /** Whether the thread of this cell was left behind at work and has not ended since. */
  boolean isStillAtWork() {
    return abandoned && main != null && main.isAlive();
  }

  @Override
  public boolean concernsThisThread() {
    var concerned = MARK.get() == this || worksForThisCell(Thread.currentThread());
    if (concerned) {
      stoppedAt = Math.max(stoppedAt, ended ? System.nanoTime() : stoppedAt);
    }
    return concerned;
  }

  /** Whether a thread that belongs to another cell, or to none, runs code on behalf of this one. */
  private boolean worksForThisCell(Thread thread) {
    var mark = MARK.get();
    if (mark != null && mark.main == thread) {
      return false;
    }
    var entry = SnippetFrames.entry();
    if (entry == null || SnippetFrames.loader(entry) != loader) {
      return false;
    }
    return loader.cellOf(entry) == number
        || (!ended && SnippetFrames.isInPool(thread) && !busyBefore.contains(thread));
  }

  @Override
  public boolean isOver() {
    return ended && !isStillAtWork() && System.nanoTime() - stoppedAt > QUIET_NANOS;
  }

  String name() {
    return source.name();
  }

  CellSource source() {
    return source;
  }

  long number() {
    return number;
  }

  OutputSession session() {
    return session;
  }

  /** The cell whose reader answers: the one that runs now, unless this one was left behind. */
  RunningCell receiver() {
    var now = loader.running();
    return abandoned || now == null ? this : now;
  }

  CellStreams streams() {
    return streams;
  }

  TypedLines typed() {
    return typed;
  }
}
