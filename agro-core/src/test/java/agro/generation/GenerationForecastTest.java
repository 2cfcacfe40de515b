package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.ThermalTimeScale;
import agro.generation.InventedSeasons.Truth;
import agro.report.Progress;
import agro.report.ReadReport.Deed;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

/** Forecasts over invented seasons for which the model is the generator. */
class GenerationForecastTest {

  private static final SeasonsUnderWay FOUR = new SeasonsUnderWay(21, Truth.usual(), 4);
  private static final FlightTimingFit FIT = FOUR.fit();

  @Test
  void rowsRunByFlightAndShare() {
    var forecast = GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF));
    assertThat(forecast.rows()).isNotEmpty();
    for (var g = 2; g <= 3; g++) {
      var first = forecast.flight(g, FlightShare.FIRST).orElseThrow().dates();
      var half = forecast.flight(g, FlightShare.HALF).orElseThrow().dates();
      var last = forecast.flight(g, FlightShare.NEARLY_ALL).orElseThrow().dates();
      for (var p : new double[] {0.05, 0.5, 0.95}) {
        assertThat(first.quantileDays(p)).isLessThan(half.quantileDays(p));
        assertThat(half.quantileDays(p)).isLessThan(last.quantileDays(p));
      }
      assertThat(half.quantileDays(0.05)).isLessThan(half.quantileDays(0.95));
    }
    assertThat(forecast.table().toText()).contains("nearly all");
    assertThat(forecast.presentation().toText()).contains("Before you use these figures");
    assertThat(forecast).isEqualTo(GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF)));
  }

  /** The median of the second flight lies near the truth, fitted on the whole season afterwards. */
  @Test
  void secondFlightComesNearTheDayThatTheWholeSeasonShows() {
    var half =
        GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF))
            .flight(2, FlightShare.HALF)
            .orElseThrow()
            .dates();
    var afterwards =
        FlightTiming.searching(InventedSeasons.range()).fit(List.of(FOUR.whole)).seasons().get(0);
    var truth =
        FOUR.middleDays(
            afterwards.start().degreeDaysC(), afterwards.interval().orElseThrow().degreeDaysC(), 2);
    assertThat(half.quantileDays(0.5)).isCloseTo(truth, within(9.0));
    assertThat(truth).isBetween(half.quantileDays(0.01), half.quantileDays(0.99));
  }

  @Test
  void laterDaysOfIssueNarrowTheDate() {
    var early = width(LocalDate.of(SeasonsUnderWay.YEAR, 4, 20));
    var late = width(LocalDate.of(SeasonsUnderWay.YEAR, 6, 20));
    assertThat(late).isLessThan(early);
  }

  private static double width(LocalDate day) {
    var dates =
        GenerationForecast.of(FIT, FOUR.asOf(day))
            .flight(2, FlightShare.HALF)
            .orElseThrow()
            .dates();
    return dates.quantileDays(0.95) - dates.quantileDays(0.05);
  }

  @Test
  void spreadIsSplitInFull() {
    var row =
        GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF))
            .flight(2, FlightShare.HALF)
            .orElseThrow();
    var split = row.spread().orElseThrow();
    var ninth = row.dates().quantileDays(0.9) - row.dates().quantileDays(0.1);
    assertThat(split.standardDeviationDays()).isCloseTo(ninth / 2.563, within(0.25 * ninth));
    assertThat(split.weather()).isPositive();
    assertThat(split.season()).isPositive();
  }

  @Test
  void stagesFollowTheirFlight() {
    var stage =
        new StageOffset(
            "eggs hatch",
            new ThermalTime(90),
            InventedSeasons.MODEL.thresholds(),
            InventedSeasons.SOURCE);
    var forecast =
        GenerationForecast.of(
            FIT, FOUR.asOf(SeasonsUnderWay.AS_OF), List.of(stage), Progress.silent());
    var flight = forecast.flight(2, FlightShare.HALF).orElseThrow();
    var hatch =
        forecast.rows().stream()
            .filter(row -> row.generation() == 2 && row.event().equals("eggs hatch"))
            .filter(row -> row.share() == FlightShare.HALF)
            .findFirst()
            .orElseThrow();
    assertThat(hatch.isFlight()).isFalse();
    assertThat(hatch.dates().quantileDays(0.5) - flight.dates().quantileDays(0.5))
        .isBetween(3.0, 20.0);
  }

  @Test
  void tellsTheSeamAndThePastYears() {
    var notes =
        GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF)).report().entries(Deed.NOTED);
    assertThat(notes.toString())
        .contains("where the past years take over, on 2030-06-10", "15 past years");
  }

  @Test
  void oneSeasonSaysWhatIsAssumed() {
    var one = new SeasonsUnderWay(22, Truth.usual(), 1);
    var forecast = GenerationForecast.of(one.fit(), one.asOf(SeasonsUnderWay.AS_OF));
    assertThat(forecast.report().entries(Deed.ASSUMED).toString())
        .contains("5 % is assumed for the interval", "30 °C·d are assumed");
  }

  @Test
  void anIntervalThatIsNotIdentifiedIsThePublishedOne() {
    var single = new SeasonsUnderWay(23, Truth.usual().withGenerations(1), 3);
    var forecast = GenerationForecast.of(single.fit(), single.asOf(SeasonsUnderWay.AS_OF));
    assertThat(forecast.report().entries(Deed.ASSUMED).toString())
        .contains("the published 420 °C·d stand in", "12 %");
    var half = forecast.flight(2, FlightShare.HALF).orElseThrow().dates();
    var expected = FOUR.weather.size();
    assertThat(half.quantileDays(0.5)).isBetween(100.0, (double) expected);
  }

  /** Only seasons that show two flights apart count; with none, catches of this season begin it. */
  @Test
  void seasonsWithoutACatchLeaveTheCatchesOfThisOne() {
    var none =
        FOUR.past.stream()
            .map(season -> new ObservedSeason(emptied(season.traps()), season.scale()))
            .toList();
    var fit = FlightTiming.searching(InventedSeasons.range()).fit(none);
    assertThat(fit.verdict()).isEqualTo(IntervalVerdict.NOT_IDENTIFIED);
    assertThat(fit.model()).isEmpty();
    assertThat(fit.report().entries(Deed.DROPPED)).hasSize(4);
    var forecast = GenerationForecast.of(fit, FOUR.asOf(SeasonsUnderWay.AS_OF));
    assertThat(forecast.flight(2, FlightShare.HALF)).isPresent();
  }

  private static TrapSeason emptied(TrapSeason season) {
    return new TrapSeason(
        season.year(),
        season.visits().stream()
            .map(visit -> TrapVisit.working(visit.trap(), visit.from(), visit.date(), 0))
            .toList());
  }

  /**
   * Traps that were set after the first flight see the second one: a flight that lies behind the
   * traps must not hide those before them.
   */
  @Test
  void trapsSetAfterTheFirstFlightStillPlaceTheSecond() {
    var day = LocalDate.of(SeasonsUnderWay.YEAR, 7, 25);
    var late =
        new TrapSeason(
            SeasonsUnderWay.YEAR,
            FOUR.whole.traps().visits().stream()
                .filter(visit -> !visit.from().isBefore(LocalDate.of(SeasonsUnderWay.YEAR, 6, 10)))
                .toList());
    assertThat(late.upTo(day).totalCatch()).isGreaterThan(50);
    var full = posteriorMiddle(FOUR.asOf(day), 2);
    var seen = posteriorMiddle(FOUR.asOf(day, late, FOUR.weather), 2);
    assertThat(seen.mean()).isCloseTo(full.mean(), within(12.0));
    assertThat(Math.sqrt(seen.variance())).isLessThan(12);
  }

  private static SeasonPosterior.Moments posteriorMiddle(SeasonUnderWay season, int flight) {
    return posterior(FIT, season).moments(flight);
  }

  private static SeasonPosterior posterior(FlightTimingFit fit, SeasonUnderWay season) {
    var report = SeasonsUnderWay.report();
    var scale = ThermalTimeScale.of(season.model(), season.known(), season.firstDay());
    var data = new ObservedSeason(season.traps(), scale).usable(report);
    var prior = new NewSeasonPrior(fit, OptionalDouble.empty(), 8, report);
    return new SeasonPosterior(data, fit, prior)
        .run(fit.timing().range(), scale.totalC(), Progress.silent());
  }

  /** Without a visit this season the start is foretold by t over the past seasons, two or four. */
  @Test
  void withoutAVisitTheStartIsThePredictiveOne() {
    for (var number : new int[] {2, 3, 4}) {
      var seasons = new SeasonsUnderWay(24, Truth.usual(), number);
      var fit = seasons.fit();
      var none = new TrapSeason(SeasonsUnderWay.YEAR, List.of());
      var posterior =
          posterior(
              fit, seasons.asOf(LocalDate.of(SeasonsUnderWay.YEAR, 4, 1), none, seasons.weather));
      var starts =
          fit.seasons().stream().mapToDouble(season -> season.start().degreeDaysC()).toArray();
      var mean = Arrays.stream(starts).average().orElseThrow();
      var squares = Arrays.stream(starts).map(x -> (x - mean) * (x - mean)).sum();
      var scale = Math.max(5, Math.sqrt(squares / (number - 1))) * Math.sqrt(1 + 1.0 / number);
      var middle = posterior.quantiles(1, 201);
      var t = new TDistribution(number - 1);
      // a start lies after the season's first day, and not a whole interval later than usual
      var below = t.cumulativeProbability(-mean / scale);
      var above = t.cumulativeProbability(fit.workingInterval().degreeDaysC() / scale);
      for (var p : new double[] {0.1, 0.25, 0.5, 0.75, 0.9}) {
        var expected = mean + scale * t.inverseCumulativeProbability(below + p * (above - below));
        assertThat(middle[(int) (201 * p)])
            .as("%d seasons, quantile %.2f", number, p)
            .isCloseTo(expected, within(0.25 * scale));
      }
    }
  }

  /** What comes later cannot change a forecast, for it is cut off before. */
  @Test
  void laterDataChangeNothing() {
    var day = SeasonsUnderWay.AS_OF;
    var later = new ArrayList<TrapVisit>();
    for (var visit : FOUR.whole.traps().visits()) {
      later.add(
          visit.date().isAfter(day)
              ? TrapVisit.working(visit.trap(), visit.from(), visit.date(), 1_000_000)
              : visit);
    }
    var hot = new ArrayList<DailyExtremes>();
    for (var i = 0; i < FOUR.weather.size(); i++) {
      var date = FOUR.weather.day(i);
      hot.add(
          date.isBefore(day)
              ? FOUR.weather.extremes(date).orElseThrow()
              : new DailyExtremes(date, 40, 55));
    }
    var changed =
        DailyTemperatures.of(FOUR.weather.place(), FOUR.weather.medium(), hot, DayOrigin.OBSERVED);
    var honest = GenerationForecast.of(FIT, FOUR.asOf(day));
    var tried =
        GenerationForecast.of(
            FIT, FOUR.asOf(day, new TrapSeason(SeasonsUnderWay.YEAR, later), changed));
    assertThat(tried.rows()).isEqualTo(honest.rows());
    assertThat(tried.report()).isEqualTo(honest.report());
  }

  @Test
  void progressIsHeardAndMayCancel() {
    var heard = new ArrayList<String>();
    Progress listener =
        (what, done, total) -> {
          assertThat(done).isBetween(0L, total);
          heard.add(what);
          return true;
        };
    var fit = FlightTiming.searching(InventedSeasons.range()).fit(FOUR.past, listener);
    GenerationForecast.of(fit, FOUR.asOf(SeasonsUnderWay.AS_OF), List.of(), listener);
    assertThat(heard).contains("search of the interval", "season under way", "forecast");

    Progress cancelling = (what, done, total) -> done < 1;
    assertThatThrownBy(
            () -> FlightTiming.searching(InventedSeasons.range()).fit(FOUR.past, cancelling))
        .isInstanceOf(CancellationException.class)
        .hasMessageContaining("cancelled after 1 of");
    assertThatThrownBy(
            () ->
                GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF), List.of(), cancelling))
        .isInstanceOf(CancellationException.class);
  }
}
