package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.units.Temperature;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a catch depends on beside the flight: lures, nights, the life of adults. */
class CatchConditionsTest {

  private static final FlightTiming TIMING = FlightTiming.searching(InventedFlights.range());
  private static final LocalDate FIRST = LocalDate.of(2020, 4, 1);

  /** Ten days with a mean of 17 °C, so 10 °C·d each above 7; the nights get colder. */
  private static ObservedSeason season(TrapVisit... visits) {
    var days = new ArrayList<DailyExtremes>();
    for (var d = 0; d < 10; d++) {
      days.add(new DailyExtremes(FIRST.plusDays(d), 16 - d, 18 + d));
    }
    var weather = DailyTemperatures.of("Field", Medium.shelterAir(), days, DayOrigin.OBSERVED);
    return ObservedSeason.of(new TrapSeason(2020, List.of(visits)), InventedSeasons.MODEL, weather);
  }

  private static TrapVisit visit(int from, int to, int count) {
    return TrapVisit.working("A", FIRST.plusDays(from), FIRST.plusDays(to), count);
  }

  private static double[] shares(ObservedSeason season, CatchConditions conditions) {
    return season
        .usable(conditions, new ReadReport.Collector("test"))
        .shares(FlightCurve.NORMAL, 40, 15);
  }

  @Test
  void withoutConditionsAVisitSeesTheShareBetweenItsEnds() {
    var season = season(visit(1, 4, 5), visit(4, 8, 2));
    var sums = season.scale().sumsC();
    var shares = shares(season, CatchConditions.NONE);
    assertThat(shares[0])
        .isCloseTo(
            FlightCurve.NORMAL.cumulative((sums[4] - 40) / 15)
                - FlightCurve.NORMAL.cumulative((sums[1] - 40) / 15),
            within(1e-12));
    var everyNight = shares(season, CatchConditions.NONE.with(FitNights.except(Set.of())));
    assertThat(everyNight).containsExactly(shares, within(1e-12));
  }

  @Test
  void adultsThatLiveForADayFlyOnTheDayTheyEmerge() {
    var season = season(visit(1, 4, 5), visit(4, 8, 2));
    var shares = shares(season, CatchConditions.NONE);
    var shortLived = shares(season, CatchConditions.NONE.with(AdultLife.exponential(0.05)));
    assertThat(shortLived).containsExactly(shares, within(1e-6));
  }

  /** By hand: each night sees the emergence of earlier days with the share of life that is left. */
  @Test
  void theCatchIsTheConvolutionOfEmergenceAndLife() {
    var life = AdultLife.uniform(2);
    var byNight = CatchWeights.byNightOfLife(life);
    assertThat(byNight)
        .containsExactly(new double[] {7 / 16., 5 / 16., 3 / 16., 1 / 16.}, within(1e-3));
    var season = season(visit(6, 7, 1));
    var sums = season.scale().sumsC();
    var expected = 0.0;
    for (var age = 0; age < byNight.length; age++) {
      expected +=
          byNight[age]
              * (FlightCurve.NORMAL.cumulative((sums[7 - age] - 40) / 15)
                  - FlightCurve.NORMAL.cumulative((sums[6 - age] - 40) / 15));
    }
    assertThat(shares(season, CatchConditions.NONE.with(life))[0])
        .isCloseTo(expected, within(1e-12));
  }

  @Test
  void nightsOfLifeAddUpToOne() {
    for (var life : List.of(AdultLife.exponential(10), AdultLife.uniform(10))) {
      var shares = CatchWeights.byNightOfLife(life);
      assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
      assertThat(shares).isSortedAccordingTo((a, b) -> Double.compare(b, a));
      assertThat(life.survival(0)).isEqualTo(1);
    }
    assertThat(AdultLife.uniform(10).survival(25)).isZero();
    assertThat(AdultLife.exponential(10).survival(10)).isCloseTo(Math.exp(-1), within(1e-12));
  }

  @Test
  void aLureLosesHalfInAHalfLifeSinceItsRenewal() {
    var renewed =
        new TrapVisit("A", FIRST.plusDays(1), FIRST.plusDays(4), 5, TrapState.WORKING, 3, true);
    var old = season(visit(1, 4, 5), visit(4, 5, 2));
    var fresh = season(renewed, visit(4, 5, 2));
    var fade = CatchConditions.NONE.with(LureFade.halfLife(3));
    assertThat(shares(old, fade)[1]).isCloseTo(0.5 * shares(fresh, fade)[1], within(1e-12));
    assertThat(shares(fresh, fade)[1])
        .isCloseTo(shares(fresh, CatchConditions.NONE)[1], within(1e-12));
  }

