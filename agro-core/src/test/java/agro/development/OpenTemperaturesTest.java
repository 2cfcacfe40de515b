package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Temperature;
import agro.weather.log.CompletenessRule;
import agro.weather.log.LogFormat;
import agro.weather.log.TemperatureLog;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Open files of the national archive of the United States, read by the one call with nothing
 * declared and accumulated, beside values computed in base R by the script that lies with them.
 */
class OpenTemperaturesTest {

  private static final double TOLERANCE = 1e-6;
  private static final String FOLDER = "/agro/weather/open/";
  private static final CompletenessRule WHOLE_DAYS = new CompletenessRule(1, Duration.ofHours(1));
  private static final Map<String, TemperatureLog> LOGS = new HashMap<>();

  static List<NamedCsvRecord> lines() {
    return ReferenceTable.read(OpenTemperaturesTest.class, FOLDER + "open-temperatures.csv");
  }

  private static TemperatureLog log(String name) {
    return LOGS.computeIfAbsent(
        name,
        file -> {
          try {
            var found = OpenTemperaturesTest.class.getResource(FOLDER + file);
            var path = Path.of(Objects.requireNonNull(found, file).toURI());
            return TemperatureLog.read(path, LogFormat.detect().withCompleteness(WHOLE_DAYS));
          } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  private static DailyDegreeDays degreeDays(NamedCsvRecord line, TemperatureLog log) {
    var lower = new Temperature(ReferenceTable.number(line, "lower_c"));
    boolean hasUpper = !line.getField("upper_c").isEmpty();
    var thresholds =
        hasUpper
            ? Thresholds.between(lower, new Temperature(ReferenceTable.number(line, "upper_c")))
            : Thresholds.above(lower);
    var cutoff = hasUpper ? UpperCutoff.HORIZONTAL : UpperCutoff.NONE;
    var method = DegreeDayMethod.valueOf(line.getField("method"));
    return method.needsReadings()
        ? ReadingSum.of(thresholds, cutoff).daily(log.readings().orElseThrow())
        : DegreeDayModel.of(method, thresholds, cutoff).daily(log.daily());
  }

  @ParameterizedTest
  @MethodSource("lines")
  void sumsAndDaysAreThoseOfBaseR(NamedCsvRecord line) {
    var log = log(line.getField("file"));
    int year = ReferenceTable.whole(line, "year");
    var newYear = LocalDate.of(year, 1, 1);
    var first = log.daily().firstDay().isAfter(newYear) ? log.daily().firstDay() : newYear;
    var all = degreeDays(line, log).between(first, LocalDate.of(year, 12, 31));
    var scale = ThermalTimeScale.of(all, first, MissingDayPolicy.REFUSE);

    assertThat(scale.days()).isEqualTo(ReferenceTable.whole(line, "days"));
    assertThat(scale.totalC())
        .isCloseTo(ReferenceTable.number(line, "total_c_d"), within(TOLERANCE));
    for (int sum : new int[] {100, 500}) {
      assertThat(scale.daysUntil(sum))
          .isCloseTo(ReferenceTable.number(line, "days_until_" + sum), within(TOLERANCE));
    }
  }

  @Test
  void everyMethodWithoutDayLengthIsAmongThem() {
    assertThat(lines())
        .extracting(line -> DegreeDayMethod.valueOf(line.getField("method")))
        .contains(
            Arrays.stream(DegreeDayMethod.values())
                .filter(method -> !method.needsDayLength())
                .toArray(DegreeDayMethod[]::new));
  }

  @Test
  void whatWasReadIsWhatStandsInTheFiles() {
    var daily = log("seattle-daily.csv").daily();
    assertThat(daily.firstDay()).isEqualTo(LocalDate.of(2012, 1, 1));
    assertThat(daily.size()).isEqualTo(1461);
    assertThat(daily.missingDays()).isEmpty();
    assertThat(daily.minCelsius(LocalDate.of(2012, 1, 11))).isEqualTo(-1.1);
    assertThat(daily.maxCelsius(LocalDate.of(2012, 1, 1))).isEqualTo(12.8);

    var hourly = log("seattle-hourly-normals.csv");
    assertThat(hourly.readings().orElseThrow().size()).isEqualTo(8759);
    assertThat(hourly.daily().size()).isEqualTo(364);
    assertThat(hourly.report().toString())
        .contains("2010-01-01", "at least 100 % of the readings and no gap above 1 h");
  }
}
