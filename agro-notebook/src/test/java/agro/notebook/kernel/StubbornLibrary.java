package agro.notebook.kernel;

import java.util.concurrent.atomic.AtomicBoolean;

/** Code that no stop check reaches: cells call it from the class path. */
public final class StubbornLibrary {

  private static final AtomicBoolean GO_ON = new AtomicBoolean();

  private StubbornLibrary() {}

  /** Prints that it has begun, and does not end until {@link #release}. */
  public static void work() {
    System.out.println("working");
    GO_ON.set(true);
    while (GO_ON.get()) {
      Thread.onSpinWait();
    }
  }

  /** Lets the work end. */
  public static void release() {
    GO_ON.set(false);
  }

  /**
   * A value that cannot be shown for a long time.
   *
   * @return the value
   */
  public static Object unshowable() {
    return new Object() {
      @Override
      public String toString() {
        work();
        return "shown at last";
      }
    };
  }
}
