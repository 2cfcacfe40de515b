package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.ThermalTimeScale;
import agro.generation.InventedSeasons.Truth;
import agro.report.Progress;
import agro.report.ReadReport.Deed;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Start and interval of a new season hang together as they did in past ones. */
class StartAndIntervalTest {

  private static NewSeasonPrior prior(FlightTimingFit fit) {
    return new NewSeasonPrior(fit, OptionalDouble.empty(), 8, SeasonsUnderWay.report());
  }

  private static SeasonPosterior withoutCounts(
      SeasonsUnderWay seasons, FlightTimingFit fit, NewSeasonPrior prior) {
    var none = new TrapSeason(SeasonsUnderWay.YEAR, List.of());
    var season = seasons.asOf(LocalDate.of(SeasonsUnderWay.YEAR, 4, 1), none, seasons.weather);
    var scale = ThermalTimeScale.of(season.model(), season.known(), season.firstDay());
    var data = new ObservedSeason(none, scale).usable(SeasonsUnderWay.report());
    return new SeasonPosterior(data, fit, prior)
        .run(fit.timing().range(), scale.totalC(), Progress.silent());
  }

  /** Two seasons always lie on a line, so they tell no correlation; three and more do. */
  @Test
  void fewSeasonsTellNoCorrelation() {
    assertThat(prior(new SeasonsUnderWay(24, Truth.usual(), 2).fit()).correlation).isZero();
    var fit = new SeasonsUnderWay(24, Truth.usual(), 4).fit();
    var prior = prior(fit);
    assertThat(Math.abs(prior.correlation)).isBetween(0.001, 0.4);
    var report = SeasonsUnderWay.report();
    assertThat(new NewSeasonPrior(fit, OptionalDouble.empty(), 8, report).correlation)
        .isEqualTo(prior.correlation);
    assertThat(report.report().entries(Deed.NOTED).toString())
        .contains("start and interval of a new season are drawn with a correlation of")
        .contains("over 4 seasons, shrunk as if three more had shown none");
    assertThat(new NewSeasonPrior(fit, OptionalDouble.of(120), 8, report).correlation).isZero();
  }

  /** The pair has the correlation that was asked for; each alone keeps its distribution. */
  @Test
  void aNegativeCorrelationNarrowsTheLaterFlights() {
    var seasons = new SeasonsUnderWay(25, Truth.usual(), 6);
    var fit = seasons.fit();
    var apart = withoutCounts(seasons, fit, prior(fit).withCorrelation(0));
    var joined = withoutCounts(seasons, fit, prior(fit).withCorrelation(-0.6));
    var correlation =
        joined.covariance() / Math.sqrt(joined.startVariance() * joined.intervalVariance());
    assertThat(apart.covariance()).isCloseTo(0, within(1e-6));
    assertThat(correlation).isBetween(-0.7, -0.45);
    assertThat(joined.startVariance())
        .isCloseTo(apart.startVariance(), within(0.05 * apart.startVariance()));
    assertThat(joined.intervalVariance())
        .isCloseTo(apart.intervalVariance(), within(0.05 * apart.intervalVariance()));
    for (var g = 2; g <= 3; g++) {
      assertThat(joined.moments(g).variance()).isLessThan(0.9 * apart.moments(g).variance());
    }
  }

  /**
   * Middle of the second flight before any catch, over invented worlds: the intervals are narrower
   * on the whole, and still hold the truth about nine times in ten.
   */
  @Test
  @Tag("slow")
  void coverageStays() {
    var worlds = 200;
    var inside = new int[2];
    var width = new double[2];
    var negative = 0;
    for (var seed = 1; seed <= worlds; seed++) {
      var truth = Truth.usual();
      var seasons = new SeasonsUnderWay(seed, truth, 4);
      var fit = seasons.fit();
      var afterwards = FlightTiming.searching(InventedSeasons.range()).fit(List.of(seasons.whole));
      if (fit.interval().isEmpty() || afterwards.interval().isEmpty()) {
        continue;
      }
      var season = afterwards.seasons().get(0);
      var middle = season.start().degreeDaysC() + season.interval().orElseThrow().degreeDaysC();
      var prior = prior(fit);
      negative += prior.correlation < 0 ? 1 : 0;
      var priors = new NewSeasonPrior[] {prior, prior.withCorrelation(0)};
      for (var i = 0; i < 2; i++) {
        var values = withoutCounts(seasons, fit, priors[i]).quantiles(2, 201);
        var low = values[10];
        var high = values[190];
        inside[i] += low <= middle && middle <= high ? 1 : 0;
        width[i] += high - low;
      }
    }
    System.out.printf(
        Locale.ROOT,
        "start and interval: coverage %.3f joined, %.3f apart; width %.1f and %.1f °C·d;"
            + " negative in %d%n",
        inside[0] / (double) worlds,
        inside[1] / (double) worlds,
        width[0] / worlds,
        width[1] / worlds,
        negative);
    assertThat(inside[0]).isBetween((int) (0.84 * worlds), (int) (0.98 * worlds));
    assertThat(width[0]).isLessThan(width[1]);
  }
}
