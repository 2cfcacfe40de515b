package agro.units;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Temperatures against the definitions of NIST Special Publication 811. */
class TemperatureUnitTest {

  static List<NamedCsvRecord> temperatures() {
    return ReferenceTable.read(TemperatureUnitTest.class, "temperatures.csv");
  }

  @ParameterizedTest
  @MethodSource("temperatures")
  void agreesWithTheDefinitions(NamedCsvRecord line) {
    double celsius = number(line, "celsius");
    for (var unit : TemperatureUnit.values()) {
      double value = number(line, unit.name().toLowerCase(Locale.ROOT));
      assertThat(unit.toCelsius(value)).isCloseTo(celsius, within(tolerance(celsius)));
      assertThat(unit.fromCelsius(celsius)).isCloseTo(value, within(tolerance(value)));
      assertThat(Temperature.of(value, unit).in(unit)).isCloseTo(value, within(tolerance(value)));
    }
  }

  private static double tolerance(double value) {
    return 1e-12 * Math.max(1, Math.abs(value));
  }

  @Test
  void tableIsWhole() {
    assertThat(temperatures()).hasSize(11);
  }

  /** NIST SP 811: t/°C = (t/°F - 32)/1.8; whole results of whole values are exact. */
  @Test
  void wholeDegreesAreExact() {
    assertThat(TemperatureUnit.FAHRENHEIT.toCelsius(50)).isEqualTo(10);
    assertThat(TemperatureUnit.FAHRENHEIT.fromCelsius(10)).isEqualTo(50);
    assertThat(TemperatureUnit.FAHRENHEIT.toCelsius(212)).isEqualTo(100);
    assertThat(TemperatureUnit.FAHRENHEIT.toCelsius(-40)).isEqualTo(-40);
    assertThat(TemperatureUnit.KELVIN.toCelsius(273.15)).isZero();
    assertThat(Temperature.ofFahrenheit(88).celsius()).isCloseTo(31.11, within(0.005));
  }

  @Test
  void absoluteZeroIsTheEndInEveryUnit() {
    assertThat(Temperature.of(-459.67, TemperatureUnit.FAHRENHEIT).celsius()).isEqualTo(-273.15);
    assertThat(Temperature.of(0, TemperatureUnit.KELVIN).celsius()).isEqualTo(-273.15);
    assertThatThrownBy(() -> Temperature.ofCelsius(-273.16))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a temperature is finite and at least -273.15 °C, but got -273.16 °C");
  }

  @ParameterizedTest
  @EnumSource(TemperatureUnit.class)
  void notKnownPassesThroughSeriesButIsNoTemperature(TemperatureUnit unit) {
    assertThat(unit.toCelsius(Double.NaN)).isNaN();
    assertThat(unit.fromCelsius(Double.NaN)).isNaN();
    assertThatThrownBy(() -> Temperature.of(Double.NaN, unit))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> Temperature.of(Double.POSITIVE_INFINITY, unit))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** NIST SP 811: an interval of 1 °F is 1/1.8 °C, and of 1 K is 1 °C. */
  @Test
  void differencesHaveNoOffset() {
    var nine = TemperatureDifference.of(9, TemperatureUnit.FAHRENHEIT);
    assertThat(nine.celsius()).isEqualTo(5);
    assertThat(nine.in(TemperatureUnit.KELVIN)).isEqualTo(5);
    assertThat(nine.in(TemperatureUnit.FAHRENHEIT)).isEqualTo(9);
    assertThat(nine).hasToString("5 °C (difference)");
    assertThatThrownBy(() -> new TemperatureDifference(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("NaN");
  }

  @Test
  void temperaturesAreComparedAndShifted() {
    var low = Temperature.ofCelsius(7);
    var high = Temperature.ofCelsius(30);
    assertThat(low).isLessThan(high).hasToString("7 °C");
    assertThat(high.minus(low)).isEqualTo(new TemperatureDifference(23));
    assertThat(low.plus(new TemperatureDifference(-9.5))).isEqualTo(Temperature.ofCelsius(-2.5));
  }

  /** The codes of the Unified Code for Units of Measure (value from memory). */
  @Test
  void symbolsAndCodes() {
    assertThat(TemperatureUnit.values())
        .extracting(TemperatureUnit::symbol)
        .containsExactly("°C", "°F", "K");
    assertThat(TemperatureUnit.values())
        .extracting(TemperatureUnit::ucum)
        .containsExactly("Cel", "[degF]", "K");
  }

  @Property(seed = "8")
  void wayBackEndsWhereItBegan(
      @ForAll TemperatureUnit unit, @ForAll @DoubleRange(min = -273, max = 1000) double celsius) {
    assertThat(unit.toCelsius(unit.fromCelsius(celsius))).isCloseTo(celsius, within(1e-12 * 1000));
  }
}
