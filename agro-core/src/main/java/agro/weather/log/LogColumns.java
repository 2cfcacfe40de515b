package agro.weather.log;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The columns of a temperature log, and with them whether it holds readings or daily extremes. In a
 * log without headings the columns are named {@code "column 1"}, {@code "column 2"} and so on.
 */
public sealed interface LogColumns {

  /**
   * The columns that the log must have.
   *
   * @return names in the order of this record
   */
  List<String> names();

  /**
   * The columns of the time or the date.
   *
   * @return at least one
   */
  List<TimePartColumn> times();

  /**
   * Column of the time or the date, where it is one.
   *
   * @return the name of the first column of the time
   */
  default String timeColumn() {
    return times().get(0).name();
  }

  /**
   * A log of readings, several a day.
   *
   * @param times columns of the date and time of a reading
   * @param temperatureColumn column of the temperature
   */
  record Readings(List<TimePartColumn> times, String temperatureColumn) implements LogColumns {
    /** Refuses nulls. */
    public Readings {
      times = List.copyOf(times);
      Objects.requireNonNull(temperatureColumn, "temperatureColumn");
    }

    /**
     * Readings with date and time in one column.
     *
     * @param timeColumn column of the date and time of a reading
     * @param temperatureColumn column of the temperature
     */
    public Readings(String timeColumn, String temperatureColumn) {
      this(List.of(new TimePartColumn(timeColumn, TimePart.DATE_TIME)), temperatureColumn);
    }

    @Override
    public List<String> names() {
      return named(times, temperatureColumn);
    }
  }

  /**
   * A log of daily extremes, one line a day.
   *
   * @param times columns of the date
   * @param minimumColumn column of the lowest temperature of the day
   * @param maximumColumn column of the highest temperature of the day
   */
  record Extremes(List<TimePartColumn> times, String minimumColumn, String maximumColumn)
      implements LogColumns {
    /** Refuses nulls. */
    public Extremes {
      times = List.copyOf(times);
      Objects.requireNonNull(minimumColumn, "minimumColumn");
      Objects.requireNonNull(maximumColumn, "maximumColumn");
    }

    /**
     * Daily extremes with the date in one column.
     *
     * @param timeColumn column of the date
     * @param minimumColumn column of the lowest temperature of the day
     * @param maximumColumn column of the highest temperature of the day
     */
    public Extremes(String timeColumn, String minimumColumn, String maximumColumn) {
      this(
          List.of(new TimePartColumn(timeColumn, TimePart.DATE_TIME)),
          minimumColumn,
          maximumColumn);
    }

    @Override
    public List<String> names() {
      return named(times, minimumColumn, maximumColumn);
    }
  }

  private static List<String> named(List<TimePartColumn> times, String... values) {
    return Stream.concat(times.stream().map(TimePartColumn::name), Stream.of(values))
        .collect(Collectors.toUnmodifiableList());
  }
}