  @Test
  void coldNightsDoNotCount() {
    // minima fall by one a day from 16 on the first; the night of day d ends in that of day d + 1
    var season = season(visit(1, 4, 5), visit(4, 7, 0), visit(7, 9, 3));
    var warm = CatchConditions.NONE.with(FitNights.minimumAtLeast(Temperature.ofCelsius(13)));
    var report = new ReadReport.Collector("test");
    var data = season.usable(warm, report);
    assertThat(data.visits()).isEqualTo(1);
    assertThat(data.nightsOpen[0]).isEqualTo(2);
    assertThat(report.report().entries(Deed.DROPPED).toString())
        .contains("none of its nights was fit for flight, so it tells nothing (A on 2020-04-08)")
        .contains(
            "caught animals though none of its nights was fit for flight: is the limit right?");
    var evening = FitNights.eveningAtLeast(Temperature.ofCelsius(16.6));
    // halfway between 18 + d and 15 - d
    assertThat(evening.isFit(FIRST, season.temperatures().orElseThrow())).isFalse();
    assertThat(
            FitNights.eveningAtLeast(Temperature.ofCelsius(16.4))
                .isFit(FIRST, season.temperatures().orElseThrow()))
        .isTrue();
  }

  @Test
  void windyNightsDoNotCount() {
    var night = FIRST.plusDays(2);
    var wind = FitNights.windAtMost(Map.of(night, 6.5, FIRST.plusDays(3), 4.0), 5);
    var season = season(visit(1, 4, 5));
    var bare = new ObservedSeason(season.traps(), season.scale());
    var data = bare.usable(CatchConditions.NONE.with(wind), new ReadReport.Collector("test"));
    assertThat(data.nightsOpen[0]).isEqualTo(2);
    var both = wind.and(FitNights.minimumAtLeast(Temperature.ofCelsius(4)));
    assertThat(both.unfit()).containsExactly(night);
    assertThat(both.words()).contains("a minimum below 4 °C", "1 unfit nights");
    assertThatThrownBy(
            () -> bare.usable(CatchConditions.NONE.with(both), new ReadReport.Collector("test")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("cannot be read from sums of degree-days");
  }

  @Test
  void absurdConditionsAreRefused() {
    for (var days : new double[] {0, -3, Double.NaN, 400}) {
      assertThatThrownBy(() -> AdultLife.exponential(days))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining("adults live " + days + " days");
    }
    assertThatThrownBy(() -> LureFade.halfLife(-1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a half-life of 2 days or more");
    assertThatThrownBy(() -> FitNights.windAtMost(Map.of(), -1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("0 m/s or more");
    assertThatThrownBy(() -> TIMING.withArrivalsUpTo(0))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("1 to 4 arrivals");
  }

  /** Lures with a half-life of 25 days: the estimate finds it, and where none fade, says so. */
  @Test
  void theHalfLifeOfLuresIsEstimated() {
    var seasons = InventedFlights.of(FlightWorld.ADULT_LIFE_AND_LURE_FADE).draw(3);
    var conditions =
        CatchConditions.NONE.with(AdultLife.exponential(10)).with(LureFade.estimated());
    var fit = TIMING.with(conditions).fit(seasons);
    var lure = fit.lure().orElseThrow();
    assertThat(lure.lowDays()).isLessThanOrEqualTo(lure.halfLifeDays());
    assertThat(lure.lowDays()).isLessThan(25);
    assertThat(lure.highDays()).isGreaterThan(25);
    assertThat(fit.conditions().lure().orElseThrow().halfLifeDays()).hasValue(lure.halfLifeDays());
    assertThat(fit.report().toString()).contains("estimated from the counts");

    var plain = InventedFlights.of(FlightWorld.MODEL_TRUE).draw(3);
    var none = TIMING.with(CatchConditions.NONE.with(LureFade.estimated())).fit(plain).lure();
    assertThat(none.orElseThrow().highDays()).isInfinite();
    assertThat(none.orElseThrow().gain()).isLessThan(1.4);
  }
}
