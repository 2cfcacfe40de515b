package agro.weather;

import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A temperature log after reading: daily extremes, and the report of everything that was assumed,
 * dropped or noticed on the way.
 *
 * <p>Readings are put together to days of 24 hours, from midnight to midnight of standard time all
 * year. On a civil clock the hour that comes twice in autumn is read in the order of the file, and
 * a time in the hour that is skipped in spring is dropped. A day that does not satisfy the {@link
 * CompletenessRule} is missing. Nothing is filled and no odd reading is changed.
 *
 * @param daily daily extremes in °C, days without enough readings missing
 * @param report what was assumed, dropped and noticed
 */
public record TemperatureLog(DailyTemperatures daily, ReadReport report) implements Presentable {

  /** Refuses nulls. */
  public TemperatureLog {
    Objects.requireNonNull(daily, "daily");
    Objects.requireNonNull(report, "report");
  }

  /**
   * Reads a log from a file.
   *
   * @param file the file
   * @param format how it is written
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @return daily extremes and report
   * @throws InputProblem when the file is missing, empty or without data, when a cell is not what
   *     its column holds, when times are out of order or double with different values, when a
   *     minimum is above its maximum, when no day is complete, or when the temperatures as a whole
   *     look like another unit
   */
  public static TemperatureLog read(Path file, LogFormat format, String place, Medium medium) {
    return of(
        DelimitedText.read(file, format.text(), format.columns().names()), format, place, medium);
  }

  /**
   * Reads a log from text that is split into cells already.
   *
   * @param text the cells, read with {@link LogFormat#text()}
   * @param format how the log is written
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @return daily extremes and report
   * @throws InputProblem as for {@link #read}
   */
  public static TemperatureLog of(
      DelimitedText text, LogFormat format, String place, Medium medium) {
    return of(text, format, place, medium, Progress.ofThread());
  }

  /**
   * Reads a log from text that is split into cells already and tells how far it has come.
   *
   * @param text the cells, read with {@link LogFormat#text()}
   * @param format how the log is written
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @param progress hears of the lines read and may cancel
   * @return daily extremes and report
   * @throws InputProblem as for {@link #read}
   */
  public static TemperatureLog of(
      DelimitedText text, LogFormat format, String place, Medium medium, Progress progress) {
    text.requireRows();
    if (format.columns() instanceof LogColumns.Readings readings) {
      return new ReadingsLog(text, format, readings).read(place, medium, progress);
    }
    return new ExtremesLog(text, format, (LogColumns.Extremes) format.columns())
        .read(place, medium, progress);
  }

  @Override
  public Presentation presentation() {
    int missing = daily.missingDays().size();
    return Presentation.titled("Temperature log of " + daily.place())
        .fact("medium", daily.medium().words())
        .fact("days", daily.firstDay() + " to " + daily.lastDay())
        .fact("days missing", missing + " of " + daily.size())
        .part(Presentation.of(report))
        .build();
  }
}
