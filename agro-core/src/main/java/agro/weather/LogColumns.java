package agro.weather;

import java.util.List;
import java.util.Objects;

/** The columns of a temperature log, and with them whether it holds readings or daily extremes. */
public sealed interface LogColumns {

  /**
   * The columns that the log must have.
   *
   * @return names in the order of this record
   */
  List<String> names();

  /**
   * Column of the time or the date.
   *
   * @return the name
   */
  String timeColumn();

  /**
   * A log of readings, several a day.
   *
   * @param timeColumn column of the date and time of a reading
   * @param temperatureColumn column of the temperature
   */
  record Readings(String timeColumn, String temperatureColumn) implements LogColumns {
    /** Refuses nulls. */
    public Readings {
      Objects.requireNonNull(timeColumn, "timeColumn");
      Objects.requireNonNull(temperatureColumn, "temperatureColumn");
    }

    @Override
    public List<String> names() {
      return List.of(timeColumn, temperatureColumn);
    }
  }

  /**
   * A log of daily extremes, one line a day.
   *
   * @param timeColumn column of the date
   * @param minimumColumn column of the lowest temperature of the day
   * @param maximumColumn column of the highest temperature of the day
   */
  record Extremes(String timeColumn, String minimumColumn, String maximumColumn)
      implements LogColumns {
    /** Refuses nulls. */
    public Extremes {
      Objects.requireNonNull(timeColumn, "timeColumn");
      Objects.requireNonNull(minimumColumn, "minimumColumn");
      Objects.requireNonNull(maximumColumn, "maximumColumn");
    }

    @Override
    public List<String> names() {
      return List.of(timeColumn, minimumColumn, maximumColumn);
    }
  }
}
