package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.generation.TrapState;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class VisitBookTest {
  private final SeasonWindow window = new SeasonWindow(MonthDay.of(3, 1), MonthDay.of(10, 31));
  private final ReadReport.Collector report = new ReadReport.Collector("visits.csv");

  private static VisitLine line(int number, String date, VisitState state, int count) {
    return new VisitLine(
        "T1",
        LocalDate.parse(date),
        state,
        count < 0 ? OptionalInt.empty() : OptionalInt.of(count),
        OptionalDouble.empty(),
        false,
        SourceLocation.line("visits.csv", number));
  }

  private List<LocatedVisit> season(VisitLine... lines) {
    return VisitBook.seasons(window, List.of(lines), report).getOrDefault(2024, List.of());
  }

  @Test
  void eachVisitSpeaksOfTheNightsSinceTheLineBefore() {
    var visits =
        season(
            line(2, "2024-04-01", VisitState.SET, -1),
            line(3, "2024-04-05", VisitState.WORKING, 4),
            line(4, "2024-04-11", VisitState.FAILED, -1),
            line(5, "2024-04-14", VisitState.FULL, 30));
    assertThat(visits).extracting(v -> v.visit().nights()).containsExactly(4L, 6L, 3L);
    assertThat(visits).extracting(v -> v.visit().nightsOpen()).containsExactly(4.0, 0.0, 3.0);
    assertThat(visits.get(1).visit().state()).isEqualTo(TrapState.FAILED);
    assertThat(visits.get(2).location().line()).isEqualTo(5);
  }

  @Test
  void aLostVisitLeavesALongerInterval() {
    var visits =
        season(
            line(2, "2024-04-01", VisitState.SET, -1),
            line(3, "2024-04-13", VisitState.WORKING, 4));
    assertThat(visits.get(0).visit().nights()).isEqualTo(12);
  }

  @Test
  void aTrapThatWasPutAwayMustBeSetAgain() {
    assertThatThrownBy(
            () ->
                season(
                    line(2, "2023-10-01", VisitState.SET, -1),
                    line(3, "2024-04-05", VisitState.WORKING, 0)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("visits.csv, line 3")
        .hasMessageContaining("187 nights")
        .hasMessageContaining("set");
  }

  @Test
  void settingAgainBeginsTheNightsAnew() {
    var visits =
        season(
            line(2, "2023-10-01", VisitState.SET, -1),
            line(3, "2024-04-01", VisitState.SET, -1),
            line(4, "2024-04-05", VisitState.WORKING, 0));
    assertThat(visits).hasSize(1);
    assertThat(visits.get(0).visit().nights()).isEqualTo(4);
  }

  @Test
  void visitsOutsideTheSeasonAreDroppedAndReported() {
    season(
        line(2, "2024-10-28", VisitState.SET, -1),
        line(3, "2024-11-01", VisitState.WORKING, 1),
        line(4, "2024-11-05", VisitState.WORKING, 2));
    assertThat(report.report().entries(Deed.DROPPED))
        .singleElement()
        .satisfies(entry -> assertThat(entry.location().line()).isEqualTo(4));
  }

  @Test
  void anEmptyTrapSetBeforeTheSeasonCountsFromItsStart() {
    var visits =
        season(
            line(2, "2024-02-26", VisitState.SET, -1),
            line(3, "2024-03-04", VisitState.WORKING, 0));
    assertThat(visits.get(0).visit().from()).isEqualTo("2024-03-01");
    assertThat(report.report().entries(Deed.REPAIRED)).hasSize(1);
  }

  @Test
  void aCatchThatBeganBeforeTheSeasonIsDropped() {
    var visits =
        season(
            line(2, "2024-02-26", VisitState.SET, -1),
            line(3, "2024-03-04", VisitState.WORKING, 5),
            line(4, "2024-03-08", VisitState.WORKING, 2));
    assertThat(visits).hasSize(1);
    assertThat(report.report().entries(Deed.DROPPED).get(0).text())
        .contains("began before the season's start");
  }
}
