package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Interval and dates under other lower thresholds, and the threshold estimated with them. */
class ThresholdTest {

  private static final FlightTiming TIMING = FlightTiming.searching(InventedFlights.range());
  private static final List<ObservedSeason> SEASONS =
      InventedFlights.of(FlightWorld.MODEL_TRUE).draw(1);

  private static List<ObservedSeason> withoutTemperatures() {
    return SEASONS.stream()
        .map(season -> new ObservedSeason(season.traps(), season.scale()))
        .toList();
  }

  /** Two degrees too high: about 209 °C·d in place of 270, and the third flight within a day. */
  @Test
  void theIntervalMovesALotAndTheDatesHardly() {
    var fit = TIMING.fit(SEASONS);
    var other = fit.sensitivity().orElseThrow();
    assertThat(other.outcomes()).hasSize(3);
    assertThat(other.used()).isEqualTo(1);
    assertThat(other.outcomes())
        .extracting(each -> each.lower().celsius())
        .containsExactly(5.4, 7.4, 9.4);
    assertThat(other.atUsed().workingInterval()).isEqualTo(fit.workingInterval());
    assertThat(other.outcomes().get(2).workingInterval().degreeDaysC()).isBetween(195.0, 220.0);
    assertThat(other.outcomes().get(0).workingInterval().degreeDaysC()).isBetween(325.0, 350.0);
    for (var outcome : other.outcomes()) {
      for (var flight = 1; flight <= 3; flight++) {
        assertThat(outcome.largestShiftDays(other.atUsed(), flight).orElseThrow()).isLessThan(4);
      }
      assertThat(outcome.meanShiftDays(other.atUsed(), 9)).isEmpty();
    }
    assertThat(fit.toString().replaceAll("\\s+", " "))
        .contains("with the lower threshold at 5.4 to 9.4 °C the interval goes from");
  }

  @Test
  void withoutTemperaturesNothingIsSaidOfOtherThresholds() {
    assertThat(TIMING.fit(withoutTemperatures()).sensitivity()).isEmpty();
    assertThatThrownBy(() -> TIMING.profileThresholds(withoutTemperatures()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("need the temperatures of each day");
  }

  /** The refit at another threshold reaches what a whole search on that scale reaches. */
  @Test
  void aRefitAgreesWithAWholeFitOnTheOtherScale() {
    var profile = TIMING.profileThresholds(SEASONS, 2, 1, Progress.silent());
    var other =
        new DegreeDayModel(
            InventedFlights.MODEL.method(),
            Thresholds.above(Temperature.ofCelsius(6.4)),
            InventedFlights.MODEL.cutoff());
    var range =
        IntervalRange.between(
            new ThermalTime(230), new ThermalTime(400), Reference.invented("test"));
    var whole =
        FlightTiming.searching(range)
            .fit(SEASONS.stream().map(season -> season.on(other)).toList());
    assertThat(profile.points().get(1).lowerC()).isCloseTo(6.4, within(1e-9));
    assertThat(profile.points().get(1).intervalC())
        .isCloseTo(whole.pooled().orElseThrow().estimate().degreeDaysC(), within(0.5));
  }

  @Test
  void thresholdAndIntervalAreOnePair() {
    var profile = TIMING.profileThresholds(SEASONS);
    assertThat(profile.refused()).isFalse();
    assertThat(profile.correlation()).isBetween(-1.0, -0.95);
    assertThat(profile.lowC()).isLessThan(profile.best().lowerC());
    assertThat(profile.highC()).isGreaterThan(profile.best().lowerC());
    assertThat(profile.points()).extracting(ThresholdPoint::lowerC).isSorted();
    // a longer interval at every lower threshold
    for (var i = 1; i < profile.points().size(); i++) {
      assertThat(profile.points().get(i).intervalC())
          .isLessThan(profile.points().get(i - 1).intervalC());
    }
    for (var point : profile.points()) {
      assertThat(point.halfWidthC() > 0).isEqualTo(point.inRegion() && point.drop() < 2.302);
    }
    assertThat(profile.threshold()).isPresent();
    assertThat(profile.toString().replaceAll("\\s+", " "))
        .contains("the two go against each other (correlation -0.9", "Dates over the region");
  }

  /** Two flights of few moths do not tell the threshold. */
  @Test
  void aWideRegionIsRefused() {
    var few = InventedSeasons.Truth.usual().withGenerations(2).withMoths(30);
    var seasons = new InventedSeasons(4, few).seasons(2);
    var profile = FlightTiming.searching(InventedSeasons.range()).profileThresholds(seasons);
    assertThat(profile.refused()).isTrue();
    assertThat(profile.threshold()).isEmpty();
    assertThat(profile.highC() - profile.lowC()).isGreaterThan(ThresholdProfile.WIDEST_C);
    assertThat(profile.toString().replaceAll("\\s+", " "))
        .contains("refused: the 90 % region", "tells no threshold; keep the one from its source");
  }

  @Test
  void absurdStepsAreRefused() {
    for (var step : new double[] {0, -1, Double.NaN, 4}) {
      assertThatThrownBy(() -> TIMING.profileThresholds(SEASONS, 5, step, Progress.silent()))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining("5 °C in steps of 0.5 °C");
    }
  }
}
