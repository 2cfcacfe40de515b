package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.assumption.ShapiroWilkTest;
import org.junit.jupiter.api.Test;

/** Quantiles of the normal distribution. */
class NormalQuantileTest {

  @Test
  void agreesWithPublishedProgram() {
    var lines = ReferenceTable.read(ShapiroWilkTest.class, "normal-quantiles.csv");
    assertThat(lines).hasSize(15);
    for (var line : lines) {
      double z = ReferenceTable.number(line, "z");
      assertThat(NormalQuantile.of(ReferenceTable.number(line, "p")))
          .isCloseTo(z, within(1e-15 + 1e-14 * Math.abs(z)));
    }
  }

  @Test
  void endsAreInfiniteAndOutsideThereIsNothing() {
    assertThat(NormalQuantile.of(0)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(NormalQuantile.of(1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(NormalQuantile.of(-0.1)).isNaN();
    assertThat(NormalQuantile.of(Double.NaN)).isNaN();
  }
}
