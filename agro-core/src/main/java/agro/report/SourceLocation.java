package agro.report;

import java.util.Objects;

/**
 * Where in the input a value stands, as precisely as it is known.
 *
 * @param file file name or another name of the input; empty when the value came from code
 * @param line line number counted from 1, or 0 when unknown
 * @param column column name, or empty when unknown
 */
public record SourceLocation(String file, long line, String column) {

  /** A value that did not come from a file. */
  public static final SourceLocation NONE = new SourceLocation("", 0, "");

  /** Refuses nulls and negative line numbers. */
  public SourceLocation {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(column, "column");
    if (line < 0) {
      throw new IllegalArgumentException("line numbers count from 1, but got " + line);
    }
  }

  /**
   * A whole file.
   *
   * @param file name of the file
   * @return the location without line and column
   */
  public static SourceLocation file(String file) {
    return new SourceLocation(file, 0, "");
  }

  /**
   * A line of a file.
   *
   * @param file name of the file
   * @param line line number counted from 1
   * @return the location without a column
   */
  public static SourceLocation line(String file, long line) {
    return new SourceLocation(file, line, "");
  }

  /**
   * The same line, at a column.
   *
   * @param name name of the column
   * @return the location with that column
   */
  public SourceLocation column(String name) {
    return new SourceLocation(file, line, name);
  }

  @Override
  public String toString() {
    var words = new StringBuilder(file);
    if (line > 0) {
      words.append(words.isEmpty() ? "" : ", ").append("line ").append(line);
    }
    if (!column.isEmpty()) {
      words.append(words.isEmpty() ? "" : ", ").append("column \"").append(column).append('"');
    }
    return words.toString();
  }
}
