package agro.weather.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.InventedWeather;
import agro.weather.SeattleDays;
import agro.weather.climate.ClimateNormals;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stated errors against what artificial gaps really missed, on open and on invented days. */
class GapTrialTest {

  private static final DailyTemperatures SEATTLE = SeattleDays.all();
  private static final DailyTemperatures INVENTED =
      InventedWeather.days("2012-01-01", "2015-12-31", 1, 0.7, 3, 21);

  private static void assertHonest(GapTrial trial) {
    assertThat(trial.rows()).isNotEmpty();
    for (var row : trial.rows()) {
      assertThat(row.gaps()).as("%s", row).isGreaterThan(100);
      assertThat(row.coverage()).as("%s", row).isBetween(0.85, 0.95);
      assertThat(row.statedCelsius() / row.missCelsius()).as("%s", row).isCloseTo(1, within(0.15));
      assertThat(Math.abs(row.biasCelsius())).as("%s", row).isLessThan(0.5);
    }
  }

  @Test
  void straightLinesAreHonest() {
    var filling = GapFilling.withDefaults().interpolateUpTo(5);
    assertHonest(GapTrial.of(filling, SEATTLE, List.of(1, 2, 3, 5), 6, 1));
    assertHonest(GapTrial.of(filling, INVENTED, List.of(1, 2, 3, 5), 6, 2));
  }

  @Test
  void neighboursAreHonest() {
    var open = GapFilling.withDefaults().neighbour(GapFillingTest.neighbourOf(SEATTLE, 1.5, 8));
    assertHonest(GapTrial.of(open, SEATTLE, List.of(1, 5, 14), 8, 3));
    var invented =
        GapFilling.withDefaults().neighbour(GapFillingTest.neighbourOf(INVENTED, 1.5, 9));
    assertHonest(GapTrial.of(invented, INVENTED, List.of(1, 5, 14), 8, 4));
  }

  @Test
  void theClimateIsHonest() {
    var open = GapFilling.withDefaults().climatology(ClimateNormals.of(SEATTLE));
    assertHonest(GapTrial.of(open, SEATTLE, List.of(1, 5, 14), 8, 5));
    var invented = GapFilling.withDefaults().climatology(ClimateNormals.of(INVENTED));
    assertHonest(GapTrial.of(invented, INVENTED, List.of(1, 5, 14), 8, 6));
  }

  @Test
  void missesGrowWithTheLengthOfALine() {
    var trial =
        GapTrial.of(GapFilling.withDefaults().interpolateUpTo(7), SEATTLE, List.of(1, 3, 7), 6, 1);
    assertThat(trial.rows().get(0).missCelsius()).isLessThan(trial.rows().get(2).missCelsius());
    assertThat(trial.rows().get(2).missCelsius()).isLessThan(trial.rows().get(4).missCelsius());
    assertThat(trial.presentation().toText()).contains("straight lines up to 7 days", "minimum");
    assertThat(GapTrial.of(GapFilling.withDefaults().interpolateUpTo(7), SEATTLE, List.of(3), 2, 1))
        .isEqualTo(
            GapTrial.of(GapFilling.withDefaults().interpolateUpTo(7), SEATTLE, List.of(3), 2, 1));
  }

  @Test
  void refusesNothingToTry() {
    var filling = GapFilling.withDefaults();
    assertThatThrownBy(() -> GapTrial.of(filling, SEATTLE, List.of(0), 1, 1))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> GapTrial.of(filling, SEATTLE, List.of(1), 0, 1))
        .isInstanceOf(InputProblem.class);
  }
}
