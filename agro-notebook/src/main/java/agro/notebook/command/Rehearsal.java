package agro.notebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The cells that a kernel works through while the class-data archive for its start is made. */
final class Rehearsal {

  private static final String CELLS = "rehearsal.txt";

  private Rehearsal() {}

  /** The cells: what stands between lines that begin with a ruler of equals signs. */
  static List<String> cells() {
    try (var text = Rehearsal.class.getResourceAsStream(CELLS)) {
      return List.of(
          new String(text.readAllBytes(), StandardCharsets.UTF_8).strip().split("(?m)^=+.*\\R"));
    } catch (IOException e) {
      throw new UncheckedIOException("a file of the program could not be read: " + CELLS, e);
    }
  }
}
