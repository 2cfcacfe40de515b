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
import org.junit.jupiter.params.provider.MethodSource;

/** Thermal times convert by a factor alone; reference values after NIST Special Publication 811. */
class ThermalTimeTest {

  static List<NamedCsvRecord> thermalTimes() {
    return ReferenceTable.read(ThermalTimeTest.class, "thermal-times.csv");
  }

  @ParameterizedTest
  @MethodSource("thermalTimes")
  void agreesWithTheDefinitions(NamedCsvRecord line) {
    double degreeDaysC = number(line, "celsius_day");
    for (var unit : ThermalTimeUnit.values()) {
      double value = number(line, unit.name().toLowerCase(Locale.ROOT));
      assertThat(ThermalTime.of(value, unit).degreeDaysC())
          .isCloseTo(degreeDaysC, within(1e-12 * Math.max(1, degreeDaysC)));
      assertThat(new ThermalTime(degreeDaysC).in(unit))
          .isCloseTo(value, within(1e-12 * Math.max(1, value)));
    }
  }

  @Test
  void tableIsWhole() {
    assertThat(thermalTimes()).hasSize(6);
  }

  /** With the offset of a temperature these would be 212 °F·d and 82.2 °C·d. */
  @Test
  void degreeDaysHaveNoOffset() {
    assertThat(ThermalTime.ofDegreeDaysC(100).in(ThermalTimeUnit.FAHRENHEIT_DAY)).isEqualTo(180);
    assertThat(ThermalTime.of(180, ThermalTimeUnit.FAHRENHEIT_DAY).degreeDaysC()).isEqualTo(100);
    assertThat(ThermalTime.of(2400, ThermalTimeUnit.CELSIUS_HOUR).degreeDaysC()).isEqualTo(100);
  }

  /** 810 °F·d are 450 °C·d (computed here), and not 432.22 or, the other way, 842. */
  @Test
  void requirementOfAGenerationHasNoOffset() {
    assertThat(ThermalTime.of(810, ThermalTimeUnit.FAHRENHEIT_DAY).degreeDaysC()).isEqualTo(450);
    assertThat(ThermalTime.ofDegreeDaysC(450).in(ThermalTimeUnit.FAHRENHEIT_DAY)).isEqualTo(810);
    assertThat(TemperatureUnit.FAHRENHEIT.toCelsius(810)).isBetween(432.2, 432.3);
    assertThat(TemperatureUnit.FAHRENHEIT.fromCelsius(450)).isEqualTo(842);
  }

  @Test
  void amountsAreAddedScaledAndCompared() {
    var half = ThermalTime.ofDegreeDaysC(222.3);
    assertThat(half.plus(half)).isEqualTo(half.times(2)).hasToString("444.6 °C·d");
    assertThat(ThermalTime.ZERO).isLessThan(half);
    assertThat(half.times(-1)).isLessThan(ThermalTime.ZERO);
  }

  @Test
  void onlyFiniteAmounts() {
    assertThatThrownBy(() -> new ThermalTime(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("thermal time is finite, but got NaN °C·d");
    assertThatThrownBy(() -> ThermalTime.ZERO.times(Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The codes of the Unified Code for Units of Measure (value from memory). */
  @Test
  void symbolsAndCodes() {
    assertThat(ThermalTimeUnit.values())
        .extracting(ThermalTimeUnit::symbol)
        .containsExactly("°C·d", "°F·d", "°C·h");
    assertThat(ThermalTimeUnit.values())
        .extracting(ThermalTimeUnit::ucum)
        .containsExactly("K.d", "[degR].d", "K.h");
  }

  @Property(seed = "8")
  void zeroIsZeroAndAmountsAreProportional(
      @ForAll ThermalTimeUnit unit, @ForAll @DoubleRange(min = 0, max = 10_000) double value) {
    assertThat(ThermalTime.of(0, unit)).isEqualTo(ThermalTime.ZERO);
    assertThat(ThermalTime.of(2 * value, unit)).isEqualTo(ThermalTime.of(value, unit).times(2));
  }
}
