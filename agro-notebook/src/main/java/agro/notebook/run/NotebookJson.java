package agro.notebook.run;

import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

/**
 * JSON as notebook files have it: keys sorted, one space of indent, long texts as lists of lines.
 */
final class NotebookJson {

  private static final Gson WRITER =
      new GsonBuilder()
          .setFormattingStyle(FormattingStyle.PRETTY.withIndent(" "))
          .serializeNulls()
          .disableHtmlEscaping()
          .create();

  private NotebookJson() {}

  /**
   * A text that may be written as one string or as a list of lines.
   *
   * @param element the element, or null
   * @return the text; empty for anything else
   */
  static String text(JsonElement element) {
    if (element instanceof JsonArray lines) {
      var text = new StringBuilder();
      lines.forEach(line -> text.append(text(line)));
      return text.toString();
    }
    return element instanceof JsonPrimitive primitive ? primitive.getAsString() : "";
  }

  /**
   * A text as a list of lines, each with its line break.
   *
   * @param text any text
   * @return the list
   */
  static JsonArray lines(String text) {
    var lines = new JsonArray();
    var from = 0;
    while (from < text.length()) {
      var end = text.indexOf('\n', from);
      var next = end < 0 ? text.length() : end + 1;
      lines.add(text.substring(from, next));
      from = next;
    }
    return lines;
  }

  static String written(JsonObject object) {
    return WRITER.toJson(sorted(object)) + "\n";
  }

  private static JsonElement sorted(JsonElement element) {
    if (element instanceof JsonObject object) {
      var sorted = new JsonObject();
      object.keySet().stream().sorted().forEach(key -> sorted.add(key, sorted(object.get(key))));
      return sorted;
    }
    if (element instanceof JsonArray array) {
      var sorted = new JsonArray();
      array.forEach(each -> sorted.add(sorted(each)));
      return sorted;
    }
    return element;
  }
}
