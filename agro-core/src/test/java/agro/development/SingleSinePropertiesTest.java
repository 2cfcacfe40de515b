package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.units.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold on every day, whatever its temperatures. */
class SingleSinePropertiesTest {

  private static final double ROUNDING = 1e-11;

  private static DegreeDayModel model(double lower, double width, UpperCutoff cutoff) {
    return DegreeDayModel.singleSine(
        Thresholds.between(new Temperature(lower), new Temperature(lower + width)), cutoff);
  }

  @Property(seed = "20011")
  void warmerDaysHaveMoreDegreeDays(
      @ForAll @DoubleRange(min = -30, max = 45) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = 0, max = 10) double minWarmer,
      @ForAll @DoubleRange(min = 0, max = 10) double maxWarmer,
      @ForAll @DoubleRange(min = 0, max = 15) double lower) {
    double max = min + range;
    double warmerMax = max + maxWarmer;
    double warmerMin = Math.min(min + minWarmer, warmerMax);
    for (var cutoff : new UpperCutoff[] {UpperCutoff.NONE, UpperCutoff.HORIZONTAL}) {
      var model = model(lower, 20, cutoff);
      assertThat(model.degreeDaysC(warmerMin, warmerMax))
          .as("%s", cutoff)
          .isGreaterThanOrEqualTo(model.degreeDaysC(min, max) - ROUNDING);
    }
  }

  @Property(seed = "20011")
  void cutoffsAreOrdered(
      @ForAll @DoubleRange(min = -30, max = 60) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = -5, max = 15) double lower,
      @ForAll @DoubleRange(min = 0.1, max = 30) double width) {
    double max = min + range;
    double none = model(lower, width, UpperCutoff.NONE).degreeDaysC(min, max);
    double horizontal = model(lower, width, UpperCutoff.HORIZONTAL).degreeDaysC(min, max);
    double intermediate = model(lower, width, UpperCutoff.INTERMEDIATE).degreeDaysC(min, max);
    double vertical = model(lower, width, UpperCutoff.VERTICAL).degreeDaysC(min, max);
    assertThat(none).isGreaterThanOrEqualTo(horizontal - ROUNDING);
    assertThat(horizontal).isGreaterThanOrEqualTo(intermediate - ROUNDING);
    assertThat(horizontal).isGreaterThanOrEqualTo(vertical - ROUNDING);
    assertThat(Math.min(intermediate, vertical)).isNotNegative();
    assertThat(horizontal).isLessThanOrEqualTo(width + ROUNDING);
    // Before the floor, the intermediate day loses to the horizontal one what that loses to none.
    double unfloored = 2 * horizontal - none;
    assertThat(intermediate).isCloseTo(Math.max(0, unfloored), within(ROUNDING));
  }

  @Property(seed = "20011")
  void cutoffsDoNothingUpToTheUpperThreshold(
      @ForAll @DoubleRange(min = -30, max = 30) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = -5, max = 15) double lower) {
    double max = min + range;
    var thresholds =
        Thresholds.between(new Temperature(lower), new Temperature(Math.max(lower + 1, max)));
    double none = DegreeDayModel.singleSine(thresholds, UpperCutoff.NONE).degreeDaysC(min, max);
    for (var cutoff : UpperCutoff.values()) {
      assertThat(DegreeDayModel.singleSine(thresholds, cutoff).degreeDaysC(min, max))
          .as("%s", cutoff)
          .isEqualTo(none);
    }
  }

  /** For a symmetric curve the area above a level less the area below it is mean less level. */
  @Property(seed = "20011")
  void areaAboveLessAreaBelowIsTheMeanOverTheLevel(
      @ForAll @DoubleRange(min = -30, max = 45) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = -40, max = 80) double level) {
    double max = min + range;
    var sine = DegreeDayMethod.SINGLE_SINE;
    double above = sine.areaAbove(min, max, level);
    double below = sine.areaAbove(-max, -min, -level);
    assertThat(above - below).isCloseTo(0.5 * (min + max) - level, within(ROUNDING));
  }

  @Property(seed = "20011")
  void shareAboveIsTheSlopeOfTheArea(
      @ForAll @DoubleRange(min = -30, max = 45) double min,
      @ForAll @DoubleRange(min = 1, max = 30) double range,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double position) {
    double max = min + range;
    double level = min + position * range;
    double step = 1e-4;
    var sine = DegreeDayMethod.SINGLE_SINE;
    double slope =
        (sine.areaAbove(min, max, level - step) - sine.areaAbove(min, max, level + step))
            / (2 * step);
    assertThat(sine.shareAbove(min, max, level)).isCloseTo(slope, within(1e-5));
  }

  @Property(seed = "20011")
  void thresholdsAHairInsideTheExtremesGiveNumbers(
      @ForAll @DoubleRange(min = -30, max = 45) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range) {
    double max = min + range;
    var sine = DegreeDayMethod.SINGLE_SINE;
    for (double level : new double[] {Math.nextDown(max), Math.nextUp(min)}) {
      assertThat(sine.areaAbove(min, max, level)).isNotNaN().isBetween(0.0, range + ROUNDING);
      assertThat(sine.shareAbove(min, max, level)).isNotNaN().isBetween(0.0, 1.0);
    }
  }

  /** Midpoint rule on each side of each crossing, so that no step of the rate lies in a strip. */
  @Property(tries = 300, seed = "20011")
  void agreesWithIntegrationOfTheRate(
      @ForAll @DoubleRange(min = -20, max = 40) double min,
      @ForAll @DoubleRange(min = 0.5, max = 25) double range,
      @ForAll @DoubleRange(min = 0, max = 15) double lower,
      @ForAll @DoubleRange(min = 1, max = 25) double width) {
    double max = min + range;
    for (var cutoff : UpperCutoff.values()) {
      double integral =
          RateIntegral.overDay(
              min,
              max,
              x -> RateIntegral.rate(x, lower, lower + width, cutoff),
              lower,
              lower + width);
      assertThat(model(lower, width, cutoff).degreeDaysC(min, max))
          .as("%s", cutoff)
          .isCloseTo(Math.max(0, integral), within(1e-10));
    }
  }
}
