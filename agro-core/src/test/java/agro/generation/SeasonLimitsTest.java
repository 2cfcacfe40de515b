package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.generation.InventedSeasons.Truth;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Temperature;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Causes of "not this season" beside want of warmth. */
class SeasonLimitsTest {

  private static final SeasonsUnderWay FOUR = new SeasonsUnderWay(21, Truth.usual(), 4);
  private static final FlightTimingFit FIT = FOUR.fit();
  private static final SeasonUnderWay SEASON = FOUR.asOf(SeasonsUnderWay.AS_OF);
  private static final Reference SOURCE = Reference.invented("for a test");
  private static final DayLength NORTH = DayLength.at(Latitude.north(46));

  private static ForecastRow half(SeasonLimits limits, int generation) {
    return row(limits, generation, FlightShare.HALF);
  }

  private static ForecastRow row(SeasonLimits limits, int generation, FlightShare share) {
    return GenerationForecast.of(FIT, SEASON.with(limits)).flight(generation, share).orElseThrow();
  }

  /** The day is the one at which the day-length formula crosses the hours, after midsummer. */
  @Test
  void firstShortDayIsThatOfTheDayLength() {
    var first = LocalDate.of(2026, 3, 1);
    var cut = new DayLengthCut(NORTH, 14.5, SOURCE);
    var short1 = cut.firstShortDay(first, LocalDate.of(2026, 10, 31)).orElseThrow();
    assertThat(short1).isAfter(LocalDate.of(2026, 6, 21));
    assertThat(NORTH.hours(short1)).isLessThan(14.5);
    assertThat(NORTH.hours(short1.minusDays(1))).isGreaterThanOrEqualTo(14.5);
    assertThat(cut.firstShortDay(first, short1.minusDays(1))).isEmpty();
  }

  /** South of the equator the longest day lies in December, and the season may cross New Year. */
  @Test
  void firstShortDayInTheSouth() {
    var south = DayLength.at(Latitude.south(40));
    var short1 =
        new DayLengthCut(south, 13, SOURCE)
            .firstShortDay(LocalDate.of(2025, 9, 1), LocalDate.of(2026, 4, 30))
            .orElseThrow();
    assertThat(short1.getYear()).isEqualTo(2026);
    assertThat(south.hours(short1)).isLessThan(13);
    assertThat(south.hours(short1.minusDays(1))).isGreaterThanOrEqualTo(13);
  }

