package agro.stats.assumption;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The test of normality against a published program. */
public class ShapiroWilkTest {

  @Test
  void agreesFrom3To5000() {
    var lines = ReferenceTable.read(ShapiroWilkTest.class, "shapiro-samples.csv");
    assertThat(lines).hasSize(84);
    for (var line : lines) {
      double[] x = sample(whole(line, "n"), number(line, "power"), whole(line, "sign") == 1);
      var result = ShapiroWilk.test(x);
      assertThat(result.w()).as(line.toString()).isCloseTo(number(line, "w"), within(1e-11));
      double p = number(line, "p");
      // Close to three equally spaced values the chance turns on the last digit of W.
      double rounding = x.length == 3 ? 1e-7 : 1e-12;
      assertThat(result.pValue()).as(line.toString()).isCloseTo(p, within(1e-8 * p + rounding));
    }
  }

  private static double[] sample(int n, double power, boolean sign) {
    double[] x = new double[n];
    for (int i = 1; i <= n; i++) {
      x[i - 1] = Math.pow(i, power) * (sign && i % 3 == 0 ? -1 : 1);
    }
    return x;
  }

  @Test
  void unitOriginAndOrderDoNotMatter() {
    double[] x = sample(25, 2.5, true);
    double[] other = new double[25];
    for (int i = 0; i < 25; i++) {
      other[24 - i] = 1e6 - 3e-4 * x[i];
    }
    assertThat(ShapiroWilk.test(other).w()).isCloseTo(ShapiroWilk.test(x).w(), within(1e-9));
  }

  @Test
  void tiesAreTold() {
    double[] x = new double[20];
    Arrays.setAll(x, i -> Math.floor(i / 5.0));
    assertThat(ShapiroWilk.test(x).remarks()).singleElement().asString().contains("4 different");
    assertThat(ShapiroWilk.test(sample(20, 1, false)).remarks()).isEmpty();
  }

  @Test
  void readsAsPapersPrintIt() {
    assertThat(ShapiroWilk.test(sample(12, 1, false)))
        .hasToString("Shapiro-Wilk: W = 0.9669; n = 12; P = 0.876");
  }

  @Test
  void badInputIsTold() {
    assertThatThrownBy(() -> ShapiroWilk.test(1, 2)).hasMessageContaining("2 values");
    assertThatThrownBy(() -> ShapiroWilk.test(new double[5001])).hasMessageContaining("5001");
    assertThatThrownBy(() -> ShapiroWilk.test(4, 4, 4, 4)).hasMessageContaining("equal 4.0");
    assertThatThrownBy(() -> ShapiroWilk.test(4, 4, Double.NaN)).hasMessageContaining("NaN");
  }
}
