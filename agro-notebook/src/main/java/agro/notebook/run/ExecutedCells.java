package agro.notebook.run;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellOutput;
import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;

/** Writes what cells printed and showed as notebook files have it. */
final class ExecutedCells {

  private ExecutedCells() {}

  static String notebook(NotebookRun run) {
    var cells = new JsonArray();
    for (var cell : run.cells()) {
      var outcome = run.outcome(cell);
      cells.add(
          outcome.isPresent()
              ? cell.toJson(new JsonPrimitive(outcome.get().number()), outputs(outcome.get()))
              : cell.toJson(JsonNull.INSTANCE, new JsonArray()));
    }
    return run.notebook().toJson(cells);
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
      stream.add("text", NotebookJson.lines(printed.text()));
      return stream;
    }
    return shown("display_data", output.bundle().orElse(MimeBundle.EMPTY));
  }

  private static JsonObject shown(String type, MimeBundle bundle) {
    var data = new JsonObject();
    bundle
        .data()
        .forEach(
            (format, content) ->
                data.add(
                    format,
                    format.endsWith("json")
                        ? JsonParser.parseString(content)
                        : isText(format)
                            ? NotebookJson.lines(content)
                            : new JsonPrimitive(content)));
    var shown = new JsonObject();
    shown.addProperty("output_type", type);
    shown.add("data", data);
    shown.add("metadata", new JsonObject());
    return shown;
  }

  private static boolean isText(String format) {
    return format.startsWith("text/") || format.endsWith("+xml");
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
