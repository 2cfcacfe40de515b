package agro.stats.multiple;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Counts of six groups of twelve (Beall 1942, distributed with R), compared in all ways. */
class InsectSpraysTest {

  private static final List<String> LABELS = List.of("A", "B", "C", "D", "E", "F");

  private static final double[][] COUNTS = {
    {10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13},
    {11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13},
    {0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4},
    {3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4},
    {3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4},
    {11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13}
  };

  private static final Map<ComparisonMethod, String> COLUMNS =
      Map.of(
          ComparisonMethod.FISHER_LSD, "plain",
          ComparisonMethod.BONFERRONI, "bonferroni",
          ComparisonMethod.HOLM, "holm",
          ComparisonMethod.HOCHBERG, "hochberg",
          ComparisonMethod.BENJAMINI_HOCHBERG, "benjaminiHochberg",
          ComparisonMethod.TUKEY, "tukey");

  /** Relative error of the smallest tabled chances, which another rule computed; see below. */
  private static final double QUADRATURE = 2e-6;

  private static final ComparedMeans RAW = means(count -> count);
  private static final ComparedMeans ROOT = means(Math::sqrt);

  private static ComparedMeans means(DoubleUnaryOperator scale) {
    double[] means = new double[6];
    double squares = 0;
    for (int group = 0; group < 6; group++) {
      for (double count : COUNTS[group]) {
        means[group] += scale.applyAsDouble(count) / 12;
      }
      for (double count : COUNTS[group]) {
        squares += Math.pow(scale.applyAsDouble(count) - means[group], 2);
      }
    }
    int[] replicates = {12, 12, 12, 12, 12, 12};
    return ComparedMeans.ofReplicates(LABELS, means, replicates, squares / 66, 66);
  }

  @Test
  void allPairsByAllMethods() {
    var lines = ReferenceTable.read(InsectSpraysTest.class, "insect-sprays-pairs.csv");
    assertThat(lines).hasSize(30);
    COLUMNS.forEach(
        (method, column) -> {
          var settings = PairwiseComparison.withDefaults().with(method);
          var raw = settings.compare(RAW);
          var root = settings.compare(ROOT);
          assertThat(raw.pairs()).hasSize(15);
          for (var line : lines) {
            var result = line.getField("scale").equals("raw") ? raw : root;
            var pair = result.pair(line.getField("first"), line.getField("second"));
            Printed.check(pair.difference(), line, "difference");
            Printed.check(pair.t(), line, "t");
            Printed.check(pair.rawP(), line, "plain");
            Printed.check(pair.adjustedP(), line, column, QUADRATURE);
            assertThat(pair.isDifferent()).isEqualTo(number(line, column) <= 0.05);
          }
        });
  }

  @Test
  void comparisonsWithAControl() {
    var lines = ReferenceTable.read(InsectSpraysTest.class, "insect-sprays-control.csv");
    assertThat(lines).hasSize(5);
    var both = ControlComparison.of("C");
    var larger = both.with(Alternative.LARGER);
    for (var line : lines) {
      var label = line.getField("label");
      Printed.check(both.compare(RAW).pair(label, "C").t(), line, "rawT");
      Printed.check(
          both.compare(RAW).pair(label, "C").adjustedP(), line, "rawTwoSided", QUADRATURE);
      Printed.check(
          larger.compare(RAW).pair(label, "C").adjustedP(), line, "rawOneSided", QUADRATURE);
      Printed.check(both.compare(ROOT).pair(label, "C").t(), line, "rootT");
      Printed.check(
          both.compare(ROOT).pair(label, "C").adjustedP(), line, "rootTwoSided", QUADRATURE);
      Printed.check(
          larger.compare(ROOT).pair(label, "C").adjustedP(), line, "rootOneSided", QUADRATURE);
    }
    assertThat(both.compare(RAW).isExact()).isTrue();
    assertThat(both.compare(RAW).criticalT().orElseThrow()).isCloseTo(2.57590279, within(5e-9));
  }

  /** The tabled chances below 1e-9 differ by up to 2e-6; this finer rule agrees to 1e-10. */
  @Test
  void smallestChancesByFinerQuadrature() {
    double[] loadings = new double[5];
    Arrays.fill(loadings, Math.sqrt(0.5));
    for (var means : List.of(RAW, ROOT)) {
      var tukey = PairwiseComparison.withDefaults().compare(means);
      for (var label : List.of("B", "F")) {
        double q = Math.sqrt(2) * tukey.pair(label, "C").t();
        double slow = SlowQuadrature.studentised(w -> SlowQuadrature.rangeAbove(6, w), q, 66);
        assertThat(tukey.pair(label, "C").adjustedP()).isCloseTo(slow, withinPercentage(1e-8));
      }
      double t = tukey.pair("F", "C").t();
      assertThat(ControlComparison.of("C").compare(means).pair("F", "C").adjustedP())
          .isCloseTo(
              SlowQuadrature.studentised(
                  w -> SlowQuadrature.maximumAbove(loadings, true, w), t, 66),
              withinPercentage(1e-8));
    }
  }

  /** Tukey's by SciPy 1.10.1, Fisher's by R 4.2.2. */
  @Test
  void smallestSignificantDifferences() {
    var tukey = PairwiseComparison.withDefaults();
    var fisher = tukey.with(ComparisonMethod.FISHER_LSD);
    assertDifference(tukey.compare(RAW), 4.69940851, 5e-9);
    assertDifference(tukey.compare(ROOT), 0.75291314, 5e-9);
    assertDifference(fisher.compare(RAW), 3.19671860618, 6e-12);
    assertDifference(fisher.compare(ROOT), 0.512160507497, 6e-13);
  }

  private static void assertDifference(MeanComparisons result, double expected, double tolerance) {
    var difference = result.smallestSignificantDifference().orElseThrow();
    assertThat(difference.isOneNumber()).isTrue();
    assertThat(difference.largest()).isCloseTo(expected, within(tolerance));
    assertThat(result.significantDifference("D", "B").orElseThrow())
        .isCloseTo(expected, within(tolerance));
    var pair = result.pair("C", "A");
    assertThat(pair.limits().orElseThrow().high())
        .isCloseTo(pair.difference() + expected, within(tolerance));
  }

  @Test
  void letters() {
    var raw = PairwiseComparison.withDefaults().compare(RAW).letters(LetterOrder.LARGEST_FIRST);
    assertThat(raw.groups()).containsExactly(List.of("F", "B", "A"), List.of("D", "E", "C"));
    var root = PairwiseComparison.withDefaults().compare(ROOT);
    var falling = root.letters(LetterOrder.LARGEST_FIRST);
    assertThat(falling).hasToString("F a\nB a\nA a\nD b\nE bc\nC c");
    assertThat(root.letters(LetterOrder.SMALLEST_FIRST))
        .hasToString("C a\nE ab\nD b\nA c\nB c\nF c");
    assertThat(falling.share("C", "D")).isFalse();
    assertThat(falling.share("E", "D")).isTrue();
  }
}
