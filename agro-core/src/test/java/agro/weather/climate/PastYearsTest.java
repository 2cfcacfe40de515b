package agro.weather.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.SeattleDays;
import agro.weather.gap.GapFilling;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PastYearsTest {

  /** Every day's minimum is its number since 1970, so that a moved day can be recognised. */
  private static DailyTemperatures history(String from, String to, Set<String> missing) {
    var days =
        LocalDate.parse(from)
            .datesUntil(LocalDate.parse(to).plusDays(1))
            .filter(day -> !missing.contains(day.toString()))
            .map(day -> new DailyExtremes(day, day.toEpochDay(), day.toEpochDay() + 1))
            .toList();
    return DailyTemperatures.of("Station", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  private static PastYearRuns runs(DailyTemperatures history, String from, String to) {
    return PastYears.of(history).runs(LocalDate.parse(from), LocalDate.parse(to));
  }

  @Test
  void runsAreUnbrokenAndMoved() {
    var runs = runs(history("2001-01-01", "2005-12-31", Set.of()), "2004-06-10", "2004-06-12");
    assertThat(runs.years()).containsExactly(2001, 2002, 2003, 2005);
    var member = runs.members().get(0);
    double start = LocalDate.of(2001, 6, 10).toEpochDay();
    assertThat(member.firstDay()).isEqualTo(LocalDate.of(2004, 6, 10));
    assertThat(member.minimaCelsius()).containsExactly(start, start + 1, start + 2);
    assertThat(member.origin(member.lastDay())).isEqualTo(DayOrigin.PAST_YEAR);
    assertThat(runs.report().entries()).isEmpty();
  }

  @Test
  void leapDaysKeepTheRunUnbroken() {
    var history = history("2003-01-01", "2003-12-31", Set.of());
    var intoLeapYear = runs(history, "2004-02-28", "2004-03-02").members().get(0);
    double start = LocalDate.of(2003, 2, 28).toEpochDay();
    assertThat(intoLeapYear.minimaCelsius())
        .containsExactly(start, start + 1, start + 2, start + 3);
    assertThat(runs(history, "2004-02-29", "2004-03-01").members().get(0).minimaCelsius())
        .containsExactly(start, start + 1);
  }

  @Test
  void seasonsCrossNewYear() {
    var runs = runs(history("2001-01-01", "2004-02-15", Set.of()), "2003-11-01", "2004-02-28");
    assertThat(runs.years()).containsExactly(2001, 2002);
    var shortened = history("2001-01-01", "2003-01-15", Set.of());
    var left = runs(shortened, "2003-11-01", "2004-02-28");
    assertThat(left.years()).containsExactly(2001);
    assertThat(left.report().entries(Deed.DROPPED))
        .anyMatch(entry -> entry.text().startsWith("2002 is left out"));
  }

  @Test
  void shortGapsAreFilledAndLongOnesLeaveTheYearOut() {
    var missing =
        Set.of("2001-06-11", "2002-06-11", "2002-06-12", "2002-06-13", "2002-06-14", "2003-06-10");
    var runs = runs(history("2001-01-01", "2003-12-31", missing), "2004-06-10", "2004-06-20");
    assertThat(runs.years()).containsExactly(2001, 2003);
    double start = LocalDate.of(2001, 6, 10).toEpochDay();
    assertThat(runs.members().get(0).minimaCelsius()[1]).isEqualTo(start + 1);
    assertThat(runs.report().entries(Deed.FILLED)).hasSize(2);
    assertThat(runs.report().entries(Deed.DROPPED))
        .singleElement()
        .satisfies(entry -> assertThat(entry.text()).contains("2002", "2002-06-11 to 2002-06-14"));
  }

  /** Nothing after the first target day may change a member of an earlier year. */
  @Test
  void targetDaysAreNeverLookedAt() {
    var missing = Set.of("2002-12-30", "2002-12-31");
    var known = history("2001-01-01", "2003-12-31", missing);
    var without = known.upTo(LocalDate.of(2002, 12, 31).minusDays(2));
    var runs = runs(known, "2003-01-01", "2003-12-31");
    assertThat(runs.years()).containsExactly(2001);
    assertThat(runs.members()).isEqualTo(runs(without, "2003-01-01", "2003-12-31").members());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e6})
  void nonsenseFromTheTargetOnChangesNoEarlierYear(double nonsense) {
    var known = SeattleDays.all();
    var from = LocalDate.of(2015, 1, 1);
    var spoilt = SeattleDays.spoiltAfter(known, from.minusDays(1), nonsense);
    var to = LocalDate.of(2015, 6, 30);
    assertThat(PastYears.of(spoilt).runs(from, to)).isEqualTo(PastYears.of(known).runs(from, to));
    assertThat(PastYears.of(spoilt).memberYears(from, to)).containsExactly(2012, 2013, 2014);
  }

  @Test
  void refusesRunsOfMoreThanAYear() {
    var history = history("2001-01-01", "2003-12-31", Set.of());
    assertThatThrownBy(() -> runs(history, "2003-01-01", "2004-01-01"))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> runs(history, "2003-01-02", "2003-01-01"))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void interpolationStaysInsideTheKnownDays() {
    var series = history("2001-06-01", "2001-06-09", Set.of("2001-06-03", "2001-06-04"));
    var filled = GapFilling.interpolateShortGaps(series, 2);
    assertThat(filled.daily().missingDays()).isEmpty();
    assertThat(filled.daily().origin(LocalDate.of(2001, 6, 3))).isEqualTo(DayOrigin.INTERPOLATED);
    assertThat(filled.report().entries(Deed.FILLED)).hasSize(1);
    var open = GapFilling.interpolateShortGaps(series, 1);
    assertThat(open.daily().missingDays()).hasSize(2);
    assertThat(open.report().entries(Deed.NOTED)).hasSize(1);
    assertThatThrownBy(() -> GapFilling.interpolateShortGaps(series, -1))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void aStatedTrendMovesEachYearByItsAge() {
    var history = history("2001-01-01", "2005-12-31", Set.of());
    var from = LocalDate.of(2004, 6, 10);
    var plain = PastYears.of(history).runs(from, from.plusDays(2));
    var warmer = PastYears.of(history).shiftedByTrend(0.5).runs(from, from.plusDays(2));
    assertThat(warmer.years()).containsExactly(2001, 2002, 2003, 2005);
    double[] shifts = {0.15, 0.1, 0.05, -0.05};
    for (int i = 0; i < shifts.length; i++) {
      assertThat(warmer.members().get(i).minCelsius(from))
          .isCloseTo(plain.members().get(i).minCelsius(from) + shifts[i], within(1e-9));
      assertThat(warmer.members().get(i).maxCelsius(from))
          .isCloseTo(plain.members().get(i).maxCelsius(from) + shifts[i], within(1e-9));
    }
    assertThat(warmer.report().entries(Deed.ASSUMED))
        .singleElement()
        .satisfies(entry -> assertThat(entry.text()).contains("0.5 °C a decade"));
    assertThatThrownBy(() -> PastYears.of(history).shiftedByTrend(20))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> PastYears.of(history).shiftedByTrend(Double.NaN))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void theStepAtTheSeamIsTold() {
    var history = history("2001-01-01", "2004-06-09", Set.of());
    var runs = runs(history, "2004-06-10", "2004-06-12");
    var known = history.between(LocalDate.of(2004, 5, 1), LocalDate.of(2004, 6, 9));
    var seam = runs.seam(known);
    // Temperatures of the invented history rise by a degree a day, from year to year too.
    assertThat(seam.usualMinCelsius()).isCloseTo(1, within(1e-12));
    assertThat(seam.steps()).hasSize(3);
    assertThat(seam.steps().get(0).year()).isEqualTo(2001);
    assertThat(seam.steps().get(0).minCelsius()).isEqualTo(-1095);
    assertThat(seam.wide()).hasSize(3);
    assertThat(seam.presentation().toText()).contains("2004-06-09", "-1095.0", "wide");
    assertThatThrownBy(() -> runs.seam(known.upTo(LocalDate.of(2004, 6, 8))))
        .isInstanceOf(InputProblem.class);
  }

  /** A southern season from November to March takes whole seasons, leap days and all. */
  @Test
  void southernSeasonsStayWhole() {
    var runs = runs(history("1999-07-01", "2005-06-30", Set.of()), "2004-11-01", "2005-03-31");
    assertThat(runs.years()).containsExactly(1999, 2000, 2001, 2002, 2003);
    for (int i = 0; i < 5; i++) {
      var member = runs.members().get(i);
      double start = LocalDate.of(1999 + i, 11, 1).toEpochDay();
      assertThat(member.size()).isEqualTo(151);
      assertThat(member.minCelsius(member.lastDay())).isEqualTo(start + 150);
    }
  }
}
