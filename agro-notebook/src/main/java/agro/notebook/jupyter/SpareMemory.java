package agro.notebook.jupyter;

/**
 * Memory that the kernel keeps back. A cell may fill all there is and hold it in a variable; then
 * this is given up, so that the kernel can still say so and run the cell that clears the variable.
 */
final class SpareMemory {

  private static final int BYTES = 6 << 20;

  private static volatile byte[] spare = new byte[BYTES];

  private SpareMemory() {}

  /** Gives the memory up. */
  static void release() {
    spare = null;
  }

  /** Takes it back when there is enough again. */
  static void keep() {
    if (spare == null && isPlenty()) {
      try {
        spare = new byte[BYTES];
      } catch (OutOfMemoryError e) {
        release();
      }
    }
  }

  /** Taking the last of it would leave the cell that clears a variable with nothing. */
  private static boolean isPlenty() {
    var runtime = Runtime.getRuntime();
    return runtime.maxMemory() - runtime.totalMemory() + runtime.freeMemory() > 6L * BYTES;
  }
}
