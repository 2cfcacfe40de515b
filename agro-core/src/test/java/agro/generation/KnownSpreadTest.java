package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.generation.InventedSeasons.Truth;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.gap.ErrorCorrelation;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;

/** Errors of bridged and forecast days in the known sum and in the dates. */
class KnownSpreadTest {

  private static final int BRIDGED = 9;

  /** Steady days well above the threshold, so that a day's degree-days are its mean less 7 °C. */
  private static SeasonUnderWay season(double error, KnownDayErrors errors) {
    var base = YearsAlike.season(List.of(year(1), year(2), year(3), year(4)));
    var known = DailyTemperatures.builder(YearsAlike.FIRST, YearsAlike.AS_OF);
    for (var i = 0; i < base.known().size(); i++) {
      var day = base.known().day(i);
      var bridged = i >= base.known().size() - BRIDGED;
      known.put(
          day,
          20,
          20,
          bridged ? error : 0,
          bridged ? error : 0,
          bridged ? DayOrigin.NEIGHBOUR : DayOrigin.OBSERVED);
    }
    return new SeasonUnderWay(
            base.pest(),
            base.model(),
            base.traps(),
            base.firstDay(),
            base.lastDay(),
            base.asOf(),
            known.build("Test field", Medium.shelterAir()),
            base.members())
        .with(errors);
  }

  private static double[] year(long seed) {
    return YearsAlike.year(new RandomDataGenerator(seed));
  }

  /** Independent errors add in squares; each day's is that of the mean of two extremes. */
  @Test
  void independentErrorsAddUpInSquares() {
    var errors = new KnownDayErrors(new ErrorCorrelation(0, 0), 0, 0);
    assertThat(new KnownSpread(season(0.8, errors)).errorC())
        .isCloseTo(0.8 / Math.sqrt(2) * Math.sqrt(BRIDGED), within(1e-6));
  }

  @Test
  void errorsThatGoTheSameWayAddUpAsTheyAre() {
    assertThat(new KnownSpread(season(0.8, KnownDayErrors.WIDEST)).errorC())
        .isCloseTo(0.8 * BRIDGED, within(1e-6));
  }

  /** The offset's error is the same on all bridged days; minima and maxima are independent. */
  @Test
  void theOffsetMovesAllBridgedDaysTogether() {
    var errors = new KnownDayErrors(ErrorCorrelation.NONE, 0.3, 0.4);
    var spread = new KnownSpread(season(0, errors));
    assertThat(spread.errorC()).isCloseTo(BRIDGED * Math.hypot(0.15, 0.2), within(1e-6));
    var seam = spread.errorC();
    spread.countFrom(3);
    assertThat(spread.errorC()).isEqualTo(seam);
    var days = YearsAlike.AS_OF.toEpochDay() - YearsAlike.FIRST.toEpochDay() + 1.0;
    spread.countFrom(days - 3);
    assertThat(spread.errorC()).isLessThan(seam);
    assertThat(spread.errorC(4)).isZero();
  }

  /** A forecast over bridged days with errors is wider, and says so instead of "exact". */
  @Test
  void datesGetWiderByTheErrors() {
    var seasons = new SeasonsUnderWay(21, Truth.usual(), 4);
    var fit = seasons.fit();
    var exact = bridged(seasons, 0, KnownDayErrors.WIDEST);
    var wide = bridged(seasons, 2, KnownDayErrors.WIDEST);
    var before = GenerationForecast.of(fit, exact);
    var after = GenerationForecast.of(fit, wide);
    var one = before.flight(2, FlightShare.HALF).orElseThrow();
    var other = after.flight(2, FlightShare.HALF).orElseThrow();
    assertThat(width(other)).isGreaterThan(width(one) + 1);
    assertThat(other.dates().quantileDays(0.5))
        .isCloseTo(one.dates().quantileDays(0.5), within(1.5));
    assertThat(other.spread().orElseThrow().temperatures()).isPositive();
    assertThat(one.spread().orElseThrow().temperatures()).isZero();
    assertThat(before.report().entries().toString()).contains("20 days", "taken as exact");
    assertThat(after.report().entries().toString())
        .contains("20 known days were not measured at the place")
        .contains("errors of neighbouring days of one run are correlated by 1.00")
        .doesNotContain("taken as exact");
  }

  private static double width(ForecastRow row) {
    return row.dates().quantileDays(0.95) - row.dates().quantileDays(0.05);
  }

  private static SeasonUnderWay bridged(
      SeasonsUnderWay seasons, double error, KnownDayErrors errors) {
    var season = seasons.asOf(SeasonsUnderWay.AS_OF);
    var known = season.known();
    var builder = DailyTemperatures.builder(known.firstDay(), known.lastDay());
    known.copyInto(builder, known.firstDay());
    for (var i = known.size() - 20; i < known.size(); i++) {
      var day = known.day(i);
      builder.put(
          day, known.minCelsius(day), known.maxCelsius(day), error, error, DayOrigin.NEIGHBOUR);
    }
    return new SeasonUnderWay(
            season.pest(),
            season.model(),
            season.traps(),
            season.firstDay(),
            season.lastDay(),
            season.asOf(),
            builder.build(known.place(), known.medium()),
            season.members())
        .with(errors);
  }

  /** What so many years cannot show, by the places of ordered years. */
  @Test
  void aLineTellsWhatTheNumberOfYearsCannotResolve() {
    assertThat(ForecastNotes.resolution(15))
        .contains("15 years", "from 6 to 94 in 100", "below 10 and above 90 in 100 is smoothed");
    assertThat(ForecastNotes.resolution(5)).contains("below 25 and above 75 in 100");
    assertThat(ForecastNotes.resolution(19)).contains("reach to the ends of every interval");
    assertThat(ForecastNotes.resolution(18)).contains("below 10 and above 90 in 100");
    assertThat(Arrays.asList(ForecastNotes.resolution(3)).toString())
        .contains("below 25 and above 75");
  }
}
