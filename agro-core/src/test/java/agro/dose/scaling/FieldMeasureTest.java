package agro.dose.scaling;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerPlant;
import agro.dose.ProductPerTray;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Density;
import agro.units.LandUnit;
import agro.units.Unit;
import agro.units.Volume;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Spoons, caps, sachets, trays and pumps. */
class FieldMeasureTest {

  @Test
  void spoonTakenForAnother() {
    for (var line : ReferenceTable.read(getClass(), "spoons.csv")) {
      double meant = FieldMeasure.spoon(line.getField("meant")).holds().lowNumber();
      double taken = FieldMeasure.spoon(line.getField("taken")).holds().lowNumber();
      assertThat(taken / meant - 1)
          .as(line.getField("id"))
          .isCloseTo(number(line, "departure"), within(1e-3));
    }
  }

  @Test
  void millilitresOfPowderAreNotGrams() {
    var ounce = ProductAmount.parse("1 oz (av)");
    for (var line : ReferenceTable.read(getClass(), "powders.csv")) {
      double spoons = number(line, "tablespoons");
      double tablespoon = FieldMeasure.spoon("tbsp (US)").holds().lowNumber();
      double density = ounce.lowNumber() / (spoons * tablespoon);
      assertThat(density).isCloseTo(number(line, "bulk_density"), within(5e-3));
      assertThat(1 - density).isCloseTo(number(line, "lost"), within(5e-3));

      var filled = FieldMeasure.spoon("tbsp (US)").filledWith(new Density(density));
      var count = MeasureCount.whole(ounce, filled).evaluate();
      Near.number("spoons", count.exactLow(), spoons, 1e-9);
      assertThat(count.findings()).isEmpty();
      Near.presented(count);
    }
  }

  @Test
  void countsThatKeepTheRangeAreShown() {
    var cap = FieldMeasure.cap("cap", Volume.parse("20 mL"));
    var count = MeasureCount.whole(ProductAmount.parse("50-75 mL"), cap).evaluate();

    assertThat(count.choices()).hasSize(1);
    assertThat(count.choices().get(0).count()).isEqualTo(3);
    assertThat(count.findings()).isEmpty();
    Near.presented(count);
    var wide = MeasureCount.whole(ProductAmount.parse("20-80 mL"), cap).evaluate();
    assertThat(wide.choices()).extracting(choice -> choice.count()).containsExactly(1.0, 4.0);
  }

  @Test
  void countsThatMissTheAmountSayByHowMuch() {
    var sachet = FieldMeasure.sachet(ProductAmount.parse("10 g"));
    var count = MeasureCount.whole(ProductAmount.parse("25 g"), sachet).evaluate();

    assertThat(count.choices()).extracting(choice -> choice.count()).containsExactly(2.0, 3.0);
    assertThat(count.choices())
        .extracting(choice -> choice.departure())
        .satisfiesExactly(
            under -> assertThat(under).isCloseTo(-0.2, within(1e-12)),
            over -> assertThat(over).isCloseTo(0.2, within(1e-12)));
    assertThat(count.findings().get(0).sentence())
        .contains("20 % too little", "20 % too much", "more than the label allows");
    Near.presented(count);
    var halves = new MeasureCount(ProductAmount.parse("25 g"), sachet, 2).evaluate();
    assertThat(halves.choices().get(0).count()).isEqualTo(2.5);
    var small = MeasureCount.whole(ProductAmount.parse("4 g"), sachet).evaluate();
    assertThat(small.choices()).extracting(choice -> choice.count()).containsExactly(1.0);
  }

  @Test
  void seedlingsPerThousandAndPerTray() {
    var plants = NurseryDose.ofPlants(ProductPerPlant.parse("20 g per 1000 plants"), 12_500);
    Near.amount("12 500 plants", plants.evaluate().total(), "250 g", 1e-12);
    Near.presented(plants.evaluate());

    var trays = NurseryDose.ofTrays(ProductPerTray.parse("2 g/tray"), 30, 128).evaluate();
    Near.amount("30 trays", trays.total(), "60 g", 1e-12);
    Near.amount("per 1000", trays.perThousand().amount(), "15.625 g", 1e-12);
    Near.amount("per tray", trays.perTray().orElseThrow(), "2 g", 1e-12);
    Near.presented(trays);
  }

  @Test
  void pumpsPerUnitOfLandBothWays() {
    for (var line : ReferenceTable.read(getClass(), "pumps.csv")) {
      var id = line.getField("id");
      var tank = Volume.parse(line.getField("tank"));
      var land = land(line.getField("land"));
      var pumps = PumpedSpray.of(number(line, "pumps"), tank, land);
      var result = pumps.evaluate();
      double litres = result.spray().perArea().litresPerHectare();
      Near.number(id, litres, number(line, "litres_per_hectare"), 1e-5);
      Near.number(id, result.perHectare(), number(line, "pumps_per_hectare"), 1e-5);
      Near.presented(result);

      var back = PumpedSpray.of(result.spray(), tank, land);
      Near.number(id + " back", back.pumps().number(), number(line, "pumps"), 1e-12);

      var rate = ProductPerArea.parse(line.getField("rate"));
      var dose = DosePerPump.of(pumps, rate).evaluate();
      Near.amount(id, dose.perPump(), line.getField("per_pump"), 1e-5);
      double perHectare = rate.perHectare().lowNumber();
      Near.number(id, dose.perHectare().perHectare().lowNumber(), perHectare, 1e-12);
      double perLand = dose.perLand().on(Area.of(1, land)).lowNumber();
      Near.number(id, perLand, rate.on(Area.of(1, land)).lowNumber(), 1e-12);
      Near.presented(dose);
    }
  }

  @Test
  void sizeOfTheLandUnitIsShownWithItsSource() {
    var pumps = PumpedSpray.of(5, new Volume(16), LandUnit.BIGHA_WEST_BENGAL);
    assertThat(pumps.evaluate().working().toText())
        .contains("bigha (West Bengal)", "1337.804 m²", "no circular");
    var spray = SprayVolume.parse("200 L/ac");
    Near.number(
        "H5",
        PumpedSpray.of(spray, new Volume(15), AreaUnit.ACRE).pumps().number(),
        13.333333,
        1e-6);
  }

  private static Unit<Area> land(String symbol) {
    for (var unit : List.<Unit<Area>>of(AreaUnit.HECTARE, AreaUnit.ACRE)) {
      if (unit.symbol().equals(symbol)) {
        return unit;
      }
    }
    return List.of(LandUnit.values()).stream()
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }
}
