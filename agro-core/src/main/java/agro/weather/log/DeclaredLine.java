package agro.weather.log;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import java.util.Optional;

/**
 * Reads a single line of a declared log through text, as {@link ReadingsLog} does with all of them.
 * What is wrong, or hangs on other lines, is not taken.
 */
final class DeclaredLine implements OddLine {

  private final byte[] bytes;
  private final String heading;
  private final String name;
  private final LogFormat format;
  private final LogColumns.Readings columns;
  private final boolean hasOffsets;
  private final TimePattern pattern;

  /**
   * Reads lines of a file.
   *
   * @param bytes the file
   * @param heading its line of headings
   * @param name name of the file
   * @param format how it is declared
   * @param hasOffsets whether the times of the other lines have their offset from UTC
   */
  DeclaredLine(byte[] bytes, String heading, String name, LogFormat format, boolean hasOffsets) {
    this.bytes = bytes;
    this.heading = heading.strip();
    this.name = name;
    this.format = format;
    this.columns = (LogColumns.Readings) format.plainColumns();
    this.hasOffsets = hasOffsets;
    pattern = format.times().pattern().map(TimePattern::of).orElse(TimePattern.iso());
  }

  @Override
  public Optional<Found> read(int from, int end, int line) {
    var text = DecodedText.part(bytes, from, end, format.plainText().charset());
    if (text.isEmpty() || text.get().indexOf('\0') >= 0 || isOpen(text.get())) {
      return Optional.empty();
    }
    try {
      var cells =
          DelimitedText.parse(
              name, heading + "\n" + text.get(), format.plainText(), columns.names());
      return cells.lines().isEmpty() ? Optional.of(Found.NOTHING) : reading(cells.lines().get(0));
    } catch (InputProblem toldByTheGeneralWay) {
      return Optional.empty();
    }
  }

  /** Whether a cell may go on in the next line. */
  private static boolean isOpen(String text) {
    return text.chars().filter(c -> c == '"').count() % 2 == 1;
  }

  private Optional<Found> reading(DelimitedLine line) {
    var column = columns.timeColumn();
    var stamp = pattern.parse(line.text(column), line.location(column));
    if (stamp.offset().isPresent() != hasOffsets) {
      return Optional.empty();
    }
    int offset = stamp.offset().map(written -> written.getTotalSeconds()).orElse(0);
    var value = line.optionalText(columns.temperatureColumn());
    boolean isMissing = value.isEmpty() || format.missingCodes().contains(value.get());
    double number = isMissing ? Double.NaN : line.number(columns.temperatureColumn());
    return isMissing || !Double.isNaN(number)
        ? Optional.of(new Found(true, stamp.localSeconds(), offset, number, isMissing ? -1 : 0))
        : Optional.empty();
  }
}
