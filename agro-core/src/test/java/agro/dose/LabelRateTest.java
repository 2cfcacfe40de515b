package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.QuantityStyle;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class LabelRateTest {

  static List<NamedCsvRecord> rates() {
    return ReferenceTable.read(LabelRateTest.class, "label-rates.csv");
  }

  static List<NamedCsvRecord> areas() {
    return ReferenceTable.read(LabelRateTest.class, "areas.csv");
  }

  @ParameterizedTest
  @MethodSource("rates")
  void readsWhatLabelsWriteAndPrintsItBack(NamedCsvRecord row) {
    var rate = LabelRate.parse(row.getField("text"));

    assertThat(rate.kind()).isEqualTo(RateKind.valueOf(row.getField("kind")));
    assertThat(rate).hasToString(row.getField("printed"));
    assertThat(LabelRate.parse(rate.toString())).isEqualTo(rate);
  }

  @ParameterizedTest
  @EnumSource(RateKind.class)
  void theExampleOfAKindIsOfThatKind(RateKind kind) {
    assertThat(LabelRate.parse(kind.example()).kind()).isEqualTo(kind);
  }

  @ParameterizedTest
  @MethodSource("areas")
  void acresOnAHectare(NamedCsvRecord row) {
    var hectare = ProductPerArea.parse(row.getField("rate")).perHectare();

    double tolerance = ReferenceTable.number(row, "tolerance");
    assertThat(hectare.lowNumber() * 1000 / ReferenceTable.number(row, "low_ml_per_ha"))
        .isCloseTo(1, within(tolerance));
    assertThat(hectare.highNumber() * 1000 / ReferenceTable.number(row, "high_ml_per_ha"))
        .isCloseTo(1, within(tolerance));
  }

  @Test
  void aRangeStaysARangeOnAField() {
    var rate = ProductPerArea.parse("250-300 mL/acre");

    var onTwoAcres = rate.on(Area.of(2, AreaUnit.ACRE));

    assertThat(onTwoAcres).hasToString("500 to 600 mL");
    assertThat(rate.isSingle()).isFalse();
    assertThat(rate.low()).isEqualTo(ProductPerArea.parse("250 mL/acre"));
    assertThat(rate.high()).isEqualTo(ProductPerArea.parse("300 mL/acre"));
  }

  @Test
  void printsInTheUnitsOfTheReader() {
    assertThat(LabelRate.parse("250-300 mL/acre").print(QuantityStyle.METRIC))
        .isEqualTo("617.8 to 741.3 mL/ha");
    assertThat(LabelRate.parse("0.75 L/ha").print(QuantityStyle.US))
        .isEqualTo("10.26 fl oz (US)/ac");
    assertThat(LabelRate.parse("1.5 lb ai/ac").print(QuantityStyle.METRIC))
        .isEqualTo("1.681 kg ai/ha");
    assertThat(LabelRate.parse("2 pt/100 gal (US)").print(QuantityStyle.METRIC)).contains("/");
    assertThat(LabelRate.parse("4 g/kg seed").print(QuantityStyle.METRIC)).isEqualTo("4 g/kg seed");
    assertThat(LabelRate.parse("5 mL/plant").print(QuantityStyle.METRIC)).isEqualTo("5 mL/plant");
  }
}
