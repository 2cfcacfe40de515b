package agro.weather.log;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Numbers;
import java.time.Duration;
import java.util.Objects;

/**
 * When a day of readings is complete enough for its extremes to count. It holds for days on which
 * nothing is filled; where gaps are filled first, {@code agro.weather.gap.ReadingGapFilling} asks
 * that every reading be there and a share of them be the day's own.
 *
 * @param leastShareOfReadings least share of the readings that the step of the log promises for a
 *     day, above 0 to 1
 * @param longestGap longest stretch of the day without a reading, above zero; the stretches from
 *     midnight to the first reading and from the last one to midnight count too
 */
public record CompletenessRule(double leastShareOfReadings, Duration longestGap) {

  /** Three readings in four, and no more than four hours without one. */
  public static final CompletenessRule USUAL = new CompletenessRule(0.75, Duration.ofHours(4));

  /**
   * Checks the limits.
   *
   * @throws InputProblem when a limit is out of range
   */
  public CompletenessRule {
    Objects.requireNonNull(longestGap, "longestGap");
    if (!(leastShareOfReadings > 0 && leastShareOfReadings <= 1)
        || longestGap.isNegative()
        || longestGap.isZero()) {
      throw InputProblem.of(
              "a completeness rule of share "
                  + leastShareOfReadings
                  + " and longest gap "
                  + longestGap)
          .expected("a share above 0 and at most 1, and a gap above zero")
          .because("a day without readings has no extremes")
          .mend("give for example 0.75 and four hours, or take CompletenessRule.USUAL");
    }
  }

  /**
   * Where the usual limits come from.
   *
   * @return the source
   */
  public Reference source() {
    return Reference.commonPractice(
        "A day counts with three quarters of its readings and no long gap, so that neither the"
            + " coldest nor the warmest hours can be missing unseen");
  }

  /** The rule in words, for reports. */
  String words() {
    return "at least "
        + Numbers.plain(leastShareOfReadings * 100)
        + " % of the readings and no gap above "
        + Durations.words(longestGap);
  }
}
