package agro.notebook.run;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One cell of a notebook as it stands in the file, without outputs. Immutable. */
public final class NotebookCell {

  /** What a cell holds. */
  public enum Content {
    /** Java code. */
    CODE,
    /** Prose in Markdown. */
    MARKDOWN,
    /** Text that is neither run nor shown. */
    RAW;

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What the format allows a cell of code to have, besides what running it gives. */
  private static final Set<String> OF_CODE = Set.of("cell_type", "id", "metadata", "source");

  private static final Set<String> OF_PROSE =
      Set.of("cell_type", "id", "metadata", "source", "attachments");

  private static final String CHECK = "check:";

  private static final String PICTURE = "picture:";

  private final Content content;
  private final JsonObject json;

  private NotebookCell(Content content, JsonObject json) {
    this.content = content;
    this.json = json;
  }

  /**
   * Reads a cell of a notebook file.
   *
   * @param cell the cell's object
   * @return empty when it has no known type
   */
  static Optional<NotebookCell> of(JsonObject cell) {
    var copy = cell.deepCopy();
    copy.remove("outputs");
    copy.remove("execution_count");
    for (var content : Content.values()) {
      if (content.word().equals(NotebookJson.text(cell.get("cell_type")))) {
        return Optional.of(new NotebookCell(content, copy));
      }
    }
    return Optional.empty();
  }

  /**
   * A new cell of code.
   *
   * @param id its name in the file
   * @param tag its one tag
   * @param source the code
   * @return the cell
   */
  static NotebookCell code(String id, String tag, String source) {
    var tags = new JsonArray();
    tags.add(tag);
    var metadata = new JsonObject();
    metadata.add("tags", tags);
    var cell = new JsonObject();
    cell.addProperty("cell_type", Content.CODE.word());
    cell.addProperty("id", id);
    cell.add("metadata", metadata);
    cell.add("source", NotebookJson.lines(source));
    return new NotebookCell(Content.CODE, cell);
  }

  /**
   * What the cell holds.
   *
   * @return code, Markdown or raw text
   */
  public Content content() {
    return content;
  }

  /**
   * The name of the cell in its notebook.
   *
   * @return the name, unique in the notebook
   */
  public String id() {
    return NotebookJson.text(json.get("id"));
  }

  /**
   * The text of the cell.
   *
   * @return its code or prose, with line feeds between the lines
   */
  public String source() {
    return NotebookJson.text(json.get("source")).replace("\r\n", "\n").replace('\r', '\n');
  }

  /**
   * The tags that its author gave it.
   *
   * @return the tags in their order
   */
  public Set<String> tags() {
    var tags = new LinkedHashSet<String>();
    if (json.get("metadata") instanceof JsonObject metadata
        && metadata.get("tags") instanceof JsonArray words) {
      words.forEach(word -> tags.add(NotebookJson.text(word)));
    }
    return tags;
  }

  /**
   * The name under which a test asks for the cell's value.
   *
   * @return what follows {@code check:} in its tag; empty without such a tag
   */
  public Optional<String> check() {
    return named(CHECK);
  }

  /**
   * The name of the picture file that the cell's figure may be written to.
   *
   * @return what follows {@code picture:} in its tag; empty without such a tag
   */
  public Optional<String> picture() {
    return named(PICTURE);
  }

  /**
   * A picture that the prose of the cell brings along.
   *
   * @param name its name in the cell
   * @return Base64 by media type; empty when the cell has no such picture
   */
  Map<String, String> attachment(String name) {
    var found = new LinkedHashMap<String, String>();
    if (json.get("attachments") instanceof JsonObject all
        && all.get(name) instanceof JsonObject formats) {
      formats
          .entrySet()
          .forEach(each -> found.put(each.getKey(), NotebookJson.text(each.getValue())));
    }
    return found;
  }

  private Optional<String> named(String prefix) {
    return tags().stream()
        .filter(tag -> tag.startsWith(prefix))
        .map(tag -> tag.substring(prefix.length()).strip())
        .findFirst();
  }

  NotebookCell withId(String id) {
    var copy = json.deepCopy();
    copy.addProperty("id", id);
    return new NotebookCell(content, copy);
  }

  /**
   * The object of this cell in an executed notebook.
   *
   * @param count the number of the execution, or JSON's null
   * @param outputs what it printed and showed
   * @return a new object
   */
  JsonObject toJson(JsonElement count, JsonArray outputs) {
    var copy = json.deepCopy();
    copy.keySet().retainAll(content == Content.CODE ? OF_CODE : OF_PROSE);
    copy.add("source", NotebookJson.lines(NotebookJson.text(json.get("source"))));
    if (!(copy.get("metadata") instanceof JsonObject)) {
      copy.add("metadata", new JsonObject());
    }
    if (content == Content.CODE) {
      copy.add("execution_count", count);
      copy.add("outputs", outputs);
    }
    return copy;
  }

  @Override
  public String toString() {
    return content.word() + " cell " + id();
  }
}
