package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.generation.InventedSeasons.Truth;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Several sites at once, traps that were set too late, and first flights of two arrivals. */
class SeveralSitesTest {

  private static final FlightTiming TIMING = FlightTiming.searching(InventedSeasons.range());

  private static List<ObservedSeason> sites(int seasons) {
    var all = new ArrayList<ObservedSeason>();
    for (var season : new InventedSeasons(41, Truth.usual()).seasons(seasons)) {
      all.add(season.at("Upper field"));
    }
    for (var season : new InventedSeasons(42, Truth.usual()).seasons(seasons)) {
      all.add(season.at("Lower field"));
    }
    return all;
  }

  @Test
  void sitesShareTheIntervalAndHaveTheirOwnStarts() {
    var fit = TIMING.fit(sites(2));
    assertThat(fit.verdict()).isEqualTo(IntervalVerdict.SEVERAL_SEASONS);
    assertThat(fit.seasons())
        .extracting(SeasonTiming::label)
        .containsExactly(
            "2011 at Upper field",
            "2012 at Upper field",
            "2011 at Lower field",
            "2012 at Lower field");
    assertThat(fit.seasons())
        .extracting(season -> season.start().degreeDaysC())
        .doesNotHaveDuplicates();
    assertThat(fit.workingInterval().degreeDaysC()).isCloseTo(400, within(8.0));
    // two years and not four seasons: sites of one year are no replicates
    var estimate = fit.interval().orElseThrow();
    assertThat(estimate.seasons()).isEqualTo(2);
    var mean =
        fit.seasons().stream()
            .filter(season -> season.year() == 2011)
            .mapToDouble(season -> season.interval().orElseThrow().degreeDaysC())
            .average()
            .orElseThrow();
    assertThat(estimate.bySeason().get(0)).isCloseTo(mean, within(1e-9));
    assertThat(fit.report().toString()).contains("each year counts once");
    assertThat(fit.visits()).extracting(VisitFit::site).contains("Upper field", "Lower field");
  }

  @Test
  void twoSitesInOneYearHoldForThisSeasonOnly() {
    var fit = TIMING.fit(sites(1));
    assertThat(fit.verdict()).isEqualTo(IntervalVerdict.THIS_SEASON_ONLY);
    assertThat(fit.interval().orElseThrow().seasons()).isEqualTo(1);
  }

  /** Traps set in the middle of the first flight: its start follows from the rest, and is told. */
  @Test
  void trapsSetTooLateAreTold() {
    var whole = new InventedSeasons(43, Truth.usual()).seasons(3);
    var reference = TIMING.fit(whole);
    var late = new ArrayList<>(whole);
    var middle = reference.seasons().get(1).startDay().orElseThrow();
    var season = whole.get(1);
    var rest =
        season.traps().visits().stream().filter(visit -> !visit.from().isBefore(middle)).toList();
    late.set(
        1,
        new ObservedSeason(
            new TrapSeason(season.year(), rest), season.scale(), season.temperatures(), ""));
    var fit = TIMING.fit(late);
    assertThat(fit.seasons().get(0).beganBeforeTraps()).isFalse();
    assertThat(fit.seasons().get(1).beganBeforeTraps()).isTrue();
    assertThat(fit.seasons().get(1).shareBeforeTraps()).isBetween(0.2, 0.85);
    assertThat(fit.seasons().get(1).start().degreeDaysC())
        .isCloseTo(reference.seasons().get(1).start().degreeDaysC(), within(25.0));
    assertThat(fit.workingInterval().degreeDaysC()).isCloseTo(400, within(10.0));
    assertThat(fit.toString().replaceAll("\\s+", " "))
        .contains("season 2012: the first flight began before the traps were set");
  }

  /** Two arrivals far apart are found, and one flight is not cut in two. */
  @Test
  void arrivalsEnterOnlyWhereTheyLowerTheCriterion() {
    var timing = FlightTiming.searching(InventedFlights.range()).withArrivalsUpTo(2);
    var two = timing.fit(InventedFlights.of(FlightWorld.TWO_ARRIVALS).draw(7));
    assertThat(two.modes().get(0).arrivals()).isEqualTo(2);
    for (var season : two.seasons()) {
      assertThat(season.arrivals()).hasSize(2);
      assertThat(season.arrivals().get(1).delayDegreeDaysC()).isBetween(40.0, 150.0);
      assertThat(season.arrivals().stream().mapToDouble(FlightArrival::share).sum())
          .isCloseTo(1, within(1e-9));
    }
    assertThat(two.workingInterval().degreeDaysC()).isCloseTo(270, within(15.0));
    assertThat(two.toString()).contains("Arrivals of the first flight");
    var one = timing.fit(InventedFlights.of(FlightWorld.MODEL_TRUE).draw(2));
    assertThat(one.modes().get(0).arrivals()).isEqualTo(1);
    assertThat(one.seasons().get(0).arrivals()).containsExactly(new FlightArrival(1, 0));
  }
}
