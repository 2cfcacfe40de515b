package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.util.List;
import java.util.Map;

/** Serves requests: tells that the kernel is busy, does what is asked, replies, is idle again. */
final class RequestHandlers {

  /** Does what a request asks for. */
  interface Handler {
    /**
     * Does it.
     *
     * @return the content of the reply, or null when the protocol knows none
     */
    JsonObject handle(Request request) throws Exception;
  }

  private final Publisher publisher;
  private final Complaints complaints;
  private final Map<String, Handler> handlers;

  RequestHandlers(Publisher publisher, Complaints complaints, Map<String, Handler> handlers) {
    this.publisher = publisher;
    this.complaints = complaints;
    this.handlers = Map.copyOf(handlers);
  }

  /** Serves one request; never throws. */
  void serve(Request request) {
    try {
      LastingThreads.insist(() -> publisher.status(request.header(), "busy"));
      try {
        answer(request);
      } finally {
        LastingThreads.insist(() -> publisher.status(request.header(), "idle"));
      }
      request.finish();
    } catch (Throwable trouble) {
      complaints.about(request.type(), trouble);
    }
  }

  private void answer(Request request) {
    var content = content(request);
    if (content != null && request.wantsReply()) {
      LastingThreads.insist(() -> request.reply(content));
    }
  }

  private JsonObject content(Request request) {
    var handler = handlers.get(request.type());
    if (handler == null) {
      var message = "this kernel does not know the message type \"" + request.type() + "\"";
      complaints.about("requests", new MalformedMessage(message));
      return error("Unknown request", message);
    }
    try {
      return handled(handler, request);
    } catch (Throwable trouble) {
      complaints.about(request.type(), trouble);
      return error(trouble.getClass().getName(), String.valueOf(trouble.getMessage()));
    }
  }

  /** Does what is asked; a question that failed for want of memory is answered once more. */
  private static JsonObject handled(Handler handler, Request request) throws Exception {
    try {
      return handler.handle(request);
    } catch (OutOfMemoryError e) {
      SpareMemory.release();
      if (request.wantsReply() && !request.type().equals("execute_request")) {
        return handler.handle(request);
      }
      throw e;
    }
  }

  /** The content of a reply that says what went wrong. */
  static JsonObject error(String name, String message) {
    var error = Json.status("error");
    error.addProperty("ename", name);
    error.addProperty("evalue", message);
    error.add("traceback", Json.texts(List.of(name + ": " + message)));
    return error;
  }
}
