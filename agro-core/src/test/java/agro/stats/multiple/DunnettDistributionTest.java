package agro.stats.multiple;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dunnett's distribution against critical values, identities and slow quadrature. */
class DunnettDistributionTest {

  private static final double KNOWN = Double.POSITIVE_INFINITY;

  @Test
  void criticalValues() {
    var lines = ReferenceTable.read(DunnettDistributionTest.class, "dunnett-critical-values.csv");
    assertThat(lines).hasSize(9);
    for (var line : lines) {
      int treatments = whole(line, "treatments");
      double df = number(line, "df");
      var both = DunnettDistribution.ofEqualReplication(treatments, df, Alternative.TWO_SIDED);
      var one = DunnettDistribution.ofEqualReplication(treatments, df, Alternative.LARGER);
      Printed.check(both.upperQuantile(0.05), line, "twoSided05");
      Printed.check(both.quantile(0.99), line, "twoSided01");
      Printed.check(one.upperQuantile(0.05), line, "oneSided05");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2.5, 8, 300})
  void oneTreatmentIsStudentsT(double df) {
    var t = new TDistribution(df);
    var both = DunnettDistribution.ofReplication(4, new int[] {9}, df, Alternative.TWO_SIDED);
    var one = DunnettDistribution.ofReplication(4, new int[] {9}, df, Alternative.SMALLER);
    for (double size : new double[] {0.02, 1, 3, 12, 40}) {
      double tail = t.cumulativeProbability(-size);
      assertThat(both.above(size)).isCloseTo(2 * tail, withinPercentage(1e-9));
      assertThat(one.above(size)).isCloseTo(tail, withinPercentage(1e-9));
      assertThat(one.below(-size)).isCloseTo(tail, withinPercentage(1e-9));
      assertThat(one.above(-size)).isCloseTo(1 - tail, within(1e-12));
    }
  }

  @Test
  void withoutCorrelationTheChancesMultiply() {
    double[] none = new double[7];
    var both = DunnettDistribution.ofLoadings(none, KNOWN, Alternative.TWO_SIDED);
    double single = 2 * SlowQuadrature.normalAbove(2.2);
    assertThat(both.below(2.2)).isCloseTo(Math.pow(1 - single, 7), within(1e-13));
    assertThat(both.above(9.0))
        .isCloseTo(14 * SlowQuadrature.normalAbove(9), withinPercentage(1e-9));
  }

  /** Two with correlation r: P(both below 0) = 1/4 + arcsin(r) / (2 pi), Sheppard 1899. */
  @Test
  void quadrantOfTwo() {
    for (double loading : new double[] {-0.9, 0.2, 0.7, 0.99}) {
      var two =
          DunnettDistribution.ofLoadings(new double[] {loading, 0.6}, KNOWN, Alternative.LARGER);
      double expected = 0.25 + Math.asin(0.6 * loading) / (2 * Math.PI);
      assertThat(two.below(0)).isCloseTo(expected, within(1e-13));
    }
  }

  @ParameterizedTest
  @EnumSource(Alternative.class)
  void slowQuadratureAgreesForUnequalReplication(Alternative alternative) {
    double[] loadings = {0.3, 0.85, Math.sqrt(0.5)};
    boolean both = alternative == Alternative.TWO_SIDED;
    for (double[] each : new double[][] {{4.5, 2.5}, {30, 8}}) {
      double found = DunnettDistribution.ofLoadings(loadings, each[0], alternative).above(each[1]);
      double slow =
          SlowQuadrature.studentised(
              w -> SlowQuadrature.maximumAbove(loadings, both, w), each[1], each[0]);
      assertThat(found).isCloseTo(slow, withinPercentage(1e-7));
    }
  }

  @Property(seed = "8", tries = 5)
  void orderDoesNotMatterAndMoreTreatmentsNeedMore(
      @ForAll @Size(min = 2, max = 6) List<@IntRange(min = 1, max = 30) Integer> plots,
      @ForAll @IntRange(min = 1, max = 30) int control,
      @ForAll @DoubleRange(min = 1, max = 60) double df,
      @ForAll Alternative alternative) {
    int[] forward = plots.stream().mapToInt(Integer::intValue).toArray();
    int[] backward = new int[forward.length];
    for (int each = 0; each < forward.length; each++) {
      backward[forward.length - 1 - each] = forward[each];
    }
    int[] fewer = Arrays.copyOf(forward, forward.length - 1);
    var all = DunnettDistribution.ofReplication(control, forward, df, alternative);
    double critical = all.upperQuantile(0.05);
    assertThat(
            DunnettDistribution.ofReplication(control, backward, df, alternative).above(critical))
        .isEqualTo(all.above(critical));
    assertThat(all.above(critical)).isCloseTo(0.05, within(1e-12));
    assertThat(all.below(critical)).isCloseTo(0.95, within(1e-12));
    assertThat(DunnettDistribution.ofReplication(control, fewer, df, alternative).above(critical))
        .isLessThan(0.05);
  }

  @Test
  void oneDegreeOfFreedomReachesFarOut() {
    for (var alternative : Alternative.values()) {
      var far = DunnettDistribution.ofReplication(2, new int[] {1, 1}, 1, alternative);
      for (double upper : new double[] {0.05, 1e-6, 1e-12}) {
        double critical = far.upperQuantile(upper);
        assertThat(far.below(critical)).isCloseTo(1 - upper, within(1e-12));
        assertThat(far.above(critical)).isCloseTo(upper, withinPercentage(1e-6));
      }
    }
  }

  @Test
  void fiftyTreatmentsAndVeryUnequalReplication() {
    int[] plots = new int[50];
    Arrays.setAll(plots, each -> 3 + each % 5);
    var many = DunnettDistribution.ofReplication(6, plots, 120, Alternative.TWO_SIDED);
    assertThat(many.below(many.upperQuantile(1e-6))).isCloseTo(1 - 1e-6, within(1e-13));
    double[] loadings = {Math.sqrt(5000 / 5001.0), Math.sqrt(5000 / 5001.0), Math.sqrt(2 / 3.0)};
    var unequal =
        DunnettDistribution.ofReplication(1, new int[] {5000, 5000, 2}, 9, Alternative.TWO_SIDED);
    double t = 2 * new TDistribution(9).cumulativeProbability(-2.5);
    // Both large treatments are nearly the same comparison.
    assertThat(unequal.above(2.5)).isBetween(t, 2.05 * t);
    assertThat(unequal.above(2.5))
        .isEqualTo(
            DunnettDistribution.ofLoadings(loadings, 9, Alternative.TWO_SIDED).above(2.5),
            within(1e-12));
  }

  @Test
  void badInputIsRefusedInWords() {
    var two = Alternative.TWO_SIDED;
    assertThatThrownBy(() -> DunnettDistribution.ofEqualReplication(0, 5, two))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> DunnettDistribution.ofReplication(0, new int[] {3}, 5, two))
        .hasMessageContaining("at least one plot");
    assertThatThrownBy(() -> DunnettDistribution.ofLoadings(new double[] {1}, 5, two))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> DunnettDistribution.ofEqualReplication(3, -1, two))
        .hasMessageContaining("-1");
  }
}
