package agro.notebook.bytecode;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * What the code of cells calls at the beginning of every method and before every jump back, so that
 * it can be stopped. As long as nobody wants to stop anything that is one read of a flag. Public
 * because the code of cells calls it; not meant to be called by hand.
 */
public final class StopCheck {

  private static final List<StopRequest> REQUESTS = new CopyOnWriteArrayList<>();
  private static volatile boolean pending;

  private StopCheck() {}

  /**
   * Goes on, or ends the calling thread's work in a cell.
   *
   * @throws CellStopped when a request concerns the calling thread
   */
  public static void goOn() {
    if (pending) {
      askEveryRequest();
    }
  }

  /**
   * Stops every thread that a request concerns as soon as it passes a check.
   *
   * @param request the request, in force until it says that it is over
   */
  public static synchronized void raise(StopRequest request) {
    if (!REQUESTS.contains(request)) {
      REQUESTS.add(request);
    }
    pending = true;
  }

  /** Forgets the requests that are over, so that checks are quick again. */
  public static void forgetWhatIsOver() {
    if (pending) {
      dropOver();
    }
  }

  private static synchronized void dropOver() {
    REQUESTS.removeIf(StopRequest::isOver);
    pending = !REQUESTS.isEmpty();
  }

  private static void askEveryRequest() {
    var over = false;
    for (var request : REQUESTS) {
      if (request.concernsThisThread()) {
        throw new CellStopped();
      }
      over |= request.isOver();
    }
    if (over) {
      dropOver();
    }
  }
}
