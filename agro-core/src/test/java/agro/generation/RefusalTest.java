package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.generation.InventedSeasons.Truth;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Bad input of the fit and the forecast: what was read, expected, why it matters, how to mend. */
class RefusalTest {

  private static final LocalDate MAY = LocalDate.of(2030, 5, 1);
  private static final SeasonsUnderWay SEASONS = new SeasonsUnderWay(31, Truth.usual(), 2);
  private static final DegreeDayModel ABOVE_TEN =
      DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(10)), UpperCutoff.NONE);

  private static void assertRefused(
      ThrowingCallable call, String read, String expected, String why, String cure) {
    var problem = catchThrowableOfType(InputProblem.class, call);
    assertThat(problem).as("a refusal").isNotNull();
    assertThat(problem.read()).contains(read);
    assertThat(problem.expected()).contains(expected);
    assertThat(problem.why()).contains(why);
    assertThat(problem.cure()).contains(cure);
  }

  @Test
  void negativeCount() {
    assertRefused(
        () -> TrapVisit.working("UC1", MAY, MAY.plusDays(4), -2),
        "trap UC1 has the count -2 on 2030-05-05",
        "a whole number, 0 or more",
        "number of animals",
        "the state failed");
  }

  @Test
  void visitThatIsNotLaterThanTheOneBefore() {
    for (var date : List.of(MAY, MAY.minusDays(3))) {
      assertRefused(
          () -> new TrapVisit("UC1", MAY, date, 0, TrapState.WORKING, 0, false),
          "trap UC1 was visited on " + date + " after 2030-05-01",
          "later than the one before",
          "nights between two visits",
          "put the visits in order");
    }
  }

  @Test
  void nightsOpenBeyondTheInterval() {
    for (var nights : new double[] {4.5, -1, Double.NaN}) {
      assertRefused(
          () -> new TrapVisit("UC1", MAY, MAY.plusDays(4), 1, TrapState.WORKING, nights, false),
          "trap UC1 was open for " + nights + " nights before 2030-05-05",
          "0 to 4 nights",
          "per night",
          "nights on which the trap could catch");
    }
  }

  @Test
  void overlappingVisits() {
    assertRefused(
        () ->
            new TrapSeason(
                2030,
                List.of(
                    TrapVisit.working("UC1", MAY, MAY.plusDays(4), 1),
                    TrapVisit.working("UC1", MAY.plusDays(3), MAY.plusDays(7), 1))),
        "one ends on 2030-05-05, the next begins on 2030-05-04",
        "visits that follow each other",
        "doubles its catch",
        "correct the days");
  }

  @Test
  void rangeUpsideDown() {
    for (var range :
        List.of(
            List.of(500, 400, 450),
            List.of(0, 400, 300),
            List.of(-400, -200, -300),
            List.of(300, 500, 600))) {
      assertRefused(
          () ->
              new IntervalRange(
                  new ThermalTime(range.get(0)),
                  new ThermalTime(range.get(1)),
                  new ThermalTime(range.get(2)),
                  List.of(InventedSeasons.SOURCE)),
          "sought from " + new ThermalTime(range.get(0)),
          "rising order: low, expected, high",
          "holds the true interval",
          "state the range");
    }
  }

  @Test
  void thresholdsUpsideDown() {
    assertRefused(
        () -> Thresholds.between(Temperature.ofCelsius(30), Temperature.ofCelsius(7)),
        "thresholds of 30 °C and 7 °C",
        "an upper threshold above the lower one",
        "no temperature at which development runs",
        "the two are swapped");
  }

  @Test
  void rangeWithoutASource() {
    assertRefused(
        () -> IntervalRange.about(new ThermalTime(420), List.of()),
        "no source",
        "at least one source",
        "judge where the range comes from",
        "name the paper");
  }

  @Test
  void sameSeasonTwice() {
    var timing = FlightTiming.searching(InventedSeasons.range());
    var season = SEASONS.past.get(0);
    assertRefused(
        () -> timing.fit(List.of(season, season)),
        "season 2011 is given twice",
        "each season once",
        "unit of replication",
        "one list of visits");
  }

  @Test
  void seasonsOnDifferentScales() {
    var timing = FlightTiming.searching(InventedSeasons.range());
    var first = SEASONS.past.get(0);
    var second = SEASONS.past.get(1);
    var weather = new InventedSeasons(1, Truth.usual()).weather(second.year());
    var other =
        new ObservedSeason(
            second.traps(), ThermalTimeScale.of(ABOVE_TEN, weather, second.scale().firstDay()));
    assertRefused(
        () -> timing.fit(List.of(first, other)),
        "season 2012 counts degree-days by",
        "one method and one pair of thresholds",
        "only for the thresholds it was fitted with",
        "same degree-day model");
  }

  @Test
  void givenBiofixOutsideTheLog() {
    for (var day : List.of(LocalDate.of(2011, 2, 27), LocalDate.of(2011, 12, 1))) {
      var timing =
          FlightTiming.searching(InventedSeasons.range())
              .withStart(2011, new GivenStart(day, ThermalTime.ZERO));
      assertRefused(
          () -> timing.fit(SEASONS.past),
          "the biofix " + day + " of season 2011 lies outside its temperatures",
          "a day from 2011-03-01 to 2011-10-31",
          "cannot be added up",
          "choose a day inside the log");
    }
  }

  /** A biofix given for a season is taken as it is and not estimated as well. */
  @Test
  void givenBiofixReplacesTheStart() {
    var season = SEASONS.past.get(0);
    var day = LocalDate.of(2011, 4, 12);
    var timing =
        FlightTiming.searching(InventedSeasons.range())
            .withStart(2011, new GivenStart(day, new ThermalTime(20)));
    var start = timing.fit(SEASONS.past).seasons().get(0).start().degreeDaysC();
    assertThat(start).isEqualTo(season.scale().degreeDaysCAtStartOf(day) + 20);
  }

  @Test
  void forecastOnAnotherScaleThanTheFit() {
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    var other =
        new SeasonUnderWay(
            season.pest(),
            ABOVE_TEN,
            season.traps(),
            season.firstDay(),
            season.lastDay(),
            season.asOf(),
            season.known(),
            season.members());
    assertRefused(
        () -> GenerationForecast.of(SEASONS.fit(), other),
        "the fit counts degree-days by",
        "one degree-day model for both",
        "only for the thresholds it was fitted with",
        "with the model of the fit");
  }

  /** Other thresholds are added up on their own scale; a cutoff without a threshold cannot be. */
  @Test
  void stageThatTheRuleOfTheFlightsCannotAddUp() {
    var stage =
        new StageOffset(
            "eggs hatch", new ThermalTime(60), ABOVE_TEN.thresholds(), InventedSeasons.SOURCE);
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    var cut =
        new SeasonUnderWay(
            season.pest(),
            DegreeDayModel.singleSine(
                Thresholds.between(Temperature.ofCelsius(7), Temperature.ofCelsius(30)),
                UpperCutoff.HORIZONTAL),
            season.traps(),
            season.firstDay(),
            season.lastDay(),
            season.asOf(),
            season.known(),
            season.members());
    assertRefused(
        () -> StageScale.of(stage, cut, new WeatherAhead(cut)),
        "the stage \"eggs hatch\" is stated above 10 °C, the flights from 7 °C to 30 °C",
        "thresholds by which the rule of the flights can add up the stage",
        "degree-days above one threshold are not degree-days above another",
        "above the thresholds of the flights");
  }

  @Test
  void visitsAfterTheDayOfIssue() {
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    assertRefused(
        () -> rebuilt(SEASONS.whole.traps(), season.known(), season.members()),
        "for a forecast as of 2030-06-10",
        "visits up to the day of issue",
        "a forecast that has seen later counts is none",
        "upTo(asOf)");
  }

  @Test
  void weatherAfterTheDayOfIssue() {
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    assertRefused(
        () ->
            rebuilt(
                season.traps(),
                SEASONS.weather.upTo(SeasonsUnderWay.AS_OF.plusDays(3)),
                season.members()),
        "temperatures of 2030-06-13 for a forecast as of 2030-06-10",
        "then forecast days only",
        "a forecast that has seen later weather is none",
        "upTo(asOf)");
  }

  @Test
  void tooFewPastYears() {
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    assertRefused(
        () -> rebuilt(season.traps(), season.known(), season.members().subList(0, 2)),
        "2 past years reach from 2030-06-10 to 2030-10-31",
        "at least 3 past years",
        "taken from past years",
        "a longer log");
  }

  @Test
  void aPastYearWithAGapOrTooShort() {
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    var whole = season.members().get(0);
    for (var broken :
        List.of(
            without(whole, LocalDate.of(2030, 7, 7)),
            whole.upTo(season.lastDay().minusDays(1)),
            whole.between(whole.firstDay().plusDays(1), whole.lastDay()))) {
      var members = new ArrayList<>(season.members());
      members.set(0, broken);
      assertRefused(
          () -> rebuilt(season.traps(), season.known(), members),
          "a past year runs from",
          "an unbroken run of days from 2030-06-10 to 2030-10-31",
          "understate the spread",
          "leave that year out or fill its gaps");
    }
  }

  @Test
  void seasonThatIsOver() {
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    assertRefused(
        () ->
            new SeasonUnderWay(
                "test pest",
                InventedSeasons.MODEL,
                season.traps(),
                season.firstDay(),
                SeasonsUnderWay.AS_OF.minusDays(1),
                SeasonsUnderWay.AS_OF,
                season.known(),
                season.members()),
        "known to the season's last day 2030-06-09",
        "days ahead",
        "nothing left to forecast",
        "an earlier day of issue");
  }

  @Test
  void nothingEverCaughtAndNoBiofix() {
    var timing = FlightTiming.searching(InventedSeasons.range());
    var season = SEASONS.asOf(SeasonsUnderWay.AS_OF);
    var empty = rebuilt(new TrapSeason(2030, List.of()), season.known(), season.members());
    assertRefused(
        () -> GenerationForecast.of(timing.fit(List.of()), empty),
        "no animal was caught so far, this season or before",
        "a catch of this season, a past season with catches, or a biofix",
        "count from the first flight",
        "wait for the first catch");
    var given = new GivenStart(LocalDate.of(2030, 4, 20), ThermalTime.ZERO);
    var withBiofix = timing.withStart(2030, given).fit(List.of());
    assertThat(GenerationForecast.of(withBiofix, empty).rows()).isNotEmpty();
  }

  @Test
  void visitsThatTellNothingAreDroppedAndReported() {
    var season = SEASONS.past.get(0);
    var visits = new ArrayList<>(season.traps().visits());
    var winter = LocalDate.of(2011, 2, 20);
    visits.add(TrapVisit.working("B", winter, winter.plusDays(20), 1));
    visits.add(TrapVisit.failed("B", LocalDate.of(2011, 5, 1), LocalDate.of(2011, 5, 5)));
    visits.add(TrapVisit.working("B", LocalDate.of(2011, 10, 28), LocalDate.of(2011, 11, 4), 1));
    var report = SeasonsUnderWay.report();
    var data = new ObservedSeason(new TrapSeason(2011, visits), season.scale()).usable(report);
    assertThat(data.visits()).isEqualTo(season.traps().visits().size());
    assertThat(report.report().entries(Deed.DROPPED).toString())
        .contains(
            "season 2011, 1 visit: it begins before the season's start day 2011-03-01 (B on 2011-03-12)",
            "season 2011, 1 visit: the trap was not open, so its nights are unknown and not zero"
                + " (B on 2011-05-05)",
            "season 2011, 1 visit: temperatures are known only to 2011-10-31 (B on 2011-11-04)");
  }

  @Test
  void estimatesAndShapesThatAreNoNumbers() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IntervalEstimate(List.of()))
        .withMessageContaining("at least one");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IntervalEstimate(List.of(400.0, -1.0)))
        .withMessageContaining("positive numbers");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FlightShape(FlightCurve.NORMAL, 0, 10))
        .withMessageContaining("positive number of °C·d");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FlightCurve.SKEWED.quantile(1))
        .withMessageContaining("between 0 and 1");
    assertThat(
            new FlightTiming(
                    InventedSeasons.range(),
                    FlightCurve.NORMAL,
                    new BiofixRule.FirstCatch(),
                    Map.of())
                .givenStarts())
        .isEmpty();
  }

  private static SeasonUnderWay rebuilt(
      TrapSeason traps, DailyTemperatures known, List<DailyTemperatures> members) {
    return new SeasonUnderWay(
        "test pest",
        InventedSeasons.MODEL,
        traps,
        InventedSeasons.firstDay(SeasonsUnderWay.YEAR),
        InventedSeasons.lastDay(SeasonsUnderWay.YEAR),
        SeasonsUnderWay.AS_OF,
        known,
        members);
  }

  private static DailyTemperatures without(DailyTemperatures run, LocalDate lost) {
    var days = new ArrayList<DailyExtremes>();
    for (var i = 0; i < run.size(); i++) {
      if (!run.day(i).equals(lost)) {
        days.add(run.extremes(run.day(i)).orElseThrow());
      }
    }
    return DailyTemperatures.of(run.place(), Medium.shelterAir(), days, DayOrigin.PAST_YEAR);
  }
}
