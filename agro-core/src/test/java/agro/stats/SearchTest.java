package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SearchTest {

  /**
   * Rosenbrock's valley as residuals 10(b - a²) and 1 - a; Rosenbrock 1960, Computer Journal
   * 3:175-184 (from memory). Its minimum is 0 at (1, 1).
   */
  private static final ResidualModel VALLEY =
      new ResidualModel() {
        @Override
        public int parameters() {
          return 2;
        }

        @Override
        public int observations() {
          return 2;
        }

        @Override
        public void residuals(double[] p, double[] residuals) {
          residuals[0] = 10 * (p[1] - p[0] * p[0]);
          residuals[1] = 1 - p[0];
        }

        @Override
        public void jacobian(double[] p, double[] jacobian) {
          jacobian[0] = -20 * p[0];
          jacobian[1] = 10;
          jacobian[2] = -1;
          jacobian[3] = 0;
        }
      };

  private static LevenbergMarquardt free() {
    double[] wide = {1e6, 1e6};
    return LevenbergMarquardt.within(2, new double[] {-1e6, -1e6}, wide);
  }

  @Test
  void followsACurvedValley() {
    var found = free().minimise(VALLEY, new double[] {-1.2, 1});
    assertThat(found.isConverged()).isTrue();
    assertThat(found.parameters()[0]).isCloseTo(1, within(1e-8));
    assertThat(found.parameters()[1]).isCloseTo(1, within(1e-8));
    assertThat(found.isOnBoundary()).isFalse();
  }

  /** Held at a ≤ 0.5 the least of 100(b - a²)² + (1 - a)² is 0.25, at (0.5, 0.25). */
  @Test
  void staysWithinItsBoundsAndSaysSo() {
    var search = LevenbergMarquardt.within(2, new double[] {-2, -2}, new double[] {0.5, 2});
    var found = search.minimise(VALLEY, new double[] {-1.2, 1});
    assertThat(found.parameters()[0]).isEqualTo(0.5);
    assertThat(found.parameters()[1]).isCloseTo(0.25, within(1e-8));
    assertThat(found.sumOfSquares()).isCloseTo(0.25, within(1e-12));
    assertThat(found.isAtBound(0)).isTrue();
    assertThat(found.isAtBound(1)).isFalse();
  }

  @Test
  void equalBoundsFixAParameter() {
    var search = LevenbergMarquardt.within(2, new double[] {-9, 4}, new double[] {9, 4});
    var found = search.minimise(VALLEY, new double[] {1, 1});
    assertThat(found.parameters()[1]).isEqualTo(4);
    assertThat(found.isOnBoundary()).isFalse();
    assertThat(found.parameters()[0]).isCloseTo(2, within(0.01));
  }

  @Test
  void refusesBoundsUpsideDown() {
    assertThatThrownBy(() -> LevenbergMarquardt.within(2, new double[] {1}, new double[] {0}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("from 1.0 to 0.0");
  }

  /** Minus the log likelihood of n normal numbers: errors are s/√n and s/√(2n). */
  @Test
  void newtonFindsTheLikelihoodOfANormalSample() {
    double[] sample = {3.1, 4.7, 5.2, 6.9, 4.1, 5.6, 3.8, 5.0};
    double mean = 4.8;
    double squares = 0;
    for (double value : sample) {
      squares += (value - mean) * (value - mean);
    }
    double deviation = Math.sqrt(squares / sample.length);
    ScalarModel model =
        p -> {
          double sum = 0;
          for (double value : sample) {
            double z = (value - p[0]) / Math.exp(p[1]);
            sum += 0.5 * z * z + p[1];
          }
          return sum;
        };
    var search =
        DampedNewton.within(new double[] {-50, -9}, new double[] {50, 9}, new double[] {1, 1});
    var found = search.minimise(model, new double[] {12, 2});
    assertThat(found.isConverged()).isTrue();
    assertThat(found.parameters()[0]).isCloseTo(mean, within(1e-6));
    assertThat(Math.exp(found.parameters()[1])).isCloseTo(deviation, within(1e-6));
    assertThat(found.standardErrors()[0])
        .isCloseTo(deviation / Math.sqrt(sample.length), within(1e-5));
    assertThat(found.standardErrors()[1])
        .isCloseTo(1 / Math.sqrt(2.0 * sample.length), within(1e-5));
  }

  @Test
  void newtonStopsAtABound() {
    var search = DampedNewton.within(new double[] {2}, new double[] {9}, new double[] {1});
    var found = search.minimise(p -> p[0] * p[0], new double[] {5});
    assertThat(found.parameters()[0]).isEqualTo(2);
    assertThat(found.isAtBound(0)).isTrue();
    assertThat(found.standardErrors()[0]).isNaN();
  }

  /** A parabola: the worsening reaches d² at ±d. */
  @Test
  void profileLimitsOfAParabola() {
    var limits = ProfileSearch.limits(x -> 3 + (x - 7) * (x - 7), 7, 0.1, 3, 3 + 2.5 * 2.5);
    assertThat(limits.low()).isCloseTo(4.5, within(1e-5));
    assertThat(limits.high()).isCloseTo(9.5, within(1e-5));
    var open = ProfileSearch.limits(x -> x > 0 ? Math.min(1, x) : x * x, 0, 0.1, 0, 2);
    assertThat(open.high()).isInfinite();
    assertThat(open.low()).isCloseTo(-Math.sqrt(2), within(1e-5));
  }

  /** Two columns at an angle: singular values √(1 ± cos), the inverse known by hand. */
  @Test
  void conditioningOfTwoColumns() {
    double[] jacobian = {1, 0.8, 0, 0.6};
    var conditioning = Conditioning.of(jacobian, 2, 2);
    assertThat(conditioning.number()).isCloseTo(Math.sqrt(1.8 / 0.2), within(1e-12));
    assertThat(conditioning.covariance(0, 0)).isCloseTo(1 / 0.36, within(1e-12));
    assertThat(conditioning.covariance(0, 1)).isCloseTo(-0.8 / 0.36, within(1e-12));
    assertThat(conditioning.shareInWeakest(0)).isCloseTo(Math.sqrt(0.5), within(1e-12));
    double[] same = {1, 2, 3, 6};
    assertThat(Conditioning.of(same, 2, 2).number()).isGreaterThan(1e12);
  }
}
