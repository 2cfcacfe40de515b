package agro.dose.scaling;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;

import agro.ReferenceTable;
import agro.dose.ActivePerArea;
import agro.dose.ActiveStrength;
import agro.dose.LivingStrength;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSeedMass;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductState;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.dose.Viability;
import agro.source.Reference;
import agro.units.Area;
import agro.units.ExactFactor;
import agro.units.Mass;
import agro.units.MassPerVolume;
import agro.units.Temperature;
import agro.units.Volume;
import agro.units.WorkTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hardness, half-life, jar test and living units. */
class TankWaterTest {

  private static final Reference LABEL = Reference.invented("Half-lives of Product A");

  @Test
  void hardnessInOtherUnits() {
    for (var line : ReferenceTable.read(getClass(), "hardness.csv")) {
      var unit = HardnessUnit.valueOf(line.getField("unit"));
      double converted = WaterHardness.parse(line.getField("text")).in(unit);
      Near.number(line.getField("text") + " in " + unit, converted, number(line, "value"), 1e-4);
    }
    var all = WaterHardness.parse("12 °dH").evaluate();
    assertThat(all.numbers()).hasSize(HardnessUnit.values().length);
    assertThat(all.working().toText()).contains("214.1", "value from memory");
    Near.presented(all);
  }

  @Test
  void hardnessFactorsAreExact() {
    assertThat(HardnessUnit.ENGLISH_DEGREE.factor())
        .isEqualTo(ExactFactor.decimal("64.79891").times(ExactFactor.decimal("4.54609").inverse()));
    assertThat(HardnessUnit.GERMAN_DEGREE.factor())
        .isEqualTo(
            ExactFactor.of(10, 1)
                .times(ExactFactor.decimal("100.086"))
                .times(ExactFactor.decimal("56.077").inverse()));
    for (var unit : HardnessUnit.values()) {
      assertThat(WaterHardness.parse("7 " + unit.symbol()).unit()).isEqualTo(unit);
      assertThat(unit.source().citation()).contains("value from memory");
    }
  }

  @Test
  void halfIsLeftAfterAHalfLife() {
    var half = HydrolysisHalfLife.of(8, WorkTime.parse("6 h"), LABEL);

    var once = new StandingTank(List.of(half), 8, WorkTime.parse("6 h")).evaluate();
    assertThat(once.lowShare()).isEqualTo(0.5).isEqualTo(once.highShare());
    var twice = new StandingTank(List.of(half), 8.04, WorkTime.parse("12 h")).evaluate();
    Near.number("two half-lives", twice.highShare(), 0.25, 1e-12);
    var atOnce = new StandingTank(List.of(half), 8, new WorkTime(0)).evaluate();
    assertThat(atOnce.lowShare()).isEqualTo(1);
    assertThat(once.findings().get(0).sentence()).contains("is not recorded", "loses faster");
    var warm = new StandingTank(List.of(half.at(new Temperature(20))), 8, WorkTime.parse("6 h"));
    assertThat(warm.evaluate().findings()).isEmpty();
    assertThat(warm.evaluate().working().toText()).contains("pH 8, 20 °C");
    assertThat(once.working().toText()).contains("0.5^(6 h / 6 h)", "50 %", "invented");
    Near.presented(once);
  }

