package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.Thresholds;
import agro.generation.InventedSeasons.Truth;
import agro.report.Progress;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Days until a date, the share that has flown, and stages on scales of their own. */
class FlownShareTest {

  private static final SeasonsUnderWay FOUR = new SeasonsUnderWay(21, Truth.usual(), 4);
  private static final FlightTimingFit FIT = FOUR.fit();

  /** On the day by which half of a flight has come, half of it has flown. */
  @Test
  void halfHasFlownOnTheDayOfHalf() {
    var early = GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF));
    var middle = early.flight(2, FlightShare.HALF).orElseThrow().dates().median().orElseThrow();
    var then = GenerationForecast.of(FIT, FOUR.asOf(middle));
    var median = then.flight(2, FlightShare.HALF).orElseThrow().dates().quantileDays(0.5);
    var flown = flown(then, 2);
    assertThat(flown.low()).isLessThan(flown.median());
    assertThat(flown.median()).isLessThan(flown.high());
    var until = middle.toEpochDay() - InventedSeasons.firstDay(SeasonsUnderWay.YEAR).toEpochDay();
    if (until > median) {
      assertThat(flown.median()).isGreaterThan(0.5);
    } else {
      assertThat(flown.median()).isLessThan(0.5);
    }
    assertThat(flown.median()).isBetween(0.2, 0.8);
    assertThat(flown(then, 1).median()).isGreaterThan(0.97);
    assertThat(then.flownTable().toText()).contains("Flown already by the beginning of");
  }

  private static FlownShare flown(GenerationForecast forecast, int generation) {
    return forecast.flown().stream()
        .filter(share -> share.generation() == generation)
        .findFirst()
        .orElseThrow();
  }

  /** The share flown answers the same question as the date of that share, from the other side. */
  @Test
  void shareAndDateAgree() {
    var day = LocalDate.of(SeasonsUnderWay.YEAR, 7, 20);
    var forecast = GenerationForecast.of(FIT, FOUR.asOf(day));
    for (var share : FlightShare.values()) {
      forecast
          .flight(2, share)
          .ifPresent(
              row -> {
                var passed = row.dates().chanceBy(day.minusDays(1));
                var flown = flown(forecast, 2);
                if (flown.low() > share.share()) {
                  assertThat(passed).isGreaterThan(0.89);
                } else if (flown.high() < share.share()) {
                  assertThat(passed).isLessThan(0.11);
                }
              });
    }
  }

  @Test
  void nothingHasFlownBeforeTheFirstFlight() {
    var none = new TrapSeason(SeasonsUnderWay.YEAR, List.of());
    var day = LocalDate.of(SeasonsUnderWay.YEAR, 3, 10);
    var forecast = GenerationForecast.of(FIT, FOUR.asOf(day, none, FOUR.weather));
    assertThat(forecast.flown()).isEmpty();
    assertThat(forecast.flownTable().toText()).contains("Nothing to speak of has flown yet");
    assertThatThrownBy(() -> new FlownShare(1, 0.4, 0.3, 0.5))
        .hasMessageContaining("shares from 0 to 1 in order");
  }

  @Test
  void daysUntilCountFromTheDayOfIssue() {
    var forecast = GenerationForecast.of(FIT, FOUR.asOf(SeasonsUnderWay.AS_OF));
    var dates = forecast.flight(2, FlightShare.HALF).orElseThrow().dates();
    var days = dates.daysFrom(SeasonsUnderWay.AS_OF, 0.5).orElseThrow();
    assertThat(SeasonsUnderWay.AS_OF.plusDays(days)).isEqualTo(dates.median().orElseThrow());
    assertThat(dates.daysFrom(SeasonsUnderWay.AS_OF.plusYears(1), 0.5).orElseThrow()).isNegative();
    assertThat(forecast.table().toText().replace('\u00a0', ' '))
        .contains("Days until", days + " (");
    var never =
        DateDistribution.ofOutcomes(SeasonsUnderWay.AS_OF, new double[] {Double.POSITIVE_INFINITY});
    assertThat(never.daysFrom(SeasonsUnderWay.AS_OF, 0.5)).isEmpty();
  }

  /** The same day of issue with more counts: the start is known better, and so is the date. */
  @Test
  void moreCountsNarrowTheDate() {
    var day = LocalDate.of(SeasonsUnderWay.YEAR, 6, 10);
    var none = new TrapSeason(SeasonsUnderWay.YEAR, List.of());
    var some = FOUR.whole.traps().upTo(LocalDate.of(SeasonsUnderWay.YEAR, 4, 25));
    var widths = new double[3];
    var traps = List.of(none, some, FOUR.whole.traps().upTo(day));
    for (var i = 0; i < 3; i++) {
      var dates =
          GenerationForecast.of(FIT, FOUR.asOf(day, traps.get(i), FOUR.weather))
              .flight(2, FlightShare.HALF)
              .orElseThrow()
              .dates();
      widths[i] = dates.quantileDays(0.95) - dates.quantileDays(0.05);
    }
    assertThat(widths[1]).isLessThan(0.9 * widths[0]);
    assertThat(widths[2]).isLessThanOrEqualTo(widths[1]);
  }

  /**
   * At steady temperatures a stage above another threshold takes its requirement over the warmth
   * above that threshold: after the flight's day, days = requirement / (T - threshold).
   */
  @Test
  void aStageWithItsOwnThresholdRunsOnItsOwnScale() {
    var flat = new double[(int) (YearsAlike.LAST.toEpochDay() - YearsAlike.AS_OF.toEpochDay())];
    Arrays.fill(flat, 10);
    var season = YearsAlike.season(List.of(flat, flat, flat));
    var weather = new WeatherAhead(season);
    var stage =
        new StageOffset(
            "eggs hatch",
            new ThermalTime(60),
            Thresholds.above(Temperature.ofCelsius(11)),
            InventedSeasons.SOURCE);
    var scale = StageScale.of(stage, season, weather);
    // The days ahead have 17 °C, so 6 °C·d above 11 °C.
    assertThat(scale.daysAfter(80, Double.NaN, 50)).isCloseTo(90, within(1e-9));
    assertThat(scale.daysAfter(Double.POSITIVE_INFINITY, Double.NaN, 50)).isInfinite();
    // The known days have 11 °C: nothing comes together before the seam, at 61 days.
    assertThat(scale.daysAfter(30, Double.NaN, 50)).isCloseTo(71, within(1e-9));
  }

  /** The same requirement on the flight's own thresholds, by the two ways, gives the same dates. */
  @Test
  void stagesOnBothScalesStandInTheForecast() {
    var own =
        new StageOffset(
            "larvae",
            new ThermalTime(120),
            Thresholds.above(Temperature.ofCelsius(9)),
            InventedSeasons.SOURCE);
    var same =
        new StageOffset(
            "eggs",
            new ThermalTime(60),
            InventedSeasons.MODEL.thresholds(),
            InventedSeasons.SOURCE);
    var rows =
        GenerationForecast.of(
                FIT, FOUR.asOf(SeasonsUnderWay.AS_OF), List.of(same, own), Progress.silent())
            .rows();
    var flight = at(rows, "flight");
    var eggs = at(rows, "eggs");
    var larvae = at(rows, "larvae");
    assertThat(flight.dates().quantileDays(0.5)).isLessThan(eggs.dates().quantileDays(0.5));
    assertThat(eggs.dates().quantileDays(0.5)).isLessThan(larvae.dates().quantileDays(0.5));
    assertThat(larvae.spread()).isPresent();
  }

  private static ForecastRow at(List<ForecastRow> rows, String event) {
    return rows.stream()
        .filter(row -> row.generation() == 2 && row.event().equals(event))
        .filter(row -> row.share() == FlightShare.HALF)
        .findFirst()
        .orElseThrow();
  }
}
