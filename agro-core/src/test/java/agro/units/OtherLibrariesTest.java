package agro.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.measure.Quantity.Scale;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import systems.uom.ucum.format.UCUMFormat;
import tech.units.indriya.quantity.Quantities;

/**
 * Our units against two general libraries, Indriya with systems-common and systems-ucum. Where they
 * differ from the text of UCUM 2.2, UCUM is right and the difference is stated beside the check.
 */
class OtherLibrariesTest {

  /** systems-ucum 2.1 looks for a prefix that unit-api 2.2 renamed, and logs that; kept off. */
  private static final Logger QUIET = Logger.getLogger("tech.units.indriya.format.SymbolMap");

  private static final UnitFormat UCUM = ucumFormat();

  /** systems-ucum 2.1 does not know these codes of UCUM 2.2. */
  private static final Set<String> UNKNOWN_TO_SYSTEMS_UCUM = Set.of("[CFU]", "[degR]");

  private static UnitFormat ucumFormat() {
    QUIET.setLevel(Level.OFF);
    return UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
  }

  static Stream<Arguments> customaryUnits() {
    return Stream.of(
        Arguments.of(USCustomary.ACRE, tech.units.indriya.unit.Units.SQUARE_METRE, AreaUnit.ACRE),
        Arguments.of(Imperial.ACRE, tech.units.indriya.unit.Units.SQUARE_METRE, AreaUnit.ACRE),
        Arguments.of(
            USCustomary.HECTARE, tech.units.indriya.unit.Units.SQUARE_METRE, AreaUnit.HECTARE),
        Arguments.of(USCustomary.GALLON_LIQUID, USCustomary.LITER, VolumeUnit.US_GALLON),
        Arguments.of(Imperial.GALLON_UK, USCustomary.LITER, VolumeUnit.IMPERIAL_GALLON),
        Arguments.of(USCustomary.FLUID_OUNCE, USCustomary.LITER, VolumeUnit.US_FLUID_OUNCE),
        Arguments.of(Imperial.PINT, USCustomary.LITER, VolumeUnit.IMPERIAL_PINT),
        Arguments.of(USCustomary.POUND, tech.units.indriya.unit.Units.KILOGRAM, MassUnit.POUND),
        Arguments.of(USCustomary.TON, tech.units.indriya.unit.Units.KILOGRAM, MassUnit.SHORT_TON),
        Arguments.of(Imperial.TON_UK, tech.units.indriya.unit.Units.KILOGRAM, MassUnit.LONG_TON),
        Arguments.of(USCustomary.FOOT, tech.units.indriya.unit.Units.METRE, LengthUnit.FOOT),
        Arguments.of(
            USCustomary.MILE_PER_HOUR,
            tech.units.indriya.unit.Units.METRE_PER_SECOND,
            SpeedUnit.MILE_PER_HOUR));
  }

  @ParameterizedTest
  @MethodSource("customaryUnits")
  void agreesWithSystemsCommon(
      javax.measure.Unit<?> theirs, javax.measure.Unit<?> base, Unit<?> ours) {
    double size = factor(theirs, base);
    assertThat(ours.toBase(1)).isCloseTo(size, within(1e-12 * size));
  }

  /**
   * Every code that systems-ucum 2.1 can read gives the same size there as here. It lacks the
   * metric kitchen measures of UCUM 2.2; counts have no size to compare.
   */
  @Test
  void agreesWithSystemsUcum() {
    var compared = new ArrayList<String>();
    var missing = new TreeSet<String>();
    for (var unit : UnitSamples.all()) {
      var code = unit.ucum();
      if (unit.kind() == QuantityKind.COUNT || !isKnownThere(code)) {
        missing.add(code);
        continue;
      }
      double size = factor(UCUM.parse(code), UCUM.parse(baseCode(unit)));
      assertThat(unit.toBase(1)).as(code).isCloseTo(size, within(1e-9 * size));
      compared.add(code);
    }
    assertThat(missing)
        .containsExactlyInAnyOrder(
            "[CFU]",
            "[IU]",
            "[cup_m]",
            "[foz_m]",
            "[tbs_m]",
            "[tsp_m]",
            "{OB}",
            "{conidia}",
            "{infective_juveniles}",
            "{spores}");
    assertThat(compared).hasSizeGreaterThan(150);
  }

