package agro.notebook.jupyter;

import agro.notebook.kernel.CellInput;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.locks.ReentrantLock;

/** Asks the front end that sent a cell, and waits for its answer. */
final class ReaderQuestions {

  private final OutputQueue queue;
  private final BlockingQueue<Message> answers = new LinkedBlockingQueue<>();
  private final ReentrantLock oneAtATime = new ReentrantLock();

  ReaderQuestions(OutputQueue queue) {
    this.queue = queue;
  }

  /** Takes an answer, whoever sends it. */
  void answered(Message reply) {
    answers.add(reply);
  }

  /**
   * The input of one cell.
   *
   * @param request the request that runs the cell
   * @param allowed whether its front end can be asked
   * @return the input
   */
  CellInput of(Request request, boolean allowed) {
    return (prompt, hidden) -> {
      if (!allowed) {
        throw new IOException(
            "this cell asks for input, but the front end that runs it said that nobody can answer");
      }
      oneAtATime.lockInterruptibly();
      try {
        return ask(request.message(), prompt, hidden);
      } finally {
        oneAtATime.unlock();
      }
    };
  }

  private String ask(Message cell, String prompt, boolean hidden) throws InterruptedException {
    answers.clear();
    var content = new JsonObject();
    content.addProperty("prompt", prompt);
    content.addProperty("password", hidden);
    queue.add(Publication.question(cell, content));
    while (true) {
      var answer = answers.take();
      if (same(answer.route(), cell.route())) {
        return Json.text(answer.content(), "value", "");
      }
    }
  }

  private static boolean same(List<byte[]> one, List<byte[]> other) {
    return Arrays.deepEquals(one.toArray(), other.toArray());
  }
}
