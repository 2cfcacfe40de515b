package agro.report;

import java.util.function.Supplier;

/** Who hears of long computations, thread by thread. */
final class ThreadListeners {

  private static final InheritableThreadLocal<Supplier<Progress>> LISTENERS =
      new InheritableThreadLocal<>();

  private ThreadListeners() {}

  static Progress next() {
    var listeners = LISTENERS.get();
    return listeners == null ? Progress.silent() : listeners.get();
  }

  static void set(Supplier<Progress> listeners) {
    if (listeners == null) {
      LISTENERS.remove();
    } else {
      LISTENERS.set(listeners);
    }
  }
}
