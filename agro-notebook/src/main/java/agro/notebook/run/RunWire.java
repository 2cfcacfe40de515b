package agro.notebook.run;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.Optional;

/** What two processes say to each other about a run, one JSON object on each line. */
final class RunWire {

  private static final Gson GSON = new Gson();
  private static final String TASK = "task";
  private static final String CELL = "cell";
  private static final String REPORT = "report";

  private RunWire() {}

  /**
   * How far a run is.
   *
   * @param number the cell that runs, counted from 1
   * @param total cells of code in all
   */
  record CellStart(int number, int total) {}

  static String task(RunTask task) {
    return line(TASK, task);
  }

  static String cell(CellStart start) {
    return line(CELL, start);
  }

  static String report(RunReport report) {
    return line(REPORT, report);
  }

  private static String line(String kind, Object content) {
    var line = new JsonObject();
    line.add(kind, GSON.toJsonTree(content));
    return GSON.toJson(line);
  }

  static Optional<RunTask> task(String line) {
    return read(line, TASK, RunTask.class);
  }

  static Optional<CellStart> cell(String line) {
    return read(line, CELL, CellStart.class);
  }

  static Optional<RunReport> report(String line) {
    return read(line, REPORT, RunReport.class);
  }

  private static <T> Optional<T> read(String line, String kind, Class<T> type) {
    try {
      return JsonParser.parseString(line) instanceof JsonObject object && object.has(kind)
          ? Optional.ofNullable(GSON.fromJson(object.get(kind), type))
          : Optional.empty();
    } catch (RuntimeException other) {
      // A library, or the machine itself, printed something between our lines. Records that refuse
      // their content reach us as exceptions of several kinds.
      return Optional.empty();
    }
  }
}
