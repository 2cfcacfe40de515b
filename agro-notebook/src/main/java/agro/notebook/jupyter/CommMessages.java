package agro.notebook.jupyter;

import agro.notebook.kernel.StandardStream;
import com.google.gson.JsonObject;

/** Gives the messages of comms to the code of cells that waits for them. */
final class CommMessages {

  private final CommRegistry registry;
  private final WarmEvaluator evaluator;
  private final OutputQueue queue;
  private final Interruption interruption;

  CommMessages(
      CommRegistry registry,
      WarmEvaluator evaluator,
      OutputQueue queue,
      Interruption interruption) {
    this.registry = registry;
    this.evaluator = evaluator;
    this.queue = queue;
    this.interruption = interruption;
  }

  JsonObject opened(Request request) throws InterruptedException {
    return run(request, registry.opened(request.message()));
  }

  JsonObject received(Request request) throws InterruptedException {
    return run(request, registry.received(request.message()));
  }

  JsonObject closed(Request request) throws InterruptedException {
    return run(request, registry.closed(request.message()));
  }

  private JsonObject run(Request request, Runnable code) throws InterruptedException {
    if (code == null) {
      return null;
    }
    var sink = new CellPublisher(queue, request.header());
    interruption.begin();
    try {
      var opened = evaluator.await(interruption::isAsked);
      if (opened != null) {
        opened
            .call(code, sink)
            .ifPresent(
                thrown ->
                    sink.text(
                        StandardStream.ERROR, "a listener of a comm failed with " + thrown + "\n"));
      }
    } finally {
      interruption.end();
    }
    return null;
  }
}
