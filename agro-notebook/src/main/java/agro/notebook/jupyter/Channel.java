package agro.notebook.jupyter;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/**
 * A socket and the one thread that owns it. Nothing that arrives and nothing that its receiver does
 * ends the thread.
 */
final class Channel {

  /** Takes what arrives, on the thread of the socket. */
  interface Receiver {
    void receive(Channel channel, List<byte[]> frames) throws Exception;
  }

  /**
   * What a socket is.
   *
   * @param name name of its thread
   * @param type its kind
   * @param address where it is bound
   */
  record Endpoint(String name, SocketType type, String address) {}

  private static final int ROOM = 16;
  private static final long PAUSE_NANOS = 1_000_000L;
  private static final int LINGER_MILLIS = 250;

  private final ZMQ.Context context;
  private final ZMQ.Socket socket;
  private final Receiver receiver;
  private final Complaints complaints;
  private final WakeUp wakeUp = new WakeUp();
  private final SlowReaders slowReaders;
  private final Deque<List<byte[]>> outbox = new ArrayDeque<>();
  private final Thread thread;
  private volatile boolean closed;

  private Channel(
      ZMQ.Context context, ZMQ.Socket socket, String name, Receiver receiver, Complaints to) {
    this.context = context;
    this.socket = socket;
    this.receiver = receiver;
    this.complaints = to;
    slowReaders = new SlowReaders(socket);
    thread = new Thread(this::loop, "jupyter-" + name);
    thread.setDaemon(true);
  }

  /**
   * Binds a socket. Nothing is received before {@link #start}.
   *
   * @throws ZMQException when the address cannot be bound
   */
  static Channel bind(
      ZMQ.Context context, Endpoint endpoint, Receiver receiver, Complaints complaints) {
    var socket = context.socket(endpoint.type());
    socket.setLinger(LINGER_MILLIS);
    socket.setIPv6(endpoint.address().contains("["));
    if (endpoint.type() == SocketType.XPUB) {
      SlowReaders.prepare(socket);
    } else {
      // Replies are never dropped, however many requests a front end sends at once.
      socket.setSndHWM(0);
      socket.setRcvHWM(0);
    }
    try {
      socket.bind(endpoint.address());
    } catch (ZMQException e) {
      socket.close();
      throw e;
    }
    return new Channel(context, socket, endpoint.name(), receiver, complaints);
  }

  void start() {
    thread.start();
  }

  /** The port that the socket is bound to. */
  int port() {
    var address = socket.getLastEndpoint();
    return Integer.parseInt(address.substring(address.lastIndexOf(':') + 1));
  }

  /** Sends frames some time soon, in the order of the calls. Never waits. */
  void send(List<byte[]> frames) {
    synchronized (outbox) {
      outbox.add(frames);
    }
    wakeUp.signal();
  }

  /** Waits until few frames are waiting to be sent, then sends these. */
  void sendWhenReady(List<byte[]> frames) throws InterruptedException {
    synchronized (outbox) {
      while (outbox.size() >= ROOM && !closed) {
        outbox.wait();
      }
      outbox.add(frames);
    }
    wakeUp.signal();
  }

  private void loop() {
    try (var poller = context.poller(2)) {
      poller.register(socket, ZMQ.Poller.POLLIN);
      poller.register(wakeUp.source(), ZMQ.Poller.POLLIN);
      while (!closed) {
        step(poller);
      }
      sendAll();
    } catch (Throwable atTheEnd) {
      complaints.unlessEnding(closed, thread.getName(), atTheEnd);
    } finally {
      socket.close();
    }
  }

  private void step(ZMQ.Poller poller) {
    try {
      poller.poll(-1);
      wakeUp.clear();
      sendAll();
      receiveAll();
    } catch (Throwable trouble) {
      complaints.unlessEnding(closed, thread.getName(), trouble);
      // Should it come again at once, the thread does not burn a processor with it.
      LockSupport.parkNanos(PAUSE_NANOS);
    }
  }

  private void sendAll() {
    while (true) {
      List<byte[]> frames;
      synchronized (outbox) {
        frames = outbox.poll();
        outbox.notifyAll();
      }
      if (frames == null) {
        return;
      }
      send(frames, frames.size() - 1);
    }
  }

  private void send(List<byte[]> frames, int last) {
    for (var at = 0; at <= last; at++) {
      var flags = at == last ? 0 : ZMQ.SNDMORE;
      while (!socket.send(frames.get(at), flags)) {
        if (closed) {
          return;
        }
        receiveAll();
        slowReaders.waited();
      }
    }
    slowReaders.served();
  }

  private void receiveAll() {
    while (true) {
      var frame = socket.recv(ZMQ.DONTWAIT);
      if (frame == null) {
        return;
      }
      var frames = new ArrayList<byte[]>();
      frames.add(frame);
      while (socket.hasReceiveMore()) {
        frames.add(socket.recv());
      }
      receive(frames);
    }
  }

  private void receive(List<byte[]> frames) {
    try {
      if (socket.getSocketType() == SocketType.XPUB) {
        slowReaders.heard(frames.get(0));
      }
      try {
        receiver.receive(this, frames);
      } catch (OutOfMemoryError e) {
        SpareMemory.release();
        receiver.receive(this, frames);
      }
    } catch (Throwable trouble) {
      complaints.about(thread.getName(), trouble);
    }
  }

  /** Sends what is waiting to be sent and ends. */
  void close() {
    closed = true;
    synchronized (outbox) {
      outbox.notifyAll();
    }
    wakeUp.signal();
  }

  /** Closes a socket whose thread was never started. */
  void abandon() {
    socket.close();
  }

  /** Waits a while for the end of the thread. */
  void awaitEnd(long milliseconds) throws InterruptedException, IOException {
    thread.join(Math.max(1, milliseconds));
    if (!thread.isAlive()) {
      wakeUp.close();
    }
  }
}
