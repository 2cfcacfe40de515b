package agro.weather;

import agro.report.InputProblem;
import java.time.LocalDate;
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
}
