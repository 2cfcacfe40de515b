package agro.development;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTimeUnit;
import agro.weather.curve.CurveDay;
import agro.weather.curve.DayCurve;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every method against published values, values by hand, and integration in another language. */
class MethodReferenceTest {

  private static List<NamedCsvRecord> table(String name) {
    return ReferenceTable.read(MethodReferenceTest.class, name);
  }

  static List<NamedCsvRecord> triangles() {
    return table("single-triangle-check.csv");
  }

  static List<NamedCsvRecord> doubles() {
    return table("double-curves-check.csv");
  }

  static List<NamedCsvRecord> averages() {
    return table("averages-check.csv");
  }

  static List<NamedCsvRecord> decays() {
    return table("sine-and-decay-check.csv");
  }

  static List<NamedCsvRecord> choices() {
    return table("choices-that-matter.csv");
  }

  static List<NamedCsvRecord> fourCases() {
    return table("four-case-rule.csv");
  }

  private static DegreeDayModel model(
      DegreeDayMethod method, double lowerC, double upperC, UpperCutoff cutoff) {
    var thresholds = Thresholds.between(new Temperature(lowerC), new Temperature(upperC));
    return new DegreeDayModel(
        method, thresholds, cutoff, Optional.of(DayLength.at(Latitude.north(46))));
  }

  /** Degree-days of a line in the unit of the line. */
  private static double inUnit(
      NamedCsvRecord line, DegreeDayMethod method, UpperCutoff cutoff, CurveDay day) {
    var unit = TemperatureUnit.valueOf(line.getField("unit"));
    double celsius =
        model(
                method,
                unit.toCelsius(number(line, "lower")),
                unit.toCelsius(number(line, "upper")),
                cutoff)
            .degreeDaysC(day);
    var sumUnit =
        unit == TemperatureUnit.CELSIUS
            ? ThermalTimeUnit.CELSIUS_DAY
            : ThermalTimeUnit.FAHRENHEIT_DAY;
    return sumUnit.inCelsiusDays().inverse().convert(celsius);
  }

  private static CurveDay day(NamedCsvRecord line) {
    var unit = TemperatureUnit.valueOf(line.getField("unit"));
    return CurveDay.of(unit.toCelsius(number(line, "min")), unit.toCelsius(number(line, "max")));
  }

  private static String column(UpperCutoff cutoff) {
    return cutoff.name().toLowerCase(Locale.ROOT);
  }

  @ParameterizedTest
  @MethodSource("triangles")
  void singleTriangleAgreesWithTheTable(NamedCsvRecord line) {
    for (var cutoff : UpperCutoff.values()) {
      assertThat(inUnit(line, DegreeDayMethod.SINGLE_TRIANGLE, cutoff, day(line)))
          .as("row %s, %s", line.getField("id"), cutoff)
          .isCloseTo(number(line, column(cutoff)), within(1e-6));
    }
  }

  @ParameterizedTest
  @MethodSource("doubles")
  void doubleCurvesAgreeWithTheTable(NamedCsvRecord line) {
    var method = DegreeDayMethod.valueOf(line.getField("method"));
    var unit = TemperatureUnit.valueOf(line.getField("unit"));
    var day = day(line).withNextMinimum(unit.toCelsius(number(line, "next_min")));
    for (var cutoff : UpperCutoff.values()) {
      assertThat(inUnit(line, method, cutoff, day))
          .as("row %s, %s", line.getField("id"), cutoff)
          .isCloseTo(number(line, column(cutoff)), within(1e-6));
    }
  }

  @ParameterizedTest
  @MethodSource("averages")
  void averagesAgreeWithTheTable(NamedCsvRecord line) {
    var day = day(line);
    assertThat(inUnit(line, DegreeDayMethod.AVERAGE_MEAN_LIMITED, UpperCutoff.NONE, day))
        .isCloseTo(number(line, "mean_none"), within(1e-9));
    assertThat(inUnit(line, DegreeDayMethod.AVERAGE_MEAN_LIMITED, UpperCutoff.HORIZONTAL, day))
        .isCloseTo(number(line, "mean_horizontal"), within(1e-9));
    assertThat(inUnit(line, DegreeDayMethod.AVERAGE_EXTREMES_LIMITED, UpperCutoff.HORIZONTAL, day))
        .isCloseTo(number(line, "extremes_horizontal"), within(1e-9));
  }

