package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The mistakes that growers and advisers make daily, with their size. */
class CommonMistakesTest {

  static List<NamedCsvRecord> mistakes() {
    return ReferenceTable.read(CommonMistakesTest.class, "common-mistakes.csv");
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void sizeOfAMistake(NamedCsvRecord row) {
    var meant = ((ProductRate) LabelRate.parse(row.getField("meant")));
    var taken = ((ProductRate) LabelRate.parse(row.getField("taken")));

    double times = ReferenceTable.number(row, "times");
    assertThat(perBase(taken) / perBase(meant)).isCloseTo(times, within(1e-6 * times));
  }

  private static double perBase(ProductRate rate) {
    return rate.amount().highNumber() / RateBelow.number(rate);
  }

  /** Written without the unit that decides, each of them is refused. */
  @ParameterizedTest
  @CsvSource({"1 L,area", "2 pt/100 gal,(US)", "4 fl oz/ac,(US)", "5 %,w/w", "1 ton/ha,short"})
  void theBareFigureIsRefused(String text, String word) {
    assertThatThrownBy(() -> LabelRate.parse(text)).hasMessageContaining(word);
  }

  /** Active ingredient read as product: 20 % gives 5 times too little, 5 % 20, 80 % 1.25 times. */
  @ParameterizedTest
  @CsvSource({"20 % w/w,5", "5 % w/w,20", "80 % w/w,1.25"})
  void activeIngredientReadAsProduct(String strength, double times) {
    var right =
        ActivePerArea.parse("100 g ai/ha")
            .product(ActiveStrength.parse(strength), ProductState.SOLID);
    var wrong = ProductPerArea.parse("100 g/ha");

    assertThat(right.perHectare().highNumber() / wrong.perHectare().highNumber())
        .isCloseTo(times, within(1e-12));
    assertThatThrownBy(() -> ProductPerArea.parse("100 g ai/ha"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("active ingredient");
  }

  /** A dry ounce for a fluid ounce of a liquid like water: 4.3 %; a ratio of ounce sizes. */
  @Test
  void dryOunceForFluidOunce() {
    double water = Volume.of(1, VolumeUnit.US_FLUID_OUNCE).times(new Density(1)).kilograms();

    assertThat(water / Mass.of(1, MassUnit.OUNCE).kilograms()).isCloseTo(1.043, within(5e-4));
  }
}
