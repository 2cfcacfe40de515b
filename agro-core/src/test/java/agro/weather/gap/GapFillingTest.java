package agro.weather.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.InventedWeather;
import agro.weather.Medium;
import agro.weather.SeattleDays;
import agro.weather.climate.ClimateNormals;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GapFillingTest {

  private static final DailyTemperatures SEATTLE = SeattleDays.all();

  private static LocalDate day(String text) {
    return LocalDate.parse(text);
  }

  /** The station is 2 °C colder by night and swings less: minimum 0.8 x - 2, maximum 0.9 x - 1. */
  static DailyTemperatures neighbourOf(DailyTemperatures series, double scatter, long seed) {
    var noise = InventedWeather.days("2012-01-01", "2015-12-31", 0, 0.5, scatter, seed);
    var builder = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    for (int i = 0; i < series.size(); i++) {
      var day = series.day(i);
      double min = 0.8 * series.minCelsius(day) - 2 + noise.minCelsius(day) - 6;
      double max = 0.9 * series.maxCelsius(day) - 1 + (noise.maxCelsius(day) - 18) / 1.5;
      if (!Double.isNaN(min)) {
        builder.put(day, Math.min(min, max), Math.max(min, max), DayOrigin.OBSERVED);
      }
    }
    return builder.build("Station", Medium.shelterAir());
  }

  @Test
  void nothingIsFilledUntilItIsAllowed() {
    var series = SeattleDays.without(SEATTLE, "2013-05-03", "2013-05-04");
    var filled = GapFilling.withDefaults().fill(series);
    assertThat(filled.daily()).isEqualTo(series);
    assertThat(filled.openDays()).isEqualTo(2);
    assertThat(filled.gaps())
        .singleElement()
        .satisfies(gap -> assertThat(gap.words()).contains("no way of filling is allowed"));
  }

  @Test
  void shortGapsLieOnTheLineAndKnowTheirError() {
    var series = SeattleDays.without(SEATTLE, "2013-05-03", "2013-05-04");
    var filled = GapFilling.withDefaults().interpolateUpTo(2).fill(series);
    var daily = filled.daily();
    double before = SEATTLE.minCelsius(day("2013-05-02"));
    double after = SEATTLE.minCelsius(day("2013-05-05"));
    assertThat(daily.minCelsius(day("2013-05-03")))
        .isCloseTo(before + (after - before) / 3, within(1e-12));
    assertThat(daily.origin(day("2013-05-04"))).isEqualTo(DayOrigin.INTERPOLATED);
    assertThat(daily.minStandardErrorCelsius(day("2013-05-03"))).isBetween(1.0, 3.0);
    assertThat(daily.maxStandardErrorCelsius(day("2013-05-03"))).isBetween(2.0, 4.5);
    assertThat(daily.minStandardErrorCelsius(day("2013-05-02"))).isZero();
    assertThat(filled.gaps().get(0).words()).contains("artificial gaps of 2 days");
    assertThat(filled.report().entries(Deed.FILLED)).hasSize(1);
    assertThat(filled.presentation().toText()).contains("2013-05-03", "straight line");
  }

  /** The stated error of the middle of a gap against a direct count over the same windows. */
  @Test
  void lineErrorIsThatOfArtificialGaps() {
    var series = SeattleDays.without(SEATTLE, "2013-07-10", "2013-07-10");
    var error =
        GapFilling.withDefaults()
            .interpolateUpTo(1)
            .fill(series)
            .daily()
            .maxStandardErrorCelsius(day("2013-07-10"));
    double squares = 0;
    int count = 0;
    for (int year = 2012; year <= 2015; year++) {
      for (var middle = day(year + "-05-01");
          middle.isBefore(day(year + "-09-20"));
          middle = middle.plusDays(1)) {
        double away = middle.toEpochDay() - day("2013-07-10").toEpochDay();
        double apart = Math.abs(away) % 365.25;
        boolean near = Math.min(apart, 365.25 - apart) <= LeaveOut.SAME_SEASON_DAYS;
        double line =
            0.5 * series.maxCelsius(middle.minusDays(1))
                + 0.5 * series.maxCelsius(middle.plusDays(1));
        double miss = series.maxCelsius(middle) - line;
        if (near && !Double.isNaN(miss)) {
          squares += miss * miss;
          count++;
        }
      }
    }
    assertThat(error).isCloseTo(Math.sqrt(squares / count), within(1e-9));
  }

  @Test
  void theOrderIsLineThenNeighbourThenClimate() {
    var series =
        SeattleDays.without(
            SeattleDays.without(SEATTLE, "2014-03-01", "2014-03-02"), "2014-06-01", "2014-06-20");
    var station = SeattleDays.without(neighbourOf(SEATTLE, 1, 5), "2014-06-11", "2014-06-15");
    var filled =
        GapFilling.withDefaults()
            .interpolateUpTo(3)
            .neighbour(station)
            .climatology(ClimateNormals.of(series))
            .fill(series);
    assertThat(filled.gaps().stream().map(FilledGap::method))
        .containsExactly(
            GapMethod.STRAIGHT_LINE,
            GapMethod.NEIGHBOUR,
            GapMethod.CLIMATOLOGY,
            GapMethod.NEIGHBOUR);
    assertThat(filled.gaps().stream().map(gap -> gap.days().days()))
        .containsExactly(2L, 10L, 5L, 5L);
    assertThat(filled.daily().missingDays()).isEmpty();
    assertThat(filled.daily().origin(day("2014-06-12"))).isEqualTo(DayOrigin.CLIMATE_NORMAL);
    assertThat(filled.gaps().get(1).words()).contains("Station", "of June");
  }

  @Test
  void aSecondNeighbourHelpsWhereTheFirstCannot() {
    var series = SeattleDays.without(SEATTLE, "2014-06-01", "2014-06-20");
    var first = SeattleDays.without(neighbourOf(SEATTLE, 1, 5), "2014-06-11", "2014-12-31");
    var second = neighbourOf(SEATTLE, 2, 6);
    var filled = GapFilling.withDefaults().neighbour(first).neighbour(second).fill(series);
    assertThat(filled.daily().missingDays()).isEmpty();
    assertThat(filled.gaps()).hasSize(2);
    var open = GapFilling.withDefaults().neighbour(first).fill(series);
    assertThat(open.gaps().get(1).method()).isEqualTo(GapMethod.LEFT_OPEN);
    assertThat(open.gaps().get(1).words()).contains("has no temperatures either");
  }

  @Test
  void gapsAtTheEndsHaveNoSecondDay() {
    var series =
        SeattleDays.without(
            SeattleDays.without(SEATTLE, "2012-01-01", "2012-01-02"), "2015-12-30", "2015-12-31");
    var filled = GapFilling.withDefaults().interpolateUpTo(5).fill(series);
    assertThat(filled.openDays()).isEqualTo(4);
    assertThat(filled.gaps().get(0).words()).contains("end of the series");
    var climate =
        GapFilling.withDefaults().climatology(ClimateNormals.of(series)).fill(series).daily();
    assertThat(climate.missingDays()).isEmpty();
    // One known side only: the second day knows less than the first.
    assertThat(climate.minStandardErrorCelsius(day("2015-12-31")))
        .isGreaterThan(climate.minStandardErrorCelsius(day("2015-12-30")));
  }

  /** Without scatter the regression is exact, and its error vanishes. */
  @Test
  void anExactNeighbourGivesTheDaysBack() {
    var series = SeattleDays.without(SEATTLE, "2014-06-01", "2014-08-20");
    var filled =
        GapFilling.withDefaults().neighbour(neighbourOf(SEATTLE, 1e-9, 5)).fill(series).daily();
    for (var day : series.missingDays()) {
      assertThat(filled.minCelsius(day)).isCloseTo(SEATTLE.minCelsius(day), within(1e-6));
      assertThat(filled.maxStandardErrorCelsius(day)).isLessThan(1e-6);
    }
  }

  @Test
  void monthsWithFewPairsTakeTheirNeighboursAndTheYear() {
    var short1 = SEATTLE.between(day("2014-05-20"), day("2014-07-31"));
    var series = SeattleDays.without(short1, "2014-05-25", "2014-05-31");
    var filled = GapFilling.withDefaults().neighbour(neighbourOf(SEATTLE, 1, 5)).fill(series);
    assertThat(filled.gaps().get(0).words()).contains("May and the months beside it");
    var demanding =
        GapFilling.withDefaults().leastPairs(60).neighbour(neighbourOf(SEATTLE, 1, 5)).fill(series);
    assertThat(demanding.gaps().get(0).words()).contains("all the year");
    var refused =
        GapFilling.withDefaults().leastPairs(80).neighbour(neighbourOf(SEATTLE, 1, 5)).fill(series);
    assertThat(refused.gaps().get(0).words()).contains("66 days in common, and 80 are needed");
  }

  /** A gap near a day of odd weather is drawn to it; far inside it is what is usual. */
  @Test
  void climateIsDrawnToTheKnownDays() {
    var series = SeattleDays.without(SEATTLE, "2014-07-01", "2014-09-15");
    var normals = ClimateNormals.of(SEATTLE);
    var filled = GapFilling.withDefaults().climatology(normals).fill(series).daily();
    var middle = day("2014-08-08");
    assertThat(filled.maxCelsius(middle))
        .isCloseTo(normals.series(middle, middle).maxCelsius(middle), within(1e-3));
    assertThat(filled.maxStandardErrorCelsius(middle))
        .isCloseTo(normals.series(middle, middle).maxStandardErrorCelsius(middle), within(1e-3));
    assertThat(filled.maxStandardErrorCelsius(day("2014-07-01")))
        .isLessThan(0.85 * filled.maxStandardErrorCelsius(middle));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e6})
  void asOfADayNothingLaterCounts(double nonsense) {
    var gappy =
        SeattleDays.without(
            SeattleDays.without(SEATTLE, "2014-06-05", "2014-06-06"), "2014-06-20", "2014-06-30");
    var asOf = day("2014-06-25");
    var station = neighbourOf(SEATTLE, 1, 5);
    var normals = ClimateNormals.of(SEATTLE);
    var filling =
        GapFilling.withDefaults().interpolateUpTo(3).neighbour(station).climatology(normals);
    var known = filling.asOf(asOf).fill(gappy);
    var spoilt =
        GapFilling.withDefaults()
            .interpolateUpTo(3)
            .neighbour(SeattleDays.spoiltAfter(station, asOf, nonsense))
            .climatology(ClimateNormals.of(SeattleDays.spoiltAfter(SEATTLE, asOf, nonsense)))
            .asOf(asOf)
            .fill(SeattleDays.spoiltAfter(gappy, asOf, nonsense));
    assertThat(spoilt.daily()).isEqualTo(known.daily());
    assertThat(spoilt.gaps()).isEqualTo(known.gaps());
    assertThat(known.daily().lastDay()).isEqualTo(asOf);
    assertThat(known.daily().missingDays()).isEmpty();
  }

  /** With the day after the gap not yet known there is no line over it. */
  @Test
  void aLineNeedsItsLaterEndToBeKnown() {
    var series = SeattleDays.without(SEATTLE, "2014-06-05", "2014-06-06");
    var filling = GapFilling.withDefaults().interpolateUpTo(3);
    assertThat(filling.asOf(day("2014-06-06")).fill(series).openDays()).isEqualTo(2);
    assertThat(filling.asOf(day("2014-06-07")).fill(series).openDays()).isZero();
  }

  @Test
  void aShortSeriesSaysHowItGuessedTheError() {
    var few = SEATTLE.between(day("2014-06-01"), day("2014-06-09"));
    var filled =
        GapFilling.interpolateShortGaps(SeattleDays.without(few, "2014-06-03", "2014-06-04"), 2);
    assertThat(filled.gaps().get(0).words()).contains("from the day-to-day changes");
    var fewer = SEATTLE.between(day("2014-06-01"), day("2014-06-04"));
    var guessed =
        GapFilling.interpolateShortGaps(SeattleDays.without(fewer, "2014-06-02", "2014-06-03"), 2);
    assertThat(guessed.gaps().get(0).words()).contains("assumed day-to-day change of 2.5 °C");
    // A random walk tied at both ends: 2.5 √(1·2/3) °C after one of three steps.
    assertThat(guessed.daily().minStandardErrorCelsius(day("2014-06-02")))
        .isCloseTo(2.5 * Math.sqrt(2 / 3.0), within(1e-12));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> GapFilling.withDefaults().interpolateUpTo(-1))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> GapFilling.withDefaults().leastPairs(4))
        .isInstanceOf(InputProblem.class);
    var soil = DailyTemperatures.builder(day("2014-01-01"), day("2014-01-02"));
    var bed = soil.build("bed", new Medium.Soil(0.06));
    assertThatThrownBy(() -> GapFilling.withDefaults().neighbour(bed).fill(SEATTLE))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("soil");
  }
}
