package agro.notebook.kernel;

import agro.notebook.bytecode.StopRequest;
import java.util.concurrent.TimeUnit;

/** Stops every thread that still runs code of an evaluator which was closed. */
final class ClosedEvaluator implements StopRequest {

  private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(2);

  private final SnippetLoader loader;
  private volatile long lastStop = System.nanoTime();

  ClosedEvaluator(SnippetLoader loader) {
    this.loader = loader;
  }

  @Override
  public boolean concernsThisThread() {
    if (RunningCell.isMainOfOther(loader)) {
      return false;
    }
    var entry = SnippetFrames.entry();
    if (entry == null || SnippetFrames.loader(entry) != loader) {
      return false;
    }
    lastStop = System.nanoTime();
    return true;
  }

  @Override
  public boolean isOver() {
    return System.nanoTime() - lastStop > QUIET_NANOS;
  }
}
