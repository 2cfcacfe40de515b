package agro.weather.sun;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class DeclinationTest {

  static List<NamedCsvRecord> days() {
    return ReferenceTable.read(DeclinationTest.class, "declination.csv");
  }

  @ParameterizedTest
  @MethodSource("days")
  void agreesWithTheTable(NamedCsvRecord line) {
    int day = whole(line, "day");
    assertThat(DeclinationFormula.SPENCER_1971.degrees(day))
        .isCloseTo(number(line, "spencer"), within(1e-4));
    assertThat(DeclinationFormula.FORSYTHE_1995.degrees(day))
        .isCloseTo(number(line, "forsythe"), within(1e-4));
  }

  /** Another way altogether: the position of the sun in its orbit. */
  @ParameterizedTest
  @MethodSource("days")
  void agreesWithTheOrbit(NamedCsvRecord line) {
    int day = whole(line, "day");
    for (var formula : DeclinationFormula.values()) {
      assertThat(formula.degrees(day)).isCloseTo(number(line, "almanac_1950"), within(0.06));
      assertThat(formula.degrees(day)).isCloseTo(number(line, "almanac_2001"), within(0.27));
    }
    assertThat(EquationOfTime.minutes(day)).isCloseTo(number(line, "equation_1950"), within(0.6));
  }

  /** Counting from n in place of n − 1 would shift the year by a day: 0.4° at the equinox. */
  @Test
  void theSeriesCountsFromTheFirstOfJanuary() {
    assertThat(DeclinationFormula.SPENCER_1971.degrees(80)).isCloseTo(-0.0659, within(1e-4));
    assertThat(DeclinationFormula.SPENCER_1971.degrees(81)).isCloseTo(0.3289, within(1e-4));
  }

  @ParameterizedTest
  @EnumSource(DeclinationFormula.class)
  void acceptsTheLastDayOfALeapYearAndNoOther(DeclinationFormula formula) {
    assertThat(formula.degrees(366)).isCloseTo(formula.degrees(1), within(0.15));
    for (int day : new int[] {0, 367, -5}) {
      assertThatThrownBy(() -> formula.radians(day)).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
