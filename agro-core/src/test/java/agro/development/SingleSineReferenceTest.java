package agro.development;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTimeUnit;
import agro.weather.DailyExtremes;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Single sine against tabulated values and against numerical integration in base R. */
class SingleSineReferenceTest {

  private static final LocalDate ANY_DAY = LocalDate.of(2001, 5, 17);

  static List<NamedCsvRecord> checkTable() {
    return ReferenceTable.read(SingleSineReferenceTest.class, "single-sine-check.csv");
  }

  @ParameterizedTest
  @MethodSource("checkTable")
  void agreesWithTheCheckTable(NamedCsvRecord line) {
    var unit = TemperatureUnit.valueOf(line.getField("unit"));
    var sumUnit =
        unit == TemperatureUnit.CELSIUS
            ? ThermalTimeUnit.CELSIUS_DAY
            : ThermalTimeUnit.FAHRENHEIT_DAY;
    var thresholds =
        Thresholds.between(
            Temperature.of(number(line, "lower"), unit),
            Temperature.of(number(line, "upper"), unit));
    var day =
        new DailyExtremes(
            ANY_DAY, unit.toCelsius(number(line, "min")), unit.toCelsius(number(line, "max")));
    for (var cutoff : UpperCutoff.values()) {
      var expected = number(line, cutoff.name().toLowerCase(Locale.ROOT));
      assertThat(DegreeDayModel.singleSine(thresholds, cutoff).degreeDays(day).in(sumUnit))
          .as("row %s, %s", line.getField("id"), cutoff)
          .isCloseTo(expected, within(1e-6));
    }
  }

  @Test
  void checkTableHasAllRows() {
    assertThat(checkTable()).hasSize(19);
  }

  @ParameterizedTest
  @EnumSource(UpperCutoff.class)
  void agreesWithNumericalIntegrationInR(UpperCutoff cutoff) {
    var days = ReferenceTable.read(SingleSineReferenceTest.class, "single-sine-random-days.csv");
    assertThat(days).hasSize(500);
    for (var line : days) {
      var thresholds =
          Thresholds.between(
              new Temperature(number(line, "lower")), new Temperature(number(line, "upper")));
      var model = DegreeDayModel.singleSine(thresholds, cutoff);
      assertThat(model.degreeDaysC(number(line, "min"), number(line, "max")))
          .as("line %d", line.getStartingLineNumber())
          .isCloseTo(number(line, cutoff.name().toLowerCase(Locale.ROOT)), within(1e-9));
    }
  }

  /** 10/π: the mean of the upper half of a sine of amplitude 10 about the threshold. */
  @Test
  void thresholdAtTheMeanGivesAmplitudeOverPi() {
    var model = DegreeDayModel.singleSine(Thresholds.above(new Temperature(10)), UpperCutoff.NONE);
    assertThat(model.degreeDaysC(0, 20)).isCloseTo(10 / Math.PI, within(1e-14));
  }
}
