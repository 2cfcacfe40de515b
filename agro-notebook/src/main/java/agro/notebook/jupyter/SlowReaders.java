package agro.notebook.jupyter;

import org.zeromq.ZMQ;

/**
 * What becomes of outputs when a front end does not read. As long as it is the only one, they wait
 * for it. When others listen too and nothing has moved for ten seconds, it misses outputs, so that
 * the others get theirs, until it reads again.
 */
final class SlowReaders {

  private static final int WAITING_MESSAGES = 64;
  private static final int STEP_MILLIS = 100;
  private static final int PATIENCE_STEPS = 100;
  private static final int PATIENCE_STEPS_LATER = 3;

  private final ZMQ.Socket socket;
  private int readers;
  private int steps;
  private boolean givenUp;

  SlowReaders(ZMQ.Socket socket) {
    this.socket = socket;
  }

  /** Prepares a socket before it is bound. */
  static void prepare(ZMQ.Socket outputs) {
    outputs.setXpubNoDrop(true);
    outputs.setXpubVerboser(true);
    outputs.setSndHWM(WAITING_MESSAGES);
    outputs.setSendTimeOut(STEP_MILLIS);
  }

  /** Takes notice of somebody who begins or ends to listen. */
  void heard(byte[] subscription) {
    if (subscription.length > 0) {
      readers = Math.max(0, readers + (subscription[0] == 1 ? 1 : -1));
    }
  }

  /** The socket could not send for one step, because somebody does not read. */
  void waited() {
    steps++;
    if (readers > 1 && steps >= (givenUp ? PATIENCE_STEPS_LATER : PATIENCE_STEPS)) {
      givenUp = true;
      socket.setXpubNoDrop(false);
    }
  }

  /** A whole message was sent. */
  void served() {
    if (steps == 0) {
      givenUp = false;
    } else {
      steps = 0;
      socket.setXpubNoDrop(true);
    }
  }
}
