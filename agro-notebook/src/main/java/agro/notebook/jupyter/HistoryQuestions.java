package agro.notebook.jupyter;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import io.github.spencerpark.jupyter.kernel.history.HistoryEntry;
import java.util.LinkedHashMap;
import java.util.List;

/** Answers {@code history_request}s. */
final class HistoryQuestions {

  private final CellHistory history;

  HistoryQuestions(CellHistory history) {
    this.history = history;
  }

  JsonObject answer(Request request) {
    var asked = request.content();
    var found =
        switch (Json.text(asked, "hist_access_type", "tail")) {
          case "range" -> range(asked);
          case "tail" -> last(asked, history.all());
          case "search" -> search(asked);
          default ->
              throw new IllegalArgumentException(
                  "hist_access_type is one of range, tail, search, not "
                      + asked.get("hist_access_type"));
        };
    var withOutput = Json.flag(asked, "output", false);
    var list = new JsonArray();
    found.forEach(entry -> list.add(entry(entry, withOutput)));
    var reply = Json.status("ok");
    reply.add("history", list);
    return reply;
  }

  /** Session 0 is this one, a negative one counts back from it, a positive one is meant itself. */
  private List<HistoryEntry> range(JsonObject asked) {
    var number = Json.number(asked, "session", 0);
    var session = number > 0 ? number : history.session() + number;
    var start = Json.number(asked, "start", 0);
    var stop = Json.number(asked, "stop", Integer.MAX_VALUE);
    return history.all().stream()
        .filter(entry -> entry.getSession() == session)
        .filter(entry -> entry.getCellNumber() >= start && entry.getCellNumber() < stop)
        .toList();
  }

  private List<HistoryEntry> search(JsonObject asked) {
    var pattern = new GlobPattern(Json.text(asked, "pattern", "*"));
    var matching =
        history.all().stream().filter(entry -> pattern.matches(entry.getInput())).toList();
    return last(asked, matching);
  }

  private static List<HistoryEntry> last(JsonObject asked, List<HistoryEntry> entries) {
    var chosen = Json.flag(asked, "unique", false) ? unique(entries) : entries;
    var count = Math.max(0, Json.number(asked, "n", chosen.size()));
    return chosen.subList(Math.max(0, chosen.size() - count), chosen.size());
  }

  /** Of equal inputs the latest. */
  private static List<HistoryEntry> unique(List<HistoryEntry> entries) {
    var latest = new LinkedHashMap<String, HistoryEntry>();
    for (var entry : entries) {
      latest.remove(entry.getInput());
      latest.put(entry.getInput(), entry);
    }
    return List.copyOf(latest.values());
  }

  private static JsonElement entry(HistoryEntry entry, boolean withOutput) {
    var row = new JsonArray();
    row.add(entry.getSession());
    row.add(entry.getCellNumber());
    if (withOutput) {
      var both = new JsonArray();
      both.add(entry.getInput());
      both.add(entry.hasOutput() ? new JsonPrimitive(entry.getOutput()) : JsonNull.INSTANCE);
      row.add(both);
    } else {
      row.add(entry.getInput());
    }
    return row;
  }
}
