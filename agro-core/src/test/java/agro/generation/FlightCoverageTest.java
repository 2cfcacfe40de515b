package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.report.Progress;
import agro.units.Temperature;
import java.util.ArrayList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the 90 % interval holds the truth, over seeds 1 to n. Four worlds have the flights of
 * the fitted model; three break it, and what that costs is printed.
 */
class FlightCoverageTest {

  private static final int SEEDS = 400;

  @Test
  @Tag("slow")
  void coversInTheFourWorldsOfTheModel() {
    var studies = new ArrayList<FlightCoverage>();
    for (var world : FlightWorld.values()) {
      if (world.fitsTheModel()) {
        studies.add(FlightCoverage.of(world, SEEDS));
      }
    }
    System.out.println(FlightCoverage.sideBySide(studies).toText());
    var limits = studies.get(0).limits(0.99);
    assertThat(studies.get(0).coverage()).isGreaterThan(0.85);
    assertThat(limits.get(0)).isLessThanOrEqualTo(0.90);
    assertThat(limits.get(1)).isGreaterThanOrEqualTo(0.90);
    for (var study : studies) {
      assertThat(study.given()).as("%s", study.flights().world()).isGreaterThan(SEEDS * 9 / 10);
      assertThat(study.limits(0.99).get(1)).isGreaterThanOrEqualTo(0.90);
      assertThat(study.coverage()).as("%s", study.flights().world()).isGreaterThanOrEqualTo(0.85);
    }
  }

  @Test
  @Tag("slow")
  void tellsWhatOtherWorldsCost() {
    var plain = FlightTiming.searching(InventedFlights.range());
    var life = CatchConditions.NONE.with(AdultLife.exponential(10)).with(LureFade.halfLife(25));
    var warm = CatchConditions.NONE.with(FitNights.minimumAtLeast(Temperature.ofCelsius(8)));
    var studies = new ArrayList<FlightCoverage>();
    studies.add(study(FlightWorld.ADULT_LIFE_AND_LURE_FADE, plain));
    studies.add(study(FlightWorld.ADULT_LIFE_AND_LURE_FADE, plain.with(life)));
    studies.add(study(FlightWorld.COLD_NIGHTS, plain));
    studies.add(study(FlightWorld.COLD_NIGHTS, plain.with(warm)));
    studies.add(study(FlightWorld.TWO_ARRIVALS, plain));
    studies.add(study(FlightWorld.TWO_ARRIVALS, plain.withArrivalsUpTo(2)));
    System.out.println(FlightCoverage.sideBySide(studies).toText());
    var coverage = studies.stream().mapToDouble(FlightCoverage::coverage).toArray();
    assertThat(coverage[0]).as("long lives unmodelled").isBetween(0.35, 0.80);
    assertThat(coverage[1]).as("long lives modelled").isGreaterThan(0.80);
    assertThat(coverage[2]).as("cold nights unmodelled").isBetween(0.45, 0.82);
    assertThat(coverage[3]).as("cold nights modelled").isGreaterThan(0.80);
    assertThat(coverage[4]).as("two arrivals").isGreaterThan(0.80);
    assertThat(coverage[5]).as("two arrivals allowed").isGreaterThan(0.80);
    assertThat(studies.get(0).biasC()).as("lives of adults make K too long").isGreaterThan(5);
    assertThat(Math.abs(studies.get(1).biasC())).isLessThan(4);
  }

  private static FlightCoverage study(FlightWorld world, FlightTiming timing) {
    return FlightCoverage.of(InventedFlights.of(world), timing, 60, Progress.silent());
  }

  @Test
  void limitsAreThoseOfClopperAndPearson() {
    var trials = new ArrayList<FlightCoverage.Trial>();
    for (var i = 0; i < 20; i++) {
      trials.add(new FlightCoverage.Trial(i < 15 ? 270 : 300, i < 19 ? 5 : Double.NaN));
    }
    var study =
        new FlightCoverage(
            InventedFlights.of(FlightWorld.MODEL_TRUE),
            FlightTiming.searching(InventedFlights.range()),
            trials);
    assertThat(study.given()).isEqualTo(19);
    assertThat(study.covered()).isEqualTo(15);
    // base R: binom.test(15, 19, conf.level = 0.95)$conf.int
    assertThat(study.limits(0.95).get(0)).isCloseTo(0.5443469, within(1e-6));
    assertThat(study.limits(0.95).get(1)).isCloseTo(0.9394754, within(1e-6));
  }

  @Test
  void seedsGiveEqualSeasonsAndDoNotDependOnThreads() {
    var flights = InventedFlights.of(FlightWorld.ACTIVITY_AND_INTERVAL);
    assertThat(flights.draw(7).get(2).traps()).isEqualTo(flights.draw(7).get(2).traps());
    assertThat(flights.draw(7).get(2).traps()).isNotEqualTo(flights.draw(8).get(2).traps());
    var study = FlightCoverage.of(FlightWorld.MODEL_TRUE, 3);
    assertThat(FlightCoverage.of(FlightWorld.MODEL_TRUE, 5).trials().subList(0, 3))
        .isEqualTo(study.trials());
    assertThat(study.presentation().toMarkdown()).contains("the fitted model is true");
  }
}
