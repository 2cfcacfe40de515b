package agro.dose.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import agro.dose.ActivePerArea;
import agro.dose.LabelLimits;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSeedMass;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTray;
import agro.dose.ProductPerTreatedArea;
import agro.dose.ProductPerWetSubstrate;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.CountPerVolume;
import agro.units.Density;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.UnreadableQuantity;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Bad inputs and the four parts of what is said about them. */
class RefusalsTest {

  private static final Volume LITRE = new Volume(1);
  private static final Length METRE = new Length(1);
  private static final WetBasisMoisture QUARTER = WetBasisMoisture.percent(25);
  private static final Reference SOURCE = Reference.invented("Half-lives of Product A");

  private record Refusal(String read, String expected, String mend, ThrowingCallable call) {}

  private static MassPerVolume gramsPerLitre(double number) {
    return new MassPerVolume(number);
  }

  private static List<Refusal> dilutions() {
    return List.of(
        new Refusal(
            "wanted strength is 20 g/L and the strength of the stock 10 g/L",
            "not above",
            "which figure is the stock",
            () -> Dilution.stockFor(gramsPerLitre(10), gramsPerLitre(20), LITRE)),
        new Refusal(
            "strength of the stock is 0 g/L",
            "more than zero",
            "label of the stock",
            () -> Dilution.stockFor(gramsPerLitre(0), gramsPerLitre(0), LITRE)),
        new Refusal(
            "wanted strength is 0 g/L",
            "more than zero",
            "strength that the whole is to have",
            () -> Dilution.stockFor(gramsPerLitre(10), gramsPerLitre(0), LITRE)),
        new Refusal(
            "amount of the whole is 0 L",
            "more than zero",
            "how much is to be made",
            () -> Dilution.stockFor(gramsPerLitre(10), gramsPerLitre(1), new Volume(0))),
        new Refusal(
            "the whole is 1 kg and the strength 10 g/L",
            "a volume for a strength by volume",
            "density",
            () -> Dilution.stockFor(gramsPerLitre(10), gramsPerLitre(1), new Mass(1))),
        new Refusal(
            "amount of stock is 2 L and the whole",
            "not above",
            "which figure is the stock",
            () -> Dilution.strengthOf(gramsPerLitre(10), new Volume(2), LITRE)));
  }

  private static List<Refusal> squaresAndSeries() {
    var spores = CountPerVolume.parse("10^8 spores/mL");
    var colonies = CountPerVolume.parse("10^6 CFU/mL");
    return List.of(
        new Refusal(
            "100000000 spores/mL and the other 1000000 CFU/mL",
            "count the same thing",
            "tests that count the same thing",
            () -> Dilution.stockFor(spores, colonies, LITRE)),
        new Refusal(
            "the wanted strength is 700 g/L",
            "from 200 g/L to 600 g/L",
            "another stock",
            () ->
                new PearsonSquare<>(
                    gramsPerLitre(600), gramsPerLitre(200), gramsPerLitre(700), LITRE)),
        new Refusal(
            "strong stock is 200 g/L and the weak one 600 g/L",
            "above the weak one",
            "stronger one first",
            () ->
                new PearsonSquare<>(
                    gramsPerLitre(200), gramsPerLitre(600), gramsPerLitre(300), LITRE)),
        new Refusal(
            "content of the solid is 1200 g/kg",
            "at most 1000 g/kg",
            "200 g/kg",
            () -> new StockSolution(new MassPerMass(1200), gramsPerLitre(1), LITRE)),
        new Refusal(
            "number of dilution steps is 0",
            "1 to 30",
            "count the tubes",
            () -> new SerialDilution(colonies, LITRE, LITRE, 0)),
        new Refusal(
            "dilution of a plate is 1000000",
            "up to 1",
            "1e-6, not 1e6",
            () -> new CountedPlate(50, Volume.parse("0.1 mL"), 1e6)));
  }

  private static List<Refusal> plates() {
    return List.of(
        new Refusal(
            "a plate has -1 colonies",
            "0 or more",
            "leave out a plate",
            () -> new CountedPlate(-1, LITRE, 0.1)),
        new Refusal(
            "no plate is given",
            "at least one plate",
            "enter colonies",
            () -> new PlateCount(List.of(), CountableRange.FROM_30_TO_300)));
  }

