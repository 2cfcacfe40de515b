package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.util.List;

/** A request of a front end and the way back to it. */
final class Request {

  private static final String REQUEST = "request";

  private final Message message;
  private final Channel channel;
  private final WireFormat format;
  private volatile boolean aborted;
  private Runnable afterwards = () -> {};

  Request(Message message, Channel channel, WireFormat format) {
    this.message = message;
    this.channel = channel;
    this.format = format;
  }

  Message message() {
    return message;
  }

  JsonObject content() {
    return message.content();
  }

  JsonObject header() {
    return message.header();
  }

  String type() {
    return message.type();
  }

  /** Marks a request that waits behind one that failed. */
  void abort() {
    aborted = true;
  }

  boolean isAborted() {
    return aborted;
  }

  /** Sets what is still to be done when the front end has its reply. */
  void afterwards(Runnable work) {
    afterwards = work;
  }

  /** Does it. */
  void finish() {
    afterwards.run();
  }

  /** Whether the protocol knows an answer to messages of this kind. */
  boolean wantsReply() {
    return type().endsWith("_" + REQUEST);
  }

  void reply(JsonObject content) {
    var type = type().substring(0, type().length() - REQUEST.length()) + "reply";
    channel.send(
        format.frames(
            new Message(
                message.route(),
                format.header(type),
                header(),
                new JsonObject(),
                content,
                List.of())));
  }
}
