package agro.notebook.jupyter;

import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellResult;
import agro.notebook.kernel.CellSource;
import agro.notebook.kernel.LongOutput;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;

/** Runs the cells of {@code execute_request}s. Used by the executor alone. */
final class CodeExecution {

  private final WarmEvaluator evaluator;
  private final Publisher publisher;
  private final ReaderQuestions questions;
  private final Interruption interruption;
  private final RequestQueue queue;
  private final CellHistory history;
  private int count;

  CodeExecution(
      WarmEvaluator evaluator,
      Publisher publisher,
      ReaderQuestions questions,
      Interruption interruption,
      RequestQueue queue,
      CellHistory history) {
    this.evaluator = evaluator;
    this.publisher = publisher;
    this.questions = questions;
    this.interruption = interruption;
    this.queue = queue;
    this.history = history;
  }

  /** Runs a cell and gives the content of the reply. */
  JsonObject execute(Request request) throws InterruptedException {
    if (request.isAborted()) {
      return Json.status("aborted");
    }
    var order = ExecuteOrder.of(request.content());
    if (order.keepsHistory()) {
      count++;
    }
    // Whoever sees that the cell has begun may interrupt it.
    interruption.begin();
    try {
      tellInput(request, order);
      return run(request, order);
    } finally {
      interruption.end();
    }
  }

  private void tellInput(Request request, ExecuteOrder order) {
    if (!order.silent()) {
      var input = new JsonObject();
      input.addProperty("code", order.code());
      input.addProperty("execution_count", count);
      publisher.publish("execute_input", request.header(), input);
    }
  }

  private JsonObject run(Request request, ExecuteOrder order) throws InterruptedException {
    var name = order.keepsHistory() ? "cell " + count : "uncounted cell";
    var result = evaluated(new CellSource(name, order.code()), request, order);
    var reply =
        result.failure().isPresent()
            ? failed(request, order, result.failure().get())
            : succeeded(request, order, result);
    if (order.keepsHistory()) {
      var number = count;
      var shown = result.value().shown().plainText();
      request.afterwards(() -> history.add(number, order.code(), shown));
    }
    return reply;
  }

  private CellResult evaluated(CellSource source, Request request, ExecuteOrder order) {
    var output =
        LongOutput.of(
            order.silent() ? new Silence() : new CellPublisher(publisher.queue(), request.header()),
            source.name());
    try {
      var opened = evaluator.await(interruption::isAsked);
      if (interruption.isAsked()) {
        return failure(
            source, CellFailure.Kind.INTERRUPTED, "Interrupted", "the cell was interrupted");
      }
      return opened.evaluate(source, output, questions.of(request, order.allowsInput()));
    } catch (Throwable trouble) {
      // The evaluator promises never to throw; should it, or not be there, the reader is told.
      return failure(
          source,
          CellFailure.Kind.EVALUATOR,
          "Not evaluated",
          String.valueOf(trouble.getMessage()));
    } finally {
      output.finish();
    }
  }

  private static CellResult failure(
      CellSource source, CellFailure.Kind kind, String name, String message) {
    var failure =
        new CellFailure(
            kind,
            name,
            message,
            new CellFailure.Place(source.name(), 0),
            List.of(source.name() + ": " + message),
            Optional.empty());
    return new CellResult(CellResult.Value.NONE, Optional.of(failure), List.of(), List.of());
  }

  private JsonObject succeeded(Request request, ExecuteOrder order, CellResult result) {
    var shown = result.value().shown();
    if (result.value().present() && !shown.isEmpty() && !order.silent()) {
      var content = new JsonObject();
      content.addProperty("execution_count", count);
      content.add("data", CellPublisher.data(shown));
      content.add("metadata", new JsonObject());
      publisher.publish("execute_result", request.header(), content);
    }
    var reply = Json.status("ok");
    reply.addProperty("execution_count", count);
    reply.add("user_expressions", expressions(request, order));
    reply.add("payload", new JsonArray());
    return reply;
  }

  private JsonObject failed(Request request, ExecuteOrder order, CellFailure failure)
      throws InterruptedException {
    var error = error(failure);
    if (!order.silent()) {
      publisher.publish("error", request.header(), error);
    }
    if (order.stopsOnError()) {
      queue.abortWaitingCells();
    }
    var reply = Json.status("error");
    reply.addProperty("execution_count", count);
    error.entrySet().forEach(entry -> reply.add(entry.getKey(), entry.getValue()));
    reply.add("user_expressions", new JsonObject());
    reply.add("payload", new JsonArray());
    return reply;
  }

  private JsonObject expressions(Request request, ExecuteOrder order) {
    var all = new JsonObject();
    order
        .expressions()
        .forEach(
            (name, code) ->
                all.add(
                    name,
                    expression(
                        evaluated(new CellSource("expression " + name, code), request, order))));
    return all;
  }

  private static JsonObject expression(CellResult result) {
    if (result.failure().isPresent()) {
      var failed = Json.status("error");
      error(result.failure().get())
          .entrySet()
          .forEach(entry -> failed.add(entry.getKey(), entry.getValue()));
      return failed;
    }
    var value = Json.status("ok");
    value.add("data", CellPublisher.data(result.value().shown()));
    value.add("metadata", new JsonObject());
    return value;
  }

  private static JsonObject error(CellFailure failure) {
    var error = new JsonObject();
    error.addProperty("ename", failure.name());
    error.addProperty("evalue", failure.message());
    error.add("traceback", Json.texts(failure.trace()));
    return error;
  }
}
