package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class LinearFitTest {

  private static final double[] X = {18, 21.5, 25, 28};
  private static final double[] Y = {1 / 28.2, 1 / 21.6, 1 / 16.1, 1 / 15.0};

  /** Against base R 4.2: summary(lm(y ~ x)). */
  @Test
  void agreesWithBaseR() {
    var fit = LinearFit.of(X, Y);
    assertThat(fit.intercept()).isCloseTo(-0.02329654, within(1e-8));
    assertThat(fit.slope()).isCloseTo(0.003283480, within(1e-9));
    assertThat(fit.rSquared()).isCloseTo(0.97418562, within(1e-7));
    assertThat(fit.zero()).hasValueCloseTo(7.09507680, within(1e-7));
  }

  @Test
  void agreesWithTheLibrary() {
    var fit = LinearFit.of(X, Y);
    var library = new SimpleRegression();
    for (int i = 0; i < X.length; i++) {
      library.addData(X[i], Y[i]);
    }
    assertThat(fit.slopeStandardError()).isCloseTo(library.getSlopeStdErr(), within(1e-15));
    assertThat(fit.interceptStandardError()).isCloseTo(library.getInterceptStdErr(), within(1e-14));
    assertThat(fit.slopeHalfWidth(0.95))
        .isCloseTo(library.getSlopeConfidenceInterval(0.05), within(1e-12));
    assertThat(fit.at(20)).isCloseTo(library.predict(20), within(1e-15));
  }

  /** At a limit of the zero the line's distance from 0 is just t standard errors. */
  @Test
  void limitsOfTheZeroAreWhereZeroIsJustRefused() {
    var fit = LinearFit.of(X, Y);
    var limits = fit.zeroLimits(0.9);
    double t = 2.91998558; // qt(0.95, 2) in base R
    for (double place : new double[] {limits.low(), limits.high()}) {
      assertThat(Math.abs(fit.at(place)) / fit.meanStandardErrorAt(place))
          .isCloseTo(t, within(1e-6));
    }
    assertThat(limits.covers(fit.zero().orElseThrow())).isTrue();
    var level = LinearFit.of(new double[] {1, 2, 3}, new double[] {5, 4.9, 5.05});
    assertThat(level.zeroLimits(0.9).high()).isInfinite();
  }

  /** A weight of two is a point that stands there twice, but for the degrees of freedom. */
  @Test
  void weightsCountLikeRepeatedPoints() {
    var weighted = LinearFit.weighted(X, Y, new double[] {2, 1, 1, 1});
    var repeated =
        LinearFit.of(
            new double[] {18, 18, 21.5, 25, 28}, new double[] {Y[0], Y[0], Y[1], Y[2], Y[3]});
    assertThat(weighted.slope()).isCloseTo(repeated.slope(), within(1e-15));
    assertThat(weighted.residualSquares()).isCloseTo(repeated.residualSquares(), within(1e-15));
    assertThat(weighted.degreesOfFreedom()).isEqualTo(2);
  }

  @Test
  void twoPointsHaveNoErrors() {
    var fit = LinearFit.of(new double[] {15, 30}, new double[] {1 / 12.0, 1 / 4.5});
    assertThat(fit.zero()).hasValueCloseTo(6.0, within(1e-12));
    assertThat(fit.residualDeviation()).isNaN();
    assertThat(fit.slopeHalfWidth(0.9)).isNaN();
  }

  @Test
  void theReducedMajorAxisIsSteeperByOneOverTheCorrelation() {
    var axis = ReducedMajorAxis.of(X, Y);
    var fit = LinearFit.of(X, Y);
    assertThat(axis.slope()).isCloseTo(fit.slope() / axis.correlation(), within(1e-15));
    assertThat(axis.slopeStandardError()).isCloseTo(fit.slopeStandardError(), within(1e-12));
    assertThat(ReducedMajorAxis.of(X, new double[] {4, 3, 2.5, 1}).slope()).isNegative();
  }

  @Test
  void refusesWhatIsNoLine() {
    assertThatThrownBy(() -> LinearFit.of(new double[] {1, 1}, new double[] {1, 2}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("all 2 points lie at x = 1");
    assertThatThrownBy(() -> LinearFit.of(new double[] {1}, new double[] {1}))
        .hasMessageContaining("at least two points");
    assertThatThrownBy(() -> LinearFit.of(new double[] {1, Double.NaN}, new double[] {1, 2}))
        .hasMessageContaining("point 2");
    assertThatThrownBy(() -> LinearFit.of(X, Y).slopeHalfWidth(1))
        .hasMessageContaining("level lies between 0 and 1");
  }
}
