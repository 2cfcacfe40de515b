package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import agro.weather.climate.ClimateNormals;
import agro.weather.climate.PastYears;
import agro.weather.log.TemperatureLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a file to a date on the southern half of the earth, in °F with decimal commas, over New
 * Year. The temperatures are invented; what has to come out is added up here, day by day.
 */
class SouthernSeasonTest {

  private static final LocalDate FIRST = LocalDate.of(2008, 7, 1);
  private static final LocalDate LAST = LocalDate.of(2021, 11, 30);
  private static final LocalDate SEASON = LocalDate.of(2021, 10, 1);
  private static final LocalDate SEASON_END = LocalDate.of(2022, 3, 31);
  private static final double LOWER = 10;

  @TempDir Path folder;
  private DailyTemperatures daily;

  /** Warmest in the middle of January; each year a tenth of a degree warmer than the one before. */
  private static double meanCelsius(LocalDate day) {
    int seasonYear = day.getMonthValue() < 7 ? day.getYear() - 1 : day.getYear();
    double phase = 2 * Math.PI * (day.getDayOfYear() - 15) / 365.25;
    return 15 + 9 * Math.cos(phase) + 0.1 * (seasonYear - 2008);
  }

  private static double fahrenheit(double celsius) {
    return Math.round((celsius * 1.8 + 32) * 10) / 10.0;
  }

  private static double degreeDays(LocalDate day) {
    double low = (fahrenheit(meanCelsius(day) - 2) - 32) / 1.8;
    double high = (fahrenheit(meanCelsius(day) + 2) - 32) / 1.8;
    return Math.max(0, (low + high) / 2 - LOWER);
  }

  @BeforeEach
  void readsTheFile() throws IOException {
    var lines = new ArrayList<String>();
    lines.add("Fecha;Temp. mínima (°F);Temp. máxima (°F)");
    FIRST
        .datesUntil(LAST.plusDays(1))
        .forEach(
            day ->
                lines.add(
                    String.format(
                            Locale.ROOT,
                            "%02d/%02d/%d;%.1f;%.1f",
                            day.getDayOfMonth(),
                            day.getMonthValue(),
                            day.getYear(),
                            fahrenheit(meanCelsius(day) - 2),
                            fahrenheit(meanCelsius(day) + 2))
                        .replace('.', ',')));
    lines.set(0, "Fecha;Temp. mínima (°F);Temp. máxima (°F)");
    var file = Files.write(folder.resolve("valle.csv"), lines, StandardCharsets.UTF_8);
    daily = TemperatureLog.read(file).daily();
  }

  private static DegreeDayModel model() {
    return DegreeDayModel.of(
        DegreeDayMethod.AVERAGE_MEAN_LIMITED,
        Thresholds.above(Temperature.ofFahrenheit(50)),
        UpperCutoff.NONE);
  }

  @Test
  void theFileIsReadInCelsius() {
    assertThat(daily.firstDay()).isEqualTo(FIRST);
    assertThat(daily.lastDay()).isEqualTo(LAST);
    assertThat(daily.missingDays()).isEmpty();
    assertThat(daily.minCelsius(LocalDate.of(2021, 1, 15)))
        .isCloseTo((fahrenheit(15 + 9 + 1.2 - 2) - 32) / 1.8, within(1e-12));
  }

  @Test
  void normalsAreWarmInJanuaryAndRunOverNewYear() {
    var normals = ClimateNormals.of(daily);
    var january = normals.normalCelsius(Extreme.MAXIMUM, LocalDate.of(2022, 1, 15));
    assertThat(january).isCloseTo(15 + 9 + 2 + 0.6, within(0.2));
    assertThat(normals.normalCelsius(Extreme.MAXIMUM, LocalDate.of(2021, 7, 16)))
        .isCloseTo(15 - 9 + 2 + 0.6, within(0.2));
    var days = normals.series(LocalDate.of(2021, 12, 20), LocalDate.of(2022, 1, 10));
    for (int i = 1; i < days.size(); i++) {
      assertThat(days.minCelsius(days.day(i)) - days.minCelsius(days.day(i - 1)))
          .isBetween(-0.1, 0.2);
    }
  }

  @Test
  void pastYearsCarryTheSeasonOverNewYearToTheDate() {
    var ahead = LAST.plusDays(1);
    var runs = PastYears.of(daily).runs(ahead, SEASON_END);
    assertThat(runs.years()).hasSize(13).startsWith(2008).endsWith(2020);
    for (int k = 0; k < runs.years().size(); k++) {
      int year = runs.years().get(k);
      var whole = daily.followedBy(runs.members().get(k));
      assertThat(whole.origin(SEASON_END)).isNotEqualTo(DayOrigin.OBSERVED);
      var scale = ThermalTimeScale.of(model(), whole, SEASON);
      var reached = scale.reached(new ThermalTime(1200)).orElseThrow();
      assertThat(reached.day()).isAfter(LocalDate.of(2021, 12, 31));
      assertThat(reached.daysSinceStartOf(SEASON)).isCloseTo(expected(year), within(1e-9));
    }
  }

  /** Days from the beginning of the season, added up from the observed days and a past year's. */
  private static double expected(int memberYear) {
    double sum = 0;
    for (var day = SEASON; ; day = day.plusDays(1)) {
      var source = day.isAfter(LAST) ? day.minusYears(2021 - memberYear) : day;
      double today = degreeDays(source);
      if (sum + today >= 1200) {
        return day.toEpochDay() - SEASON.toEpochDay() + (1200 - sum) / today;
      }
      sum += today;
    }
  }
}
