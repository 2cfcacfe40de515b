package agro.stats.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** What must hold for any unbalanced two-way layout. */
class LinearModelPropertiesTest {

  /** Labels and values of observations. */
  private record Layout(List<String> a, List<String> b, List<Double> y) {

    static Layout random(long seed) {
      var random = new Random(seed);
      var a = new ArrayList<String>();
      var b = new ArrayList<String>();
      int levelsOfA = 2 + random.nextInt(3);
      int levelsOfB = 2 + random.nextInt(2);
      for (int i = 0; i < levelsOfA; i++) {
        for (int j = 0; j < levelsOfB; j++) {
          int count = 1 + random.nextInt(3) + (i + j == 0 ? 1 : 0);
          for (int r = 0; r < count; r++) {
            a.add("a" + i);
            b.add("b" + j);
          }
        }
      }
      return new Layout(a, b, random.doubles(a.size(), 10, 20).boxed().toList());
    }

    Layout shuffled(long seed) {
      var order = new ArrayList<Integer>();
      for (int i = 0; i < y.size(); i++) {
        order.add(i);
      }
      Collections.shuffle(order, new Random(seed));
      return new Layout(
          order.stream().map(a::get).toList(),
          order.stream().map(b::get).toList(),
          order.stream().map(y::get).toList());
    }

    Layout renamed() {
      return new Layout(
          a.stream().map(label -> "z" + (9 - (label.charAt(1) - '0'))).toList(), b, y);
    }

    LinearModelFit fit(double scale, double shift) {
      double[] values = new double[y.size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = scale * y.get(i) + shift;
      }
      return LinearModel.of(ModelTerm.crossing(Factor.of("a", a), Factor.of("b", b))).fit(values);
    }
  }

  private static void sameTests(LinearModelFit one, LinearModelFit other) {
    for (SumsOfSquares kind : SumsOfSquares.values()) {
      for (int t = 0; t < 3; t++) {
        var first = one.analysis(kind).rows().get(t);
        var second = other.analysis(kind).rows().get(t);
        assertThat(second.degreesOfFreedom()).isEqualTo(first.degreesOfFreedom());
        double f = first.test().orElseThrow().f();
        assertThat(second.test().orElseThrow().f()).isCloseTo(f, within(1e-8 * (1 + f)));
        assertThat(second.test().orElseThrow().pValue())
            .isCloseTo(first.test().orElseThrow().pValue(), within(1e-8));
      }
    }
  }

  private static MarginalMeans means(LinearModelFit fit) {
    return fit.means(fit.model().terms().get(0).factors().get(0));
  }

  @Property(seed = "8", tries = 60)
  void orderOfRowsDoesNotMatter(@ForAll @LongRange(min = 1) long seed) {
    var layout = Layout.random(seed);
    var one = layout.fit(1, 0);
    var other = layout.shuffled(seed + 1).fit(1, 0);
    sameTests(one, other);
    assertThat(means(other).estimate(1)).isCloseTo(means(one).estimate(1), within(1e-10));
  }

  @Property(seed = "8", tries = 60)
  void labelsDoNotMatter(@ForAll @LongRange(min = 1) long seed) {
    var layout = Layout.random(seed);
    var one = layout.fit(1, 0);
    var other = layout.renamed().fit(1, 0);
    sameTests(one, other);
    int last = means(other).size() - 1;
    assertThat(means(other).estimate(last)).isCloseTo(means(one).estimate(0), within(1e-10));
  }

  @Property(seed = "8", tries = 60)
  void scaleAndShift(
      @ForAll @LongRange(min = 1) long seed,
      @ForAll @DoubleRange(min = 0.01, max = 100) double size,
      @ForAll boolean negative,
      @ForAll @DoubleRange(min = -100, max = 100) double shift) {
    double scale = negative ? -size : size;
    var layout = Layout.random(seed);
    var one = layout.fit(1, 0);
    var other = layout.fit(scale, shift);
    double slack = 1e-9 * (size + Math.abs(shift));
    assertThat(means(other).estimate(0))
        .isCloseTo(scale * means(one).estimate(0) + shift, within(20 * slack));
    assertThat(means(other).standardError(0).orElseThrow())
        .isCloseTo(size * means(one).standardError(0).orElseThrow(), within(20 * slack));
    if (Math.abs(shift) < 100 * size) {
      sameTests(one, other);
    }
  }

  @Property(seed = "8", tries = 60)
  void residualsAreOrthogonalToTheModel(@ForAll @LongRange(min = 1) long seed) {
    var fit = Layout.random(seed).fit(1, 0);
    double[] residuals = fit.residuals();
    var design = fit.model().design();
    for (int j = 0; j < design.columns(); j++) {
      double product = 0;
      for (int i = 0; i < residuals.length; i++) {
        product += residuals[i] * design.value(i, j);
      }
      assertThat(product).isCloseTo(0, within(1e-10));
    }
  }

  @Property(seed = "8", tries = 60)
  void sequentialPartsAddUp(@ForAll @LongRange(min = 1) long seed) {
    var fit = Layout.random(seed).fit(1, 0);
    double sum =
        fit.analysis(SumsOfSquares.SEQUENTIAL).rows().stream()
            .mapToDouble(VarianceRow::sumOfSquares)
            .sum();
    assertThat(sum + fit.residualSumOfSquares()).isCloseTo(fit.totalSumOfSquares(), within(1e-8));
  }
}
