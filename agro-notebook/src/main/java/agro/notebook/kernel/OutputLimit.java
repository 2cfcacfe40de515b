package agro.notebook.kernel;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * How much a cell may print before its output goes to a file, and where that file goes. Read from
 * the system properties {@code agro.output.limit} and {@code agro.output.folder}, or else from the
 * environment variables {@code AGRO_OUTPUT_LIMIT} and {@code AGRO_OUTPUT_FOLDER}. A limit is a
 * number of bytes, or a number with {@code kB}, {@code MB} or {@code GB}.
 *
 * @param bytes bytes of text in UTF-8
 * @param folder where files go
 */
public record OutputLimit(long bytes, Path folder) {

  /** What holds when nothing else is said: 10 MB. */
  public static final long USUAL_BYTES = 10_000_000;

  private static final Pattern SIZE = Pattern.compile("(\\d{1,12})\\s*(k|m|g)?b?");

  /** Refuses a limit below one byte. */
  public OutputLimit {
    if (bytes < 1) {
      throw new IllegalArgumentException("a limit is at least 1 byte, not " + bytes);
    }
  }

  /**
   * The limit of this process.
   *
   * @return the limit; what is not readable as a size counts as not said
   */
  public static OutputLimit configured() {
    return of(System::getProperty, System::getenv);
  }

  static OutputLimit of(UnaryOperator<String> properties, UnaryOperator<String> environment) {
    var size = said(properties, environment, "agro.output.limit");
    var folder = said(properties, environment, "agro.output.folder");
    return new OutputLimit(
        size == null ? USUAL_BYTES : bytes(size),
        Path.of(folder == null ? System.getProperty("java.io.tmpdir") : folder));
  }

  private static String said(
      UnaryOperator<String> properties, UnaryOperator<String> environment, String name) {
    var property = properties.apply(name);
    var said =
        property != null
            ? property
            : environment.apply(name.toUpperCase(Locale.ROOT).replace('.', '_'));
    return said == null || said.isBlank() ? null : said;
  }

  private static long bytes(String said) {
    var size = SIZE.matcher(said.strip().toLowerCase(Locale.ROOT));
    if (!size.matches()) {
      return USUAL_BYTES;
    }
    var unit = size.group(2) == null ? 1 : unit(size.group(2).charAt(0));
    return Math.max(1, Long.parseLong(size.group(1)) * unit);
  }

  private static long unit(char letter) {
    return letter == 'k' ? 1_000 : letter == 'm' ? 1_000_000 : 1_000_000_000;
  }
}
