package agro.sampling.injury;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import java.util.List;

/**
 * Days between the count and the harm that it is to forestall.
 *
 * @param days 0 or more
 * @param basis where the days come from, in words
 */
public record ThresholdLeadTime(double days, String basis) {

  /**
   * Checks the days.
   *
   * @throws InputProblem when they are below zero or not finite
   */
  public ThresholdLeadTime {
    if (!(days >= 0 && Double.isFinite(days))) {
      throw InputProblem.of("a lead time of " + days + " days")
          .expected("a finite number of 0 or more")
          .because("a treatment works after the count that calls for it, never before")
          .mend("count the days from the count to the day on which the treatment works");
    }
  }

  /**
   * A stated number of days, such as those until a treatment can be brought out and works.
   *
   * @param days 0 or more
   * @return the lead time
   * @throws InputProblem when the number is below zero or not finite
   */
  public static ThresholdLeadTime ofDays(double days) {
    return new ThresholdLeadTime(days, "stated");
  }

  /**
   * Days until a stage is reached at an even warmth.
   *
   * @param needed thermal time that is still needed, 0 or more
   * @param perDay degree-days of a day above the same threshold, above zero
   * @return the lead time
   * @throws InputProblem when the days give no warmth
   */
  public static ThresholdLeadTime untilStage(ThermalTime needed, ThermalTime perDay) {
    requireNeeded(needed);
    if (!(perDay.degreeDaysC() > 0)) {
      throw InputProblem.of(perDay + " each day")
          .expected("degree-days above 0")
          .because("the stage would never be reached")
          .mend("give the usual degree-days of a day at this time of the year");
    }
    return new ThresholdLeadTime(
        needed.degreeDaysC() / perDay.degreeDaysC(), needed + " at " + perDay + " each day");
  }

  /**
   * Days until a stage is reached, from the degree-days of the days ahead. The last day counts by
   * the share of its warmth that is needed.
   *
   * @param needed thermal time that is still needed, 0 or more
   * @param daysAhead degree-days of each day ahead, above the same threshold, from the day of the
   *     count
   * @return the lead time
   * @throws InputProblem when a day is below zero or the days do not reach the stage
   */
  public static ThresholdLeadTime untilStage(ThermalTime needed, List<ThermalTime> daysAhead) {
    requireNeeded(needed);
    double sum = 0;
    for (int i = 0; i < daysAhead.size(); i++) {
      double day = daysAhead.get(i).degreeDaysC();
      if (day < 0) {
        throw InputProblem.of("day " + (i + 1) + " with " + daysAhead.get(i))
            .expected("degree-days of 0 or more")
            .because("insects do not grow younger")
            .mend("take degree-days above the threshold of the insect");
      }
      if (sum + day >= needed.degreeDaysC()) {
        double share = day > 0 ? (needed.degreeDaysC() - sum) / day : 0;
        return new ThresholdLeadTime(i + share, needed + " over the days ahead");
      }
      sum += day;
    }
    throw InputProblem.of(
            Numbers.fixed(sum, 1) + " °C·d in the " + daysAhead.size() + " days ahead")
        .expected("days that add up to " + needed)
        .because("the day on which the stage is reached lies beyond them")
        .mend("add usual days of past years behind the forecast");
  }

  private static void requireNeeded(ThermalTime needed) {
    if (needed.degreeDaysC() < 0) {
      throw InputProblem.of(needed + " until the damaging stage")
          .expected("0 °C·d or more")
          .because("the stage has been reached already")
          .mend("take zero, and hold the count against the injury level itself");
    }
  }
}
