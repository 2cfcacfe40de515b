package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.generation.InventedSeasons.Truth;
import agro.units.ThermalTime;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomDataGenerator;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;

/** Residuals, their correlation and what follows from it; functions of the negative binomial. */
class FitDiagnosticsTest {

  @Test
  void gammaFunctionsAgreeWithALibrary() {
    for (var x = 0.01; x < 3000; x *= 1.37) {
      assertThat(NegativeBinomial.logGamma(x))
          .isCloseTo(Gamma.logGamma(x), within(1e-11 * (1 + Math.abs(Gamma.logGamma(x)))));
      assertThat(NegativeBinomial.digamma(x))
          .isCloseTo(Gamma.digamma(x), within(1e-8 * (1 + Math.abs(Gamma.digamma(x)))));
      assertThat(NegativeBinomial.trigamma(x))
          .isCloseTo(Gamma.trigamma(x), within(1e-8 * (1 + Gamma.trigamma(x))));
    }
  }

  /** When the model is true, quantile residuals are standard normal, skewed as counts may be. */
  @Test
  void quantileResidualsAreNormalWhenTheModelIsTrue() {
    var all = new ArrayList<Double>();
    for (var seed = 51; seed < 54; seed++) {
      var fit =
          FlightTiming.searching(InventedSeasons.range())
              .fit(new InventedSeasons(seed, Truth.usual()).seasons(4));
      fit.visits().forEach(visit -> all.add(visit.quantileResidual()));
    }
    var n = all.size();
    var mean = all.stream().mapToDouble(x -> x).average().orElseThrow();
    var square = all.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum() / (n - 1);
    var cube = all.stream().mapToDouble(x -> Math.pow(x - mean, 3)).sum() / n;
    assertThat(n).isGreaterThan(600);
    assertThat(mean).isCloseTo(0, within(0.15));
    assertThat(Math.sqrt(square)).isCloseTo(1, within(0.12));
    assertThat(cube).isCloseTo(0, within(0.4));
  }

  @Test
  void correlatedCountsWidenTheIntervalWithinTheSeasons() {
    var range = InventedSeasons.range();
    var narrow =
        new PooledInterval(new ThermalTime(400), new ThermalTime(396), new ThermalTime(405), false);
    assertThat(narrow.widened(0.3, range)).isEqualTo(narrow);
    assertThat(narrow.widened(Double.NaN, range)).isEqualTo(narrow);
    var wide = narrow.widened(0.6, range);
    assertThat(wide.widenedBy()).isCloseTo(2, within(1e-12));
    assertThat(wide.low().degreeDaysC()).isCloseTo(392, within(1e-9));
    assertThat(wide.high().degreeDaysC()).isCloseTo(410, within(1e-9));
    assertThat(narrow.widened(0.999, range).low().degreeDaysC())
        .isGreaterThanOrEqualTo(range.low().degreeDaysC());
  }

  /** Activity that strays together: the page shows it, and what was done about it. */
  @Test
  void thePageTellsOfCorrelatedCounts() {
    var timing = FlightTiming.searching(InventedSeasons.range());
    var truth =
        Truth.usual()
            .with(new FlightShape(FlightCurve.NORMAL, 60, 30))
            .withSize(Double.POSITIVE_INFINITY)
            .withMoths(600);
    var seasons = new InventedSeasons(62, truth).seasons(3);
    var calm = timing.fit(seasons);
    assertThat(calm.residualCorrelation()).isLessThan(0.3);
    assertThat(calm.pooled().orElseThrow().widenedBy()).isEqualTo(1);
    assertThat(flat(calm)).contains("not above 0.3");
    var fit = timing.fit(seasons.stream().map(FitDiagnosticsTest::straying).toList());
    assertThat(fit.residualCorrelation()).isGreaterThan(0.3);
    assertThat(fit.pooled().orElseThrow().widenedBy()).isGreaterThan(1.36);
    assertThat(flat(fit))
        .contains("above 0.3: running visits stray together")
        .contains("widened by")
        .contains("the interval season by season needs no widening");
  }

  /** Activity with a memory of three quarters from visit to visit. */
  private static ObservedSeason straying(ObservedSeason season) {
    var random = new RandomDataGenerator(season.year());
    var visits = new ArrayList<TrapVisit>();
    var activity = 0.0;
    for (var v : season.traps().visits()) {
      activity = 0.75 * activity + random.nextNormal(0, 0.5);
      var count = (int) Math.round(Math.exp(activity) * v.count());
      visits.add(TrapVisit.working(v.trap(), v.from(), v.date(), count));
    }
    return new ObservedSeason(new TrapSeason(season.year(), visits), season.scale());
  }

  private static String flat(FlightTimingFit fit) {
    return fit.toString().replaceAll("\\s+", " ");
  }

  @Test
  void seasonsWithoutVisitsOrCatchTellNothingAndAreNamed() {
    var seasons = new ArrayList<>(new InventedSeasons(61, Truth.usual()).seasons(3));
    var empty = seasons.get(0);
    seasons.set(0, new ObservedSeason(new TrapSeason(empty.year(), List.of()), empty.scale()));
    var second = seasons.get(1);
    seasons.set(
        1,
        new ObservedSeason(
            new TrapSeason(
                second.year(),
                second.traps().visits().stream()
                    .map(v -> TrapVisit.working(v.trap(), v.from(), v.date(), 0))
                    .toList()),
            second.scale()));
    var fit = FlightTiming.searching(InventedSeasons.range()).fit(seasons);
    assertThat(fit.verdict()).isEqualTo(IntervalVerdict.THIS_SEASON_ONLY);
    assertThat(fit.seasons()).extracting(SeasonTiming::year).containsExactly(2013);
    assertThat(fit.report().toString().replaceAll("\\s+", " "))
        .contains("season 2011: no visit is given")
        .contains("season 2012: no animal was caught");
  }
}
