package agro.weather.log;

import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyTemperatures;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.working.Presentable;
import agro.working.Presentation;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A temperature log after reading: its readings, its daily extremes, how it is written, and the
 * report of everything that was detected, assumed, repaired, dropped or noticed on the way. Files
 * of loggers and spreadsheets are read as well as those of the archives that {@link
 * agro.weather.archive.GhcnDaily} and {@link agro.weather.archive.IsdLite} know.
 *
 * <p>Readings are put together to days of 24 hours, from midnight to midnight of standard time all
 * year. On a civil clock the hour that comes twice in autumn is read in the order of the file, and
 * a time in the hour that is skipped in spring is dropped. A day that does not satisfy the {@link
 * CompletenessRule} is missing. Nothing is filled and no odd reading is changed.
 *
 * @param daily daily extremes in °C, days without enough readings missing
 * @param readings the readings of a log of several a day; empty for a log of daily extremes
 * @param format how the log is written; what was detected stands in it as if it were declared
 * @param report what was detected, assumed, repaired, dropped and noticed
 */
public record TemperatureLog(
    DailyTemperatures daily,
    Optional<TemperatureReadings> readings,
    LogFormat format,
    ReadReport report)
    implements Presentable {

  /** All days of a log are known. */
  static final Predicate<LocalDate> EVERY_DAY = day -> true;

  /** Refuses nulls. */
  public TemperatureLog {
    Objects.requireNonNull(daily, "daily");
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(format, "format");
    Objects.requireNonNull(report, "report");
  }

  /**
   * Reads a log of which nothing is known: everything about it is detected by evidence in the file
   * and told in the report, or refused with the question that the file leaves open. The place gets
   * the name of the file, and the medium is taken for air in a shelter, or for soil where the
   * heading says so.
   *
   * @param file the file, packed with gzip or not
   * @return readings, daily extremes, format and report
   * @throws InputProblem when the file is no log, or can be read in more than one way
   */
  public static TemperatureLog read(Path file) {
    return read(file, LogFormat.detect());
  }

  /**
   * Reads a log of which something is declared. The place gets the name of the file, and the medium
   * is taken for air in a shelter, or for soil where the heading says so.
   *
   * @param file the file, packed with gzip or not
   * @param format what is known about it
   * @return readings, daily extremes, format and report
   * @throws InputProblem when the file is not as declared, or can be read in more than one way
   */
  public static TemperatureLog read(Path file, LogFormat format) {
    var log = read(file, format, placeName(file), Medium.shelterAir());
    var soil = log.format().columns().flatMap(HeadingMedium::soil);
    if (soil.isPresent()) {
      log = read(file, format, placeName(file), soil.get().medium());
    }
    var place = new ReadReport.Collector(file.toString());
    place.addAll(log.report());
    place.add(
        Deed.ASSUMED,
        SourceLocation.NONE,
        "the place is \""
            + log.daily().place()
            + "\" and the medium "
            + log.daily().medium().words()
            + soil.map(each -> ", for " + each.words()).orElse(""));
    return new TemperatureLog(log.daily(), log.readings(), log.format(), place.report());
  }

  /**
   * Reads a log from a file.
   *
   * @param file the file, packed with gzip or not
   * @param format how it is written, as far as that is known
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @return readings, daily extremes, format and report
   * @throws InputProblem when the file is missing, empty or without data, when a cell is not what
   *     its column holds, when times are out of order or double with different values, when a
   *     minimum is above its maximum, when no day is complete, when the temperatures as a whole
   *     look like another unit, or when what is left open cannot be decided
   */
  public static TemperatureLog read(Path file, LogFormat format, String place, Medium medium) {
    return read(file, file.toString(), format, place, medium, Progress.ofThread());
  }

  /**
   * Reads a log from a file, which messages call by another name, and tells how far it has come.
   *
   * @param file the file, packed with gzip or not
   * @param name name of the file in messages and reports
   * @param format how it is written, as far as that is known
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @param progress hears of the lines read and may cancel
   * @return readings, daily extremes, format and report
   * @throws InputProblem as for {@link #read(Path, LogFormat, String, Medium)}
   */
  public static TemperatureLog read(
      Path file, String name, LogFormat format, String place, Medium medium, Progress progress) {
    if (format.isPlain()) {
      return readPlain(file, name, format, place, medium, EVERY_DAY, progress);
    }
    var bytes = FileBytes.read(file, name);
    return ArchiveLog.read(bytes, name, format, place, medium, EVERY_DAY)
        .orElseGet(() -> new DetectedLog(bytes, name, format, place, medium, progress).readOne());
  }

  /**
   * Reads the part of a log that was known at some time. Lines of other days are left out before
   * anything but their dates is looked at, so that neither the step between readings nor the
   * judgement of the unit can rest on them.
   *
   * @param file the file
   * @param name name of the file in messages and reports
   * @param format how it is written, as far as that is known
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @param known whether the lines of a day are read; asked once for each line
   * @param progress hears of the lines read and may cancel
   * @return readings, daily extremes, format and report
   * @throws InputProblem as for {@link #read(Path, LogFormat, String, Medium)}
   */
  public static TemperatureLog readKnown(
      Path file,
      String name,
      LogFormat format,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    if (!format.isPlain()) {
      var bytes = FileBytes.read(file, name);
      return ArchiveLog.read(bytes, name, format, place, medium, known)
          .orElseGet(
              () -> DetectedLog.readKnown(bytes, name, format, place, medium, known, progress));
    }
    return readPlain(file, name, format, place, medium, known, progress);
  }

  private static TemperatureLog readPlain(
      Path file,
      String name,
      LogFormat format,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    var scanned = ScannedLog.read(file, name, format, place, medium, known, progress);
    if (scanned.isPresent()) {
      return scanned.get();
    }
    var text = format.plainText();
    var content = TextFile.read(file, name, text.charset());
    var cells = DelimitedText.parse(name, content, text, format.plainColumns().names());
    return of(cells, format, place, medium, known, progress);
  }

  /**
   * Reads all sensors of a log.
   *
   * @param file the file, packed with gzip or not
   * @param format how it is written, as far as that is known
   * @param place name of the place, to which the heading of each of several sensors is added
   * @param medium what the thermometers stood in
   * @return a log for each sensor, by the headings of their columns, in the order of the file; for
   *     a daily file of an archive, one for each station
   * @throws InputProblem as for {@link #read(Path, LogFormat, String, Medium)}
   */
  public static Map<String, TemperatureLog> readAll(
      Path file, LogFormat format, String place, Medium medium) {
    var name = file.toString();
    var bytes = FileBytes.read(file, name);
    return ArchiveLog.readAll(bytes, name, format, place, medium)
        .orElseGet(
            () ->
                new DetectedLog(bytes, name, format, place, medium, Progress.ofThread()).readAll());
  }

  private static String placeName(Path file) {
    var name = String.valueOf(file.getFileName());
    int point = name.indexOf('.', 1);
    return point < 0 ? name : name.substring(0, point);
  }

  /** Reads a plain table that is split into cells already. */
  static TemperatureLog of(
      DelimitedText text, LogFormat format, String place, Medium medium, Progress progress) {
    return of(text, format, place, medium, EVERY_DAY, progress);
  }

  private static TemperatureLog of(
      DelimitedText text,
      LogFormat format,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    text.requireRows();
    if (format.plainColumns() instanceof LogColumns.Readings readings) {
      return ReadingsLog.read(text, format, readings, place, medium, known, progress);
    }
    return new ExtremesLog(text, format, (LogColumns.Extremes) format.plainColumns(), known)
        .read(place, medium, progress);
  }

  @Override
  public Presentation presentation() {
    int missing = daily.missingDays().size();
    var page =
        Presentation.titled("Temperature log of " + daily.place())
            .fact("medium", daily.medium().words())
            .fact("days", daily.firstDay() + " to " + daily.lastDay())
            .fact("days missing", missing + " of " + daily.size());
    readings.ifPresent(all -> page.fact("readings", String.valueOf(all.size())));
    return page.fact("to declare next time", FormatInJava.breakableLine(format))
        .part(Presentation.of(report))
        .build();
  }
}