  /** Where no day is long enough, the longest one is the first that is too short. */
  @Test
  void noDayIsLongEnough() {
    var day =
        new DayLengthCut(NORTH, 20, SOURCE)
            .firstShortDay(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 10, 31))
            .orElseThrow();
    assertThat(day).isBetween(LocalDate.of(2026, 6, 19), LocalDate.of(2026, 6, 23));
  }

  @Test
  void hoursThatNoDayHas() {
    assertThatThrownBy(() -> new DayLengthCut(NORTH, 24.5, SOURCE))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a critical day length of 24.5 h")
        .hasMessageContaining("a day has 24 hours");
  }

  /** Cut on the median day of the parents: their later half gives no further flight. */
  @Test
  void parentsAfterTheShortDayGiveNoFlight() {
    var parents = row(SeasonLimits.NONE, 2, FlightShare.NEARLY_ALL).dates();
    var free = row(SeasonLimits.NONE, 3, FlightShare.NEARLY_ALL);
    var median = parents.median().orElseThrow();
    var hours = NORTH.hours(median) + 1e-9;
    var limits = SeasonLimits.NONE.with(new DayLengthCut(NORTH, hours, SOURCE));
    var cut = row(limits, 3, FlightShare.NEARLY_ALL);
    assertThat(median).isAfter(LocalDate.of(SeasonsUnderWay.YEAR, 6, 21));
    assertThat(cut.notThisSeason().chance(SeasonEnd.DAY_LENGTH))
        .isCloseTo(1 - parents.chanceBy(median), within(0.04))
        .isBetween(0.2, 0.6);
    assertThat(cut.notThisSeason().chance(SeasonEnd.WARMTH))
        .isEqualTo(free.notThisSeason().chance(SeasonEnd.WARMTH));
    assertThat(cut.dates().chanceNotThisSeason())
        .isCloseTo(cut.notThisSeason().total(), within(1e-12));
    // The second flight's own parents flew in spring.
    assertThat(half(limits, 2)).isEqualTo(half(SeasonLimits.NONE, 2));
  }

  @Test
  void datesAfterTheLastUsefulDayDoNotCome() {
    var free = half(SeasonLimits.NONE, 2);
    var day = free.dates().quantile(0.7).orElseThrow();
    var cut = half(SeasonLimits.NONE.withLastUsefulDay(day), 2);
    assertThat(cut.notThisSeason().chance(SeasonEnd.LAST_USEFUL_DAY))
        .isCloseTo(1 - free.dates().chanceBy(day), within(1e-12));
    assertThat(cut.dates().quantile(0.2)).isEqualTo(free.dates().quantile(0.2));
    assertThat(cut.dates().quantile(0.95)).isEmpty();
  }

  /** In a third of the past years a frost on one day ends the season before the date. */
  @Test
  void coldDaysOfThePastYearsEndTheSeason() {
    var free = row(SeasonLimits.NONE, 2, FlightShare.NEARLY_ALL);
    var frost = SEASON.asOf().plusDays(5);
    var members = new ArrayList<DailyTemperatures>();
    for (var m = 0; m < SEASON.members().size(); m++) {
      members.add(m % 3 == 0 ? frosty(SEASON.members().get(m), frost) : SEASON.members().get(m));
    }
    var season =
        new SeasonUnderWay(
                SEASON.pest(),
                SEASON.model(),
                SEASON.traps(),
                SEASON.firstDay(),
                SEASON.lastDay(),
                SEASON.asOf(),
                SEASON.known(),
                members)
            .with(
                SeasonLimits.NONE.with(
                    new ColdEnd(Temperature.ofCelsius(-15), SEASON.asOf(), SOURCE)));
    var cut = GenerationForecast.of(FIT, season).flight(2, FlightShare.NEARLY_ALL).orElseThrow();
    assertThat(free.dates().chanceBy(frost)).isLessThan(0.5);
    assertThat(cut.notThisSeason().chance(SeasonEnd.COLD)).isCloseTo(1.0 / 3, within(0.03));
    assertThat(cut.spread()).isEmpty();
  }

  private static DailyTemperatures frosty(DailyTemperatures year, LocalDate frost) {
    var days = new ArrayList<DailyExtremes>();
    IntStream.range(0, year.size())
        .mapToObj(year::day)
        .forEach(
            day -> {
              var extremes = year.extremes(day).orElseThrow();
              days.add(
                  day.equals(frost)
                      ? new DailyExtremes(day, -20, extremes.maxCelsius())
                      : extremes);
            });
    return DailyTemperatures.of(year.place(), year.medium(), days, DayOrigin.PAST_YEAR);
  }

  @Test
  void thePageNamesTheCauses() {
    var day = half(SeasonLimits.NONE, 2).dates().quantile(0.7).orElseThrow();
    var limits =
        SeasonLimits.NONE
            .with(new DayLengthCut(NORTH, 15, SOURCE))
            .with(new ColdEnd(Temperature.ofCelsius(-3), LocalDate.of(2030, 9, 1), SOURCE))
            .withLastUsefulDay(day);
    var text =
        GenerationForecast.of(FIT, SEASON.with(limits))
            .presentation()
            .toText()
            .replace('\u00a0', ' ')
            .replaceAll("\\s+", " ");
    assertThat(text)
        .contains("last useful day")
        .contains("after days have become shorter than 15 h")
        .contains("a day at -3 °C or below came before, from 1 Sep on")
        .contains("day length falls below 15 h on 2030-");
  }

  @Test
  void causesInWords() {
    assertThat(NotThisSeason.warmth(0.12).words()).isEqualTo("12\u00a0%");
    assertThat(NotThisSeason.warmth(0).words()).isEqualTo("below 1\u00a0%");
    var both = new NotThisSeason(Map.of(SeasonEnd.DAY_LENGTH, 0.08, SeasonEnd.WARMTH, 0.12));
    assertThat(both.total()).isCloseTo(0.2, within(1e-12));
    assertThat(both.words()).isEqualTo("20\u00a0%: warmth 12\u00a0%, day length 8\u00a0%");
  }
}
