package agro.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What holds for all quantities and units. */
class QuantityPropertiesTest {

  @Provide
  Arbitrary<Unit<?>> units() {
    return Arbitraries.of(UnitSamples.all());
  }

  @Provide
  Arbitrary<QuantityStyle> styles() {
    return Arbitraries.of(
        QuantityStyle.METRIC,
        QuantityStyle.US,
        QuantityStyle.IMPERIAL,
        QuantityStyle.METRIC.per(LandUnit.BIGHA_WEST_BENGAL),
        QuantityStyle.US.per(UnitMultiple.of(1000, AreaUnit.SQUARE_FOOT)));
  }

  @Property(seed = "8")
  void roundTripIsTheIdentity(
      @ForAll("units") Unit<?> unit, @ForAll @DoubleRange(min = 0, max = 1e12) double value) {
    assertThat(unit.fromBase(unit.toBase(value))).isCloseTo(value, within(3 * Math.ulp(value)));
    assertThat(unit.toBase(unit.fromBase(value))).isCloseTo(value, within(3 * Math.ulp(value)));
  }

  @Property(seed = "8")
  void orderIsKept(
      @ForAll("units") Unit<?> unit,
      @ForAll @DoubleRange(min = 0, max = 1e9) double one,
      @ForAll @DoubleRange(min = 0, max = 1e9) double other) {
    if (one <= other) {
      assertThat(unit.toBase(one)).isLessThanOrEqualTo(unit.toBase(other));
    } else {
      assertThat(unit.toBase(one)).isGreaterThanOrEqualTo(unit.toBase(other));
    }
  }

  @Property(seed = "8")
  void additionCommutesAndSubtractionUndoesIt(
      @ForAll @DoubleRange(min = 0, max = 1e9) double one,
      @ForAll @DoubleRange(min = 0, max = 1e9) double other) {
    var a = new Volume(one);
    var b = new Volume(other);
    assertThat(a.plus(b)).isEqualTo(b.plus(a));
    assertThat(a.plus(b).minus(b).litres()).isCloseTo(one, within(1e-12 * (one + other) + 1e-12));
    assertThat(a.minus(a)).isEqualTo(new Volume(0));
  }

  @Property(seed = "8")
  void rangeNeverInverts(
      @ForAll @DoubleRange(min = 0, max = 1e6) double low,
      @ForAll @DoubleRange(min = 0, max = 1e6) double more,
      @ForAll @DoubleRange(min = 0, max = 1e3) double factor) {
    var range = new VolumePerArea(low).to(new VolumePerArea(low + more));
    var scaled = range.times(factor).plus(range);
    assertThat(scaled.low().compareTo(scaled.high())).isLessThanOrEqualTo(0);
    assertThat(scaled.hull(range).contains(range.low())).isTrue();
    assertThat(scaled.hull(range).contains(scaled.high())).isTrue();
    assertThat(range.contains(range.low()) && range.contains(range.high())).isTrue();
  }

  /** A decimal number in any unit, printed and read, is the same double. */
  @Property(seed = "8")
  void textOfADecimalNumberReadsBack(
      @ForAll("units") Unit<?> unit,
      @ForAll @IntRange(min = 1, max = 99_999) int digits,
      @ForAll @IntRange(min = 3, max = 5) int places) {
    double value = BigDecimal.valueOf(digits, places).doubleValue();
    var parsed = QuantityText.parse(Numbers.plain(value) + " " + unit.symbol());
    assertThat(TypedReading.single(parsed, unit.kind())).isEqualTo(unit.toBase(value));
  }

  @Property(seed = "8")
  void printOfABaseAmountReadsBack(
      @ForAll @IntRange(min = 0, max = 999_999_999) int digits,
      @ForAll @IntRange(min = 0, max = 9) int places) {
    double value = BigDecimal.valueOf(digits, places).doubleValue();
    assertThat(VolumePerArea.parse(new VolumePerArea(value).toString()))
        .isEqualTo(new VolumePerArea(value));
    assertThat(MassPerMass.parse(new MassPerMass(value).toString()))
        .isEqualTo(new MassPerMass(value));
    var range = new Mass(value).to(new Mass(2 * value));
    assertThat(Mass.parseRange(range.toString()).low()).isEqualTo(range.low());
    var count = new CountPerMass(value, Counted.CONIDIA);
    assertThat(CountPerMass.parse(count.toString())).isEqualTo(count);
  }

  /** Print in a reader's units keeps four digits, and can be read again. */
  @Property(seed = "8")
  void printInTheReadersUnitsReadsBack(
      @ForAll("styles") QuantityStyle style,
      @ForAll @DoubleRange(min = 0.001, max = 1e5) @Scale(6) double value) {
    var rate = new VolumePerArea(value);
    assertThat(VolumePerArea.parse(style.print(rate)).litresPerHectare())
        .isCloseTo(value, within(6e-4 * value));
    var mass = new MassPerArea(value);
    assertThat(MassPerArea.parse(style.print(mass)).kilogramsPerHectare())
        .isCloseTo(value, within(6e-4 * value));
    var range = rate.to(rate.times(1.2));
    var read = VolumePerArea.parseRange(style.printRange(range));
    assertThat(read.high().litresPerHectare()).isCloseTo(1.2 * value, within(7.2e-4 * value));
    assertThat(read.low().compareTo(read.high())).isLessThanOrEqualTo(0);
  }

  @Property(seed = "8")
  void scalingFieldAndRateScalesTheAmount(
      @ForAll @DoubleRange(min = 0, max = 1e3) double litres,
      @ForAll @DoubleRange(min = 0, max = 1e3) double hectares,
      @ForAll @IntRange(min = 1, max = 9) int times) {
    var rate = new VolumePerArea(litres);
    var field = Area.of(hectares, AreaUnit.HECTARE);
    double amount = rate.times(field).litres();
    assertThat(rate.times(field.times(times)).litres())
        .isCloseTo(times * amount, within(1e-12 * times * amount));
    assertThat(amount).isCloseTo(litres * hectares, within(1e-12 * litres * hectares));
  }

  @Property(seed = "8")
  void anyTextIsReadOrRefusedInWords(@ForAll("scribbles") String text) {
    try {
      assertThat(QuantityText.parse(text).text()).isEqualTo(text);
    } catch (UnreadableQuantity problem) {
      assertThat(problem.position()).isBetween(0, text.length());
      assertThat(problem.cure()).isNotBlank();
    }
  }

  @Provide
  Arbitrary<String> scribbles() {
    var pieces =
        Arrays.asList(
            "1", "2.5", "1/2", "½", "250-300", "1 000", ",", ".", "-", " ", "/", "per", "L", "ml",
            "gal", "(US)", "(", ")", "oz", "ha", "acre", "%", "w/w", "bigha", "in", "to", "500",
            ":", "^", "10^9", "CFU", "⁻¹", "e", "x", "of", "seed", "°", "\t", "\n", "µ", "𝟙", "é");
    return Arbitraries.of(pieces).list().ofMaxSize(9).map(parts -> String.join("", parts));
  }
}
