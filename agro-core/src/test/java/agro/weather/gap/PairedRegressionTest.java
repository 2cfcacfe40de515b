package agro.weather.gap;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.weather.SeattleDays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PairedRegressionTest {

  /** Value and prediction error against lm of base R on open data. */
  @Test
  void agreesWithLinearModelsInR() {
    var all = SeattleDays.all();
    var lines = ReferenceTable.read(PairedRegressionTest.class, "monthly-regression.csv");
    assertThat(lines).hasSize(9);
    for (var line : lines) {
      int month = ReferenceTable.whole(line, "month");
      var chosen =
          IntStream.range(0, all.size()).filter(i -> all.day(i).getMonthValue() == month).toArray();
      var fit =
          PairedRegression.of(all.minimaCelsius(), all.maximaCelsius(), chosen, chosen.length);
      double at = number(line, "at");
      assertThat(fit.value(at)).isCloseTo(number(line, "value"), within(1e-9));
      assertThat(fit.deviation()).isCloseTo(number(line, "deviation"), within(1e-9));
      assertThat(fit.deviation() * Math.sqrt(1 + fit.leverage(at)))
          .isCloseTo(number(line, "prediction_error"), within(1e-9));
    }
  }

  @Test
  void aNeighbourThatNeverChangesGivesTheMean() {
    var fit =
        PairedRegression.of(new double[] {3, 3, 3}, new double[] {1, 2, 6}, new int[] {0, 1, 2}, 3);
    assertThat(fit.value(8)).isEqualTo(3);
    assertThat(fit.deviation()).isCloseTo(Math.sqrt(14), within(1e-12));
  }
}