  private static List<Refusal> rowsAndBands() {
    var treated = ProductPerTreatedArea.parse("5 L/ha treated area");
    var spray = TreatedSprayVolume.parse("300 L/ha");
    var spacing = new PlantSpacing(METRE, METRE);
    return List.of(
        new Refusal(
            "seed lot is 0 kg",
            "more than zero",
            "weigh the seed",
            () -> SeedTreatment.of(ProductPerSeedMass.parse("4 g/kg seed"), new Mass(0))),
        new Refusal(
            "row spacing is 0 m",
            "more than zero",
            "over ten rows",
            () -> new RowGranules(ProductPerArea.parse("10 kg/ha"), new Length(0))),
        new Refusal(
            "rate of the granules is 5 L/ha treated area",
            "a mass per treated area",
            "by mass from the label",
            () -> new GranuleCourse(treated, METRE, METRE)),
        new Refusal(
            "band width is 1 m and the row spacing 0.75 m",
            "not above",
            "units of both",
            () -> new BandTreatment(treated, spray, METRE, new Length(0.75))),
        new Refusal(
            "spray volume of 0 L/ha on the treated area",
            "above zero",
            "calibration",
            () -> new TreatedSprayVolume(new VolumePerArea(0))),
        new Refusal(
            "wetted ground of a plant is 2 m² and the ground of a plant 1 m²",
            "not above",
            "check the ring",
            () -> PlantDrench.of(ProductPerArea.parse("1 L/ha"), spacing).wetting(new Area(2))));
  }

  private static List<Refusal> spotsAndPumps() {
    return List.of(
        new Refusal(
            "drench from day 60 to day 55",
            "in order",
            "day of planting",
            () -> new DrenchWindow(60, 55, SOURCE)),
        new Refusal(
            "area of the spots is 0 m²",
            "more than zero",
            "measure the ground",
            () ->
                SpotTreatment.of(
                    ProductPerSprayVolume.parse("1 % v/v"),
                    LITRE,
                    new Area(0),
                    LabelLimits.of("A"))),
        new Refusal(
            "area of the spots is 300 m² and the area of the field 100 m²",
            "not above",
            "units of both areas",
            () ->
                SpotTreatment.of(
                        ProductPerSprayVolume.parse("1 % v/v"),
                        LITRE,
                        new Area(300),
                        LabelLimits.of("A"))
                    .inField(new Area(100))),
        new Refusal(
            "depth of the layer is 0 m",
            "more than zero",
            "15 cm",
            () ->
                new SoilConcentration(
                    ActivePerArea.parse("1 kg ai/ha"), new Length(0), new Density(1.3))),
        new Refusal(
            "-3.0 pumps per ac",
            "above zero",
            "count the pumps",
            () -> PumpedSpray.of(-3, LITRE, AreaUnit.ACRE)),
        new Refusal(
            "a tray has 0 cells",
            "1 or more",
            "multiply",
            () -> NurseryDose.ofTrays(ProductPerTray.parse("2 g/tray"), 3, 0)));
  }

  private static List<Refusal> moistures() {
    var agent = ManureAgent.of("fungus A", ProductPerWetSubstrate.parse("2 kg/t manure (wet)"));
    var wanted = MoistureRange.exactly(QUARTER);
    return List.of(
        new Refusal(
            "moisture of 100 % on the wet basis",
            "less than 100 %",
            "above 100 % are on dry matter",
            () -> WetBasisMoisture.percent(100)),
        new Refusal(
            "moisture of -5 % on the dry basis",
            "0 % or more", "DryBasisMoisture.percent(25)", () -> DryBasisMoisture.percent(-5)),
        new Refusal(
            "from 30 % (wet basis) to 25 % (wet basis)",
            "drier end first",
            "change the ends",
            () -> new MoistureRange(WetBasisMoisture.percent(30), QUARTER)),
        new Refusal(
            "from 25 % (wet basis) to 30 % (dry basis)",
            "drier end first",
            "dry matter",
            () -> new MoistureRange(QUARTER, DryBasisMoisture.percent(30))),
        new Refusal(
            "no agent is given",
            "at least one agent",
            "WaterForMoisture",
            () -> ManureEnrichment.of(List.of(), new Mass(1000), QUARTER, wanted)),
        new Refusal(
            "two agents are called fungus A",
            "a name of its own",
            "add up the rates",
            () -> ManureEnrichment.of(List.of(agent, agent), new Mass(1000), QUARTER, wanted)));
  }

  private static List<Refusal> manure() {
    var agent = ManureAgent.of("fungus A", ProductPerWetSubstrate.parse("2 kg/t manure (wet)"));
    var wanted = MoistureRange.exactly(QUARTER);
    return List.of(
        new Refusal(
            "the agent fungus B has no rate",
            "one rate",
            "the label states",
            () -> new ManureAgent("fungus B", Optional.empty(), Optional.empty())),
        new Refusal(
            "mass of the manure is 0 kg",
            "more than zero",
            "weigh the heap",
            () -> ManureEnrichment.of(List.of(agent), new Mass(0), QUARTER, wanted)),
        new Refusal(
            "manure is kept 0 days",
            "1 day or more",
            "between mixing and spreading",
            () ->
                new ManurePractice(
                    ManurePractice.COMMON.perAgent(),
                    ManurePractice.COMMON.moisture(),
                    0,
                    SOURCE)));
  }

