package agro.notebook.page;

import com.google.gson.FormattingStyle;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.Locale;

/** A notebook file that is being written, nbformat 4.5, cell by cell, without outputs. */
final class NotebookText {

  private final String prefix;
  private final JsonArray cells = new JsonArray();

  /**
   * An empty notebook.
   *
   * @param prefix beginning of the ids of its cells
   */
  NotebookText(String prefix) {
    this.prefix = prefix;
  }

  NotebookText markdown(String text) {
    cells.add(cell("markdown", text));
    return this;
  }

  NotebookText code(String text) {
    var cell = cell("code", text);
    cell.add("execution_count", JsonNull.INSTANCE);
    cell.add("outputs", new JsonArray());
    cells.add(cell);
    return this;
  }

  private JsonObject cell(String type, String text) {
    var cell = new JsonObject();
    cell.addProperty("cell_type", type);
    cell.addProperty("id", prefix + "-" + (cells.size() + 1));
    cell.add("metadata", new JsonObject());
    cell.add("source", lines(text));
    return cell;
  }

  private static JsonArray lines(String text) {
    var lines = new JsonArray();
    int from = 0;
    while (from < text.length()) {
      int end = text.indexOf('\n', from);
      int next = end < 0 ? text.length() : end + 1;
      lines.add(text.substring(from, next));
      from = next;
    }
    return lines;
  }

  /** A text as it stands in Java code, quotation marks included. */
  static String literal(String text) {
    var code = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        code.append('\\').append(c);
      } else if (c < ' ') {
        code.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        code.append(c);
      }
    }
    return code.append('"').toString();
  }

  /** The content of the file. */
  String json() {
    var kernel = new JsonObject();
    kernel.addProperty("display_name", "Java (agro)");
    kernel.addProperty("language", "java");
    kernel.addProperty("name", "agro-java");
    var language = new JsonObject();
    language.addProperty("file_extension", ".java");
    language.addProperty("mimetype", "text/x-java-source");
    language.addProperty("name", "java");
    var metadata = new JsonObject();
    metadata.add("kernelspec", kernel);
    metadata.add("language_info", language);
    var root = new JsonObject();
    root.add("cells", cells);
    root.add("metadata", metadata);
    root.addProperty("nbformat", 4);
    root.addProperty("nbformat_minor", 5);
    return new GsonBuilder()
            .setFormattingStyle(FormattingStyle.PRETTY.withIndent(" "))
            .serializeNulls()
            .disableHtmlEscaping()
            .create()
            .toJson(root)
        + "\n";
  }
}
