package agro.notebook.kernel;

/**
 * Memory that is kept back for the moment when a cell has used up all the rest, so that its failure
 * can be told and the next cell compiled.
 */
final class MemoryReserve {

  private static final int MOST_BYTES = 24 << 20;
  private static final int SHARE = 8;

  private byte[] kept;
  private boolean wasNeeded;

  MemoryReserve() {
    restore();
  }

  /** Gives the memory back for use. */
  synchronized void release() {
    kept = null;
    wasNeeded = true;
  }

  /**
   * Keeps memory back again, if there is enough of it by now. After the memory has been used up,
   * what was given up meanwhile is collected first: nobody knows otherwise how much there is.
   */
  synchronized void restore() {
    if (kept != null) {
      return;
    }
    var wanted = (int) Math.min(MOST_BYTES, Runtime.getRuntime().maxMemory() / SHARE);
    if (wasNeeded && !isPlenty(wanted)) {
      System.gc();
    }
    if (isPlenty(wanted)) {
      kept = allocated(wanted);
      wasNeeded = kept == null;
    }
  }

  private static boolean isPlenty(int wanted) {
    var runtime = Runtime.getRuntime();
    return runtime.maxMemory() - runtime.totalMemory() + runtime.freeMemory() > 3L * wanted;
  }

  private static byte[] allocated(int bytes) {
    try {
      return new byte[bytes];
    } catch (OutOfMemoryError tooLittle) {
      return null;
    }
  }

  synchronized boolean isKept() {
    return kept != null;
  }
}
