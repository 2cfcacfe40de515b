package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import agro.notebook.kernel.CellSource;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the code out of files. */
final class CodeFile {

  private static final String[] JAVA = {".java", ".jshell", ".jsh"};
  private static final String NOTEBOOK = ".ipynb";
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** Comments and blanks, then the name of a package: cells have none. */
  private static final Pattern PACKAGE =
      Pattern.compile("\\A(?:\\s|//[^\\n]*\\n|/\\*(?s:.*?)\\*/)*+(package\\s+[\\w.]+\\s*;)");

  private CodeFile() {}

  /**
   * The code of a file.
   *
   * @param written the file as the user named it; the ending may be left out
   * @return the whole text, or one source for each cell of code of a notebook
   * @throws CellMagicProblem when there is no such file or it holds no Java code
   */
  static List<CellSource> sources(String written) throws CellMagicProblem, IOException {
    var file = file(written);
    var name = file.toString();
    if (FilePattern.endsWith(file, NOTEBOOK)) {
      return cells(name, text(file));
    }
    if (FilePattern.endsWith(file, JAVA)) {
      return List.of(new CellSource(name, plainCode(text(file))));
    }
    throw new CellMagicProblem(
        "\""
            + name
            + "\" is not a file of Java code; expected a name that ends in .java, .jshell,"
            + " .jsh or .ipynb");
  }

  private static Path file(String written) throws CellMagicProblem {
    var named = FilePattern.of(written).path();
    if (Files.isRegularFile(named)) {
      return named;
    }
    for (var ending : Stream.concat(Stream.of(JAVA), Stream.of(NOTEBOOK)).toList()) {
      var longer = FilePattern.of(written + ending).path();
      if (Files.isRegularFile(longer)) {
        return longer;
      }
    }
    throw new CellMagicProblem(
        (Files.isDirectory(named)
                ? "\"" + written + "\" is a folder"
                : "there is no \"" + written + "\"")
            + "; looked for "
            + named.toAbsolutePath().normalize()
            + ". Give a file of code; a name without a folder is looked for in "
            + Path.of("").toAbsolutePath());
  }

  private static String text(Path file) throws CellMagicProblem, IOException {
    try {
      var text = Files.readString(file, StandardCharsets.UTF_8);
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException otherCharset) {
      throw new CellMagicProblem(
          "\"" + file + "\" is not text in UTF-8; save it in UTF-8 and load it again",
          otherCharset);
    }
  }

  /** The code with what a cell cannot hold blanked, so that the lines keep their numbers. */
  private static String plainCode(String text) {
    var code = text.startsWith("#!") ? "//" + text.substring(2) : text;
    var named = PACKAGE.matcher(code);
    return named.find()
        ? code.substring(0, named.start(1))
            + named.group(1).replaceAll("[^\\n]", " ")
            + code.substring(named.end(1))
        : code;
  }

  private static List<CellSource> cells(String name, String json) throws CellMagicProblem {
    var notebook = object(name, json);
    requireJava(name, notebook);
    var sources = new ArrayList<CellSource>();
    if (notebook.get("cells") instanceof JsonArray cells) {
      for (var cell : cells) {
        if (cell instanceof JsonObject object && "code".equals(joined(object.get("cell_type")))) {
          var number = sources.size() + 1;
          sources.add(new CellSource(name + ", cell " + number, joined(object.get("source"))));
        }
      }
    }
    if (sources.isEmpty()) {
      throw new CellMagicProblem(
          "\""
              + name
              + "\" holds no cell of code; expected a notebook of format 4 with at least"
              + " one");
    }
    return sources;
  }

  private static JsonObject object(String name, String json) throws CellMagicProblem {
    try {
      if (JsonParser.parseString(json) instanceof JsonObject object) {
        return object;
      }
      throw new CellMagicProblem("\"" + name + "\" is not a notebook: it holds no JSON object");
    } catch (JsonParseException malformed) {
      throw new CellMagicProblem(
          "\"" + name + "\" is not a notebook: " + malformed.getMessage(), malformed);
    }
  }

  private static void requireJava(String name, JsonObject notebook) throws CellMagicProblem {
    if (notebook.get("metadata") instanceof JsonObject metadata) {
      var language =
          metadata.get("kernelspec") instanceof JsonObject kernel
              ? joined(kernel.get("language"))
              : metadata.get("language_info") instanceof JsonObject info
                  ? joined(info.get("name"))
                  : "";
      if (!language.isEmpty() && !language.toLowerCase(Locale.ROOT).equals("java")) {
        throw new CellMagicProblem(
            "\"" + name + "\" is a notebook in " + language + "; expected one in Java");
      }
    }
  }

  /** A text of a notebook file, which may be one string or a list of lines. */
  private static String joined(JsonElement text) {
    if (text == null || text.isJsonNull()) {
      return "";
    }
    if (text instanceof JsonArray lines) {
      var whole = new StringBuilder();
      lines.forEach(line -> whole.append(joined(line)));
      return whole.toString();
    }
    return text.isJsonPrimitive() ? text.getAsString() : "";
  }
}
