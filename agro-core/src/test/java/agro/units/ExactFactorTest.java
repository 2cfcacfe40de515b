package agro.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ExactFactorTest {

  @Test
  void lowestTerms() {
    assertThat(ExactFactor.of(10, 18)).isEqualTo(ExactFactor.of(5, 9)).hasToString("5/9");
    assertThat(ExactFactor.of(7, 7)).isEqualTo(ExactFactor.ONE);
  }

  @Test
  void productsAndReciprocalsStayExact() {
    var third = ExactFactor.of(1, 3);
    assertThat(third.times(ExactFactor.of(3, 1))).isEqualTo(ExactFactor.ONE);
    assertThat(third.times(third).inverse()).isEqualTo(ExactFactor.of(9, 1));
    var large = ExactFactor.of(Long.MAX_VALUE, 2);
    assertThat(large.times(large).denominator()).isEqualTo(BigInteger.valueOf(4));
    assertThat(large.times(large).times(large.inverse())).isEqualTo(large);
  }

  /** A factor rounded to a double first, 0.5555..., would give 4.999... here. */
  @Test
  void wholeResultsAreExact() {
    var fiveNinths = ExactFactor.of(5, 9);
    for (int i = 0; i <= 1000; i++) {
      assertThat(fiveNinths.convert(9.0 * i)).isEqualTo(5.0 * i);
      assertThat(fiveNinths.inverse().convert(5.0 * i)).isEqualTo(9.0 * i);
    }
  }

  @Test
  void notKnownAndUnboundedPassThrough() {
    var fiveNinths = ExactFactor.of(5, 9);
    assertThat(fiveNinths.convert(Double.NaN)).isNaN();
    assertThat(fiveNinths.convert(Double.POSITIVE_INFINITY)).isInfinite().isPositive();
    assertThat(fiveNinths.convert(Double.NEGATIVE_INFINITY)).isInfinite().isNegative();
  }

  @Test
  void onlyPositiveRatios() {
    assertThatThrownBy(() -> ExactFactor.of(0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a unit factor is a positive ratio, but got 0/1");
    assertThatThrownBy(() -> ExactFactor.of(1, -2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a unit factor is a positive ratio, but got 1/-2");
  }

  @Property(seed = "8")
  void wayBackIsTheReciprocal(
      @ForAll @IntRange(min = 1) int numerator, @ForAll @IntRange(min = 1) int denominator) {
    var factor = ExactFactor.of(numerator, denominator);
    assertThat(factor.times(factor.inverse())).isEqualTo(ExactFactor.ONE);
    assertThat(factor.inverse().inverse()).isEqualTo(factor);
  }
}
