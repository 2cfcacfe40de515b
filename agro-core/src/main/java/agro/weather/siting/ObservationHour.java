package agro.weather.siting;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.TemperatureReadings;
import java.time.LocalTime;
import java.util.Objects;

/**
 * The hour at which somebody reads and resets a minimum-maximum thermometer. At the reset it shows
 * the temperature of that moment, so a hot afternoon is carried into the next day by a reading in
 * the late afternoon, and a cold night by one in the morning (Baker 1975; Schaal and Dale 1977;
 * Karl and others 1986). Midnight is an hour of observation too.
 *
 * @param time time of day of the reading; midnight ends the day
 */
public record ObservationHour(LocalTime time) {

  /** Midnight, at the end of the day. */
  public static final ObservationHour MIDNIGHT = new ObservationHour(LocalTime.MIDNIGHT);

  /** Refuses null. */
  public ObservationHour {
    Objects.requireNonNull(time, "time");
  }

  /**
   * A full hour.
   *
   * @param hour 0 to 24; both 0 and 24 are midnight at the end of the day
   * @return the hour of observation
   * @throws InputProblem when the hour is not on the clock
   */
  public static ObservationHour at(int hour) {
    if (hour < 0 || hour > 24) {
      throw InputProblem.of("an hour of observation of " + hour)
          .expected("0 to 24")
          .because("a day has 24 hours")
          .mend("give the hour on the 24-hour clock, for example 17 for five in the afternoon");
    }
    return new ObservationHour(LocalTime.of(hour % 24, 0));
  }

  /**
   * Whether the reading is in the first half of the day, so that the highest temperature that it
   * shows is that of the day before.
   *
   * @return true before noon, but not at midnight
   */
  public boolean isMorning() {
    return !isMidnight() && time.isBefore(LocalTime.NOON);
  }

  /**
   * Whether days are read at midnight.
   *
   * @return true for midnight
   */
  public boolean isMidnight() {
    return time.equals(LocalTime.MIDNIGHT);
  }

  /** Seconds from the midnight before to the reading, 86400 for midnight. */
  long secondOfDay() {
    return isMidnight() ? 86_400 : time.toSecondOfDay();
  }

  /**
   * What an observer would write down on each day, worked out from a log.
   *
   * @param readings a log, at least every four hours
   * @return lowest and highest temperature from one reading to the next, both resets included,
   *     under the day of the reading, with origin {@link DayOrigin#MODELLED}; days with gaps are
   *     missing
   * @throws InputProblem when no day is complete
   */
  public DailyTemperatures observe(TemperatureReadings readings) {
    return ObserverTrial.observe(readings, secondOfDay());
  }

  /**
   * An observer's days with each extreme put on the day it belongs to: read in the morning, the
   * maximum goes to the day before. The temperature carried over at the reset stays in.
   *
   * @param observed extremes under the day of their reading
   * @return the days, and what still is wrong with them
   */
  public ObservationCorrection assign(DailyTemperatures observed) {
    var days = isMorning() ? ObserverTrial.maximaToTheDayBefore(observed) : observed;
    return new ObservationCorrection(days, this, java.util.Optional.empty());
  }

  /**
   * How far an observer's extremes are from those of calendar days, told from a log of the same
   * climate.
   *
   * @param readings a log of at least 30 complete days
   * @return mean differences with their scatter, by month and over all
   * @throws InputProblem when there are fewer days
   */
  public ObservationBias fit(TemperatureReadings readings) {
    return ObservationBias.fit(this, readings);
  }

  /**
   * The hour in words.
   *
   * @return for example {@code "17:00"} or {@code "midnight"}
   */
  public String words() {
    return isMidnight() ? "midnight" : time.toString();
  }
}
