package agro.stats.multiple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.report.InputProblem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Comparisons where each mean has an error of its own, and input that cannot be compared. */
class UnequalReplicationTest {

  private static final List<String> LABELS = List.of("none", "low", "high", "other");
  private static final double[] MEANS = {10, 12.5, 17, 9};
  private static final int[] PLOTS = {8, 4, 3, 6};

  private static final ComparedMeans UNEQUAL =
      ComparedMeans.ofReplicates(LABELS, MEANS, PLOTS, 6.5, 17);

  @Test
  void tukeyKramerTakesTheErrorOfThePair() {
    var result = PairwiseComparison.withDefaults().compare(UNEQUAL);
    var pair = result.pair("high", "low");
    double error = Math.sqrt(6.5 * (1 / 3.0 + 1 / 4.0));
    assertThat(pair.standardError()).isCloseTo(error, within(1e-14));
    assertThat(pair.adjustedP())
        .isEqualTo(StudentisedRange.of(4, 17).above(Math.sqrt(2) * 4.5 / error), within(1e-15));
    var smallest = result.smallestSignificantDifference().orElseThrow();
    assertThat(smallest.isOneNumber()).isFalse();
    assertThat(smallest.smallest())
        .isCloseTo(result.significantDifference("none", "other").orElseThrow(), within(1e-12));
    assertThat(smallest.largest())
        .isCloseTo(result.significantDifference("high", "low").orElseThrow(), within(1e-12));
    assertThat(smallest.toString()).contains(" to ");
  }

  @Test
  void dunnettKeepsEachReplication() {
    var result = ControlComparison.of("none").compare(UNEQUAL);
    var exact =
        DunnettDistribution.ofReplication(8, new int[] {4, 3, 6}, 17, Alternative.TWO_SIDED);
    assertThat(result.isExact()).isTrue();
    for (var pair : result.pairs()) {
      assertThat(pair.second()).isEqualTo("none");
      assertThat(pair.adjustedP())
          .isCloseTo(exact.above(Math.abs(pair.t())), withinPercentage(1e-9));
    }
    assertThat(result.criticalT().orElseThrow())
        .isCloseTo(exact.upperQuantile(0.05), within(1e-11));
  }

  @Test
  void otherErrorsStandInAndSaySo() {
    double[][] covariance = {
      {1, 0, 0, 0, 0}, {0, 1, 0.6, 0, 0}, {0, 0.6, 1, 0, 0}, {0, 0, 0, 1, -0.3}, {0, 0, 0, -0.3, 1}
    };
    var labels = List.of("none", "a", "b", "c", "d");
    var means = ComparedMeans.ofCovariance(labels, new double[] {0, 3, 2, 1, 4}, covariance, 20);
    var result = ControlComparison.of("none").compare(means);
    assertThat(result.isExact()).isFalse();
    assertThat(result.correlationError()).isBetween(0.01, 0.2);
    assertThat(result.toString()).contains("approximated");
    var bonferroni = ControlComparison.of("none").with(ComparisonMethod.BONFERRONI).compare(means);
    assertThat(result.criticalT().orElseThrow()).isLessThan(bonferroni.criticalT().orElseThrow());
  }

  @Test
  void balancedBlocksAreExactHoweverTheirMeansAreCorrelated() {
    double[][] covariance = {{2, 1.2, 1.2}, {1.2, 2, 1.2}, {1.2, 1.2, 2}};
    var labels = List.of("x", "y", "z");
    var means = ComparedMeans.ofCovariance(labels, new double[] {1, 3, 4}, covariance, 8);
    var result = ControlComparison.of("x").compare(means);
    assertThat(result.isExact()).isTrue();
    double critical =
        DunnettDistribution.ofEqualReplication(2, 8, Alternative.TWO_SIDED).upperQuantile(0.05);
    assertThat(result.criticalT().orElseThrow()).isCloseTo(critical, within(1e-12));
  }

