package agro.weather.gap;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;

/**
 * Filling of gaps between readings: short ones on a straight line, longer ones after the shape of
 * the day, which is the mean course of the same hours of neighbouring days, shifted to the readings
 * before and after. The error of each filled reading, and of the extremes of its day, comes from
 * filling the same hours of other days in the same way. Immutable.
 */
public final class ReadingGapFilling {

  /** Longest gap for a straight line (common practice, no source). */
  public static final Duration USUAL_LONGEST_LINE = Duration.ofHours(3);

  /** Longest gap for the shape of the day (common practice, no source). */
  public static final Duration USUAL_LONGEST_SHAPE = Duration.ofDays(1);

  /** Share of its readings that a day must have of its own (common practice, no source). */
  public static final double USUAL_LEAST_SHARE = 0.5;

  private final Duration longestLine;
  private final Duration longestShape;
  private final double leastShare;
  private final Optional<LocalDate> asOf;

  private ReadingGapFilling(
      Duration longestLine, Duration longestShape, double leastShare, Optional<LocalDate> asOf) {
    this.longestLine = longestLine;
    this.longestShape = longestShape;
    this.leastShare = leastShare;
    this.asOf = asOf;
  }

  /**
   * The usual limits: straight lines up to three hours, the shape of the day up to one day, and
   * half of a day's readings its own.
   *
   * @return the settings
   */
  public static ReadingGapFilling withDefaults() {
    return new ReadingGapFilling(
        USUAL_LONGEST_LINE, USUAL_LONGEST_SHAPE, USUAL_LEAST_SHARE, Optional.empty());
  }

  /**
   * Longest gap for a straight line. The length of a gap is the step of the log times the readings
   * that are not there.
   *
   * @param longest a time, zero for no straight lines
   * @return these settings with that limit
   * @throws InputProblem when it is negative
   */
  public ReadingGapFilling interpolateUpTo(Duration longest) {
    return new ReadingGapFilling(requireTime(longest), longestShape, leastShare, asOf);
  }

  /**
   * Longest gap for the shape of the day.
   *
   * @param longest a time, zero for none
   * @return these settings with that limit
   * @throws InputProblem when it is negative
   */
  public ReadingGapFilling diurnalShapeUpTo(Duration longest) {
    return new ReadingGapFilling(longestLine, requireTime(longest), leastShare, asOf);
  }

  private static Duration requireTime(Duration longest) {
    if (longest.isNegative()) {
      throw InputProblem.of("a longest gap of " + longest)
          .expected("a time of zero or more")
          .because("a gap cannot be shorter than nothing")
          .mend("give for example Duration.ofHours(3), or Duration.ZERO to fill none");
    }
    return longest;
  }

  /**
   * Share of its readings that a day must have of its own; a day with fewer stays missing, however
   * much could be filled.
   *
   * @param share above 0 to 1; with 1 no day with a filled reading counts
   * @return these settings with that share
   * @throws InputProblem outside this range
   */
  public ReadingGapFilling leastShareObserved(double share) {
    if (!(share > 0 && share <= 1)) {
      throw InputProblem.of("a share of own readings of " + Numbers.plain(share))
          .expected("a share above 0 and at most 1")
          .because("a day without any reading of its own was not measured")
          .mend("give for example 0.5");
    }
    return new ReadingGapFilling(longestLine, longestShape, share, asOf);
  }

  /**
   * Fills as it could have been done at the end of a day: no later reading is used, and the result
   * ends with that day.
   *
   * @param day last day whose readings may be used
   * @return these settings with that day
   */
  public ReadingGapFilling asOf(LocalDate day) {
    return new ReadingGapFilling(longestLine, longestShape, leastShare, Optional.of(day));
  }

  /**
   * Fills a log.
   *
   * @param readings readings at equal distances or nearly so
   * @return the filled readings, each gap with what was done, and the days
   * @throws InputProblem when there are fewer than two readings
   */
  public FilledReadings fill(TemperatureReadings readings) {
    var known = asOf.map(day -> upTo(readings, day)).orElse(readings);
    if (known.size() < 2) {
      throw InputProblem.of(readings.place() + ": " + known.size() + " readings")
          .expected("at least two readings")
          .because("the step of a log cannot be told from fewer")
          .mend("give a longer log, or ask as of a later day");
    }
    return new ReadingGapWork(this, known).filled();
  }

  private static TemperatureReadings upTo(TemperatureReadings readings, LocalDate day) {
    int count = 0;
    while (count < readings.size() && !readings.day(count).isAfter(day)) {
      count++;
    }
    return TemperatureReadings.of(
        readings.place(),
        readings.medium(),
        readings.dayOffset(),
        Arrays.copyOf(readings.epochSeconds(), count),
        Arrays.copyOf(readings.celsius(), count));
  }

  /** The method for a gap of some length. */
  ReadingGapMethod method(Duration length) {
    if (length.compareTo(longestLine) <= 0) {
      return ReadingGapMethod.STRAIGHT_LINE;
    }
    return length.compareTo(longestShape) <= 0
        ? ReadingGapMethod.DIURNAL_SHAPE
        : ReadingGapMethod.LEFT_OPEN;
  }

  double leastShare() {
    return leastShare;
  }
}
