package agro.stats.multiple;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The studentised range against printed tables, other programs and slow quadrature. */
class StudentisedRangeTest {

  private static final double PER_CENT_OF_1E_8 = 1e-6;

  private static StudentisedRange range(int means, double df) {
    return StudentisedRange.of(means, df);
  }

  @Test
  void quantilesOfHartersTables() {
    var lines = ReferenceTable.read(StudentisedRangeTest.class, "studentised-range-quantiles.csv");
    assertThat(lines).hasSize(24);
    for (var line : lines) {
      var range = range(whole(line, "means"), number(line, "df"));
      Printed.check(range.quantile(0.90), line, "q90");
      Printed.check(range.quantile(0.95), line, "q95");
      Printed.check(range.upperQuantile(0.01), line, "q99");
    }
  }

  @Test
  void chancesOfThreePrograms() {
    var lines = ReferenceTable.read(StudentisedRangeTest.class, "studentised-range-chances.csv");
    assertThat(lines).hasSize(9);
    for (var line : lines) {
      var range = range(whole(line, "means"), number(line, "df"));
      Printed.check(range.below(number(line, "q")), line, "below");
      assertThat(range.above(number(line, "q")))
          .isCloseTo(1 - range.below(number(line, "q")), within(1e-14));
    }
  }

  @Test
  void tailsByAnotherProgram() {
    var lines = ReferenceTable.read(StudentisedRangeTest.class, "studentised-range-tails.csv");
    assertThat(lines).hasSizeGreaterThan(30);
    for (var line : lines) {
      double found = range(whole(line, "means"), number(line, "df")).above(number(line, "q"));
      assertThat(found)
          .as("%s", line)
          .isCloseTo(number(line, "above"), withinPercentage(PER_CENT_OF_1E_8));
      if (!line.getField("library").isEmpty()) {
        assertThat(found).as("%s", line).isCloseTo(number(line, "library"), within(1e-10));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 3.7, 12, 66, 5000})
  void twoMeansAreStudentsT(double df) {
    var t = new TDistribution(df);
    for (double size : new double[] {0.01, 0.5, 1.3, 4, 9, 30}) {
      double both = 2 * t.cumulativeProbability(-size);
      assertThat(range(2, df).above(Math.sqrt(2) * size)).isCloseTo(both, withinPercentage(1e-8));
    }
    assertThat(range(2, 2).upperQuantile(0.01)).isCloseTo(14.03584786, within(5e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "2, 1, 5",
    "3, 1.5, 30",
    "4, 2, 900",
    "6, 66, 12",
    "9, 7.3, 25",
    "25, 14, 13",
    "40, 300, 9.5",
    "80, 3, 12",
    "200, 40, 6",
    "200, 9, 30"
  })
  void slowQuadratureAgrees(int means, double df, double q) {
    double slow = SlowQuadrature.studentised(w -> SlowQuadrature.rangeAbove(means, w), q, df);
    assertThat(range(means, df).above(q)).isCloseTo(slow, withinPercentage(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"2, 0.3", "3, 4", "6, 12", "20, 7", "100, 30", "200, 5.2", "1000, 6.6"})
  void rangeOfNormalsAgrees(int means, double w) {
    assertThat(range(means, Double.POSITIVE_INFINITY).above(w))
        .isCloseTo(SlowQuadrature.rangeAbove(means, w), withinPercentage(1e-9));
  }

  /** Three normal numbers: density of the range by its closed form at zero, w sqrt(3) / (2 pi). */
  @Test
  void smallChancesKeepTheirDigits() {
    double w = 1e-4;
    assertThat(range(3, Double.POSITIVE_INFINITY).below(w))
        .isCloseTo(Math.sqrt(3) / (2 * Math.PI) * w * w, withinPercentage(1e-5));
    assertThat(range(200, Double.POSITIVE_INFINITY).below(0.5)).isPositive().isLessThan(1e-100);
    assertThat(range(2, 1e6).above(40)).isPositive().isLessThan(1e-150);
  }

  @Property(seed = "8", tries = 60)
  void tailsAreComplementsAndQuantilesInverses(
      @ForAll @IntRange(min = 2, max = 60) int means,
      @ForAll @DoubleRange(min = 1, max = 500) double df,
      @ForAll @DoubleRange(min = -300, max = -0.01) double logChance) {
    var range = range(means, df);
    double chance = Math.pow(10, logChance);
    double q = range.upperQuantile(chance);
    if (Double.isInfinite(q)) {
      assertThat(chance).isLessThan(1e-100);
      return;
    }
    assertThat(range.above(q)).isCloseTo(chance, withinPercentage(1e-7));
    assertThat(range.below(q) + range.above(q)).isCloseTo(1, within(1e-12));
    assertThat(range.above(q * 1.01)).isLessThan(chance);
    double below = range.below(q / 2);
    if (below < 0.9) {
      assertThat(range.quantile(below)).isCloseTo(q / 2, withinPercentage(1e-7));
    }
  }

  @Test
  void largeDegreesOfFreedomApproachTheKnownVariance() {
    double known = range(5, Double.POSITIVE_INFINITY).above(4);
    assertThat(range(5, 1e9).above(4)).isCloseTo(known, withinPercentage(1e-5));
    assertThat(range(5, 1e14).above(4)).isCloseTo(known, withinPercentage(1e-10));
  }

  @Test
  void endsOfTheRange() {
    var range = range(4, 10);
    assertThat(range.below(0)).isZero();
    assertThat(range.above(-1)).isEqualTo(1);
    assertThat(range.above(Double.POSITIVE_INFINITY)).isZero();
    assertThat(range.below(Double.POSITIVE_INFINITY)).isEqualTo(1);
    assertThat(range.quantile(0)).isZero();
    assertThat(range.upperQuantile(0)).isInfinite();
    assertThat(range(3, 1).above(1e12))
        .isCloseTo(range(3, 1).above(1e6) * 1e-6, withinPercentage(1e-6));
    assertThat(range).hasToString("studentised range of 4 means, df = 10");
  }

  @Test
  void oneTableServesManyThreads() {
    double[] alone = new double[200];
    for (int each = 0; each < alone.length; each++) {
      alone[each] = range(31, 17).above(0.1 * each);
    }
    double[] together =
        IntStream.range(0, alone.length)
            .parallel()
            .mapToDouble(each -> range(32, 17).above(0.1 * each))
            .toArray();
    for (int each = 0; each < alone.length; each++) {
      assertThat(together[each]).isEqualTo(range(32, 17).above(0.1 * each));
      assertThat(together[each]).isGreaterThanOrEqualTo(alone[each]);
    }
  }

  @Test
  void badInputIsRefusedInWords() {
    assertThatThrownBy(() -> range(1, 5))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2 to");
    assertThatThrownBy(() -> range(3, 0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> range(3, Double.NaN)).hasMessageContaining("Degrees of freedom");
    assertThatThrownBy(() -> range(3, 5).above(Double.NaN)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> range(3, 5).quantile(1.2)).hasMessageContaining("1.2");
  }
}
