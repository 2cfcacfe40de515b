package agro.notebook.run;

import agro.notebook.run.NotebookCell.Content;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A notebook as it stands in its file (nbformat 4), without outputs. Immutable. Cells of versions
 * before 4.5, which have no names, get one from their place.
 */
public final class NotebookDocument {

  private static final int MAJOR = 4;
  private static final int MINOR = 5;
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final String name;
  private final JsonObject metadata;
  private final List<NotebookCell> cells;

  private NotebookDocument(String name, JsonObject metadata, List<NotebookCell> cells) {
    this.name = name;
    this.metadata = metadata;
    this.cells = List.copyOf(cells);
  }

  /**
   * Reads a notebook file.
   *
   * @param file the file
   * @return the notebook
   * @throws InputProblem when there is no such file or it holds no Java notebook of version 4
   */
  public static NotebookDocument read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw problem(file.toString(), "there is no such file")
          .expected("a notebook, a file that ends in .ipynb")
          .because("there is nothing to run")
          .mend("check the name and the folder you are in");
    }
    try {
      return parse(file.toString(), text(Files.readAllBytes(file)));
    } catch (IOException unreadable) {
      throw problem(file.toString(), "the file could not be read (" + unreadable + ")")
          .expected("a notebook in UTF-8")
          .because("its cells are not known")
          .mend("check that you may read the file and that it is whole");
    }
  }

  /**
   * Reads a notebook from text.
   *
   * @param name how messages call the notebook
   * @param json the content of a notebook file
   * @return the notebook
   * @throws InputProblem when the text is no Java notebook of version 4
   */
  public static NotebookDocument parse(String name, String json) {
    var root = root(name, json);
    requireVersion(name, root);
    var metadata =
        root.get("metadata") instanceof JsonObject object ? object.deepCopy() : new JsonObject();
    requireJava(name, metadata);
    if (!(root.get("cells") instanceof JsonArray array)) {
      throw problem(name, "there is no list of cells")
          .expected("a notebook with a list \"cells\"")
          .because("there is nothing to run")
          .mend("save the notebook again from the program that made it");
    }
    var cells = cells(name, array);
    requireDistinctChecks(name, cells);
    return new NotebookDocument(name, metadata, cells);
  }

  /**
   * UTF-8, or what the mark at the beginning of the file says; bytes that are no text are refused.
   */
  private static String text(byte[] bytes) throws CharacterCodingException {
    var wide = bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF;
    var charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  private static JsonObject root(String name, String json) {
    try {
      var text = json.startsWith(BYTE_ORDER_MARK) ? json.substring(1) : json;
      if (JsonParser.parseString(text) instanceof JsonObject object) {
        return object;
      }
      throw notANotebook(name, "the file holds no JSON object");
    } catch (JsonParseException malformed) {
      var place = Pattern.compile("line (\\d+) column (\\d+)").matcher(malformed.getMessage());
      throw notANotebook(
          name,
          "the file is not JSON"
              + (place.find()
                  ? " (line " + place.group(1) + ", column " + place.group(2) + ")"
                  : ""));
    }
  }

  private static InputProblem notANotebook(String name, String read) {
    return problem(name, read.replaceAll("\\s+", " "))
        .expected("a notebook, which is a JSON object")
        .because("its cells cannot be found")
        .mend("give the .ipynb file itself, whole and without marks of a merge");
  }

  private static void requireVersion(String name, JsonObject root) {
    var version = root.get("nbformat");
    if (!(version instanceof JsonPrimitive number && number.getAsString().equals("" + MAJOR))) {
      throw problem(name, "the format version is " + (version == null ? "missing" : version))
          .expected("nbformat " + MAJOR)
          .because("other versions arrange cells differently")
          .mend("open the notebook in a current notebook program and save it again");
    }
  }

  private static void requireJava(String name, JsonObject metadata) {
    for (var part : List.of("kernelspec", "language_info")) {
      if (metadata.get(part) instanceof JsonObject about) {
        var key = part.equals("kernelspec") ? "language" : "name";
        var language = NotebookJson.text(about.get(key));
        if (!language.isEmpty() && !language.toLowerCase(Locale.ROOT).equals("java")) {
          throw problem(name, "the notebook's language is " + language)
              .expected("a notebook of Java cells")
              .because("its cells would not compile")
              .mend("run it with a kernel of its own language");
        }
      }
    }
  }

  private static List<NotebookCell> cells(String name, JsonArray array) {
    var cells = new ArrayList<NotebookCell>();
    var ids = new HashSet<String>();
    for (JsonElement element : array) {
      var cell =
          NotebookCell.of(element instanceof JsonObject object ? object : new JsonObject())
              .orElseThrow(
                  () ->
                      problem(name, "cell " + (cells.size() + 1) + " of the file has no known type")
                          .expected("a code, markdown or raw cell")
                          .because("it is not clear what to do with it")
                          .mend("save the notebook again from the program that made it"));
      var id = cell.id().matches("[a-zA-Z0-9_-]{1,64}") ? cell.id() : "cell-" + (cells.size() + 1);
      while (!ids.add(id)) {
        id = "cell-" + (cells.size() + 1) + "-" + ids.size();
      }
      cells.add(cell.withId(id));
    }
    return cells;
  }

  private static void requireDistinctChecks(String name, List<NotebookCell> cells) {
    var seen = new HashSet<String>();
    for (var cell : cells) {
      cell.check()
          .filter(check -> !seen.add(check))
          .ifPresent(
              check -> {
                throw problem(name, "two cells are tagged check:" + check)
                    .expected("each name once")
                    .because("it is not clear which value is meant")
                    .mend("rename one of the tags");
              });
    }
  }

  private static InputProblem.Found problem(String name, String read) {
    return InputProblem.at(SourceLocation.file(name), read);
  }

  /**
   * How messages call the notebook.
   *
   * @return the name of its file
   */
  public String name() {
    return name;
  }

  /**
   * The cells.
   *
   * @return all cells in order
   */
  public List<NotebookCell> cells() {
    return cells;
  }

  /**
   * The title: the first heading of the first level.
   *
   * @return the title, or the name of the file without folder and ending
   */
  public String title() {
    return cells.stream()
        .filter(cell -> cell.content() == Content.MARKDOWN)
        .flatMap(cell -> cell.source().lines())
        .filter(line -> line.startsWith("# "))
        .map(line -> line.substring(2).replaceAll("[*`]", "").strip())
        .findFirst()
        .orElse(fileStem());
  }

  /**
   * The name of the file without folder and ending.
   *
   * @return for example {@code 01-the-next-generation}
   */
  String fileStem() {
    var file = Path.of(name).getFileName().toString();
    return file.endsWith(".ipynb") ? file.substring(0, file.length() - 6) : file;
  }

  /**
   * The notebook file, version 4.5, with the given cells in place of its own.
   *
   * @param cells the objects of the cells
   * @param key the runner's own part of the metadata
   * @param ours what to write there; nothing is written when it is empty
   * @return the text of the file
   */
  String toJson(JsonArray cells, String key, JsonObject ours) {
    var about = metadata.deepCopy();
    about.remove(key);
    if (!ours.isEmpty()) {
      about.add(key, ours);
    }
    var kernel = about.get("kernelspec") instanceof JsonObject known ? known : new JsonObject();
    kernel.addProperty("language", "java");
    kernel.add("display_name", textOr(kernel.get("display_name"), "Java"));
    kernel.add("name", textOr(kernel.get("name"), "java"));
    about.add("kernelspec", kernel);
    var language =
        about.get("language_info") instanceof JsonObject known ? known : new JsonObject();
    language.addProperty("name", "java");
    language.addProperty("file_extension", ".jshell");
    language.addProperty("mimetype", "text/x-java-source");
    about.add("language_info", language);
    var root = new JsonObject();
    root.add("cells", cells);
    root.add("metadata", about);
    root.addProperty("nbformat", MAJOR);
    root.addProperty("nbformat_minor", MINOR);
    return NotebookJson.written(root);
  }

  private static JsonElement textOr(JsonElement known, String otherwise) {
    var isText = known instanceof JsonPrimitive primitive && primitive.isString();
    return isText ? known : new JsonPrimitive(otherwise);
  }
}