  private static List<Refusal> water() {
    var half = HydrolysisHalfLife.of(7, WorkTime.parse("6 h"), SOURCE);
    return List.of(
        new Refusal(
            "\"12 degrees\" was read as a hardness",
            "°dH",
            "12 °dH",
            () -> WaterHardness.parse("12 degrees")),
        new Refusal(
            "\"1.2.3 °dH\" begins with",
            "one decimal point",
            "12.5",
            () -> WaterHardness.parse("1.2.3 °dH")),
        new Refusal("\"°dH\" was read", "a number", "12 °dH", () -> WaterHardness.parse("°dH")),
        new Refusal(
            "pH of the tank is 9",
            "half-life is stated",
            "look up the half-life",
            () -> new StandingTank(List.of(half), 9, WorkTime.parse("1 h"))),
        new Refusal(
            "no half-life is given",
            "at least one half-life",
            "label or in a handbook",
            () -> new StandingTank(List.of(), 7, WorkTime.parse("1 h"))),
        new Refusal(
            "two half-lives for pH 7",
            "one half-life for each pH",
            "temperature",
            () -> new StandingTank(List.of(half, half), 7, WorkTime.parse("1 h"))));
  }

  private static List<Refusal> jarsAndSpoons() {
    var cap = FieldMeasure.cap("cap", Volume.parse("20 mL"));
    var partner = new JarPartner("Product A", ProductPerSprayVolume.parse("1 mL/L"));
    return List.of(
        new Refusal(
            "a pH of 15",
            "0 to 14",
            "strip or meter",
            () -> HydrolysisHalfLife.of(15, WorkTime.parse("1 h"), SOURCE)),
        new Refusal(
            "two products of the jar test are called Product A",
            "each product once",
            "leave out the second",
            () -> new JarTest(List.of(partner, partner), LITRE, LITRE, new Mass(1))),
        new Refusal(
            "the name of a product is blank",
            "Product A",
            "on the container",
            () -> new JarPartner(" ", ProductPerSprayVolume.parse("1 mL/L"))),
        new Refusal(
            "20 g is to be measured with a measure of 20 mL",
            "a mass in a measure of mass",
            "filledWith",
            () -> MeasureCount.whole(ProductAmount.parse("20 g"), cap)),
        new Refusal(
            "divided into 0 parts",
            "1 to 100",
            "1 for sachets",
            () -> new MeasureCount(ProductAmount.parse("20 mL"), cap, 0)),
        new Refusal(
            "cup (US) was given as a spoon",
            "a tablespoon or a teaspoon",
            "FieldMeasure.cap",
            () -> FieldMeasure.spoon(VolumeUnit.US_CUP)));
  }

  private static List<Refusal> measures() {
    return List.of(
        new Refusal(
            "\"kg\" was read as a spoon",
            "tbsp (US)",
            "(metric) or (AU)",
            () -> FieldMeasure.spoon("kg")),
        new Refusal(
            "sachet of 10 to 20 g holds 10 to 20 g",
            "one amount",
            "divide by ten",
            () -> FieldMeasure.sachet(ProductAmount.parse("10-20 g"))),
        new Refusal(
            "holds a solid product",
            "a measure of volume",
            "use the measure as it is",
            () ->
                FieldMeasure.sachet(ProductAmount.solid(10, MassUnit.GRAM))
                    .filledWith(new Density(0.5))));
  }

  @Test
  void badInputsAreExplainedInFourParts() {
    var all = new ArrayList<Refusal>();
    all.addAll(dilutions());
    all.addAll(squaresAndSeries());
    all.addAll(plates());
    all.addAll(rowsAndBands());
    all.addAll(spotsAndPumps());
    all.addAll(moistures());
    all.addAll(manure());
    all.addAll(water());
    all.addAll(jarsAndSpoons());
    all.addAll(measures());
    assertThat(all).hasSizeGreaterThanOrEqualTo(45);
    for (var refusal : all) {
      var problem = catchThrowableOfType(InputProblem.class, refusal.call());
      assertThat(problem).as(refusal.read()).isNotNull();
      assertThat(problem.read()).contains(refusal.read());
      assertThat(problem.expected()).as(refusal.read()).contains(refusal.expected());
      assertThat(problem.cure()).as(refusal.read()).contains(refusal.mend());
      assertThat(problem.why()).as(refusal.read()).hasSizeGreaterThan(15);
    }
  }

  @Test
  void spoonWithoutItsKindNamesTheCandidates() {
    assertThatThrownBy(() -> FieldMeasure.spoon("tbsp"))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("tbsp (US)")
        .hasMessageContaining("tbsp (metric)")
        .hasMessageContaining("tbsp (AU)");
  }
}
