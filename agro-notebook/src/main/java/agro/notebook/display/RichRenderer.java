package agro.notebook.display;

/**
 * Shows values of one type. Renderers are found as services ({@link java.util.ServiceLoader}), so
 * that a library brings its own without being known here. Of several renderers that fit a value,
 * the one of the most specific type is asked; among equals, the one that was found first.
 *
 * @param <T> the type of the values
 */
public interface RichRenderer<T> {

  /**
   * The type that is shown, with everything that extends or implements it.
   *
   * @return a class or an interface
   */
  Class<T> type();

  /**
   * Shows a value. May throw anything: the reader then sees a sentence that says so.
   *
   * @param value the value, never null
   * @return at least one format, preferably HTML and plain text
   */
  MimeBundle render(T value);
}
