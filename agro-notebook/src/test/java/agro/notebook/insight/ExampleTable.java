package agro.notebook.insight;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Tables of examples: code and what is to be said about it. */
public final class ExampleTable {

  private static final String CURSOR = "\u2038";
  private static final String ARROW = " ==> ";

  private ExampleTable() {}

  /**
   * One example of a table.
   *
   * @param marked the code, the cursor marked in it
   * @param expected what is said about it
   */
  public record Example(String marked, String expected) {

    int cursor() {
      return marked.indexOf(CURSOR);
    }

    public String code() {
      return marked.replace(CURSOR, "");
    }

    @Override
    public String toString() {
      return marked.replace("\n", "\\n");
    }
  }

  /**
   * Reads a table: one example a line, code and expectation around an arrow, comments behind #.
   *
   * @param owner the class that the file lies beside
   * @param name the name of the file
   * @return the examples
   */
  public static List<Example> read(Class<?> owner, String name) {
    try (var stream = owner.getResourceAsStream(name)) {
      var examples = new ArrayList<Example>();
      for (var line : new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        var arrow = line.indexOf(ARROW);
        if (arrow >= 0 && !line.startsWith("#")) {
          var code = line.substring(0, arrow).replace("\\n", "\n");
          examples.add(new Example(code, line.substring(arrow + ARROW.length())));
        }
      }
      return examples;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
