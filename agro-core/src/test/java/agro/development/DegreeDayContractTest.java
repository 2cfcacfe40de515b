package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.weather.curve.CurveDay;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What every method must do on every day, whatever its temperatures. */
class DegreeDayContractTest {

  private static final double ROUNDING = 1e-10;

  @Provide
  Arbitrary<CurveDay> days() {
    return Combinators.combine(
            Arbitraries.doubles().between(-30, 45),
            Arbitraries.doubles().between(0, 30),
            Arbitraries.doubles().between(-15, 15),
            Arbitraries.doubles().between(0, 24))
        .as(
            (min, range, change, length) ->
                CurveDay.of(min, min + range)
                    .withNextMinimum(Math.min(min + range, min + change))
                    .withDayLength(length));
  }

  @Property(seed = "1956")
  void warmerDaysHaveMoreDegreeDays(
      @ForAll WayOfCounting way,
      @ForAll("days") CurveDay day,
      @ForAll @DoubleRange(min = 0, max = 10) double minWarmer,
      @ForAll @DoubleRange(min = 0, max = 10) double maxWarmer,
      @ForAll @DoubleRange(min = 0, max = 10) double nextWarmer,
      @ForAll @DoubleRange(min = 0, max = 15) double lower) {
    double max = day.maxCelsius() + maxWarmer;
    var warmer =
        CurveDay.of(Math.min(max, day.minCelsius() + minWarmer), max)
            .withNextMinimum(Math.min(max, day.nextMinCelsius() + nextWarmer))
            .withDayLength(day.dayLengthHours());
    for (var cutoff : new UpperCutoff[] {UpperCutoff.NONE, UpperCutoff.HORIZONTAL}) {
      assertThat(way.count(warmer, lower, lower + 20, cutoff))
          .as("%s", cutoff)
          .isGreaterThanOrEqualTo(way.count(day, lower, lower + 20, cutoff) - ROUNDING);
    }
  }

  @Property(seed = "1956")
  void cutoffsAreOrdered(
      @ForAll WayOfCounting way,
      @ForAll("days") CurveDay day,
      @ForAll @DoubleRange(min = -5, max = 15) double lower,
      @ForAll @DoubleRange(min = 0.1, max = 30) double width) {
    double none = way.count(day, lower, lower + width, UpperCutoff.NONE);
    double horizontal = way.count(day, lower, lower + width, UpperCutoff.HORIZONTAL);
    assertThat(none).isGreaterThanOrEqualTo(horizontal - ROUNDING);
    assertThat(horizontal).isBetween(0.0, width + ROUNDING);
    if (way.allows(UpperCutoff.INTERMEDIATE)) {
      double intermediate = way.count(day, lower, lower + width, UpperCutoff.INTERMEDIATE);
      double vertical = way.count(day, lower, lower + width, UpperCutoff.VERTICAL);
      assertThat(intermediate).isBetween(0.0, horizontal + ROUNDING);
      assertThat(vertical).isBetween(0.0, horizontal + ROUNDING);
      // Before the floor, the intermediate day loses to the horizontal one what that loses to none.
      double unfloored = 2 * horizontal - none;
      assertThat(intermediate).isCloseTo(Math.max(0, unfloored), within(ROUNDING));
    }
  }

  @Property(seed = "1956")
  void cutoffsDoNothingUpToTheUpperThreshold(
      @ForAll WayOfCounting way,
      @ForAll("days") CurveDay day,
      @ForAll @DoubleRange(min = -5, max = 15) double lower) {
    double upper = Math.max(lower + 1, day.maxCelsius());
    double none = way.count(day, lower, upper, UpperCutoff.NONE);
    for (var cutoff : UpperCutoff.values()) {
      if (way.allows(cutoff)) {
        assertThat(way.count(day, lower, upper, cutoff)).as("%s", cutoff).isEqualTo(none);
      }
    }
  }

  @Property(seed = "1956")
  void coldDaysCountNothing(
      @ForAll WayOfCounting way,
      @ForAll("days") CurveDay day,
      @ForAll @DoubleRange(min = 0, max = 5) double higher) {
    double lower = day.maxCelsius() + higher;
    for (var cutoff : UpperCutoff.values()) {
      if (way.allows(cutoff)) {
        assertThat(way.count(day, lower, lower + 20, cutoff)).as("%s", cutoff).isZero();
      }
    }
  }

