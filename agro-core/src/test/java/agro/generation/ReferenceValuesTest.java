package agro.generation;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import java.util.Arrays;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** Formulas against base R and a published flight; the tables name call, version and source. */
class ReferenceValuesTest {

  private static final double MEDIAN = 443.9;
  private static final double SCALE = 60;

  @Test
  void negativeBinomialAgreesWithBaseR() {
    var lines = ReferenceTable.read(ReferenceValuesTest.class, "negative-binomial.csv");
    assertThat(lines).hasSizeGreaterThan(60);
    for (var line : lines) {
      var count = whole(line, "count");
      var mean = number(line, "mean");
      var size = number(line, "size");
      assertThat(NegativeBinomial.logProbability(count, mean, size))
          .as("log chance, %s", line)
          .isCloseTo(number(line, "logProbability"), relative(line.getField("logProbability")));
      assertThat(NegativeBinomial.chanceOfAtLeast(count, mean, size))
          .as("chance of at least, %s", line)
          .isCloseTo(number(line, "chanceOfAtLeast"), withinPercentage(1e-7));
      assertThat(NegativeBinomial.meanOfAtLeast(count, mean, size))
          .as("mean of at least, %s", line)
          .isCloseTo(number(line, "meanOfAtLeast"), withinPercentage(1e-7));
    }
  }

  private static org.assertj.core.data.Offset<Double> relative(String value) {
    return within(1e-9 * Math.max(1, Math.abs(Double.parseDouble(value))));
  }

  @Test
  void flightCurvesAgreeWithBaseR() {
    for (var line : ReferenceTable.read(ReferenceValuesTest.class, "flight-curves.csv")) {
      var curve = FlightCurve.valueOf(line.getField("curve"));
      var z = number(line, "z");
      assertThat(curve.cumulative(z)).isCloseTo(number(line, "cumulative"), within(1e-10));
      assertThat(curve.density(z)).isCloseTo(number(line, "density"), within(1e-10));
    }
    for (var line : ReferenceTable.read(ReferenceValuesTest.class, "flight-curve-quantiles.csv")) {
      var curve = FlightCurve.valueOf(line.getField("curve"));
      assertThat(curve.quantile(number(line, "share")))
          .isCloseTo(number(line, "quantile"), within(1e-10));
    }
  }

  @Test
  void normalTableErrsByLessThanItSays() {
    for (var z = -9.5; z <= 9.5; z += 0.00037) {
      var exact = 0.5 * Erf.erfc(-z / Math.sqrt(2));
      assertThat(NormalTable.cumulative(z)).isCloseTo(exact, within(1e-10));
    }
    assertThat(NormalTable.cumulative(Double.NaN)).isNaN();
    assertThat(NormalTable.cumulative(Double.NEGATIVE_INFINITY)).isZero();
    assertThat(NormalTable.cumulative(Double.POSITIVE_INFINITY)).isOne();
  }

  @Test
  void halfWidthsOverSeasonsAgreeWithBaseR() {
    for (var line : ReferenceTable.read(ReferenceValuesTest.class, "interval-half-widths.csv")) {
      var seasons =
          Arrays.stream(line.getField("seasons").split(" ")).map(Double::valueOf).toList();
      var estimate = new IntervalEstimate(seasons);
      var level = number(line, "level");
      assertThat(estimate.mean().degreeDaysC())
          .isCloseTo(number(line, "mean"), withinPercentage(1e-7));
      assertThat(estimate.standardDeviationC())
          .isCloseTo(number(line, "deviation"), withinPercentage(1e-7));
      assertThat(estimate.halfWidthOfMeanC(level))
          .isCloseTo(number(line, "halfOfMean"), withinPercentage(1e-7));
      assertThat(estimate.halfWidthOfNewSeasonC(level))
          .isCloseTo(number(line, "halfOfNewSeason"), withinPercentage(1e-7));
    }
  }

  /** Heit, Sione & Cortese 2015 give the median; see the header of the table. */
  @Test
  void sharesOfTheFirstFlightOfGrapevineMoth() {
    var logistic = new FlightShape(FlightCurve.LOGISTIC, SCALE, 0);
    var normal = new FlightShape(FlightCurve.NORMAL, SCALE * Math.PI / Math.sqrt(3), 0);
    for (var line : ReferenceTable.read(ReferenceValuesTest.class, "lobesia-botrana-shares.csv")) {
      var distance = number(line, "degreeDaysC") - MEDIAN;
      assertThat(shareOver(logistic, distance)).isCloseTo(number(line, "logistic"), within(1e-6));
      assertThat(shareOver(normal, distance)).isCloseTo(number(line, "normal"), within(1e-6));
    }
    for (var line :
        ReferenceTable.read(ReferenceValuesTest.class, "lobesia-botrana-quantiles.csv")) {
      var share = number(line, "share");
      assertThat(MEDIAN + logistic.offsetDegreeDaysC(1, share))
          .isCloseTo(number(line, "logistic"), within(1e-4));
      assertThat(MEDIAN + normal.offsetDegreeDaysC(1, share))
          .isCloseTo(number(line, "normal"), within(1e-4));
    }
  }

  private static double shareOver(FlightShape shape, double distance) {
    return shape.curve().cumulative(distance / shape.scaleDegreeDaysC(1));
  }
}
