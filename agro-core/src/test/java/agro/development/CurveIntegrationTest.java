package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.weather.curve.CurveDay;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Every closed form against numerical integration of its definition. */
class CurveIntegrationTest {

  @Property(tries = 10_000, seed = "19760601", edgeCases = EdgeCasesMode.NONE)
  void everyClosedFormIsTheIntegralOfItsCurve(
      @ForAll @DoubleRange(min = -20, max = 40) double min,
      @ForAll @DoubleRange(min = 0.2, max = 28) double range,
      @ForAll @DoubleRange(min = -15, max = 15) double change,
      @ForAll @DoubleRange(min = 1, max = 23) double dayLength,
      @ForAll @DoubleRange(min = -5, max = 18) double lower,
      @ForAll @DoubleRange(min = 0.5, max = 28) double width) {
    double max = min + range;
    var day =
        CurveDay.of(min, max).withNextMinimum(Math.min(max, min + change)).withDayLength(dayLength);
    for (var way : WayOfCounting.values()) {
      if (way.method().curve().isEmpty()) {
        continue;
      }
      var integrals = CurveIntegral.degreeDays(way.method(), day, lower, lower + width);
      for (var cutoff : UpperCutoff.values()) {
        double closed = way.count(day, lower, lower + width, cutoff);
        // The description of a failure costs more than the check.
        if (!(Math.abs(closed - integrals.get(cutoff)) <= 1e-10)) {
          assertThat(closed)
              .as("%s, %s", way, cutoff)
              .isCloseTo(integrals.get(cutoff), within(1e-10));
        }
      }
    }
  }
}
