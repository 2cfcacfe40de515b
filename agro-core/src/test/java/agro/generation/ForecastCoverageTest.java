package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.report.Progress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the interval of a forecast date holds the truth, by lead, over seeds 1 to n in the four
 * worlds whose flights are those of the fitted model.
 */
class ForecastCoverageTest {

  private static final int SEEDS = Integer.getInteger("agro.forecast.seeds", 400);
  private static final List<Integer> LEADS = List.of(7, 28, 56);

  @Test
  @Tag("slow")
  void datesAreHeldAtEveryLeadInTheFourWorlds() {
    var studies = new ArrayList<ForecastCoverage>();
    for (var world : FlightWorld.values()) {
      if (world.fitsTheModel()) {
        studies.add(study(world, SEEDS));
      }
    }
    System.out.println(ForecastCoverage.sideBySide(studies).toText());
    for (var study : studies) {
      for (var lead : LEADS) {
        var limits = study.limits(lead, 0.9, 0.99);
        var what = study.flights().world().words() + ", " + lead + " days before";
        assertThat(study.ofLead(lead)).hasSize(SEEDS);
        if (study.flights().world() == FlightWorld.MODEL_TRUE) {
          assertThat(limits.get(0)).as(what).isLessThanOrEqualTo(0.90);
          assertThat(limits.get(1)).as(what).isGreaterThanOrEqualTo(0.90);
        } else {
          assertThat(limits.get(1)).as(what).isGreaterThanOrEqualTo(0.85);
        }
      }
    }
  }

  private static ForecastCoverage study(FlightWorld world, int seeds) {
    return ForecastCoverage.of(
        new InventedFlights(world, 5),
        FlightTiming.searching(InventedFlights.range()),
        LEADS,
        seeds,
        Progress.silent());
  }

  @Test
  void centralIntervalsAreCounted() {
    var trials = new ArrayList<ForecastCoverage.Trial>();
    for (var i = 0; i < 20; i++) {
      trials.add(new ForecastCoverage.Trial(7, 2, 100, 101, i < 15 ? 0.94 : 0.96));
    }
    trials.add(new ForecastCoverage.Trial(14, 3, 100, 99, 0.2));
    var study =
        new ForecastCoverage(
            new InventedFlights(FlightWorld.MODEL_TRUE, 5),
            FlightTiming.searching(InventedFlights.range()),
            trials);
    assertThat(study.leadDays()).containsExactly(7, 14);
    assertThat(study.coverage(7, 0.9)).isEqualTo(0.75);
    assertThat(study.coverage(14, 0.5)).isZero();
    assertThat(study.coverage(14, 0.8)).isEqualTo(1);
    // base R: binom.test(15, 20, conf.level = 0.95)$conf.int
    assertThat(study.limits(7, 0.9, 0.95).get(0)).isCloseTo(0.5089541, within(1e-6));
    assertThat(study.limits(7, 0.9, 0.95).get(1)).isCloseTo(0.9134285, within(1e-6));
    assertThat(study.presentation().toMarkdown()).contains("the fitted model is true");
  }

  @Test
  void oneSeedIsForetoldNearItsTruth() {
    var study = study(FlightWorld.MODEL_TRUE, 2);
    assertThat(study.trials()).hasSize(2 * LEADS.size());
    for (var trial : study.ofLead(7)) {
      assertThat(trial.medianDays()).isCloseTo(trial.trueDays(), within(8.0));
    }
    assertThat(study.trials().get(0).flight()).isEqualTo(2);
    assertThat(study.trials().get(LEADS.size()).flight()).isEqualTo(3);
  }

  @Test
  void twoSeasonsAreTooFew() {
    assertThatThrownBy(
            () ->
                ForecastCoverage.of(
                    new InventedFlights(FlightWorld.MODEL_TRUE, 2),
                    FlightTiming.searching(InventedFlights.range()),
                    LEADS,
                    1,
                    Progress.silent()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("one to foretell");
  }
}
