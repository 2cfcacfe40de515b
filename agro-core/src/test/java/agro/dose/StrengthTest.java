package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.CountPerMass;
import agro.units.Density;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrengthTest {

  @ParameterizedTest
  @CsvSource({
    "200 g/L, 200 g/L ai",
    "20 % w/v, 200 g/L ai",
    "25 % w/w, 250 g/kg ai",
    "750 g/kg, 750 g/kg ai",
    "360 g ae/L, 360 g/L ae",
    "150 g ai/L, 150 g/L ai",
    "2 x 10^9 CFU/g, 2000000000 CFU/g",
    "5 x 10^8 CFU/mL, 500000000 CFU/mL",
  })
  void readsWhatLabelsState(String text, String printed) {
    assertThat(Strength.parse(text)).hasToString(printed);
  }

  @Test
  void densityIsCarriedAlong() {
    var strength = Strength.parse("18.5 % w/w").withDensity(Density.parse("1.09 kg/L"));

    assertThat(strength).hasToString("185 g/kg ai at 1.09 kg/L");
    assertThat(strength.density()).contains(Density.parse("1.09 g/mL"));
  }

  @Test
  void livingUnitsOfAProduct() {
    var label = LivingStrength.parse("2 x 10^9 CFU/g");
    var alive = label.alive(new Viability(0.85));

    assertThat(((LivingByMass) alive).content()).isEqualTo(CountPerMass.parse("1.7 x 10^9 CFU/g"));
    var units = alive.livingIn(ProductAmount.parse("2-3 kg"));
    assertThat(units.lowNumber()).isCloseTo(3.4e12, within(1.0));
    assertThat(units.highNumber()).isCloseTo(5.1e12, within(1.0));
    assertThat(alive.productForLiving(units, ProductState.SOLID).lowNumber())
        .isCloseTo(2, within(1e-12));
    var liquid = label.withDensity(Density.parse("1.1 kg/L"));
    assertThat(liquid.livingIn(ProductAmount.parse("1 L")).lowNumber())
        .isCloseTo(2.2e12, within(1.0));
    assertThat(
            LivingStrength.parse("5 x 10^8 CFU/mL")
                .livingIn(ProductAmount.parse("1 L"))
                .lowNumber())
        .isCloseTo(5e11, within(1.0));
  }

  @Test
  void aProductKnowsHowItIsMeasured() {
    var product = Product.of("Product A", "SC", "480 g/L");

    var result = product.productFor(ActivePerArea.parse("96-120 g ai/ha")).evaluate();

    assertThat(result.product()).hasToString("200 to 250 mL/ha");
    assertThat(result.presentation().toText()).contains("96 to 120 g ai/ha ÷ 480 g/L");
    assertThat(product).hasToString("Product A (SC, 480 g/L ai)");
  }

  @Test
  void productPerSprayAndSeedAsActiveIngredient() {
    var strength = ActiveStrength.parse("200 g/L");

    assertThat(ProductPerSprayVolume.parse("50 mL/100 L").active(strength).amount().range().low())
        .hasToString("0.01 kg");
    assertThat(ProductPerSeedMass.parse("5 mL/kg seed").active(strength))
        .hasToString("1 g ai/kg seed");
    assertThat(ActivePerSeedMass.parse("1 g ai/kg seed").product(strength, ProductState.LIQUID))
        .hasToString("5 mL/kg seed");
    assertThat(ActivePerSprayVolume.parse("10 g ai/100 L").product(strength, ProductState.LIQUID))
        .hasToString("50 mL/100 L spray");
  }

  @Test
  void aDensityTurnsALiquidIntoAMassAndBack() {
    var liquid = (ProductAmount.Liquid) ProductAmount.parse("2-3 L");
    var density = Density.parse("1.09 kg/L");

    assertThat(liquid.weighed(density)).hasToString("2.18 to 3.27 kg");
    assertThat(liquid.weighed(density).measured(density)).hasToString("2 to 3 L");
  }

  @Test
  void aPowderIsNotMeasuredByVolume() {
    var powder = Product.of("Product B", "WP", "80 % w/w");
    var liquid = Product.of("Product A", "EC", "200 g/L");
    var byVolume = ProductPerArea.parse("500 mL/ha");
    var byMass = ProductPerArea.parse("16 oz av/ac");

    assertThat(powder.measuring(byMass)).isSameAs(byMass);
    assertThat(liquid.measuring(byVolume)).isSameAs(byVolume);
    assertThatThrownBy(() -> powder.measuring(byVolume))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("0.32 to 0.96 g");
    assertThatThrownBy(() -> liquid.measuring(byMass))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a dry ounce is no fluid ounce");
  }
}
