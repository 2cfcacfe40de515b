package agro.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Codes of the Unified Code for Units of Measure, specification text and essence 2.2 of 2024. */
class UcumTest {

  static Stream<Unit<?>> units() {
    return UnitSamples.all().stream();
  }

  /** The code of each unit is an expression of exactly its size and dimension. */
  @ParameterizedTest
  @MethodSource("units")
  void codeHasExactlyTheSizeOfTheUnit(Unit<?> unit) {
    var size = UcumReader.read(unit.ucum());
    var base = UcumReader.read(baseOf(unit).ucum());
    assertThat(size.dimension().sameAs(base.dimension())).isTrue();
    assertThat(size.factor().times(base.factor().inverse())).isEqualTo(unit.factor());
  }

  private static Unit<?> baseOf(Unit<?> unit) {
    if (unit.kind() == QuantityKind.COUNT) {
      return unit;
    }
    for (var other : UnitSamples.all()) {
      if (other.kind() == unit.kind() && other.factor().equals(ExactFactor.ONE)) {
        return other;
      }
    }
    throw new AssertionError(unit);
  }

  /** UCUM essence 2.2: codes that exist. */
  @ParameterizedTest
  @CsvSource({
    "HECTARE,har",
    "ACRE,43560.[sft_i]",
    "US_SURVEY_ACRE,[acr_us]",
    "OLD_BRITISH_ACRE,[acr_br]",
    "SQUARE_METRE,m2",
    "ARE,ar"
  })
  void codesOfArea(AreaUnit unit, String code) {
    assertThat(unit.ucum()).isEqualTo(code);
    assertThat(Area.ofUcum(2, code)).isEqualTo(Area.of(2, unit));
  }

  @Test
  void codesOfRates() {
    assertThat(VolumePerAreaUnit.LITRE_PER_HECTARE.ucum()).isEqualTo("L/har");
    assertThat(VolumePerAreaUnit.MILLILITRE_PER_ACRE.ucum()).isEqualTo("mL/(43560.[sft_i])");
    assertThat(SpeedUnit.MILE_PER_HOUR.ucum()).isEqualTo("[mi_i]/h");
    assertThat(MassPerVolumeUnit.PERCENT.ucum()).isEqualTo("g%");
    assertThat(VolumePerArea.ofUcum(0.75, "L/har").litresPerHectare()).isEqualTo(0.75);
    assertThat(VolumePerArea.ofUcum(1, "[gal_us]/[acr_us]").litresPerHectare())
        .isCloseTo(9.353918813, within(1e-9));
    assertThat(Speed.ofUcum(1, "[mi_i]/h").metresPerSecond()).isEqualTo(0.44704);
    assertThat(MassPerVolume.ofUcum(1, "g%").gramsPerLitre()).isEqualTo(10);
    assertThat(MassPerVolume.ofUcum(1, "g/dL").gramsPerLitre()).isEqualTo(10);
    assertThat(Pressure.ofUcum(1, "kg.m-1.s-2").kilopascals()).isEqualTo(0.001);
    assertThat(Volume.ofUcum(20, "[drp]").litres()).isEqualTo(0.001);
    assertThat(Area.ofUcum(1, "10*4.m2").squareMetres()).isEqualTo(10_000);
  }

  /** Section 6 and 12: annotations carry no meaning, so product and active ingredient are alike. */
  @Test
  void annotationsAreDropped() {
    assertThat(MassPerArea.ofUcum(150, "g{ai}/har")).isEqualTo(MassPerArea.ofUcum(150, "g/har"));
  }

  /** Section 22: special units take no part in products; degree-days are K.d and [degR].d. */
  @Test
  void degreeDaysAreWrittenWithoutOffset() {
    assertThat(ThermalTimeUnit.FAHRENHEIT_DAY.ucum()).isEqualTo("[degR].d");
    var rankineDay = UcumReader.read("[degR].d").factor();
    assertThat(rankineDay.times(UcumReader.read("K.d").factor().inverse()))
        .isEqualTo(ExactFactor.of(5, 9));
    assertThatThrownBy(() -> UcumReader.read("Cel.d")).hasMessageContaining("write K for");
    assertThatThrownBy(() -> UcumReader.read("[degF].d")).hasMessageContaining("[degR].d");
  }

