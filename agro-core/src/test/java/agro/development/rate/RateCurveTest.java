package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RateCurveTest {

  private static final double[][] USUAL = {
    {-0.02, 0.0033},
    {7.5e-5, 11.4, 33.6},
    {1.2e-4, 9.5, 32.2, 4.4},
    {0.28749694, 0.21090994, 33.519416, 4.7378805},
    {0.113, 179, 0.234, 33.3, 1.43},
    {0.21096513, 33.519417, 4.7391212},
    {0.19262108, 33.82537, 5.1895007, -0.0073043977},
    {0.0793, 23465, 103021, 303.55},
    {0.0979, 6777, -36011, 132605, 292.5, 304.9},
    {0.05, 15000, -60000, 70000, 286, 308},
    {0.0826, 27.45, 6.74},
    {0.12, 5.35, -0.2365, 27.7},
    {0.1517, 9.96, 15.5, 33.5, 1.21},
    {-6.958, 9.96, 32.124, 1.459, 0.1915},
    {1, 8, 30, 42, 1.2},
    {1, 0, 24, 35}
  };

  private static RateCurve usual(RateModel model) {
    return model.curve(USUAL[List.of(RateModel.values()).indexOf(model)]);
  }

  @Test
  void givesThePublishedCurvesAgain() {
    var lines = ReferenceTable.read(RateCurveTest.class, "published-curves.csv");
    assertThat(lines).hasSizeGreaterThan(50);
    for (var line : lines) {
      var model = RateModel.valueOf(line.getField("model"));
      var constants =
          new ArrheniusConstants(
              ReferenceTable.number(line, "reference_kelvin"),
              ReferenceTable.number(line, "gas_constant"));
      double[] p = Rearings.numbers(line.getField("parameters"));
      var curve =
          model == RateModel.LINEAR
              ? RateCurve.linear(p[0], p[1])
              : RateCurve.of(model, constants, p);
      double celsius = ReferenceTable.number(line, "celsius");
      var tolerance = within(ReferenceTable.number(line, "tolerance"));
      if (line.getField("days").isEmpty()) {
        assertThat(curve.rate(celsius))
            .as(line.toString())
            .isCloseTo(ReferenceTable.number(line, "rate"), tolerance);
      } else {
        assertThat(curve.days(celsius))
            .as(line.toString())
            .isCloseTo(ReferenceTable.number(line, "days"), tolerance);
      }
    }
  }

  @Test
  void derivesThePointsOfEachCurve() {
    for (var line : ReferenceTable.read(RateCurveTest.class, "curve-points.csv")) {
      var model = RateModel.valueOf(line.getField("model"));
      var constants =
          model == RateModel.SCHOOLFIELD_4
              ? ArrheniusConstants.AT_298_KELVIN.withGasConstant(
                  ArrheniusConstants.EXACT_GAS_CONSTANT)
              : ArrheniusConstants.AT_25_CELSIUS;
      var curve = RateCurve.of(model, constants, Rearings.numbers(line.getField("parameters")));
      assertThat(curve.derived(DerivedPoint.valueOf(line.getField("point"))))
          .as(line.toString())
          .hasValueCloseTo(
              ReferenceTable.number(line, "value"),
              within(ReferenceTable.number(line, "tolerance")));
    }
  }

  /** What must hold for every model: never negative, never NaN, fastest at the optimum. */
  @ParameterizedTest
  @EnumSource(RateModel.class)
  void isZeroBeyondThresholdsAndFastestAtTheOptimum(RateModel model) {
    var curve = usual(model);
    var lower = curve.derived(DerivedPoint.LOWER_THRESHOLD);
    var upper = curve.derived(DerivedPoint.UPPER_THRESHOLD);
    double greatest = curve.derived(DerivedPoint.GREATEST_RATE).orElse(Double.POSITIVE_INFINITY);
    for (double celsius = -30; celsius < 80; celsius += 0.17) {
      double rate = curve.rate(celsius);
      assertThat(rate).isBetween(0.0, greatest * (1 + 1e-9));
      if (lower.isPresent() && celsius <= lower.getAsDouble()) {
        assertThat(rate).isZero();
      }
      if (upper.isPresent() && celsius >= upper.getAsDouble()) {
        assertThat(rate).isZero();
      }
    }
    lower.ifPresent(at -> assertThat(curve.rate(at + 0.01)).isPositive());
    upper.ifPresent(at -> assertThat(curve.rate(at - 0.01)).isPositive());
    assertThat(curve.rate(Double.NaN)).isNaN();
    assertThat(curve.rate(Temperature.ofCelsius(25))).isEqualTo(curve.rate(25));
  }

  /** The derivatives of the formulas, against differences of the formulas themselves. */
  @ParameterizedTest
  @EnumSource(RateModel.class)
  void derivativesAgreeWithDifferences(RateModel model) {
    var constants = ArrheniusConstants.AT_25_CELSIUS;
    var equation = model.equation();
    double[] q = equation.toSearch(USUAL[List.of(RateModel.values()).indexOf(model)], constants);
    double[] gradient = new double[q.length];
    for (double celsius : new double[] {13.3, 20.2, 26.1, 29.9, 31.7}) {
      equation.gradient(celsius, q, constants, gradient);
      for (int j = 0; j < q.length; j++) {
        double h = 1e-5 * Math.max(model == RateModel.WANG_ENGEL ? 1 : 1e-3, Math.abs(q[j]));
        double[] moved = q.clone();
        moved[j] = q[j] + h;
        double up = equation.fitted(celsius, moved, constants);
        moved[j] = q[j] - h;
        double slope = (up - equation.fitted(celsius, moved, constants)) / (2 * h);
        assertThat(gradient[j])
            .as(model + " parameter " + j + " at " + celsius)
            .isCloseTo(slope, within(1e-5 * Math.abs(slope) + 1e-9));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(RateModel.class)
  void coordinatesOfTheSearchLeadBack(RateModel model) {
    var constants = ArrheniusConstants.AT_298_KELVIN;
    double[] p = USUAL[List.of(RateModel.values()).indexOf(model)];
    double[] q = model.equation().toSearch(p, constants);
    double[] back = model.equation().toParameters(q, constants);
    for (int j = 0; j < p.length; j++) {
      assertThat(back[j]).isCloseTo(p[j], within(1e-9 * Math.abs(p[j])));
    }
    var curve = RateCurve.of(model, constants, p);
    assertThat(model.equation().fitted(24, q, constants))
        .isCloseTo(curve.rate(24), within(1e-9 * curve.rate(24)));
  }

  @ParameterizedTest
  @EnumSource(RateModel.class)
  void everyModelSaysWhatItIs(RateModel model) {
    assertThat(model.sources()).isNotEmpty();
    assertThat(model.formula()).contains("r =".substring(0, 1));
    assertThat(model.meantFor()).isNotBlank();
    assertThat(usual(model).presentation().toText())
        .contains(model.parameters().get(0).meaning())
        .contains("lower threshold")
        .contains("Sources");
  }

  /** Lactin-1 with five digits is another curve: 0.0674 in place of 0.0739 at 25 °C. */
  @Test
  void tellsHowManyDigitsACurveNeeds() {
    var curve = RateModel.LACTIN_1.curve(0.21096513, 33.519417, 4.7391212);
    var rounded = RateModel.LACTIN_1.curve(0.21097, 33.519, 4.7391);
    assertThat(rounded.rate(25)).isCloseTo(0.06740, within(5e-5));
    assertThat(curve.digitsNeeded(12, 32)).isGreaterThanOrEqualTo(7);
    assertThat(usual(RateModel.TAYLOR).digitsNeeded(12, 32)).isLessThan(6);
  }

  /** The product with T is negative below 0 °C, so a threshold below it means nothing. */
  @Test
  void theFactorTBoundsBriereBelow() {
    var curve = RateModel.BRIERE_1.curve(1e-4, -5, 34);
    assertThat(curve.derived(DerivedPoint.LOWER_THRESHOLD)).hasValue(0);
    assertThat(curve.rate(-3)).isZero();
    assertThat(curve.rate(3)).isPositive();
  }

  @Test
  void aModelWithoutThresholdHasNone() {
    assertThat(usual(RateModel.TAYLOR).derived(DerivedPoint.LOWER_THRESHOLD)).isEmpty();
    assertThat(usual(RateModel.LOGAN_6).derived(DerivedPoint.LOWER_THRESHOLD)).isEmpty();
    assertThat(usual(RateModel.SCHOOLFIELD_4).derived(DerivedPoint.UPPER_THRESHOLD)).isEmpty();
    assertThat(usual(RateModel.BRIERE_1).derived(DerivedPoint.THERMAL_CONSTANT)).isEmpty();
    assertThat(RateCurve.linear(8, 416.7).derived(DerivedPoint.THERMAL_CONSTANT))
        .hasValueCloseTo(416.7, within(1e-9));
  }

  @Test
  void refusesParametersThatAreNone() {
    assertThatThrownBy(() -> RateModel.BRIERE_1.curve(1e-4, 10))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Briere-1")
        .hasMessageContaining("T0: lower threshold (°C)");
    assertThatThrownBy(() -> RateModel.TAYLOR.curve(1, Double.NaN, 3))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("3 finite numbers");
    assertThatThrownBy(() -> RateCurve.linear(8, -4))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("thermal constant of -4");
    assertThatThrownBy(() -> RateModel.BRIERE_1.place("t0"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no parameter \"t0\"")
        .hasMessageContaining("write \"T0\"");
  }
}
