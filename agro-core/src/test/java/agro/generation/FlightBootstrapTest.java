package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.report.Progress;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Refits to counts drawn anew about the fitted means. */
class FlightBootstrapTest {

  private static final FlightTiming TIMING = FlightTiming.searching(InventedFlights.range());
  private static final List<ObservedSeason> SEASONS =
      InventedFlights.of(FlightWorld.INTERVAL_VARIES).draw(1);

  @Test
  void refitsScatterAboutTheFit() {
    var refitted = TIMING.bootstrap(SEASONS, 120, 5);
    var fit = TIMING.fit(SEASONS);
    assertThat(refitted.fit().interval()).isEqualTo(fit.interval());
    assertThat(refitted.draws()).hasSize(120 - refitted.atEdge());
    var mean =
        refitted.draws().stream()
            .mapToDouble(draw -> draw.interval().mean().degreeDaysC())
            .average()
            .orElseThrow();
    assertThat(mean).isCloseTo(fit.workingInterval().degreeDaysC(), within(2.0));
    // what the seasons' own counts leave is taken off
    assertThat(refitted.betweenSeasonsC())
        .isPositive()
        .isLessThan(fit.interval().orElseThrow().standardDeviationC());
    var interval = refitted.interval(0.9);
    var half = fit.interval().orElseThrow().halfWidthOfMeanC(0.9);
    assertThat(interval.low()).isLessThan(interval.estimate());
    assertThat(interval.high()).isGreaterThan(interval.estimate());
    // the studentised limits do the work of Student's t
    assertThat((interval.high() - interval.low()) / 2).isBetween(0.6 * half, 1.7 * half);
    assertThat(refitted.intervals(0.9)).hasSize(1 + 4 + 3);
    assertThat(refitted.toString()).contains("120, seed 5").contains("Size of the counts");
  }

  @Test
  void equalSeedsGiveEqualRefits() {
    var first = TIMING.bootstrap(SEASONS, 20, 9);
    assertThat(TIMING.bootstrap(SEASONS, 20, 9).draws()).isEqualTo(first.draws());
    assertThat(TIMING.bootstrap(SEASONS, 10, 9).draws())
        .as("the first ten do not depend on how many follow")
        .isEqualTo(first.draws().subList(0, 10));
    assertThat(TIMING.bootstrap(SEASONS, 20, 10).draws()).isNotEqualTo(first.draws());
  }

  @Test
  void oneSeasonGivesLimitsWithinItself() {
    var refitted = TIMING.bootstrap(SEASONS.subList(0, 1), 60, 5);
    assertThat(refitted.betweenSeasonsC()).isZero();
    assertThat(refitted.interval(0.9).of()).contains("this season only");
    assertThat(refitted.interval(0.9).low()).isLessThan(refitted.interval(0.9).high());
  }

  @Test
  void tellsHowFarItIsAndCanBeCancelled() {
    var parts = new LinkedHashSet<String>();
    TIMING.bootstrap(SEASONS, 20, 5, (what, done, total) -> parts.add(what) || done <= total);
    assertThat(parts).contains("search of the interval", "refits");
    Progress impatient = (what, done, total) -> !(what.equals("refits") && done > 0);
    assertThatThrownBy(() -> TIMING.bootstrap(SEASONS, 1000, 5, impatient))
        .isInstanceOf(CancellationException.class)
        .hasMessageStartingWith("refits was cancelled");
  }

  @Test
  void refusesWhatTellsNoInterval() {
    var one = new InventedSeasons(15, InventedSeasons.Truth.usual().withGenerations(1)).seasons(2);
    assertThatThrownBy(() -> FlightTiming.searching(InventedSeasons.range()).bootstrap(one, 10, 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("not identified");
    assertThatThrownBy(() -> TIMING.bootstrap(List.of(), 10, 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no season with a catch");
    assertThatThrownBy(() -> TIMING.bootstrap(SEASONS, 0, 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("0 refits");
  }

  /** The studentised interval over seeds, in the world in which a percentile interval fails. */
  @Test
  @Tag("slow")
  void studentisedLimitsHoldTheTruth() {
    var seeds = 60;
    var held = 0;
    for (var seed = 1; seed <= seeds; seed++) {
      var seasons = InventedFlights.of(FlightWorld.INTERVAL_VARIES).draw(seed);
      var interval = TIMING.bootstrap(seasons, 100, seed).interval(0.9);
      held += interval.low() <= 270 && 270 <= interval.high() ? 1 : 0;
    }
    System.out.println("studentised limits hold the truth in " + held + " of " + seeds);
    // 99 % binomial limits of 60 draws at 0.90 are 47 to 59
    assertThat(held).isBetween(47, 60);
  }
}
