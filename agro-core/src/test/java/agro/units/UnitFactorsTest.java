package agro.units;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Sizes of units against NIST Handbook 44, the Federal Register of 5 October 2020 and UCUM 2.2; the
 * tables name the source of each row and how well it is backed.
 */
class UnitFactorsTest {

  static List<NamedCsvRecord> factors() {
    return ReferenceTable.read(UnitFactorsTest.class, "unit-factors.csv");
  }

  static List<NamedCsvRecord> landUnits() {
    return ReferenceTable.read(UnitFactorsTest.class, "land-units.csv");
  }

  static List<NamedCsvRecord> conversions() {
    return ReferenceTable.read(UnitFactorsTest.class, "conversions.csv");
  }

  static List<NamedCsvRecord> misprints() {
    return ReferenceTable.read(UnitFactorsTest.class, "misprints.csv");
  }

  @ParameterizedTest
  @MethodSource("factors")
  void isExact(NamedCsvRecord line) {
    var unit = UnitSamples.named(line.getField("kind"), line.getField("unit"));
    assertThat(unit.factor()).isEqualTo(ratio(line));
  }

  @ParameterizedTest
  @MethodSource("landUnits")
  void landUnitIsExactAndAgreesWithPrint(NamedCsvRecord line) {
    var unit = LandUnit.valueOf(line.getField("unit"));
    assertThat(unit.factor()).isEqualTo(ratio(line));
    var printed = line.getField("printed");
    int decimals = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
    assertThat(unit.squareMetres())
        .isCloseTo(Double.parseDouble(printed), within(0.5001 * Math.pow(10, -decimals)));
    assertThat(unit.source().standing().words().startsWith("read"))
        .isEqualTo(line.getField("standing").equals("read"));
  }

  @ParameterizedTest
  @MethodSource("conversions")
  void agreesWithSource(NamedCsvRecord line) {
    double value = number(line, "value");
    assertThat(UnitSamples.converted(line.getField("text"), line.getField("unit")))
        .isCloseTo(value, within(4 * Math.ulp(value) + value * number(line, "tolerance")));
  }

  @ParameterizedTest
  @MethodSource("misprints")
  void misprintIsNotRepeated(NamedCsvRecord line) {
    double ours = UnitSamples.converted(line.getField("text"), line.getField("unit"));
    double right = number(line, "ours");
    assertThat(ours).isCloseTo(right, within(1e-4 * right));
    assertThat(Math.abs(ours / number(line, "misprint") - 1)).isGreaterThan(1e-5);
  }

  @Test
  void tablesAreWhole() {
    assertThat(factors()).hasSizeGreaterThanOrEqualTo(85);
    assertThat(landUnits()).hasSameSizeAs(LandUnit.values());
    assertThat(conversions()).hasSizeGreaterThanOrEqualTo(70);
    assertThat(misprints()).hasSize(12);
  }

  /** The survey acre never matters for a dose, but it is another unit. */
  @Test
  void surveyAcreIsLargerByFourPartsInAMillion() {
    double survey = AreaUnit.US_SURVEY_ACRE.toBase(1);
    double international = AreaUnit.ACRE.toBase(1);
    assertThat(survey / international - 1).isCloseTo(4.000012e-6, within(1e-11));
    assertThat(survey - international).isCloseTo(0.016187, within(5e-7));
    assertThat(AreaUnit.ACRE.factor()).isNotEqualTo(AreaUnit.US_SURVEY_ACRE.factor());
  }

  /** One millimetre of water is 10 000 L/ha; an inch on an acre 27 154.285714 gallons. */
  @Test
  void waterOnAField() {
    double inchOnAcre = Length.of(1, LengthUnit.INCH).metres() * AreaUnit.ACRE.toBase(1) * 1000;
    assertThat(Volume.of(inchOnAcre, VolumeUnit.LITRE).in(VolumeUnit.US_GALLON))
        .isCloseTo(27_154.285714, within(1e-6));
  }

  /** Sizes of one name lie far apart: bigha 10.72 times, katha 5.06 times, biswa 3.03 times. */
  @Test
  void namesOfLandUnitsAreNoSizes() {
    assertThat(spread("bigha")).isCloseTo(10.72, within(0.005));
    assertThat(spread("katha")).isCloseTo(5.06, within(0.005));
    assertThat(spread("biswa")).isCloseTo(3.03, within(0.0051));
    assertThat(spread("manzana")).isCloseTo(1.43, within(0.005));
    assertThat(spread("rai")).isEqualTo(1);
  }

  /** Nicaragua: 10 000 square varas of 0.839 650 1 m agree with the decree to 0.001 m². */
  @Test
  void manzanaOfNicaraguaIsTenThousandSquareVaras() {
    double varas = 0.8396501 * 0.8396501 * 1e4;
    assertThat(varas).isCloseTo(7050.1229, within(5e-5));
    assertThat(LandUnit.MANZANA_NICARAGUA.squareMetres()).isCloseTo(varas, within(0.0012));
  }

  private static double spread(String name) {
    double least = Double.MAX_VALUE;
    double most = 0;
    for (var unit : LandUnit.named(name)) {
      least = Math.min(least, unit.squareMetres());
      most = Math.max(most, unit.squareMetres());
    }
    return most / least;
  }

  private static ExactFactor ratio(NamedCsvRecord line) {
    return new ExactFactor(
        new BigInteger(line.getField("numerator")), new BigInteger(line.getField("denominator")));
  }
}
