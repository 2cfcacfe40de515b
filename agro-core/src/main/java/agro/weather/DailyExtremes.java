package agro.weather;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * The lowest and the highest temperature of one day.
 *
 * @param date the day
 * @param minCelsius lowest temperature in °C, finite
 * @param maxCelsius highest temperature in °C, finite and not below the lowest
 */
public record DailyExtremes(LocalDate date, double minCelsius, double maxCelsius) {

  /**
   * Checks the order of the extremes.
   *
   * @throws InputProblem when a value is not finite or the minimum is above the maximum
   */
  public DailyExtremes {
    Objects.requireNonNull(date, "date");
    if (!(Double.isFinite(minCelsius) && Double.isFinite(maxCelsius))) {
      throw InputProblem.of("extremes of " + date + ": " + minCelsius + " and " + maxCelsius)
          .expected("two finite temperatures in °C")
          .because("a day with one extreme unknown has no degree-days")
          .mend("leave the day out; a day that is not there counts as missing");
    }
    if (minCelsius > maxCelsius) {
      throw InputProblem.of(
              "extremes of " + date + ": minimum " + minCelsius + " above maximum " + maxCelsius)
          .expected("a minimum that is not above the maximum")
          .because("a day cannot be colder at its warmest than at its coldest")
          .mend("look whether the two values are swapped or one is mistyped");
    }
  }

  /** Refuses days that are not in ascending order, or that come twice. */
  static void requireAscending(String place, List<DailyExtremes> days) {
    for (int i = 1; i < days.size(); i++) {
      var before = days.get(i - 1).date();
      var day = days.get(i).date();
      if (!day.isAfter(before)) {
        var twice = day.equals(before);
        throw InputProblem.of(
                twice ? place + ": " + day + " twice" : place + ": " + day + " after " + before)
            .expected("every day once, in ascending order")
            .because(twice ? "two values for a day cannot both hold" : "the order shows mix-ups")
            .mend(twice ? "take one of the two out" : "sort the days and look for a wrong date");
      }
    }
  }
}