  /** Section 24: arbitrary units convert to nothing else. */
  @Test
  void arbitraryUnitsStandAlone() {
    assertThatThrownBy(() -> Mass.ofUcum(1, "[CFU]")).hasMessageContaining("is not a mass");
    assertThatThrownBy(() -> MassPerMass.ofUcum(1, "[IU]/[CFU]"))
        .isInstanceOf(UnreadableQuantity.class);
    assertThatThrownBy(() -> MassPerMass.ofUcum(1, "[CFU]/g"))
        .hasMessageContaining("is not a mass per mass");
  }

  @Test
  void countsHaveCodes() {
    assertThat(CountPerMass.ofUcum(2e9, "[CFU]/g"))
        .isEqualTo(new CountPerMass(2e9, Counted.COLONY_FORMING_UNITS));
    assertThat(CountPerMass.ofUcum(16_000, "[IU]/mg").perGram()).isEqualTo(16e6);
    assertThat(CountPerVolume.ofUcum(1, "[CFU]/L").perMillilitre()).isEqualTo(0.001);
    assertThat(CountPerArea.ofUcum(1, "[CFU]/m2").perHectare()).isEqualTo(10_000);
    assertThatThrownBy(() -> CountPerMass.ofUcum(1, "{spores}/g"))
        .hasMessageContaining("does not say what it counts");
    assertThatThrownBy(() -> CountPerMass.ofUcum(1, "[CFU]/mL"))
        .hasMessageContaining("is not a count per mass");
  }

  /** Section 11: only metric atoms take prefixes. */
  @ParameterizedTest
  @CsvSource({"k[lb_av]", "mh", "kd", "m[ft_i]", "kmin", "MM", "xyz", "[foo_us]", "kgg"})
  void unknownCodesAreRefused(String code) {
    assertThatThrownBy(() -> UcumReader.read(code))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("UCUM");
  }

  /** Look-alikes that mean something else, and codes that the specification does not have. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ft | femtotonne | [ft_i]",
        "pt | picotonne | [pt_us]",
        "mph | milliphot | [mi_i]/h",
        "mu | millidalton | m2",
        "Gal | cm/s2 | [gal_us]",
        "T | tesla | t for",
        "R | roentgen | [degR]",
        "F | farad | [degF]",
        "C | coulomb | Cel",
        "Pt | petatonne | [pt_us]",
        "ha | no unit | har",
        "acre | no unit | 43560.[sft_i]",
        "ac | no unit | 43560.[sft_i]",
        "gal | no unit | [gal_us] or [gal_br]",
        "oz | no unit | [oz_av]",
        "lb | no unit | [lb_av]",
        "psi | no unit | [psi]",
        "ppm | no unit | [ppm]",
        "degC | no unit | Cel",
        "degF | no unit | [degF]",
        "ton | no unit | [ston_av]",
        "cc | no unit | cm3",
        "cwt | no unit | [scwt_av]",
        "hr | no unit | h",
        "gpa | no unit | [gal_us]/[acr_us]",
        "GPA | no unit | [gal_us]/[acr_us]"
      })
  void trapsAreNamedWithTheRightCode(String code, String reading, String right) {
    var problem =
        catchThrowableOfType(UnreadableQuantity.class, () -> UcumReader.read("L/" + code));
    assertThat(problem.getMessage()).contains("in UCUM " + code + " is ").contains(reading);
    assertThat(problem.cure()).contains(right);
    assertThat(problem.position()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L/(har | bracket", "L)har | bracket", "L{a | annotation", "L//har | no unit stands here",
        "0.L | factor of zero", "m99 | power", "LB | no code", "L. | no unit stands here"
      })
  void brokenCodesAreRefused(String code, String what) {
    assertThatThrownBy(() -> UcumReader.read(code))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining(what);
  }

  @Test
  void anotherDimensionIsRefused() {
    assertThatThrownBy(() -> VolumePerArea.ofUcum(1, "kg/har"))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("the UCUM code kg/har is not a volume per area");
    assertThatThrownBy(() -> MassPerVolume.ofUcum(1, "%")).hasMessageContaining("mass per volume");
  }
}
