package agro.generation.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Scores beside values computed elsewhere, and beside the definition integrated here. */
class ScoresTest {

  private static double[] numbers(NamedCsvRecord line, String column) {
    return Arrays.stream(line.getField(column).split(" ", -1))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private static double number(NamedCsvRecord line, String column) {
    return ReferenceTable.number(line, column);
  }

  @Test
  void errorsAndSkill() {
    for (var line : ReferenceTable.read(getClass(), "point-scores.csv")) {
      var forecast = numbers(line, "forecast");
      var observed = numbers(line, "observed");
      var reference = new double[observed.length];
      Arrays.fill(reference, number(line, "reference"));
      var error = PointScores.meanAbsoluteError(forecast, observed);
      var plain = PointScores.meanAbsoluteError(reference, observed);
      assertThat(PointScores.bias(forecast, observed)).isEqualTo(number(line, "bias"));
      assertThat(error).isEqualTo(number(line, "mae"), within(1e-12));
      assertThat(PointScores.rootMeanSquaredError(forecast, observed))
          .isEqualTo(number(line, "rmse"), within(1e-12));
      assertThat(plain).isEqualTo(number(line, "referenceMae"), within(1e-12));
      assertThat(PointScores.skill(error, plain)).isEqualTo(number(line, "skill"), within(1e-12));
    }
    assertThat(PointScores.skill(0, 0)).isNaN();
    assertThat(PointScores.bias(new double[0], new double[0])).isNaN();
    assertThatThrownBy(() -> PointScores.bias(new double[1], new double[2]))
        .hasMessageContaining("1 forecasts for 2");
  }

  @Test
  void normalForecast() {
    for (var line : ReferenceTable.read(getClass(), "crps-normal.csv")) {
      var mean = number(line, "mean");
      var sd = number(line, "sd");
      var observed = number(line, "observed");
      var crps = RankedProbability.ofNormal(mean, sd, observed);
      assertThat(crps).as(line.toString()).isEqualTo(number(line, "closed"), within(1e-12));
      assertThat(crps).isEqualTo(number(line, "integral"), within(1e-7));
      assertThat(crps).isEqualTo(integrated(mean, sd, observed), within(1e-6));
    }
    assertThat(RankedProbability.ofNormal(120, 0, 126)).isEqualTo(6);
    assertThat(RankedProbability.ofNormal(120, 1e-9, 126)).isCloseTo(6, within(1e-8));
    assertThat(RankedProbability.ofNormal(120, 4, Double.NaN)).isNaN();
    assertThatThrownBy(() -> RankedProbability.ofNormal(0, -1, 0)).hasMessageContaining("-1");
  }

  /** The definition, by the midpoint rule. */
  private static double integrated(double mean, double sd, double observed) {
    var normal = new NormalDistribution(mean, sd);
    var low = Math.min(mean - 10 * sd, observed - 1);
    var high = Math.max(mean + 10 * sd, observed + 1);
    var sum = 0.0;
    for (var side : new double[][] {{low, observed, 0}, {observed, high, 1}}) {
      var step = (side[1] - side[0]) / 20_000;
      for (var i = 0; i < 20_000; i++) {
        var miss = normal.cumulativeProbability(side[0] + (i + 0.5) * step) - side[2];
        sum += miss * miss * step;
      }
    }
    return sum;
  }

  @Test
  void ensembles() {
    for (var line : ReferenceTable.read(getClass(), "crps-ensemble.csv")) {
      var members = numbers(line, "members");
      var observed = number(line, "observed");
      var crps = RankedProbability.ofEnsemble(members, observed);
      assertThat(crps).as(line.toString()).isEqualTo(number(line, "crps"), within(1e-12));
      assertThat(crps).isEqualTo(number(line, "integral"), within(1e-12));
      assertThat(RankedProbability.ofEnsembleFair(members, observed))
          .isEqualTo(number(line, "fair"), within(1e-12));
    }
    assertThatThrownBy(() -> RankedProbability.ofEnsemble(new double[0], 1))
        .hasMessageContaining("at least one");
  }

  @Test
  void datesThatAreNotReached() {
    for (var line : ReferenceTable.read(getClass(), "crps-cut.csv")) {
      assertThat(
              RankedProbability.upTo(
                  numbers(line, "outcomes"), number(line, "observed"), number(line, "horizon")))
          .as(line.toString())
          .isEqualTo(number(line, "crps"), within(1e-12));
    }
    assertThatThrownBy(() -> RankedProbability.upTo(new double[1], 1, Double.POSITIVE_INFINITY))
        .hasMessageContaining("finite end");
  }

  @Test
  void distributionsOfWhichAFewQuantilesWereKept() {
    for (var line : ReferenceTable.read(getClass(), "crps-quantiles.csv")) {
      assertThat(
              RankedProbability.ofQuantiles(
                  numbers(line, "probabilities"),
                  numbers(line, "quantiles"),
                  number(line, "chanceNot"),
                  number(line, "observed"),
                  number(line, "horizon")))
          .as(line.toString())
          .isEqualTo(number(line, "crps"), within(1e-9));
    }
    assertThatThrownBy(
            () ->
                RankedProbability.ofQuantiles(
                    new double[] {0.1, 0.9}, new double[] {5, 4}, 0, 1, 10))
        .hasMessageContaining("rise");
  }

  @Test
  void intervals() {
    var inside = 0;
    var sum = 0.0;
    var lines = ReferenceTable.read(getClass(), "interval-scores.csv");
    for (var line : lines) {
      var score =
          IntervalScore.of(
              number(line, "low"),
              number(line, "high"),
              number(line, "observed"),
              number(line, "probability"));
      assertThat(score).isEqualTo(number(line, "score"), within(1e-12));
      inside += ReferenceTable.whole(line, "inside");
      sum += score;
    }
    assertThat(sum / lines.size()).isEqualTo(10, within(1e-12));
    assertThat(new IntervalCoverage(inside, lines.size(), 0.8).share()).isEqualTo(0.8);
    assertThatThrownBy(() -> IntervalScore.of(2, 1, 0, 0.5)).hasMessageContaining("from 2.0 to 1");
  }

  @Test
  void exactBinomialIntervals() {
    for (var line : ReferenceTable.read(getClass(), "binomial-intervals.csv")) {
      var coverage =
          new IntervalCoverage(
              ReferenceTable.whole(line, "inside"), ReferenceTable.whole(line, "forecasts"), 0.9);
      var confidence = number(line, "confidence");
      assertThat(coverage.low(confidence)).isEqualTo(number(line, "low"), within(1e-9));
      assertThat(coverage.high(confidence)).isEqualTo(number(line, "high"), within(1e-9));
    }
    var none = new IntervalCoverage(0, 0, 0.9);
    assertThat(none.share()).isNaN();
    assertThat(none.low(0.95)).isZero();
    assertThat(none.high(0.95)).isEqualTo(1);
    assertThat(new IntervalCoverage(15, 19, 0.9).tooFewToJudge()).isTrue();
    assertThat(new IntervalCoverage(15, 20, 0.9).tooFewToJudge()).isFalse();
  }

  @Test
  void chances() {
    assertThat(BrierScore.of(0.5, true)).isEqualTo(0.25);
    assertThat(BrierScore.of(0.9, true)).isEqualTo(0.01, within(1e-15));
    assertThat(BrierScore.of(0.9, false)).isEqualTo(0.81, within(1e-15));
    assertThatThrownBy(() -> BrierScore.of(1.1, true)).hasMessageContaining("1.1");
  }
}
