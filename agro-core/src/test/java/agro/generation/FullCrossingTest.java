package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Variance components of cubes that were worked out by hand. */
class FullCrossingTest {

  /** Effects -1, 0, 1 times 3, 2 and 1: variances 2/3 times 9, 4 and 1, nothing left over. */
  @Test
  void effectsThatAddUpLeaveNoInteraction() {
    var days = new double[3][3][3];
    for (var w = 0; w < 3; w++) {
      for (var p = 0; p < 3; p++) {
        for (var s = 0; s < 3; s++) {
          days[w][p][s] = 100 + 3 * (w - 1) + 2 * (p - 1) + (s - 1);
        }
      }
    }
    var split = FullCrossing.split(days);
    assertThat(split.weather()).isCloseTo(6, within(1e-12));
    assertThat(split.parameters()).isCloseTo(8.0 / 3, within(1e-12));
    assertThat(split.season()).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(split.interaction()).isCloseTo(0, within(1e-9));
    assertThat(split.standardDeviationDays()).isCloseTo(Math.sqrt(28.0 / 3), within(1e-9));
  }

  /** A product of two effects with mean zero has no main effect: all of it is interaction. */
  @Test
  void aPureProductIsAllInteraction() {
    var days = new double[2][2][2];
    for (var w = 0; w < 2; w++) {
      for (var p = 0; p < 2; p++) {
        for (var s = 0; s < 2; s++) {
          days[w][p][s] = 50 + 3 * (2 * w - 1) * (2 * p - 1);
        }
      }
    }
    var split = FullCrossing.split(days);
    assertThat(split.weather()).isZero();
    assertThat(split.parameters()).isZero();
    assertThat(split.season()).isZero();
    assertThat(split.interaction()).isCloseTo(9, within(1e-12));
  }

  @Test
  void equalDatesHaveNoSpread() {
    var split = FullCrossing.split(new double[4][4][4]);
    assertThat(split).isEqualTo(new SpreadSplit(0, 0, 0, 0));
  }
}
