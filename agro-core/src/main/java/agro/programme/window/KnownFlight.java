package agro.programme.window;

import agro.generation.FlightCurve;
import agro.report.InputProblem;
import agro.units.ThermalTime;
import java.util.List;
import java.util.Objects;

/**
 * A flight whose course on the degree-day scale is given instead of forecast.
 *
 * @param curve its form
 * @param middle sum of degree-days since the first day at which half of it has flown
 * @param scale its scale, above 0
 * @param dailyDegreeDaysC degree-days of each day from the first one on, in °C·d, 0 or more
 */
public record KnownFlight(
    FlightCurve curve, ThermalTime middle, ThermalTime scale, List<Double> dailyDegreeDaysC) {

  /** Refuses a flight without spread, and days without sums. */
  public KnownFlight {
    Objects.requireNonNull(curve, "curve");
    dailyDegreeDaysC = List.copyOf(dailyDegreeDaysC);
    boolean sums =
        dailyDegreeDaysC.stream().allMatch(each -> each >= 0 && !Double.isInfinite(each));
    if (!(scale.degreeDaysC() > 0) || dailyDegreeDaysC.isEmpty() || !sums) {
      throw InputProblem.of(
              "a flight with a spread of "
                  + scale
                  + " over "
                  + dailyDegreeDaysC.size()
                  + " days of degree-days")
          .expected("a spread above 0, and at least one day, each with 0 °C·d or more")
          .because("the share flown is read from the sum of degree-days")
          .mend("give the degree-days of each day of the season");
    }
  }
}
