package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Means, their inverses and derivatives. */
class LinkFunctionTest {

  private static final double STEP = 1e-5;

  @ParameterizedTest
  @EnumSource
  void inverseAndDerivativesBelongTogether(LinkFunction link) {
    for (double eta = -3; eta < 1.4; eta += 0.1) {
      assertThat(link.eta(link.mean(eta))).isCloseTo(eta, within(1e-11));
      assertThat(link.mean(eta) + link.complement(eta)).isCloseTo(1, within(1e-14));
      double slope = (link.mean(eta + STEP) - link.mean(eta - STEP)) / (2 * STEP);
      double curvature = (link.slope(eta + STEP) - link.slope(eta - STEP)) / (2 * STEP);
      assertThat(link.slope(eta)).isCloseTo(slope, within(1e-9));
      assertThat(link.curvature(eta)).isCloseTo(curvature, within(1e-9));
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"LOGIT", "PROBIT", "COMPLEMENTARY_LOG_LOG"})
  void tailsKeepTheirDigits(LinkFunction link) {
    assertThat(link.isForProportions()).isTrue();
    assertThat(link.mean(-7)).isPositive().isLessThan(1e-3);
    assertThat(link.complement(3)).isPositive().isLessThan(0.05);
    assertThat(link.eta(link.mean(-7))).isCloseTo(-7, within(1e-10));
    assertThat(link.mean(-800)).isEqualTo(0, within(1e-300));
    assertThat(link.complement(800)).isEqualTo(0, within(1e-300));
  }

  /** Quantiles by qnorm of R 4.2.2. The library behind our tests is off by 3e-6 at 1e-12. */
  @ParameterizedTest
  @CsvSource({
    "1e-12, -7.0344838253011321",
    "1e-5, -4.2648907939228247",
    "0.025, -1.9599639845400545",
    "0.3, -0.52440051270804067",
    "0.5, 0",
    "0.7, 0.52440051270804067",
    "0.975, 1.9599639845400545"
  })
  void probitIsTheQuantileOfTheNormalDistribution(double p, double quantile) {
    assertThat(LinkFunction.PROBIT.eta(p)).isCloseTo(quantile, within(1e-13));
  }
}
