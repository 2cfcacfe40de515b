package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tails of chi-squared, F and t. Values by pchisq, pf, pt, qt, qf of R 4.2.2. */
class UpperTailTest {

  @Test
  void tailsKeepTheirDigits() {
    // pf(34.7022820555, 5, 66, lower.tail = FALSE), published with InsectSprays as
    // 3.18258372615e-17
    assertThat(UpperTail.f(34.7022820555, 5, 66))
        .isCloseTo(3.18258372615e-17, Percentage.withPercentage(1e-7));
    assertThat(UpperTail.chiSquared(54.6913446224, 5))
        .isCloseTo(1.51084443942e-10, Percentage.withPercentage(1e-8));
    assertThat(2 * UpperTail.t(7.75503819, 66))
        .isCloseTo(7.26689283e-11, Percentage.withPercentage(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"0.025, 2", "0.005, 2", "0.025, 66", "1e-9, 5", "0.3, 0.7", "0.8, 12", "0.5, 3"})
  void criticalValuesAreExceededWithTheirChance(double chance, double df) {
    assertThat(UpperTail.t(UpperTail.tExceededWith(chance, df), df))
        .isCloseTo(chance, Percentage.withPercentage(1e-10));
    assertThat(UpperTail.f(UpperTail.fExceededWith(chance, df, 4.5), df, 4.5))
        .isCloseTo(chance, Percentage.withPercentage(1e-10));
    assertThat(UpperTail.chiSquared(UpperTail.chiSquaredExceededWith(chance, df), df))
        .isCloseTo(chance, Percentage.withPercentage(1e-10));
  }

  @Test
  void tablesOfStudent() {
    assertThat(UpperTail.tExceededWith(0.025, 2)).isCloseTo(4.30265273, within(5e-9));
    assertThat(UpperTail.tExceededWith(0.005, 2)).isCloseTo(9.92484320, within(5e-9));
    assertThat(UpperTail.tExceededWith(0.025, 66)).isCloseTo(1.99656441895, within(5e-12));
    assertThat(UpperTail.tExceededWith(0.975, Double.POSITIVE_INFINITY))
        .isCloseTo(-1.9599639845400545, within(1e-14));
  }

  @Test
  void edges() {
    assertThat(UpperTail.f(-1, 2, 3)).isEqualTo(1);
    assertThat(UpperTail.f(Double.POSITIVE_INFINITY, 2, 3)).isEqualTo(0);
    assertThat(UpperTail.chiSquared(Double.POSITIVE_INFINITY, 2)).isEqualTo(0);
    assertThat(UpperTail.t(Double.NaN, 2)).isNaN();
    assertThatThrownBy(() -> UpperTail.tExceededWith(0, 3)).hasMessageContaining("0.0");
  }
}
