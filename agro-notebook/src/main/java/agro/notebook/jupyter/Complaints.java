package agro.notebook.jupyter;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.Map;

/**
 * Tells the one who started the kernel what went wrong, on the process's own error stream, the same
 * thing at most once in ten seconds.
 */
final class Complaints {

  private static final long PAUSE_NANOS = 10_000_000_000L;
  private static final int KINDS = 100;

  private final PrintWriter to;
  private final Map<String, Long> told = new HashMap<>();

  Complaints(PrintWriter to) {
    this.to = to;
  }

  /** Complains about a trouble; never throws itself. */
  void about(String where, Throwable trouble) {
    if (trouble instanceof OutOfMemoryError) {
      SpareMemory.release();
    }
    try {
      var dropped = trouble instanceof MalformedMessage;
      var what = dropped ? "dropped " + trouble.getMessage() : trouble.toString();
      if (isDue(where + what.substring(0, Math.min(60, what.length())))) {
        to.println("agro kernel, " + where + ": " + what);
        to.flush();
      }
    } catch (Throwable e) {
      // Out of memory, most likely: the kernel goes on and says nothing.
    }
  }

  void unlessEnding(boolean ending, String where, Throwable trouble) {
    if (!ending) {
      about(where, trouble);
    }
  }

  private synchronized boolean isDue(String what) {
    var now = System.nanoTime();
    var before = told.get(what);
    if (before != null && now - before < PAUSE_NANOS) {
      return false;
    }
    if (told.size() >= KINDS) {
      told.clear();
    }
    told.put(what, now);
    return true;
  }
}
