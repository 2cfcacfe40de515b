package agro.stats.power;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.UpperTail;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Noncentral distributions against sums, integrals and functions of a published program. */
class NoncentralTest {

  @Test
  void agreesWithIntegralsOnBothTails() {
    var lines = ReferenceTable.read(NoncentralTest.class, "noncentral.csv");
    assertThat(lines).hasSize(590);
    for (var line : lines) {
      double df = number(line, "df2");
      double noncentrality = number(line, "noncentrality");
      double value = number(line, "value");
      double below;
      double above;
      if (line.getField("df1").isEmpty()) {
        below = new NoncentralT(df, noncentrality).below(value);
        above = new NoncentralT(df, noncentrality).above(value);
      } else {
        var distribution = new NoncentralF(number(line, "df1"), df, noncentrality);
        below = distribution.below(value);
        above = distribution.above(value);
      }
      var message = line.toString();
      assertThat(below).as(message).isCloseTo(number(line, "below"), within(1e-11));
      assertThat(above).as(message).isCloseTo(number(line, "above"), within(1e-11));
      assertThat(below).as(message).isCloseTo(number(line, "program"), within(2e-9));
    }
  }

  @Test
  void squareOfTIsF() {
    for (double delta : new double[] {0.2, 1, 4, 12, 60, 200}) {
      for (double value : new double[] {0.5, 2, 5, 11, 60, 220}) {
        var t = new NoncentralT(7, delta);
        var f = new NoncentralF(1, 7, delta * delta);
        assertThat(t.above(value) + t.below(-value))
            .isCloseTo(f.above(value * value), within(1e-11));
      }
    }
  }

  @Test
  void withoutNoncentralityBothAreCentral() {
    assertThat(new NoncentralF(5, 66, 0).above(34.7022820555))
        .isCloseTo(3.18258372615e-17, Percentage.withPercentage(1e-7));
    assertThat(new NoncentralF(5, 66, 0).below(1.3))
        .isCloseTo(1 - UpperTail.f(1.3, 5, 66), within(1e-13));
    assertThat(new NoncentralT(3, 0).below(-2)).isCloseTo(UpperTail.t(2, 3), within(1e-15));
    assertThat(new NoncentralF(3, 8, 5).power(0.05)).isGreaterThan(0.05);
    assertThat(new NoncentralF(3, 8, 0).power(0.05)).isCloseTo(0.05, within(1e-12));
  }

  @Test
  void edges() {
    assertThat(new NoncentralF(2, 3, 4).above(0)).isEqualTo(1);
    assertThat(new NoncentralF(2, 3, 4).below(Double.POSITIVE_INFINITY))
        .isCloseTo(1, within(1e-13));
    assertThat(new NoncentralT(3, 4).above(Double.POSITIVE_INFINITY)).isEqualTo(0);
    assertThat(new NoncentralT(3, 4).above(Double.NEGATIVE_INFINITY)).isCloseTo(1, within(1e-13));
    assertThat(new NoncentralT(Double.POSITIVE_INFINITY, 1).above(1)).isEqualTo(0.5);
    assertThat(new NoncentralT(3, 4).above(Double.NaN)).isNaN();
    assertThatThrownBy(() -> new NoncentralT(0, 1)).hasMessageContaining("positive");
    assertThatThrownBy(() -> new NoncentralT(2, 401)).hasMessageContaining("401");
    assertThatThrownBy(() -> new NoncentralF(1, 2, -1)).hasMessageContaining("-1");
    assertThatThrownBy(() -> new NoncentralF(0, 2, 1)).hasMessageContaining("positive");
  }
}
