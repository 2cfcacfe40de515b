package agro.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeError;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.weather.gap.FilledDays;
import agro.weather.gap.GapFilling;
import agro.weather.gap.ReadingGapFilling;
import agro.weather.log.LogFormat;
import agro.weather.log.TemperatureLog;
import agro.weather.quality.QualityControl;
import agro.weather.quality.QualityRule;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The logs of Osmere Vale, read without a word about their layout, judged and mended, against the
 * true temperatures of the vale. The data are invented, so this proves nothing about real loggers;
 * it does prove that nothing is lost or moved on the way.
 */
class FieldLogTest {

  private static final OsmereVale VALE = OsmereVale.of(OsmereVale.SEED);
  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(1);
  private static final DegreeDayModel SINE =
      DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(7)), UpperCutoff.NONE);

  private static TemperatureLog read(String file, LogFormat format) {
    return TemperatureLog.read(
        Path.of("..", "demo-data", "osmere-vale", "logs", file), format, file, Medium.shelterAir());
  }

  private static TemperatureLog upperCroft() {
    return read("upper-croft-2024.csv", LogFormat.detect().withZone(LogFiles.CLOCK));
  }

  private static double truth(Site site, long epochSecond) {
    var time = Instant.ofEpochSecond(epochSecond).atOffset(STANDARD).toLocalDateTime();
    return VALE.air(site).celsius(time.toLocalDate(), time.getHour() * 60 + time.getMinute());
  }

  /** One decimal is written; a reading moved by an hour would be off by a degree and more. */
  @Test
  void noReadingIsMovedByTheClockChanges() {
    var readings = upperCroft().readings().orElseThrow();
    assertThat(readings.size()).isEqualTo(6084);
    for (int i = 0; i < readings.size(); i++) {
      assertThat(readings.celsius(i))
          .isCloseTo(truth(Site.UPPER_CROFT, readings.epochSecond(i)), within(0.0501));
    }
  }

  @Test
  void extremesInFahrenheitWithDecimalCommas() {
    var days = read("mill-field.csv", LogFormat.detect()).daily();
    var air = VALE.air(Site.MILL_FIELD);
    assertThat(days.size() - days.missingDays().size()).isEqualTo(1615);
    for (int i = 0; i < days.size(); i++) {
      var day = days.day(i);
      if (days.extremes(day).isPresent()) {
        assertThat(days.minCelsius(day)).isCloseTo(air.minimum(day), within(0.0279));
        assertThat(days.maxCelsius(day)).isCloseTo(air.maximum(day), within(0.0279));
      }
    }
  }

  private static TemperatureReadings sandLane() {
    var log = read("sand-lane-2026.csv", LogFormat.detect().withDayOffset(STANDARD));
    return log.readings().orElseThrow();
  }

  /** The sensor scatters by 0.08 °C; whatever is farther off is a fault, and all of them go. */
  @Test
  void whatIsLeftOutOfSandLaneIsWhatIsWrong() {
    var readings = sandLane();
    var flags = QualityControl.withDefaults().check(readings);
    var clean =
        flags.withoutFlagged(readings, Set.of(QualityRule.SPIKE, QualityRule.STUCK)).readings();
    assertThat(clean.size()).isEqualTo(readings.size() - 2 - 45);
    assertThat(worst(readings)).isGreaterThan(20);
    assertThat(worst(clean)).isLessThan(0.45);
  }

  private static double worst(TemperatureReadings readings) {
    double worst = 0;
    for (int i = 0; i < readings.size(); i++) {
      double off = readings.celsius(i) - truth(Site.SAND_LANE, readings.epochSecond(i));
      worst = Math.max(worst, Math.abs(off));
    }
    return worst;
  }

  @Test
  void filledHoursLieWithinTheirErrors() {
    var readings = sandLane();
    var flags = QualityControl.withDefaults().check(readings);
    var clean =
        flags.withoutFlagged(readings, Set.of(QualityRule.SPIKE, QualityRule.STUCK)).readings();
    var mended = ReadingGapFilling.withDefaults().fill(clean);
    assertThat(mended.readings().size()).isEqualTo(10_080);
    for (int i = 0; i < mended.readings().size(); i++) {
      if (mended.isFilled(i)) {
        double truth = truth(Site.SAND_LANE, mended.readings().epochSecond(i));
        assertThat(mended.readings().celsius(i))
            .isCloseTo(truth, within(3 * mended.standardErrorCelsius(i)));
      }
    }
  }

  private static FilledDays filled() {
    var station = read("osmere-station.csv", LogFormat.detect()).daily();
    var own = ReadingGapFilling.withDefaults().fill(upperCroft().readings().orElseThrow()).daily();
    return GapFilling.withDefaults().interpolateUpTo(1).neighbour(station).fill(own);
  }

  @Test
  void filledDaysLieWithinTheirErrors() {
    var days = filled().daily();
    var air = VALE.air(Site.UPPER_CROFT);
    for (var day = LocalDate.of(2024, 7, 1); day.getDayOfMonth() <= 10; day = day.plusDays(1)) {
      assertThat(days.origin(day)).isEqualTo(DayOrigin.NEIGHBOUR);
      assertThat(days.minCelsius(day))
          .isCloseTo(air.minimum(day), within(3 * days.minStandardErrorCelsius(day)));
      assertThat(days.maxCelsius(day))
          .isCloseTo(air.maximum(day), within(3 * days.maxStandardErrorCelsius(day)));
    }
  }

  @Test
  void theSumOfTheFilledDaysLiesWithinItsError() {
    var error = ThermalTimeError.of(SINE, filled(), LocalDate.of(2024, 6, 10));
    var part = error.parts().get(0);
    assertThat(part.days().first()).isEqualTo(LocalDate.of(2024, 7, 1));
    assertThat(part.degreeDaysC())
        .isCloseTo(
            trueSum(LocalDate.of(2024, 7, 1), LocalDate.of(2024, 7, 10)),
            within(2 * part.standardErrorC()));
  }

  private static double trueSum(LocalDate from, LocalDate to) {
    var air = VALE.air(Site.UPPER_CROFT);
    double sum = 0;
    for (var day = from; !day.isAfter(to); day = day.plusDays(1)) {
      sum += SINE.degreeDaysC(air.minimum(day), air.maximum(day));
    }
    return sum;
  }

  /** The moths of eggs of 10 June come out within the interval that the filled log gives. */
  @Test
  void theTrueDateLiesInTheInterval() {
    var laid = LocalDate.of(2024, 6, 10);
    var air = VALE.air(Site.UPPER_CROFT);
    var trueDays =
        laid.datesUntil(LocalDate.of(2024, 8, 10))
            .map(day -> new DailyExtremes(day, air.minimum(day), air.maximum(day)))
            .toList();
    var truth = DailyTemperatures.of("truth", Medium.shelterAir(), trueDays, DayOrigin.OBSERVED);
    var requirement = ThermalTime.ofDegreeDaysC(444.6);
    var reached = ThermalTimeScale.of(SINE, truth, laid).reached(requirement).orElseThrow();
    var date = ThermalTimeError.of(SINE, filled(), laid).reached(requirement, 0.9).orElseThrow();
    assertThat(reached.day()).isBetween(date.earliest().orElseThrow(), date.latest().orElseThrow());
    assertThat(date.reached().daysSinceStartOf(laid))
        .isCloseTo(reached.daysSinceStartOf(laid), within(3 * date.standardErrorDays()));
  }
}
