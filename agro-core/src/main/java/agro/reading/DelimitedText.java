package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.nio.file.Path;
import java.util.List;

/**
 * A delimited text file with a heading line, read into lines whose cells are fetched by column name
 * and declared type. Column names are compared without regard to case; cells lose surrounding white
 * space. Blank lines, lines with nothing but empty cells and lines that start with {@code #} are
 * skipped. Line numbers count every line of the file.
 */
public final class DelimitedText {

  private final String name;
  private final DelimitedFormat format;
  private final Headings headings;
  private final List<DelimitedLine> lines;

  private DelimitedText(
      String name, DelimitedFormat format, Headings headings, List<DelimitedLine> lines) {
    this.name = name;
    this.format = format;
    this.headings = headings;
    this.lines = List.copyOf(lines);
  }

  /**
   * Reads a file.
   *
   * @param file the file; its path as given names it in messages
   * @param format how the file is written
   * @param requiredColumns columns that must be present; further columns are allowed
   * @return the lines, possibly none
   * @throws InputProblem when the file cannot be opened or decoded, is empty, lacks a required
   *     column, names a column twice, or has a line whose cells do not match the heading
   * @throws java.io.UncheckedIOException when reading fails for another reason
   */
  public static DelimitedText read(
      Path file, DelimitedFormat format, List<String> requiredColumns) {
    var name = file.toString();
    return parse(name, TextFile.read(file, name, format.charset()), format, requiredColumns);
  }

  /**
   * Reads text that is in memory.
   *
   * @param name name of the text in messages
   * @param text content of the file
   * @param format how the text is written
   * @param requiredColumns columns that must be present; further columns are allowed
   * @return the lines, possibly none
   * @throws InputProblem as for {@link #read}
   */
  public static DelimitedText parse(
      String name, String text, DelimitedFormat format, List<String> requiredColumns) {
    var records = RecordSplitter.split(name, text, format.separator());
    if (records.isEmpty()) {
      throw InputProblem.at(SourceLocation.file(name), "the file is empty")
          .expected("a heading line with the columns " + Headings.quoted(requiredColumns))
          .because("without a heading the columns are unknown")
          .mend("write the heading line and one line for each record");
    }
    var headings = Headings.of(name, records.get(0), format.separator());
    headings.require(requiredColumns);
    var lines =
        records.stream()
            .skip(1)
            .map(fields -> new DelimitedLine(headings, format.decimalMark(), fields))
            .toList();
    return new DelimitedText(name, format, headings, lines);
  }

  /**
   * The text, when it has at least one line below the heading.
   *
   * @return this
   * @throws InputProblem when there is only the heading
   */
  public DelimitedText requireRows() {
    if (lines.isEmpty()) {
      throw InputProblem.at(location(), "the file has a heading but no lines below it")
          .expected("at least one line of data")
          .because("there is nothing to compute from")
          .mend("add the data below the heading on line " + headings.line());
    }
    return this;
  }

  /**
   * The name in messages.
   *
   * @return path or name as given
   */
  public String name() {
    return name;
  }

  /**
   * The declared format.
   *
   * @return the format
   */
  public DelimitedFormat format() {
    return format;
  }

  /**
   * The columns in the order and spelling of the heading.
   *
   * @return at least one name
   */
  public List<String> columns() {
    return headings.names();
  }

  /**
   * Whether the file has a column.
   *
   * @param column name, without regard to case
   * @return true if it is present
   */
  public boolean hasColumn(String column) {
    return headings.indexOf(column).isPresent();
  }

  /**
   * The lines of data in the order of the file.
   *
   * @return an immutable list
   */
  public List<DelimitedLine> lines() {
    return lines;
  }

  /**
   * The whole file as a place in messages.
   *
   * @return a location without line and column
   */
  public SourceLocation location() {
    return SourceLocation.file(name);
  }

  @Override
  public String toString() {
    return name
        + ": "
        + lines.size()
        + (lines.size() == 1 ? " line" : " lines")
        + " with the columns "
        + Headings.quoted(columns());
  }
}
