package agro.weather.gap;

import static org.assertj.core.api.Assertions.assertThat;

import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.SeattleDays;
import agro.weather.climate.ClimateNormals;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for any pattern of gaps. */
class GapFillingPropertiesTest {

  private static final DailyTemperatures DAYS = SeattleDays.all();
  private static final ClimateNormals NORMALS = ClimateNormals.of(DAYS);
  private static final DailyTemperatures STATION = GapFillingTest.neighbourOf(DAYS, 1, 5);

  /** Days go missing in spells. */
  private static DailyTemperatures gappy(
      DailyTemperatures series, long seed, double begins, double goesOn) {
    var random = new SplittableRandom(seed);
    var builder = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    series.copyInto(builder, series.firstDay());
    boolean missing = false;
    for (int i = 0; i < series.size(); i++) {
      missing = random.nextDouble() < (missing ? goesOn : begins);
      if (missing) {
        builder.putAt(i, Double.NaN, Double.NaN, DayOrigin.MISSING);
      }
    }
    return builder.build(series.place(), series.medium());
  }

  @Property(seed = "8", tries = 30)
  void everyGapIsToldAndEveryFilledDayHasItsError(
      @ForAll @IntRange(min = 0, max = 100_000) int seed,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double begins,
      @ForAll @DoubleRange(min = 0, max = 0.95) double goesOn,
      @ForAll @IntRange(min = 0, max = 6) int longest,
      @ForAll boolean withStation,
      @ForAll boolean withClimate) {
    var series = gappy(DAYS, seed, begins, goesOn);
    var filling = GapFilling.withDefaults().interpolateUpTo(longest);
    filling = withStation ? filling.neighbour(gappy(STATION, seed + 1, begins, goesOn)) : filling;
    filling = withClimate ? filling.climatology(NORMALS) : filling;
    var filled = filling.fill(series);
    var daily = filled.daily();
    assertThat(daily.size()).isEqualTo(series.size());
    assertThat(filled.filledDays() + filled.openDays()).isEqualTo(series.missingDays().size());
    assertThat(filled.openDays()).isEqualTo(daily.missingDays().size());
    if (withClimate) {
      assertThat(filled.openDays()).isZero();
    }
    for (int i = 0; i < series.size(); i++) {
      var day = series.day(i);
      if (series.originAt(i) != DayOrigin.MISSING) {
        assertThat(daily.extremes(day)).isEqualTo(series.extremes(day));
        assertThat(daily.originAt(i)).isEqualTo(series.originAt(i));
        assertThat(daily.minStandardErrorCelsius(day)).isZero();
      } else if (daily.originAt(i) != DayOrigin.MISSING) {
        assertThat(daily.minStandardErrorCelsius(day)).isBetween(1e-9, 20.0);
        assertThat(daily.maxStandardErrorCelsius(day)).isBetween(1e-9, 20.0);
        assertThat(daily.minCelsius(day)).isLessThanOrEqualTo(daily.maxCelsius(day));
      }
    }
    var before = series.firstDay().minusDays(1);
    for (var gap : filled.gaps()) {
      assertThat(gap.days().first()).isAfter(before);
      assertThat(gap.words()).isNotBlank();
      before = gap.days().last();
    }
  }

  /** With nothing missing nothing is done. */
  @Property(seed = "8", tries = 3)
  void aWholeSeriesStaysAsItIs(@ForAll @IntRange(min = 0, max = 9) int longest) {
    var filled = GapFilling.withDefaults().interpolateUpTo(longest).climatology(NORMALS).fill(DAYS);
    assertThat(filled.daily()).isEqualTo(DAYS);
    assertThat(filled.gaps()).isEmpty();
  }
}
