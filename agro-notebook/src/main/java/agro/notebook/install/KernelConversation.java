package agro.notebook.install;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * A talk with a kernel that was started for it: a few cells, one after the other, and a goodbye. It
 * is what any client does, so what it finds is what a user would meet.
 */
final class KernelConversation implements AutoCloseable {

  private static final int GLANCE_MILLIS = 50;
  private static final Duration ONE_TRY = Duration.ofMillis(500);

  private final KernelProcess kernel;
  private final Duration patience;
  private final ZContext sockets = new ZContext();
  private final ZMQ.Socket shell;
  private final ZMQ.Socket control;
  private final ZMQ.Socket shown;
  private final String session = UUID.randomUUID().toString();
  private final byte[] key;

  /**
   * What came of one cell.
   *
   * @param fine whether it ended without an error
   * @param result its result as plain text; empty when it has none
   * @param error the error; empty when there was none
   */
  record Answer(boolean fine, String result, String error) {}

  private KernelConversation(KernelProcess kernel, Duration patience) {
    this.kernel = kernel;
    this.patience = patience;
    this.key = kernel.connection().keyBytes();
    this.shell = connected(SocketType.DEALER, kernel.connection().shell());
    this.control = connected(SocketType.DEALER, kernel.connection().control());
    this.shown = connected(SocketType.SUB, kernel.connection().iopub());
    shown.subscribe(ZMQ.SUBSCRIPTION_ALL);
  }

  private ZMQ.Socket connected(SocketType type, int port) {
    var socket = sockets.createSocket(type);
    socket.setLinger(0);
    socket.setReceiveTimeOut(GLANCE_MILLIS);
    socket.connect(ConnectionFile.address(port));
    return socket;
  }

  /**
   * Starts a kernel and waits until it answers on both of its channels.
   *
   * @param arguments its command line
   * @param patience how long each answer may take
   * @return the conversation
   * @throws KernelTrouble when it does not start or does not answer
   */
  static KernelConversation start(List<String> arguments, Duration patience) throws KernelTrouble {
    try {
      var talk = new KernelConversation(KernelProcess.start(arguments), patience);
      try {
        talk.waitUntilReady();
        return talk;
      } catch (KernelTrouble e) {
        talk.close();
        throw e;
      }
    } catch (IOException e) {
      throw new KernelTrouble("the kernel could not be started: " + e.getMessage(), "");
    }
  }

  /** What is shown before a client has joined is lost to it, so the question is asked again. */
  private void waitUntilReady() throws KernelTrouble {
    var end = System.nanoTime() + patience.toNanos();
    do {
      var asked = SignedMessage.request("kernel_info_request", new JsonObject());
      asked.send(shell, session, key);
      var answered = next(shell, asked, "kernel_info_reply", end);
      var joined = next(shown, asked, "status", soon(end));
      if (answered.isPresent() && joined.isPresent()) {
        return;
      }
    } while (System.nanoTime() < end);
    throw trouble("the kernel started but gave no sign within " + patience.toSeconds() + " s");
  }

  private static long soon(long end) {
    return Math.min(end, System.nanoTime() + ONE_TRY.toNanos());
  }

  /**
   * Has a cell evaluated.
   *
   * @param code the cell
   * @return what came of it
   * @throws KernelTrouble when no answer comes
   */
  Answer evaluate(String code) throws KernelTrouble {
    var content = new JsonObject();
    content.addProperty("code", code);
    content.addProperty("silent", false);
    content.addProperty("store_history", false);
    content.add("user_expressions", new JsonObject());
    content.addProperty("allow_stdin", false);
    content.addProperty("stop_on_error", true);
    var asked = SignedMessage.request("execute_request", content);
    asked.send(shell, session, key);
    var end = System.nanoTime() + patience.toNanos();
    var result = resultUntilIdle(asked, end);
    var reply =
        next(shell, asked, "execute_reply", end)
            .orElseThrow(() -> trouble("a cell got no answer: " + code.strip()))
            .content();
    var fine = "ok".equals(text(reply, "status"));
    var error = fine ? "" : text(reply, "ename") + ": " + text(reply, "evalue");
    return new Answer(fine, result, error);
  }

  private String resultUntilIdle(SignedMessage asked, long end) throws KernelTrouble {
    var result = "";
    while (true) {
      var message =
          next(shown, asked, "", end)
              .orElseThrow(
                  () -> trouble("a cell did not end within " + patience.toSeconds() + " s"));
      var content = message.content();
      if (message.type().equals("execute_result")) {
        result = text(content.getAsJsonObject("data"), "text/plain");
      } else if (message.type().equals("status")
          && "idle".equals(text(content, "execution_state"))) {
        return result;
      }
    }
  }

  /**
   * Asks the kernel to end, as a server does, and waits for it.
   *
   * @throws KernelTrouble when it does not
   */
  void sayGoodbye() throws KernelTrouble {
    var content = new JsonObject();
    content.addProperty("restart", false);
    SignedMessage.request("shutdown_request", content).send(control, session, key);
    try {
      if (!kernel.endsWithin(patience)) {
        throw trouble("the kernel did not end when asked to");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw trouble("interrupted while the kernel was to end");
    }
  }

  /** The next answer to a request, of a type if one is given. */
  private Optional<SignedMessage> next(
      ZMQ.Socket socket, SignedMessage asked, String type, long end) throws KernelTrouble {
    while (System.nanoTime() < end) {
      var first = socket.recv();
      if (first == null) {
        if (!kernel.process().isAlive()) {
          throw trouble("the kernel ended by itself, status " + kernel.process().exitValue());
        }
        continue;
      }
      List<byte[]> frames = new ArrayList<>(List.of(first));
      while (socket.hasReceiveMore()) {
        frames.add(socket.recv());
      }
      var message = SignedMessage.read(frames, key).filter(it -> it.parent().equals(asked.id()));
      if (message.isPresent() && (type.isEmpty() || message.get().type().equals(type))) {
        return message;
      }
    }
    return Optional.empty();
  }

  private static String text(JsonObject content, String name) {
    var value = content.get(name);
    return value == null || !value.isJsonPrimitive() ? "" : value.getAsString();
  }

  private KernelTrouble trouble(String what) {
    return new KernelTrouble(what, kernel.complaint());
  }

  /** Ends the kernel by force if it was not said goodbye to. */
  @Override
  public void close() {
    sockets.close();
    kernel.close();
  }
}
