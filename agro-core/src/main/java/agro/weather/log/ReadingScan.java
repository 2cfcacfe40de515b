package agro.weather.log;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;

/**
 * The lines of a plain log of readings, scanned as bytes: one time of fixed width, one temperature,
 * one character between the cells, and nothing but ASCII. That is what most loggers write, and it
 * is read many times faster so than through text, lines and cells.
 *
 * <p>The scan decides nothing. A line that is the least bit unusual - a cell too many, a quote, a
 * time in another form, a number with an exponent - is handed to an {@link OddLine}. What that does
 * not take, or too many such lines, end the scan, so that whoever asked for it goes the general way
 * instead. What is taken means the same there, to the last bit.
 */
final class ReadingScan {

  /**
   * How the lines are written.
   *
   * @param separator character between cells
   * @param decimalMark point or comma
   * @param cells number of cells of a line
   * @param timeCell which of them holds the time, from 0
   * @param valueCell which of them holds the temperature, from 0
   */
  record Layout(char separator, char decimalMark, int cells, int timeCell, int valueCell) {}

  private static final int MOST_NUMBER_BYTES = 15;

  /** So many odd lines are read in any case; beyond them, no more than half of all lines. */
  private static final int FEW_ODD_LINES = 1000;

  private static final double[] POWERS_OF_TEN = new double[MOST_NUMBER_BYTES + 1];

  static {
    POWERS_OF_TEN[0] = 1;
    for (int i = 1; i <= MOST_NUMBER_BYTES; i++) {
      POWERS_OF_TEN[i] = 10 * POWERS_OF_TEN[i - 1];
    }
  }

  private final byte[] bytes;
  private final Layout layout;
  private final byte separator;
  private final byte decimalMark;
  private final FixedTime time;
  private final byte[][] missingCodes;

  private final OddLine oddLine;

  private final long[] localSeconds;
  private final int[] offsets;
  private final double[] values;
  private final byte[] decimals;
  private final int[] lines;
  private final int[] starts;
  private int rows;
  private int oddLines;
  private boolean hasMark;
  private int firstOddLine;

  /** The byte at which the line goes on; -1 after something odd. */
  private int at;

  private ReadingScan(
      byte[] bytes,
      Layout layout,
      FixedTime time,
      Collection<String> missingCodes,
      OddLine oddLine,
      int mostRows) {
    this.bytes = bytes;
    this.layout = layout;
    this.time = time;
    separator = (byte) layout.separator();
    decimalMark = (byte) layout.decimalMark();
    this.missingCodes =
        missingCodes.stream()
            .filter(code -> !code.isEmpty() && code.chars().allMatch(c -> c < 128))
            .map(code -> code.getBytes(StandardCharsets.US_ASCII))
            .toArray(byte[][]::new);
    localSeconds = new long[mostRows];
    offsets = new int[time.hasOffset() ? mostRows : 0];
    this.oddLine = oddLine;
    values = new double[mostRows];
    decimals = new byte[mostRows];
    lines = new int[mostRows];
    starts = new int[mostRows];
  }

  /**
   * Scans the lines below the heading, up to the first one that cannot be taken.
   *
   * @param bytes the file
   * @param from where the first line begins
   * @param firstLine its number in the file
   * @param layout how the lines are written
   * @param time how their times are written
   * @param missingCodes what stands for a missing temperature besides an empty cell, as written
   * @param oddLine reads the lines that the scan cannot take
   * @return the readings
   */
  static ReadingScan of(
      byte[] bytes,
      int from,
      int firstLine,
      Layout layout,
      FixedTime time,
      Collection<String> missingCodes,
      OddLine oddLine) {
    int leastBytes = time.length() + layout.cells();
    int most = (bytes.length - from) / leastBytes + 1;
    var scan = new ReadingScan(bytes, layout, time, missingCodes, oddLine, most);
    scan.scan(from, firstLine);
    return scan;
  }

  /** Number of readings, those without a temperature included. */
  int rows() {
    return rows;
  }

  /** Seconds from 1970-01-01T00:00 on the clock that wrote the time. */
  long localSecond(int row) {
    return localSeconds[row];
  }

  /** Whether the times have their offset from UTC. */
  boolean hasOffsets() {
    return time.hasOffset();
  }

  /** Offset of the time from UTC in seconds, 0 when none is written. */
  int offset(int row) {
    return time.hasOffset() ? offsets[row] : 0;
  }

  /** The number in the cell of the temperature, NaN when it is empty or holds a missing code. */
  double value(int row) {
    return values[row];
  }

  /** The numbers as {@link #value} has them, and then some places without meaning; not copied. */
  double[] values() {
    return values;
  }

  /** Digits behind the decimal mark of each number, -1 where there is none, likewise not copied. */
  byte[] decimals() {
    return decimals;
  }

  /** The times as {@link #localSecond} has them. */
  long[] localSeconds() {
    return Arrays.copyOf(localSeconds, rows);
  }

  /** Whether a number that the scan itself took has a decimal mark. */
  boolean hasMark() {
    return hasMark;
  }

  /** The byte at which the line of a row begins. */
  int start(int row) {
    return starts[row];
  }

  /** Number of the line in the file, counted from 1. */
  int line(int row) {
    return lines[row];
  }

