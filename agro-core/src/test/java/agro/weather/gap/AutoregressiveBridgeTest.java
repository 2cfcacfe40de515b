package agro.weather.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.junit.jupiter.api.Test;

class AutoregressiveBridgeTest {

  /** Against the general rule for a normal distribution given some of its values. */
  @Property(seed = "8", tries = 500)
  void isTheConditionalNormalDistribution(
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double lag1,
      @ForAll @IntRange(min = 1, max = 12) int days,
      @ForAll @DoubleRange(min = -3, max = 3) double before,
      @ForAll @DoubleRange(min = -3, max = 3) double after,
      @ForAll @IntRange(min = 1, max = 12) int any) {
    int place = 1 + any % days;
    var known = new Array2DRowRealMatrix(2, 2);
    known.setEntry(0, 0, 1);
    known.setEntry(1, 1, 1);
    known.setEntry(0, 1, Math.pow(lag1, days + 1));
    known.setEntry(1, 0, Math.pow(lag1, days + 1));
    var with =
        MatrixUtils.createRealVector(
            new double[] {Math.pow(lag1, place), Math.pow(lag1, days + 1 - place)});
    var weights = new LUDecomposition(known).getSolver().solve(with);
    var bridge = new AutoregressiveBridge(lag1, days, before, after);
    assertThat(bridge.mean(place))
        .isCloseTo(weights.getEntry(0) * before + weights.getEntry(1) * after, within(1e-10));
    assertThat(bridge.deviation(place))
        .isCloseTo(Math.sqrt(Math.max(0, 1 - weights.dotProduct(with))), within(1e-8));
  }

  @Test
  void oneEndOrNone() {
    var left = new AutoregressiveBridge(0.5, 3, 2, Double.NaN);
    assertThat(left.mean(2)).isEqualTo(0.5);
    assertThat(left.deviation(2)).isEqualTo(Math.sqrt(1 - 0.0625));
    var right = new AutoregressiveBridge(0.5, 3, Double.NaN, 2);
    assertThat(right.mean(2)).isEqualTo(0.5);
    assertThat(right.deviation(3)).isEqualTo(Math.sqrt(0.75));
    var none = new AutoregressiveBridge(0.5, 3, Double.NaN, Double.NaN);
    assertThat(none.mean(1)).isZero();
    assertThat(none.deviation(1)).isEqualTo(1);
  }
}
