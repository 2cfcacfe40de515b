package agro.notebook.jupyter;

import agro.report.InputProblem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** The five sockets of a kernel, each with a thread of its own. */
final class KernelSockets {

  /** Takes what arrives. */
  interface Incoming {
    void shell(Channel channel, List<byte[]> frames) throws MalformedMessage;

    void control(Channel channel, List<byte[]> frames) throws MalformedMessage;

    void stdin(Channel channel, List<byte[]> frames) throws MalformedMessage;
  }

  private final ZMQ.Context context;
  private final Complaints complaints;
  private final List<Channel> all = new ArrayList<>();
  private final Channel shell;
  private final Channel control;
  private final Channel stdin;
  private final Channel outputs;
  private final Channel heartbeat;

  /**
   * Binds the sockets.
   *
   * @throws InputProblem when one of the addresses cannot be had
   */
  KernelSockets(ConnectionFile connection, Incoming incoming, Complaints complaints) {
    this.complaints = complaints;
    context = LastingThreads.context(complaints);
    var ports = connection.ports();
    try {
      shell = bind("shell", connection.endpoint(ports.shell()), incoming::shell);
      control = bind("control", connection.endpoint(ports.control()), incoming::control);
      stdin = bind("stdin", connection.endpoint(ports.stdin()), incoming::stdin);
      outputs = bind("iopub", connection.endpoint(ports.iopub()), (channel, frames) -> {});
      // A router and not a replier, which would wait for one front end before it hears another.
      heartbeat = bind("heartbeat", connection.endpoint(ports.heartbeat()), Channel::send);
    } catch (InputProblem e) {
      all.forEach(Channel::abandon);
      context.term();
      throw e;
    }
  }

  private Channel bind(String name, String address, Channel.Receiver receiver) {
    var type = name.equals("iopub") ? SocketType.XPUB : SocketType.ROUTER;
    try {
      var endpoint = new Channel.Endpoint(name, type, address);
      var channel = Channel.bind(context, endpoint, receiver, complaints);
      all.add(channel);
      return channel;
    } catch (ZMQException e) {
      throw InputProblem.of(
              "the connection file wants the "
                  + name
                  + " socket at "
                  + address
                  + ": "
                  + e.getMessage())
          .expected("an address of this machine with a free port")
          .because("the front end talks to the kernel through it")
          .mend("start the kernel again from Jupyter, which chooses free ports");
    }
  }

  void start() {
    all.forEach(Channel::start);
  }

  /** Sends outputs to all front ends. */
  Channel outputs() {
    return outputs;
  }

  /** Sends questions to one front end. */
  Channel stdin() {
    return stdin;
  }

  /** The ports that were bound. */
  ConnectionFile.Ports ports() {
    return new ConnectionFile.Ports(
        shell.port(), control.port(), stdin.port(), outputs.port(), heartbeat.port());
  }

  /** Sends what waits, as far as anybody reads it, and closes. */
  void close(long milliseconds) throws InterruptedException {
    var end = System.nanoTime() + milliseconds * 1_000_000;
    all.forEach(Channel::close);
    for (var channel : all) {
      try {
        channel.awaitEnd((end - System.nanoTime()) / 1_000_000);
      } catch (IOException e) {
        complaints.about("end", e);
      }
    }
    var ending = LastingThreads.thread(context::term, "end", complaints);
    ending.start();
    ending.join(Math.max(1, (end - System.nanoTime()) / 1_000_000));
  }
}