  /** A day in °F between thresholds in °F counts 9/5 of the same day in °C: no 32 in the sum. */
  @Property(seed = "1956")
  void sumsScaleWithTheDegreeAndDoNotShift(
      @ForAll WayOfCounting way,
      @ForAll("days") CurveDay day,
      @ForAll @DoubleRange(min = -5, max = 15) double lower,
      @ForAll @DoubleRange(min = 1, max = 30) double width) {
    var fahrenheit =
        new CurveDay(
            1.8 * day.minCelsius() + 32,
            1.8 * day.maxCelsius() + 32,
            1.8 * day.nextMinCelsius() + 32,
            day.dayLengthHours());
    double upper = lower + width;
    for (var cutoff : UpperCutoff.values()) {
      if (way.allows(cutoff)) {
        // The vertical rule jumps where a whole day lies on the threshold: rounding decides there.
        boolean jump =
            cutoff == UpperCutoff.VERTICAL
                && Math.abs(day.maxCelsius() - upper) < 1e-9 * (1 + Math.abs(upper));
        if (!jump) {
          assertThat(way.count(fahrenheit, 1.8 * lower + 32, 1.8 * upper + 32, cutoff))
              .as("%s", cutoff)
              .isCloseTo(1.8 * way.count(day, lower, upper, cutoff), within(tolerance(cutoff)));
        }
      }
    }
  }

  /** A share of the day found through a square root of rounding is good to its root. */
  private static double tolerance(UpperCutoff cutoff) {
    return cutoff == UpperCutoff.VERTICAL ? 1e-6 : 1e-9;
  }

  @Property(seed = "1956")
  void constantDaysCountTheDistanceToTheThreshold(
      @ForAll WayOfCounting way,
      @ForAll @DoubleRange(min = -30, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0, max = 24) double length,
      @ForAll @DoubleRange(min = -5, max = 15) double lower,
      @ForAll @DoubleRange(min = 1, max = 30) double width) {
    var day = CurveDay.of(celsius, celsius).withDayLength(length);
    for (var cutoff : UpperCutoff.values()) {
      if (way.allows(cutoff)) {
        assertThat(way.count(day, lower, lower + width, cutoff))
            .as("%s", cutoff)
            .isCloseTo(Math.max(0, cutoff.rate(celsius, lower, lower + width)), within(ROUNDING));
      }
    }
  }

  /** For a symmetric curve the area above a level less the area below it is mean less level. */
  @Property(seed = "1956")
  void areaAboveLessAreaBelowIsTheMeanOverTheLevel(
      @ForAll @DoubleRange(min = -30, max = 45) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = -40, max = 80) double level) {
    double max = min + range;
    for (var method :
        new DegreeDayMethod[] {
          DegreeDayMethod.SINGLE_SINE,
          DegreeDayMethod.SINGLE_TRIANGLE,
          DegreeDayMethod.AVERAGE_MEAN_LIMITED,
          DegreeDayMethod.AVERAGE_EXTREMES_LIMITED
        }) {
      double above = method.areaAbove(min, max, level);
      double below = method.areaAbove(-max, -min, -level);
      assertThat(above - below)
          .as("%s", method)
          .isCloseTo(0.5 * (min + max) - level, within(1e-11));
    }
  }

  @Property(seed = "1956")
  void doubleCurvesOfADayThatEndsAtItsMinimumAreSingle(
      @ForAll("days") CurveDay day, @ForAll @DoubleRange(min = -5, max = 30) double level) {
    double min = day.minCelsius();
    double max = day.maxCelsius();
    var sine = DegreeDayMethod.SINGLE_SINE;
    var triangle = DegreeDayMethod.SINGLE_TRIANGLE;
    assertThat(DegreeDayMethod.DOUBLE_SINE.areaAbove(min, max, level))
        .isEqualTo(sine.areaAbove(min, max, level));
    assertThat(DegreeDayMethod.DOUBLE_TRIANGLE.areaAbove(min, max, level))
        .isEqualTo(triangle.areaAbove(min, max, level));
  }
}
