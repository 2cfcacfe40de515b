package agro.notebook.kernel;

import agro.notebook.display.MimeBundle;
import java.util.Optional;

/** One thing that a cell printed or showed. */
public sealed interface CellOutput {

  /**
   * The plain text of this output.
   *
   * @return the printed text, or the plain text of what was shown
   */
  String plainText();

  /**
   * The formats of something that was shown.
   *
   * @return empty for printed text
   */
  Optional<MimeBundle> bundle();

  /**
   * Text that was printed.
   *
   * @param stream the stream it was printed to
   * @param text the text, neighbouring pieces joined
   */
  record Printed(StandardStream stream, String text) implements CellOutput {
    /**
     * Whether this is what the program has to say.
     *
     * @return false for errors and remarks
     */
    public boolean isOrdinary() {
      return stream == StandardStream.OUTPUT;
    }

    @Override
    public String plainText() {
      return text;
    }

    @Override
    public Optional<MimeBundle> bundle() {
      return Optional.empty();
    }
  }

  /**
   * Something that was shown.
   *
   * @param id the name under which it can be replaced
   * @param content its formats
   */
  record Shown(String id, MimeBundle content) implements CellOutput {
    @Override
    public String plainText() {
      return content.plainText();
    }

    @Override
    public Optional<MimeBundle> bundle() {
      return Optional.of(content);
    }
  }
}
