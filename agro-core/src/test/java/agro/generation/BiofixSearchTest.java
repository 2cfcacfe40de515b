package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import agro.development.ThermalTimeScale;
import agro.weather.DayOrigin;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Biofix rules on small visit books, from 1 March at 5 °C·d a day. */
class BiofixSearchTest {

  private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);
  private static final FlightShape SHAPE = new FlightShape(FlightCurve.NORMAL, 30, 20);

  private static LocalDate april(int day) {
    return LocalDate.of(2026, 4, day);
  }

  private static TrapVisit visit(String trap, int from, int date, int count) {
    return TrapVisit.working(trap, april(from), april(date), count);
  }

  private static Optional<Biofix> find(BiofixRule rule, TrapVisit... visits) {
    var days = new double[200];
    Arrays.fill(days, 5);
    var scale =
        ThermalTimeScale.of(
            InventedSeasons.MODEL, YearsAlike.days(MARCH, days, DayOrigin.OBSERVED), MARCH);
    var season = new ObservedSeason(new TrapSeason(2026, List.of(visits)), scale);
    return BiofixSearch.find(rule, season, 150, SHAPE);
  }

  private static void assertDays(Optional<Biofix> found, int earliest, int latest) {
    assertThat(found).isPresent();
    assertThat(found.get().earliest()).isEqualTo(april(earliest));
    assertThat(found.get().latest()).isEqualTo(april(latest));
    assertThat(found.get().beganBefore()).isFalse();
  }

  /** A visit on the 9th after one on the 5th: the catch fell on the 5th to the 8th. */
  @Test
  void firstCatchLiesBetweenTwoVisits() {
    assertDays(
        find(
            new BiofixRule.FirstCatch(),
            visit("A", 1, 5, 0),
            visit("A", 5, 9, 2),
            visit("A", 9, 12, 0)),
        5,
        8);
  }

  @Test
  void earliestTrapGivesTheFirstCatch() {
    assertDays(
        find(
            new BiofixRule.FirstCatch(),
            visit("A", 1, 10, 0),
            visit("A", 10, 20, 2),
            visit("B", 1, 9, 0),
            visit("B", 9, 13, 1)),
        9,
        12);
  }

  @Test
  void aSingleCatchIsNoRun() {
    var rule = new BiofixRule.FirstOfRun(2);
    assertDays(
        find(
            rule,
            visit("A", 1, 5, 0),
            visit("A", 5, 9, 1),
            visit("A", 9, 12, 0),
            visit("A", 12, 16, 1),
            visit("A", 16, 20, 3)),
        12,
        15);
    assertThat(find(rule, visit("A", 1, 5, 0), visit("A", 5, 9, 1))).isEmpty();
  }

  /** Catches of two traps do not make a run of one. */
  @Test
  void runsAreCountedTrapByTrap() {
    assertThat(
            find(
                new BiofixRule.FirstOfRun(2),
                visit("A", 1, 5, 1),
                visit("A", 5, 9, 0),
                visit("B", 1, 5, 0),
                visit("B", 5, 9, 1)))
        .isEmpty();
  }

  /** Nothing is known of the nights of a failed trap: the run goes on over it. */
  @Test
  void failedVisitsAreSkippedInARun() {
    assertDays(
        find(
            new BiofixRule.FirstOfRun(2),
            visit("A", 1, 5, 0),
            visit("A", 5, 9, 1),
            TrapVisit.failed("A", april(9), april(12)),
            visit("A", 12, 16, 1)),
        5,
        8);
  }

  /** The first catch may have fallen into the nights on which the trap lay on the ground. */
  @Test
  void failedNightsBeforeTheCatchBelongToTheInterval() {
    assertDays(
        find(
            new BiofixRule.FirstCatch(),
            visit("A", 1, 5, 0),
            TrapVisit.failed("A", april(5), april(9)),
            visit("A", 9, 12, 4)),
        5,
        11);
  }

  @Test
  void cumulativeCatchAddsUpAllTraps() {
    assertDays(
        find(
            new BiofixRule.CumulativeCatch(5),
            visit("A", 1, 5, 1),
            visit("B", 2, 6, 1),
            visit("A", 5, 9, 2),
            visit("B", 6, 10, 1),
            visit("A", 9, 13, 7)),
        6,
        9);
    assertThat(find(new BiofixRule.CumulativeCatch(5), visit("A", 1, 5, 4))).isEmpty();
  }

  @Test
  void trapsSetTooLateSayThatItBeganBefore() {
    for (var rule :
        List.of(
            new BiofixRule.FirstCatch(),
            new BiofixRule.FirstOfRun(2),
            new BiofixRule.CumulativeCatch(3))) {
      var found = find(rule, visit("A", 1, 5, 3), visit("A", 5, 9, 8)).orElseThrow();
      assertThat(found.beganBefore()).as(rule.words()).isTrue();
      assertThat(found).hasToString("before or on 2026-04-04 (traps set too late)");
    }
  }

  /** Two traps at their first visit on one day: it does not matter which line comes first. */
  @Test
  void theFirstVisitOfAllTrapsCounts() {
    var found = find(new BiofixRule.CumulativeCatch(3), visit("A", 1, 5, 2), visit("B", 1, 5, 2));
    assertThat(found.orElseThrow().beganBefore()).isTrue();
  }

  /** Half of the flight at 150 °C·d: 30 days of 5; a tenth 38.4 °C·d before. */
  @Test
  void shareOfTheFirstFlightFollowsTheCurve() {
    var half = find(new BiofixRule.ShareOfFirstFlight(0.5)).orElseThrow();
    assertThat(half.earliest()).isEqualTo(MARCH.plusDays(30));
    assertThat(half.latest()).isEqualTo(half.earliest());
    var tenth = find(new BiofixRule.ShareOfFirstFlight(0.1)).orElseThrow();
    assertThat(tenth.earliest()).isEqualTo(MARCH.plusDays(22));
  }

  /** A calendar day is a day of every season, not of one year. */
  @Test
  void calendarDayComesInEverySeason() {
    var found = find(new BiofixRule.CalendarDay(MonthDay.of(4, 10))).orElseThrow();
    assertThat(found).hasToString("2026-04-10");
    assertThat(found.rule().words()).isEqualTo("calendar day 10 April");
    var winter = find(new BiofixRule.CalendarDay(MonthDay.of(1, 15))).orElseThrow();
    assertThat(winter).hasToString("2027-01-15");
  }

  @Test
  void refusesRulesThatTellNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BiofixRule.FirstOfRun(1))
        .withMessageContaining("2 visits or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BiofixRule.CumulativeCatch(0))
        .withMessageContaining("1 adult or more");
    for (var share : new double[] {0, 1, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new BiofixRule.ShareOfFirstFlight(share))
          .withMessageContaining("between 0 and 1");
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Biofix(new BiofixRule.FirstCatch(), april(9), april(5), false))
        .withMessageContaining("in order");
  }
}
