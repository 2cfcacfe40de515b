package agro.notebook.jupyter;

import agro.notebook.insight.Completeness;
import agro.notebook.insight.Completions;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Locale;

/** Answers {@code complete}, {@code inspect} and {@code is_complete} requests. */
final class CodeQuestions {

  private static final String TYPES = "_jupyter_types_experimental";

  private final WarmEvaluator evaluator;

  CodeQuestions(WarmEvaluator evaluator) {
    this.evaluator = evaluator;
  }

  JsonObject complete(Request request) throws InterruptedException {
    var code = Json.text(request.content(), "code", "");
    var cursor = cursor(request.content(), code);
    var opened = evaluator.get();
    var found = opened.insight().completions(code, cursor, opened.magicNames());
    var matches = new JsonArray();
    found.candidates().forEach(candidate -> matches.add(candidate.text()));
    var start = code.codePointCount(0, found.from());
    var end = code.codePointCount(0, found.to());
    var reply = Json.status("ok");
    reply.add("matches", matches);
    reply.addProperty("cursor_start", start);
    reply.addProperty("cursor_end", end);
    reply.add("metadata", Json.with(TYPES, types(found, start, end)));
    return reply;
  }

  private static JsonArray types(Completions found, int start, int end) {
    var types = new JsonArray();
    for (var candidate : found.candidates()) {
      var type = new JsonObject();
      type.addProperty("text", candidate.text());
      type.addProperty("type", candidate.type());
      type.addProperty("start", start);
      type.addProperty("end", end);
      type.addProperty("signature", candidate.signature());
      types.add(type);
    }
    return types;
  }

  JsonObject inspect(Request request) throws InterruptedException {
    var code = Json.text(request.content(), "code", "");
    var cursor = cursor(request.content(), code);
    var detailed = Json.number(request.content(), "detail_level", 0) > 0;
    var found = evaluator.get().insight().inspection(code, cursor, detailed);
    var reply = Json.status("ok");
    reply.addProperty("found", found.isPresent());
    reply.add("data", found.map(CellPublisher::data).orElseGet(JsonObject::new));
    reply.add("metadata", new JsonObject());
    return reply;
  }

  JsonObject isComplete(Request request) throws InterruptedException {
    var code = Json.text(request.content(), "code", "");
    var verdict = evaluator.get().insight().completeness(code);
    var reply = Json.status(verdict.state().name().toLowerCase(Locale.ROOT));
    if (verdict.state() == Completeness.State.INCOMPLETE) {
      reply.addProperty("indent", verdict.indent());
    }
    return reply;
  }

  /** The cursor in UTF-16 units; the protocol counts characters. */
  private static int cursor(JsonObject content, String code) {
    var characters = code.codePointCount(0, code.length());
    var asked = Json.number(content, "cursor_pos", characters);
    return code.offsetByCodePoints(0, Math.max(0, Math.min(asked, characters)));
  }
}
