package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.Progress;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class BootstrapTest {

  private static BootstrapSample normal(int threads) {
    return Bootstrap.run(
        2000,
        2,
        42,
        Progress.silent(),
        () ->
            (random, values) -> {
              values[0] = random.nextGaussian();
              values[1] = 1;
              double luck = random.nextDouble();
              return luck < 0.1
                  ? RefitOutcome.FAILED
                  : luck < 0.3 ? RefitOutcome.ON_BOUNDARY : RefitOutcome.GOOD;
            },
        threads);
  }

  @Test
  void doesNotDependOnTheNumberOfThreads() {
    var one = normal(1);
    var many = normal(7);
    assertThat(many.sorted(0)).isEqualTo(one.sorted(0));
    for (var outcome : RefitOutcome.values()) {
      assertThat(many.count(outcome)).isEqualTo(one.count(outcome));
    }
    for (int i = 0; i < one.size(); i++) {
      assertThat(Double.compare(many.value(i, 0), one.value(i, 0))).isZero();
    }
  }

  @Test
  void failedRefitsAreLeftOutAndCounted() {
    var sample = normal(2);
    int failed = sample.count(RefitOutcome.FAILED);
    assertThat(failed).isBetween(150, 250);
    assertThat(sample.count(RefitOutcome.ON_BOUNDARY)).isBetween(330, 470);
    assertThat(sample.sorted(0)).hasSize(2000 - failed);
    assertThat(sample.missing(0)).isZero();
    assertThat(sample.standardDeviation(0)).isCloseTo(1, within(0.05));
  }

  /** Of standard normal values the limits are the deviates themselves. */
  @Test
  void limitsOfNormalValues() {
    var sample = normal(2);
    assertThat(sample.percentile(0, 0.9).high()).isCloseTo(1.645, within(0.12));
    assertThat(sample.studentT(0, 0.9, 5).high()).isCloseTo(2.015, within(0.15));
    assertThat(sample.studentT(0, 0.9, 1e6).high())
        .isCloseTo(sample.percentile(0, 0.9).high(), within(1e-3));
    var studentised = sample.studentised(0, 1, 0, 1, 0.9);
    assertThat(studentised.low()).isCloseTo(-sample.percentile(0, 0.9).high(), within(1e-12));
  }

  @Test
  void quantilesLieBetweenNeighbours() {
    double[] four = {1, 2, 4, 8};
    assertThat(BootstrapSample.quantile(four, 0.5)).isEqualTo(3);
    assertThat(BootstrapSample.quantile(four, 0.01)).isEqualTo(1);
    assertThat(BootstrapSample.quantile(four, 0.99)).isEqualTo(8);
    assertThat(BootstrapSample.quantile(new double[0], 0.5)).isNaN();
  }

  @Test
  void endsWhenCancelledOrBroken() {
    assertThatThrownBy(
            () ->
                Bootstrap.run(
                    1000,
                    1,
                    1,
                    (what, done, total) -> false,
                    () -> (random, values) -> RefitOutcome.GOOD))
        .isInstanceOf(CancellationException.class);
    assertThatThrownBy(
            () ->
                Bootstrap.run(
                    1000,
                    1,
                    1,
                    Progress.silent(),
                    () ->
                        (random, values) -> {
                          throw new IllegalStateException("broken refit");
                        }))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("broken refit");
    assertThatThrownBy(
            () ->
                Bootstrap.run(
                    0, 1, 1, Progress.silent(), () -> (random, values) -> RefitOutcome.GOOD))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Burnham and Anderson's formulas by hand: n 9, SSE 9e-4, three parameters of the curve. */
  @Test
  void informationCriteria() {
    var criteria = InformationCriteria.ofLeastSquares(9e-4, 9, 3);
    double aic = 9 * Math.log(1e-4) + 8;
    assertThat(criteria.aic()).isCloseTo(aic, within(1e-12));
    assertThat(criteria.aicCorrected()).hasValueCloseTo(aic + 40.0 / 4, within(1e-12));
    assertThat(criteria.bic()).isCloseTo(aic - 8 + 4 * Math.log(9), within(1e-12));
    var none = InformationCriteria.ofLeastSquares(1e-6, 7, 5);
    assertThat(none.aicCorrected()).isEmpty();
    var better = InformationCriteria.ofLeastSquares(9e-4 * Math.exp(-2 / 9.0), 9, 3);
    var weights = InformationCriteria.weights(List.of(criteria, none, better));
    assertThat(weights.get(1)).isEqualTo(OptionalDouble.empty());
    assertThat(weights.get(2)).hasValueCloseTo(Math.E / (1 + Math.E), within(1e-9));
    assertThat(weights.get(0)).hasValueCloseTo(1 / (1 + Math.E), within(1e-9));
  }

  @Test
  void normalTailsAgreeWithTheLibrary() {
    var library = new NormalDistribution();
    for (double z = -37; z < 37; z += 0.0917) {
      double expected =
          z > 0 ? library.cumulativeProbability(-z) : 1 - library.cumulativeProbability(z);
      assertThat(NormalTail.above(z)).isCloseTo(expected, within(1e-12 * expected + 1e-300));
    }
    assertThat(NormalTail.below(0)).isCloseTo(0.5, within(1e-15));
    assertThat(NormalTail.above(Double.NEGATIVE_INFINITY)).isEqualTo(1);
    assertThat(NormalTail.above(Double.NaN)).isNaN();
  }
}
