package agro.weather.log;

import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.Medium;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The short way from a file to a log of readings, for files that a {@link ReadingScan} can take as
 * a whole. Result and report are those of the general way, which all other files go; it has the
 * messages for everything that is wrong with a file.
 */
final class ScannedLog {

  /**
   * Character sets in which the first 128 bytes are ASCII, and other bytes are other characters.
   */
  static final List<Charset> LIKE_ASCII =
      List.of(
          StandardCharsets.UTF_8,
          StandardCharsets.US_ASCII,
          StandardCharsets.ISO_8859_1,
          Charset.forName("windows-1252"));

  private final byte[] bytes;
  private final String name;
  private final LogFormat format;
  private final LogColumns.Readings columns;

  private ScannedLog(byte[] bytes, String name, LogFormat format, LogColumns.Readings columns) {
    this.bytes = bytes;
    this.name = name;
    this.format = format;
    this.columns = columns;
  }

  /** Reads a file the short way; nothing when it has to go the general way. */
  static Optional<TemperatureLog> read(
      Path file,
      String name,
      LogFormat format,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    boolean simple =
        format.plainColumns() instanceof LogColumns.Readings
            && LIKE_ASCII.contains(format.plainText().charset())
            && Files.isRegularFile(file)
            && Files.isReadable(file);
    if (!simple) {
      return Optional.empty();
    }
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file);
    } catch (IOException toldByTheGeneralWay) {
      return Optional.empty();
    }
    return new ScannedLog(bytes, name, format, (LogColumns.Readings) format.plainColumns())
        .read(place, medium, known, progress);
  }

  private Optional<TemperatureLog> read(
      String place, Medium medium, Predicate<LocalDate> known, Progress progress) {
    int line = 1;
    int from = 0;
    while (from < bytes.length && isSkipped(from)) {
      from = nextLine(from);
      line++;
    }
    int below = nextLine(from);
    var layout = from < below ? layout(from, below) : Optional.<ReadingScan.Layout>empty();
    if (layout.isEmpty()) {
      return Optional.empty();
    }
    var time = time(below, layout.get());
    if (time.isEmpty()) {
      return Optional.empty();
    }
    var odd = new DeclaredLine(bytes, text(from, below), name, format, time.get().hasOffset());
    var scan =
        ReadingScan.of(
            bytes, below, line + 1, layout.get(), time.get(), format.missingCodes(), odd);
    if (scan.firstOddLine().isPresent() || scan.rows() == 0) {
      return Optional.empty();
    }
    return ReadingsLog.read(name, scan, format, columns, place, medium, known, progress);
  }

  /** Blank lines and comments stand before the heading without being one. */
  private boolean isSkipped(int from) {
    return bytes[from] == '#' || bytes[from] == '\n' || bytes[from] == '\r';
  }

  private int lineEnd(int from) {
    int end = from;
    while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
      end++;
    }
    return end;
  }

  private int nextLine(int from) {
    int end = lineEnd(from);
    boolean two = end + 1 < bytes.length && bytes[end] == '\r' && bytes[end + 1] == '\n';
    return Math.min(bytes.length, end + (two ? 2 : 1));
  }

  /** A part of the file as text, nothing but a zero character where it is none. */
  private String text(int from, int end) {
    return DecodedText.part(bytes, from, end, format.plainText().charset()).orElse("\0");
  }

  /** Where the columns stand, by the heading; nothing when the heading is not a plain one. */
  private Optional<ReadingScan.Layout> layout(int from, int below) {
    try {
      var heading = text(from, below);
      if (!isPlain(heading)) {
        return Optional.empty();
      }
      var headings =
          DelimitedText.parse(name, heading, format.plainText(), columns.names()).columns();
      int time = place(headings, columns.timeColumn());
      int value = place(headings, columns.temperatureColumn());
      return time < 0 || value < 0 || time == value
          ? Optional.empty()
          : Optional.of(
              new ReadingScan.Layout(
                  format.plainText().separator(),
                  format.plainText().decimalMark(),
                  headings.size(),
                  time,
                  value));
    } catch (InputProblem toldByTheGeneralWay) {
      return Optional.empty();
    }
  }

  private boolean isPlain(String heading) {
    return heading.indexOf('"') < 0
        && heading.indexOf('\0') < 0
        && heading.indexOf('\uFEFF') < 0
        && format.plainText().separator() < 128;
  }

  private static int place(List<String> headings, String column) {
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).toLowerCase(Locale.ROOT).equals(column.toLowerCase(Locale.ROOT))) {
        return i;
      }
    }
    return -1;
  }

  /** How the times are written: by the declared pattern, or as the first line has it. */
  private Optional<FixedTime> time(int below, ReadingScan.Layout layout) {
    if (format.times().pattern().isPresent()) {
      return DigitFields.of(format.times().pattern().get()).flatMap(FixedTime::of);
    }
    int from = below;
    while (from < bytes.length && isSkipped(from)) {
      from = nextLine(from);
    }
    var line = new String(bytes, from, lineEnd(from) - from, StandardCharsets.ISO_8859_1);
    int cellFrom = 0;
    for (int cell = 0; cell < layout.timeCell(); cell++) {
      cellFrom = line.indexOf(layout.separator(), cellFrom) + 1;
      if (cellFrom == 0) {
        return Optional.empty();
      }
    }
    int end = line.indexOf(layout.separator(), cellFrom);
    return FixedTime.ofIso(line.substring(cellFrom, end < 0 ? line.length() : end).strip());
  }
}
