package agro.notebook.run;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellOutput;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;

/** Writes what cells printed and showed as notebook files have it. */
final class ExecutedCells {

  private ExecutedCells() {}

  /** Whether cells say how long they took. */
  enum Timings {
    /** No, so that two runs of a notebook give equal files. */
    LEFT_OUT,
    /** Yes, in their metadata. */
    WRITTEN
  }

  /** Our own part of the metadata of cells and notebooks. */
  private static final String OURS = "agro";

  static String notebook(NotebookRun run, Timings timings) {
    var cells = new JsonArray();
    for (var cell : run.cells()) {
      var outcome = run.outcome(cell);
      cells.add(
          outcome.isPresent()
              ? executed(outcome.get(), timings)
              : cell.toJson(JsonNull.INSTANCE, new JsonArray()));
    }
    var about = new JsonObject();
    if (run.failed().isPresent()) {
      var failures = new JsonArray();
      run.failures().forEach(failed -> failures.add(FailedCell.of(failed).place()));
      about.add("failures", failures);
    }
    return run.notebook().toJson(cells, OURS, about);
  }

  private static JsonObject executed(CellOutcome outcome, Timings timings) {
    var cell = outcome.cell().toJson(new JsonPrimitive(outcome.number()), outputs(outcome));
    var metadata = cell.getAsJsonObject("metadata");
    var ours = metadata.get(OURS) instanceof JsonObject known ? known : new JsonObject();
    ours.remove("seconds");
    if (timings == Timings.WRITTEN) {
      ours.addProperty("seconds", outcome.time().toMillis() / 1000.0);
    }
    metadata.remove(OURS);
    if (!ours.isEmpty()) {
      metadata.add(OURS, ours);
    }
    return cell;
  }

  private static JsonArray outputs(CellOutcome outcome) {
    var outputs = new JsonArray();
    outcome.outputs().forEach(output -> outputs.add(output(output)));
    var value = outcome.result().value();
    if (value.present() && !value.shown().isEmpty()) {
      var result = shown("execute_result", value.shown());
      result.addProperty("execution_count", outcome.number());
      outputs.add(result);
    }
    outcome.result().failure().ifPresent(failure -> outputs.add(error(failure)));
    return outputs;
  }

  private static JsonObject output(CellOutput output) {
    if (output instanceof CellOutput.Printed printed) {
      var stream = new JsonObject();
      stream.addProperty("output_type", "stream");
      stream.addProperty("name", printed.stream().word());
      stream.add("text", NotebookJson.lines(TerminalText.settled(printed.text())));
      return stream;
    }
    return shown("display_data", output.bundle().orElse(MimeBundle.EMPTY));
  }

  private static JsonObject shown(String type, MimeBundle bundle) {
    var data = new JsonObject();
    bundle.data().forEach((format, content) -> data.add(format, data(format, content)));
    var shown = new JsonObject();
    shown.addProperty("output_type", type);
    shown.add("data", data);
    shown.add("metadata", new JsonObject());
    return shown;
  }

  private static JsonElement data(String format, String content) {
    if (format.matches("application/(.*\\+)?json")) {
      try {
        return JsonParser.parseString(content);
      } catch (JsonParseException malformed) {
        return new JsonPrimitive(content);
      }
    }
    var isText = format.startsWith("text/") || format.endsWith("+xml");
    return isText ? NotebookJson.lines(content) : new JsonPrimitive(content);
  }

  private static JsonObject error(CellFailure failure) {
    var trace = new JsonArray();
    failure.trace().forEach(trace::add);
    var error = new JsonObject();
    error.addProperty("output_type", "error");
    error.addProperty("ename", failure.name());
    error.addProperty("evalue", failure.message());
    error.add("traceback", trace);
    return error;
  }
}
