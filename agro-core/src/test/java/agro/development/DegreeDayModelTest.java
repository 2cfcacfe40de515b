package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTimeUnit;
import agro.weather.DailyExtremes;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DegreeDayModelTest {

  private static final Thresholds TEN_TO_THIRTY =
      Thresholds.between(new Temperature(10), new Temperature(30));

  private static DegreeDayModel sine(UpperCutoff cutoff) {
    return DegreeDayModel.singleSine(TEN_TO_THIRTY, cutoff);
  }

  /** A(LT) − 2 A(UT) = 45 − 50 = −5 here: animals do not grow younger, so the day counts 0. */
  @Test
  void intermediateDayIsNeverNegative() {
    assertThat(sine(UpperCutoff.INTERMEDIATE).degreeDaysC(50, 60)).isZero();
  }

  /** The total of the day is floored, not the rate inside it, which would give 7.542449. */
  @Test
  void intermediateFloorsTheDayAndNotTheMoment() {
    assertThat(sine(UpperCutoff.INTERMEDIATE).degreeDaysC(30, 60)).isCloseTo(5, within(1e-12));
  }

  /** 180 °F·d are 100 °C·d without an offset of 32, whatever the method. */
  @Test
  void fahrenheitDegreeDaysAreOnePointEightCelsiusDegreeDays() {
    var printed =
        Map.of(
            UpperCutoff.NONE, 19.586894,
            UpperCutoff.HORIZONTAL, 18.0,
            UpperCutoff.INTERMEDIATE, 16.413106,
            UpperCutoff.VERTICAL, 8.362063);
    var fahrenheit = Thresholds.between(Temperature.ofFahrenheit(50), Temperature.ofFahrenheit(86));
    var day =
        new DailyExtremes(
            LocalDate.of(2001, 5, 17),
            TemperatureUnit.FAHRENHEIT.toCelsius(41),
            TemperatureUnit.FAHRENHEIT.toCelsius(95));
    printed.forEach(
        (cutoff, degreeDaysF) -> {
          var sum = DegreeDayModel.singleSine(fahrenheit, cutoff).degreeDays(day);
          assertThat(sum.in(ThermalTimeUnit.FAHRENHEIT_DAY)).isCloseTo(degreeDaysF, within(1e-6));
          assertThat(sine(cutoff).degreeDaysC(5, 35) * 1.8)
              .isCloseTo(sum.in(ThermalTimeUnit.FAHRENHEIT_DAY), within(1e-12));
        });
  }

  @ParameterizedTest
  @EnumSource(UpperCutoff.class)
  void unknownTemperaturesGiveUnknownDegreeDays(UpperCutoff cutoff) {
    assertThat(sine(cutoff).degreeDaysC(Double.NaN, 20)).isNaN();
    assertThat(sine(cutoff).degreeDaysC(5, Double.NaN)).isNaN();
  }

  @Test
  void refusesMinimumAboveMaximum() {
    assertThatThrownBy(() -> sine(UpperCutoff.NONE).degreeDaysC(21, 20))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("minimum 21.0 °C and maximum 20.0 °C")
        .hasMessageContaining("swapped");
  }

  @Test
  void refusesArraysOfDifferentLength() {
    assertThatThrownBy(() -> sine(UpperCutoff.NONE).degreeDaysC(new double[2], new double[3]))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2 daily minima and 3 daily maxima");
  }

  @Test
  void manyDaysAreTheDaysOneByOne() {
    var model = sine(UpperCutoff.VERTICAL);
    assertThat(
            model.degreeDaysC(new double[] {5, 15, Double.NaN}, new double[] {25, 35, Double.NaN}))
        .containsExactly(model.degreeDaysC(5, 25), model.degreeDaysC(15, 35), Double.NaN);
  }

  @Test
  void refusesACutoffWithoutAnUpperThreshold() {
    var lowerOnly = Thresholds.above(new Temperature(10));
    assertThatThrownBy(() -> DegreeDayModel.singleSine(lowerOnly, UpperCutoff.HORIZONTAL))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("HORIZONTAL")
        .hasMessageContaining("Thresholds.between");
  }

  @Test
  void refusesThresholdsOutOfOrder() {
    assertThatThrownBy(() -> Thresholds.between(new Temperature(30), new Temperature(10)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("30 °C and 10 °C");
  }

  /** The day 5 to 35 °C between 10 and 30 °C crosses both thresholds. */
  @Test
  void workingShowsTheSteps() {
    var day = new DailyExtremes(LocalDate.of(2001, 5, 17), 5, 35);
    var horizontal = sine(UpperCutoff.HORIZONTAL).working(day);
    assertThat(horizontal.toText())
        .contains("M = (Tmax + Tmin) / 2", "20 °C", "crosses both thresholds", "10.0000 °C·d");
    assertThat(horizontal.references()).isNotEmpty();
    assertThat(sine(UpperCutoff.VERTICAL).working(day).toText()).contains("F(UT)", "4.6456 °C·d");
    var hot = new DailyExtremes(LocalDate.of(2001, 5, 17), 50, 60);
    assertThat(sine(UpperCutoff.INTERMEDIATE).working(hot).toText())
        .contains("above the upper threshold", "0.0000 °C·d", "does not run backwards");
  }
}
