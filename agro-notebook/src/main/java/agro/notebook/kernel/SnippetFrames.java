package agro.notebook.kernel;

import java.lang.StackWalker.Option;
import java.lang.StackWalker.StackFrame;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.stream.Stream;

/** Finds the code of cells among the calls of a thread. */
final class SnippetFrames {

  private static final StackWalker WALKER =
      StackWalker.getInstance(Set.of(Option.RETAIN_CLASS_REFERENCE, Option.SHOW_HIDDEN_FRAMES));
  private static final String POOL_WORKER = "java.util.concurrent.ThreadPoolExecutor$Worker";

  private SnippetFrames() {}

  /**
   * The class of the first call into a cell that the calling thread has made; of a lambda or a
   * method reference the class that made it.
   *
   * @return the class, or null when the thread runs no code of a cell
   */
  static Class<?> entry() {
    return WALKER.walk(SnippetFrames::outermost);
  }

  private static Class<?> outermost(Stream<StackFrame> frames) {
    return frames
        .<Class<?>>map(StackFrame::getDeclaringClass)
        .filter(type -> type.getClassLoader() instanceof SnippetLoader)
        .reduce((inner, outer) -> outer)
        .orElse(null);
  }

  static SnippetLoader loader(Class<?> ofCell) {
    return (SnippetLoader) ofCell.getClassLoader();
  }

  /**
   * Whether a thread works off the tasks of a pool.
   *
   * @param thread the calling thread
   * @return true for the workers of the JDK's pools
   */
  static boolean isInPool(Thread thread) {
    return thread instanceof ForkJoinWorkerThread
        || WALKER.walk(
            frames -> frames.anyMatch(frame -> frame.getClassName().equals(POOL_WORKER)));
  }

  /**
   * The threads that run code of cells just now.
   *
   * @return the threads, of all evaluators
   */
  static Set<Thread> busyThreads() {
    var busy = new HashSet<Thread>();
    Thread.getAllStackTraces()
        .forEach(
            (thread, calls) -> {
              if (Stream.of(calls).anyMatch(SnippetFrames::isOfCell)) {
                busy.add(thread);
              }
            });
    return busy;
  }

  private static boolean isOfCell(StackTraceElement call) {
    return call.getClassName().startsWith("REPL.");
  }
}