  /**
   * Iowa State University, Integrated Crop Management newsletter, 28 June 1999: at 22.5 °F·d a day
   * the 225 °F·d from hatch to the third instar of the European corn borer take about 10 days.
   */
  @Test
  void theNewslettersTenDaysAreTen() {
    var fahrenheit = Thresholds.between(Temperature.ofFahrenheit(50), Temperature.ofFahrenheit(86));
    var model =
        DegreeDayModel.of(
            DegreeDayMethod.AVERAGE_EXTREMES_LIMITED, fahrenheit, UpperCutoff.HORIZONTAL);
    double daily =
        model.degreeDaysC(
            TemperatureUnit.FAHRENHEIT.toCelsius(60), TemperatureUnit.FAHRENHEIT.toCelsius(85));
    assertThat(ThermalTimeUnit.FAHRENHEIT_DAY.inCelsiusDays().convert(225) / daily)
        .isCloseTo(10, within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("decays")
  void sineAndDecayAgreesWithTheTable(NamedCsvRecord line) {
    var day = CurveDay.of(10, 30).withNextMinimum(12).withDayLength(number(line, "day_length"));
    double lower = number(line, "lower");
    double upper = number(line, "upper");
    assertThat(DayCurve.SINE_AND_DECAY.meanCelsius(day))
        .isCloseTo(number(line, "mean"), within(1e-6));
    for (var cutoff : UpperCutoff.values()) {
      assertThat(model(DegreeDayMethod.SINE_AND_DECAY, lower, upper, cutoff).degreeDaysC(day))
          .as("%s", cutoff)
          .isCloseTo(number(line, column(cutoff)), within(1e-6));
    }
    double samples = 0;
    for (int hour = 0; hour < 24; hour++) {
      double celsius = DayCurve.SINE_AND_DECAY.celsiusAt(day, hour);
      samples += UpperCutoff.HORIZONTAL.rate(celsius, lower, upper) / 24;
    }
    assertThat(samples).isCloseTo(number(line, "samples"), within(1e-6));
  }

  /** Where no threshold is crossed all methods agree with the rule; where one is, they do not. */
  @ParameterizedTest
  @MethodSource("fourCases")
  void theFourCaseRuleIsAnotherMethod(NamedCsvRecord line) {
    double min = number(line, "min");
    double max = number(line, "max");
    double base = number(line, "base");
    assertThat(number(line, "above") - number(line, "below"))
        .isCloseTo(0.5 * (min + max) - base, within(1e-12));
    double sine = DegreeDayMethod.SINGLE_SINE.areaAbove(min, max, base);
    double triangle = DegreeDayMethod.SINGLE_TRIANGLE.areaAbove(min, max, base);
    if (line.getField("crosses").equals("no")) {
      for (var method : DegreeDayMethod.values()) {
        if (!method.needsNextMinimum() && !method.needsReadings()) {
          assertThat(method.areaAbove(min, max, base))
              .isCloseTo(number(line, "above"), within(1e-12));
        }
      }
    } else {
      assertThat(triangle).isLessThanOrEqualTo(sine);
      assertThat(Math.abs(number(line, "above") - sine)).isGreaterThan(0.1);
    }
  }

  @Test
  void allCurvesAgreeWithIntegrationInPython() {
    var lines = table("curves-random-days.csv");
    assertThat(lines).hasSize(5 * 400);
    for (var line : lines) {
      var method = DegreeDayMethod.valueOf(line.getField("method"));
      var day =
          CurveDay.of(number(line, "min"), number(line, "max"))
              .withNextMinimum(number(line, "next_min"))
              .withDayLength(number(line, "day_length"));
      for (var cutoff : UpperCutoff.values()) {
        assertThat(
                model(method, number(line, "lower"), number(line, "upper"), cutoff)
                    .degreeDaysC(day))
            .as("%s, %s", line, cutoff)
            .isCloseTo(number(line, column(cutoff)), within(1e-9));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("choices")
  void choicesThatMatterAgreeWithTheTable(NamedCsvRecord line) {
    var day =
        CurveDay.of(number(line, "min"), number(line, "max"))
            .withNextMinimum(number(line, "next_min"))
            .withDayLength(number(line, "day_length"));
    var model =
        model(
            DegreeDayMethod.valueOf(line.getField("method")),
            number(line, "lower"),
            number(line, "upper"),
            UpperCutoff.valueOf(line.getField("cutoff")));
    assertThat(model.degreeDaysC(day)).isCloseTo(number(line, "degree_days"), within(6e-4));
  }

  @Test
  void tablesHaveAllRows() {
    assertThat(choices()).hasSize(20);
    assertThat(triangles()).hasSize(21);
    assertThat(doubles()).hasSize(12);
    assertThat(averages()).hasSize(16);
    assertThat(decays()).hasSize(6);
    assertThat(fourCases()).hasSize(5);
  }
}