  @Test
  void betweenTwoStatedAciditiesBothAreShown() {
    var slow = HydrolysisHalfLife.of(7, WorkTime.parse("2 d"), LABEL);
    var fast = HydrolysisHalfLife.of(9, WorkTime.parse("2 h"), LABEL);
    var result = new StandingTank(List.of(fast, slow), 8, WorkTime.parse("4 h")).evaluate();

    Near.number("at pH 9", result.lowShare(), 0.25, 1e-12);
    Near.number("at pH 7", result.highShare(), Math.pow(0.5, 4 / 48.0), 1e-12);
    assertThat(result.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(result.findings().get(0).sentence()).contains("pH 7 and 9", "the tank has 8");
    Near.presented(result);
  }

  @Test
  void spraysOfTheTrade() {
    var syringe = Volume.parse("0.1 mL");
    for (var line : ReferenceTable.read(getClass(), "spray-amounts.csv")) {
      var partner = new JarPartner("Product A", ProductPerSprayVolume.parse(line.getField("rate")));
      var jar = Volume.parse(line.getField("spray"));
      var result = new JarTest(List.of(partner), jar, syringe, Mass.parse("0.1 g")).evaluate();
      var amount = result.parts().get(0).amount();
      Near.amount(line.getField("id"), amount, line.getField("product"), 1e-9);
      Near.presented(result);
    }
  }

  @Test
  void jarHoldsTheTankMixInSmall() {
    var spray = SprayVolume.parse("200 L/ha");
    var partners =
        List.of(
            JarPartner.of("Product A", ProductPerArea.parse("50 g/ha"), spray),
            JarPartner.of("Product B", ProductPerArea.parse("1-1.5 L/ha"), spray));
    var result =
        new JarTest(partners, new Volume(0.5), Volume.parse("0.5 mL"), Mass.parse("0.5 g"))
            .evaluate();

    Near.amount("A", result.parts().get(0).amount(), "0.125 g", 1e-9);
    Near.amount("B", result.parts().get(1).amount(), "2.5-3.75 mL", 1e-9);
    assertThat(result.findings()).hasSize(1);
    assertThat(result.findings().get(0).sentence())
        .contains("Product A, 125 mg", "500 mg", "a jar of 2 L");
    Near.presented(result);
  }

  @Test
  void livingUnitsAreLabelTimesViability() {
    var result =
        new LivingDose(
                LivingStrength.parse("2 x 10^9 CFU/g"),
                Viability.percent(85),
                ProductPerArea.parse("2.5 kg/ha"))
            .evaluate();

    Near.number("alive", result.living().lowNumber(), 4.25e12, 1e-12);
    Near.number("label", result.byLabel().lowNumber(), 5e12, 1e-12);
    assertThat(result.findings().get(0).sentence()).contains("85 %", "no cure");
    Near.presented(result);
  }

  @Test
  void livingUnitsOfASeedDressing() {
    var result =
        new LivingDose(
                LivingStrength.parse("10^8 CFU/g"),
                Viability.percent(50),
                ProductPerSeedMass.parse("4-6 g/kg seed"))
            .evaluate();

    Near.number("low", result.living().lowNumber(), 2e8, 1e-12);
    Near.number("high", result.living().highNumber(), 3e8, 1e-12);
    assertThat(result.per()).isEqualTo("kg seed");
    assertThat(result.working().toText()).contains("2 × 10^8 to 3 × 10^8 CFU");
    Near.presented(result);
  }

  @Test
  void fullViabilityFindsNothing() {
    var result =
        new LivingDose(
                LivingStrength.parse("10^8 CFU/mL"),
                new Viability(1),
                ProductPerArea.parse("1-2 L/ha"))
            .evaluate();
    assertThat(result.findings()).isEmpty();
    Near.number("range", result.living().highNumber(), 2e11, 1e-12);
  }

  @Test
  void gallonToThirtyTwoAcres() {
    // Mississippi State University Extension (read for the first figure; the second computed here).
    var rate = ProductPerArea.parse("1 gal (US)/32 ac");
    Near.amount("W12", rate.on(Area.parse("1 ac")), "4 fl oz (US)", 1e-12);
    var active = ActivePerArea.parse("0.04 lb ai/ac");
    var product = active.product(ActiveStrength.parse("4 lb/gal (US)"), ProductState.LIQUID);
    var acre = (ProductAmount.Liquid) product.on(Area.parse("1 ac"));
    Near.amount("W12", acre, "1.28 fl oz (US)", 1e-12);
    var factor =
        Dilution.strengthOf(
                MassPerVolume.parse("4 lb/gal (US)"),
                acre.range().single(),
                Volume.parse("1 gal (US)"))
            .evaluate()
            .dilutionFactor();
    Near.number("W12, 1:100", factor, 100, 1e-12);
  }
}