  /** Number of the first line that was not taken; nothing when all of them were. */
  Optional<Integer> firstOddLine() {
    return firstOddLine == 0 ? Optional.empty() : Optional.of(firstOddLine);
  }

  private void scan(int from, int firstLine) {
    at = from;
    int line = firstLine;
    while (at < bytes.length) {
      byte first = bytes[at];
      if (first == '\n' || first == '\r') {
        endLine();
      } else if (first == '#') {
        takeComment(line);
      } else {
        takeLine(line);
      }
      if (at < 0) {
        firstOddLine = line;
        return;
      }
      line++;
    }
  }

  private void takeComment(int line) {
    int from = at;
    skipComment();
    if (at < 0) {
      takeOddLine(from, line);
    }
  }

  private void takeLine(int line) {
    int from = at;
    for (int cell = 0; cell < layout.cells() && at >= 0; cell++) {
      if (cell > 0) {
        passSeparator();
      }
      if (cell == layout.timeCell()) {
        takeTime();
      } else if (cell == layout.valueCell()) {
        takeValue();
      } else {
        skipCell();
      }
    }
    endLine();
    if (at >= 0) {
      starts[rows] = from;
      lines[rows++] = line;
    } else {
      takeOddLine(from, line);
    }
  }

  private void takeOddLine(int from, int line) {
    int end = from;
    while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
      end++;
    }
    boolean few = ++oddLines <= FEW_ODD_LINES + rows / 2 && rows < lines.length;
    var found = few ? oddLine.read(from, end, line) : Optional.<OddLine.Found>empty();
    if (found.isEmpty()) {
      return;
    }
    at = end;
    endLine();
    if (found.get().isReading()) {
      localSeconds[rows] = found.get().localSecond();
      if (time.hasOffset()) {
        offsets[rows] = found.get().offset();
      }
      values[rows] = found.get().value();
      decimals[rows] = (byte) Math.min(Byte.MAX_VALUE, found.get().decimals());
      starts[rows] = from;
      lines[rows++] = line;
    }
  }

  private void passSeparator() {
    at = at >= 0 && at < bytes.length && bytes[at] == separator ? at + 1 : -1;
  }

  /** Passes the end of a line or of the file; a lone carriage return is left to the general way. */
  private void endLine() {
    if (at < 0 || at == bytes.length) {
      return;
    }
    if (bytes[at] == '\r') {
      at++;
    }
    at = at < bytes.length && bytes[at] == '\n' ? at + 1 : -1;
  }

  private void skipComment() {
    while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
      if (bytes[at] <= 0) {
        at = -1;
        return;
      }
      at++;
    }
    endLine();
  }

  private boolean isCellEnd(int index) {
    return index == bytes.length
        || bytes[index] == separator
        || bytes[index] == '\n'
        || bytes[index] == '\r';
  }

  private void skipCell() {
    while (at >= 0 && !isCellEnd(at)) {
      at = bytes[at] <= 0 || bytes[at] == '"' ? -1 : at + 1;
    }
  }

  private void skipBlanks() {
    while (at < bytes.length && bytes[at] == ' ') {
      at++;
    }
  }

  private void takeTime() {
    if (at < 0) {
      return;
    }
    skipBlanks();
    int end = at + time.length();
    long second = end > bytes.length ? FixedTime.NONE : time.localSecond(bytes, at);
    if (second == FixedTime.NONE) {
      at = -1;
      return;
    }
    localSeconds[rows] = second;
    if (time.hasOffset()) {
      offsets[rows] = time.lastOffset();
    }
    at = end;
    skipBlanks();
  }

  private void takeValue() {
    if (at < 0) {
      return;
    }
    skipBlanks();
    int from = at;
    while (!isCellEnd(at) && bytes[at] != ' ') {
      at++;
    }
    int end = at;
    skipBlanks();
    if (from == end || isMissingCode(from, end)) {
      values[rows] = Double.NaN;
      decimals[rows] = -1;
      return;
    }
    double value = number(from, end);
    values[rows] = value;
    at = Double.isNaN(value) ? -1 : at;
  }

  private boolean isMissingCode(int from, int end) {
    for (var code : missingCodes) {
      if (code.length == end - from && Arrays.equals(code, 0, code.length, bytes, from, end)) {
        return true;
      }
    }
    return false;
  }

  /**
   * A number of few digits without exponent; NaN for anything else. Its digits make a whole number
   * below 2^53, and dividing that by a power of ten below 10^23 rounds once, as the full parser
   * does.
   */
  private double number(int from, int end) {
    boolean negative = bytes[from] == '-';
    int index = negative ? from + 1 : from;
    int first = index;
    if (index == end || end - index > MOST_NUMBER_BYTES) {
      return Double.NaN;
    }
    long digits = 0;
    int mark = -1;
    for (; index < end; index++) {
      int digit = bytes[index] - '0';
      if (digit >= 0 && digit <= 9) {
        digits = 10 * digits + digit;
      } else if (bytes[index] == decimalMark && mark < 0 && index > first) {
        mark = index;
      } else {
        return Double.NaN;
      }
    }
    hasMark |= mark >= 0;
    decimals[rows] = (byte) (mark < 0 ? 0 : end - 1 - mark);
    double size = digits / POWERS_OF_TEN[mark < 0 ? 0 : end - 1 - mark];
    return negative ? -size : size;
  }
}
