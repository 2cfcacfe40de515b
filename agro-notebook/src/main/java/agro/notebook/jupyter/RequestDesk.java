package agro.notebook.jupyter;

import java.util.List;
import java.util.Set;

/**
 * Takes requests. Urgent ones are served at once, on the thread of their socket; all others wait
 * for the executor, which serves them in the order in which they came.
 */
final class RequestDesk implements KernelSockets.Incoming {

  private static final Set<String> URGENT = Set.of("interrupt_request", "shutdown_request");
  private static final Set<String> FOR_THE_EXECUTOR =
      Set.of(
          "execute_request",
          "complete_request",
          "inspect_request",
          "is_complete_request",
          "history_request",
          "comm_open",
          "comm_msg",
          "comm_close");

  private final WireFormat format;
  private final RequestQueue queue;
  private final ReaderQuestions questions;
  private final RequestHandlers handlers;

  RequestDesk(
      WireFormat format, RequestQueue queue, ReaderQuestions questions, RequestHandlers handlers) {
    this.format = format;
    this.queue = queue;
    this.questions = questions;
    this.handlers = handlers;
  }

  @Override
  public void shell(Channel channel, List<byte[]> frames) throws MalformedMessage {
    var request = request(channel, frames);
    if (URGENT.contains(request.type())) {
      handlers.serve(request);
    } else {
      queue.add(request);
    }
  }

  @Override
  public void control(Channel channel, List<byte[]> frames) throws MalformedMessage {
    var request = request(channel, frames);
    if (FOR_THE_EXECUTOR.contains(request.type())) {
      queue.add(request);
    } else {
      handlers.serve(request);
    }
  }

  @Override
  public void stdin(Channel channel, List<byte[]> frames) throws MalformedMessage {
    var answer = format.message(frames);
    if (!answer.type().equals("input_reply")) {
      throw new MalformedMessage("a message on the channel of answers that is none");
    }
    questions.answered(answer);
  }

  private Request request(Channel channel, List<byte[]> frames) throws MalformedMessage {
    return new Request(format.message(frames), channel, format);
  }
}
