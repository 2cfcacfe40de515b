package agro.notebook.run;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;

/** Builds notebooks for tests. */
public final class SampleNotebook {

  private final JsonArray cells = new JsonArray();

  private SampleNotebook() {}

  public static SampleNotebook empty() {
    return new SampleNotebook();
  }

  public SampleNotebook prose(String... lines) {
    return add("markdown", List.of(lines), List.of());
  }

  public SampleNotebook code(String... lines) {
    return add("code", List.of(lines), List.of());
  }

  public SampleNotebook tagged(String tag, String... lines) {
    return add("code", List.of(lines), List.of(tag));
  }

  private SampleNotebook add(String type, List<String> lines, List<String> tags) {
    var cell = new JsonObject();
    cell.addProperty("cell_type", type);
    cell.addProperty("id", "c" + cells.size());
    cell.addProperty("source", String.join("\n", lines));
    var metadata = new JsonObject();
    if (!tags.isEmpty()) {
      var words = new JsonArray();
      tags.forEach(words::add);
      metadata.add("tags", words);
    }
    cell.add("metadata", metadata);
    if (type.equals("code")) {
      cell.add("outputs", new JsonArray());
      cell.add("execution_count", null);
    }
    cells.add(cell);
    return this;
  }

  public String json() {
    var kernel = new JsonObject();
    kernel.addProperty("name", "java");
    kernel.addProperty("display_name", "Java");
    kernel.addProperty("language", "java");
    var metadata = new JsonObject();
    metadata.add("kernelspec", kernel);
    var root = new JsonObject();
    root.add("cells", cells);
    root.add("metadata", metadata);
    root.addProperty("nbformat", 4);
    root.addProperty("nbformat_minor", 5);
    return NotebookJson.written(root);
  }

  public NotebookDocument document() {
    return NotebookDocument.parse("sample.ipynb", json());
  }
}