  private static boolean isKnownThere(String code) {
    try {
      return UCUM.parse(code) != null;
    } catch (RuntimeException | Error unknown) {
      return false;
    }
  }

  private static String baseCode(Unit<?> unit) {
    return switch (unit.kind()) {
      case LENGTH -> "m";
      case AREA -> "m2";
      case VOLUME -> "L";
      case MASS -> "kg";
      case WORK_TIME -> "s";
      case PRESSURE -> "kPa";
      case SPEED -> "m/s";
      case FLOW_RATE -> "L/min";
      case DENSITY -> "kg/L";
      case VOLUME_PER_AREA -> "L/har";
      case MASS_PER_AREA -> "kg/har";
      case MASS_PER_MASS -> "g/kg";
      case MASS_PER_VOLUME -> "g/L";
      case VOLUME_PER_VOLUME -> "mL/L";
      case VOLUME_PER_MASS -> "mL/kg";
      case MASS_PER_LENGTH -> "g/m";
      case VOLUME_PER_LENGTH -> "mL/m";
      default -> "[IU]";
    };
  }

  /** systems-ucum takes ha for the hecto-year, against UCUM section 11; here it is refused. */
  @Test
  void hectareIsNotAHundredYears() {
    double seconds = factor(UCUM.parse("ha"), UCUM.parse("s"));
    assertThat(seconds).isCloseTo(3.15576e9, within(1e3));
    assertThatThrownBy(() -> Area.ofUcum(1, "ha")).hasMessageContaining("write har");
  }

  /** systems-ucum does not know the degree Rankine and the colony-forming unit of UCUM 2.2. */
  @Test
  void codesThatTheOtherLibraryLacks() {
    for (var code : UNKNOWN_TO_SYSTEMS_UCUM) {
      assertThatThrownBy(() -> UCUM.parse(code)).isInstanceOf(RuntimeException.class);
      assertThat(UcumReader.read(code)).isNotNull();
    }
  }

  /** mph is the milliphot there, as UCUM has it; a unit of speed it is not. */
  @Test
  void lookAlikesMeanSomethingElse() {
    for (var code : List.of("mph", "ft", "pt", "Gal", "T")) {
      assertThat(UCUM.parse(code)).isNotNull();
      assertThatThrownBy(() -> UcumReader.read(code)).isInstanceOf(UnreadableQuantity.class);
    }
  }

  /** [acr_us] is the survey acre in both. */
  @Test
  void acreOfUcumIsTheSurveyAcre() {
    double theirs = factor(UCUM.parse("[acr_us]"), UCUM.parse("m2"));
    assertThat(theirs).isCloseTo(4046.872609874252, within(1e-9));
    assertThat(Area.ofUcum(1, "[acr_us]").squareMetres()).isCloseTo(theirs, within(1e-9));
  }

  /** Indriya needs to be told that 9 °F is a difference; here the type says so. */
  @Test
  void differenceOfTemperatures() {
    var difference = Quantities.getQuantity(9, USCustomary.FAHRENHEIT, Scale.RELATIVE);
    double theirs = difference.to(tech.units.indriya.unit.Units.CELSIUS).getValue().doubleValue();
    assertThat(theirs).isCloseTo(5, within(1e-9));
    assertThat(TemperatureDifference.of(9, TemperatureUnit.FAHRENHEIT).celsius()).isEqualTo(5);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the two units come from one row of a table
  private static double factor(javax.measure.Unit<?> unit, javax.measure.Unit<?> base) {
    return ((javax.measure.Unit) unit).getConverterTo((javax.measure.Unit) base).convert(1.0);
  }
}
