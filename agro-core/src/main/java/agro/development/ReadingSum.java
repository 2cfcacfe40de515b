package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Objects;

/**
 * Degree-days added up over readings, each weighted by the time that it stands for: the integral of
 * the development rate over the day, in °C·h, over 24. A day of 23 or 25 hours of a civil clock
 * counts with its own length, a doubled hour counts twice and a missing one not at all. The daily
 * total is never below zero, as {@link UpperCutoff} says.
 *
 * <p>A gap between readings is bridged when it is not longer than {@link #longestGap}. The last
 * reading before a longer gap, and the last one of all, stands for one usual step. The rest of such
 * a day has no reading; what becomes of the day is decided by {@link #leastShareOfDay}.
 *
 * @param model thresholds and cutoff, with {@link DegreeDayMethod#SUM_OVER_READINGS}
 * @param rule what is taken for the time between two readings
 * @param longestGap longest time between two readings that is bridged, above zero
 * @param leastShareOfDay share of a day that readings must stand for, above 0 to 1. A day with less
 *     is missing; a day with more, but not all, counts with the mean rate of its read part and is
 *     marked {@link DayBasis#PARTLY_READ}
 */
public record ReadingSum(
    DegreeDayModel model, ReadingRule rule, Duration longestGap, double leastShareOfDay) {

  /** The gap that is bridged when nothing else is said: that of three-hourly readings. */
  public static final Duration USUAL_LONGEST_GAP = Duration.ofHours(3);

  /**
   * Checks the parts.
   *
   * @throws InputProblem when the model is of another method, the gap is not above zero, or the
   *     share is not above 0 to 1
   */
  public ReadingSum {
    Objects.requireNonNull(rule, "rule");
    if (!model.method().needsReadings()) {
      throw InputProblem.of("the method \"" + model.method().words() + "\" for readings")
          .expected("the method SUM_OVER_READINGS")
          .because("other methods draw a curve through daily extremes and would not use the rest")
          .mend("take ReadingSum.of, or cut the readings into daily extremes first");
    }
    if (longestGap.isNegative() || longestGap.isZero()) {
      throw InputProblem.of("a longest gap of " + longestGap)
          .expected("a time above zero")
          .because("readings are always some time apart")
          .mend("give at least the distance of the readings, for example Duration.ofHours(1)");
    }
    if (!(leastShareOfDay > 0 && leastShareOfDay <= 1)) {
      throw InputProblem.of("a least share of a day of " + leastShareOfDay)
          .expected("a number above 0 to 1")
          .because("it says how much of a day must have been read")
          .mend("give 1 for whole days only, or for example 0.9");
    }
  }

  /**
   * A sum by straight lines between readings, over gaps of at most three hours, on days that are
   * read in full.
   *
   * @param thresholds lower and, where the cutoff needs it, upper threshold
   * @param cutoff rule above the upper threshold
   * @return the rule
   * @throws InputProblem when a cutoff is asked for without an upper threshold
   */
  public static ReadingSum of(Thresholds thresholds, UpperCutoff cutoff) {
    return new ReadingSum(
        DegreeDayModel.of(DegreeDayMethod.SUM_OVER_READINGS, thresholds, cutoff),
        ReadingRule.STRAIGHT_LINES,
        USUAL_LONGEST_GAP,
        1);
  }

  /**
   * The same sum with another rule between readings.
   *
   * @param other the rule
   * @return a new sum
   */
  public ReadingSum with(ReadingRule other) {
    return new ReadingSum(model, other, longestGap, leastShareOfDay);
  }

  /**
   * The same sum over gaps of another length.
   *
   * @param longest longest time between two readings that is bridged
   * @return a new sum
   * @throws InputProblem when it is not above zero
   */
  public ReadingSum withLongestGap(Duration longest) {
    return new ReadingSum(model, rule, longest, leastShareOfDay);
  }

  /**
   * The same sum with days that need not be read in full.
   *
   * @param share share of a day that readings must stand for, above 0 to 1
   * @return a new sum
   * @throws InputProblem outside that range
   */
  public ReadingSum withLeastShareOfDay(double share) {
    return new ReadingSum(model, rule, longestGap, share);
  }

  /**
   * Degree-days of each day of 24 hours, cut at midnight of the readings' own offset.
   *
   * @param readings temperatures with their times, at least one
   * @return one value for each day from the first reading to the last
   * @throws InputProblem when there is no reading
   */
  public DailyDegreeDays daily(TemperatureReadings readings) {
    return daily(readings, readings.dayOffset());
  }

  /**
   * Degree-days of each day of a civil calendar, whose days of clock change have 23 or 25 hours.
   *
   * @param readings temperatures with their times, at least one
   * @param zone at whose midnight days begin
   * @return one value for each day from the first reading to the last
   * @throws InputProblem when there is no reading
   */
  public DailyDegreeDays daily(TemperatureReadings readings, ZoneId zone) {
    if (readings.size() == 0) {
      throw InputProblem.of(readings.place() + ": no reading at all")
          .expected("at least one reading")
          .because("there is nothing to add up")
          .mend("look why nothing was left of the log");
    }
    return new ReadingDays(this, readings, zone).daily();
  }

  @Override
  public String toString() {
    return model
        + ", "
        + rule.words()
        + ", gaps of up to "
        + Numbers.plain(longestGap.toSeconds() / 3600.0)
        + " h bridged, days counted when read for at least "
        + Numbers.plain(100 * leastShareOfDay)
        + " %";
  }
}