  @Test
  void oneSidedLimitsAreUnboundedOnOneSide() {
    var larger = ControlComparison.of("none").with(Alternative.LARGER).compare(UNEQUAL);
    var pair = larger.pair("high", "none");
    assertThat(pair.limits().orElseThrow().high()).isInfinite();
    assertThat(pair.limits().orElseThrow().low()).isPositive();
    assertThat(pair.toString()).contains("unbounded");
    var smaller = ControlComparison.of("none").with(Alternative.SMALLER).compare(UNEQUAL);
    assertThat(smaller.pair("high", "none").isDifferent()).isFalse();
    assertThat(smaller.pair("high", "none").rawP() + pair.rawP()).isCloseTo(1, within(1e-12));
    assertThat(smaller.pair("other", "none").adjustedP())
        .isLessThan(larger.pair("other", "none").adjustedP());
  }

  @ParameterizedTest
  @EnumSource(
      value = ComparisonMethod.class,
      names = {"TUKEY", "DUNNETT"},
      mode = EnumSource.Mode.EXCLUDE)
  void limitsAgreeWithDecisions(ComparisonMethod method) {
    for (double level : new double[] {0.001, 0.05, 0.3}) {
      var settings = PairwiseComparison.withDefaults().with(method).atLevel(level);
      var result = settings.compare(UNEQUAL);
      for (var pair : result.pairs()) {
        assertThat(pair.limits().isPresent()).isEqualTo(method.hasLimits());
        pair.limits()
            .ifPresent(limits -> assertThat(limits.covers(0)).isEqualTo(!pair.isDifferent()));
      }
    }
  }

  @Test
  void orderOfMeansChangesNothing() {
    var turned =
        ComparedMeans.ofReplicates(
            List.of("high", "other", "none", "low"),
            new double[] {17, 9, 10, 12.5},
            new int[] {3, 6, 8, 4},
            6.5,
            17);
    for (var method : ComparisonMethod.values()) {
      if (method == ComparisonMethod.DUNNETT) {
        continue;
      }
      var settings = PairwiseComparison.withDefaults().with(method);
      var one = settings.compare(UNEQUAL);
      var other = settings.compare(turned);
      for (var pair : one.pairs()) {
        var same = other.pair(pair.first(), pair.second());
        assertThat(same.adjustedP()).isCloseTo(pair.adjustedP(), withinPercentage(1e-10));
        assertThat(same.difference()).isEqualTo(pair.difference());
      }
      assertThat(other.letters(LetterOrder.LARGEST_FIRST))
          .hasToString(one.letters(LetterOrder.LARGEST_FIRST).toString());
    }
  }

  @Test
  void badInputIsRefusedInWords() {
    var two = List.of("x", "y");
    double[] means = {1, 2};
    int[] plots = {3, 3};
    assertProblem(
        () -> ComparedMeans.ofReplicates(two, means, plots, 0, 4), "pooled variance of 0");
    assertProblem(() -> ComparedMeans.ofReplicates(two, means, plots, 1, 0), "Degrees of freedom");
    assertProblem(
        () -> ComparedMeans.ofReplicates(two, means, new int[] {3, 0}, 1, 4), "y with 0 plots");
    assertProblem(
        () -> ComparedMeans.ofReplicates(List.of("x", "x"), means, plots, 1, 4), "x twice");
    assertProblem(
        () -> ComparedMeans.ofReplicates(two, new double[] {1, Double.NaN}, plots, 1, 4),
        "mean of y");
    assertProblem(
        () -> ComparedMeans.ofReplicates(List.of("x"), new double[] {1}, new int[] {3}, 1, 4),
        "1 means");
    assertProblem(
        () -> ComparedMeans.ofDifferences(two, means, new double[][] {{0, 1}, {2, 0}}, 4),
        "2.0 and 1.0");
    assertProblem(
        () -> ComparedMeans.ofCovariance(two, means, new double[][] {{1, 1}, {1, 1}}, 4), "x");
    assertProblem(
        () -> PairwiseComparison.withDefaults().with(ComparisonMethod.DUNNETT), "control");
    assertProblem(() -> PairwiseComparison.withDefaults().atLevel(5), "level");
    assertProblem(() -> ControlComparison.of("none").with(ComparisonMethod.TUKEY), "Tukey");
    assertProblem(() -> ControlComparison.of("None").compare(UNEQUAL), "none, low, high, other");
    var control = ControlComparison.of("none").compare(UNEQUAL);
    assertProblem(() -> control.letters(LetterOrder.LARGEST_FIRST), "Letters");
    assertProblem(() -> control.pair("low", "high"), "low and high");
  }

  private static void assertProblem(Runnable call, String words) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
