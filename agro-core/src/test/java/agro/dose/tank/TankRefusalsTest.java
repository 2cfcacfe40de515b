package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import agro.dose.Formulation;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.dose.tank.MeasuringVessel.Graduated;
import agro.dose.tank.MeasuringVessel.GraduatedKind;
import agro.dose.tank.MeasuringVessel.Level;
import agro.dose.tank.MeasuringVessel.Sachet;
import agro.dose.tank.MeasuringVessel.Scale;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.Mass;
import agro.units.QuantityRange;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is refused: each with what was read, what was expected, why it matters and the cure. */
class TankRefusalsTest {

  private static final Volume LITRES_400 = Volume.parse("400 L");

  private static final ProductPerArea NOTHING =
      ProductPerArea.liquid(QuantityRange.exactly(new VolumePerArea(0)));

  private static TankMixPlan plan() {
    return TankMixPlan.of(
        SprayedField.parse("Mill Piece", "3.7 ha"),
        SprayVolume.parse("300 L/ha"),
        SprayTank.mounted(LITRES_400));
  }

  private static ProductAmount amount(String text) {
    return ProductAmount.parse(text);
  }

  private static Arguments bad(
      String name, ThrowingCallable call, String read, String expected, String why, String cure) {
    return Arguments.of(name, call, read, expected, why, cure);
  }

  private static Arguments rate(String rate, String read, String why, String cure) {
    return bad("rate " + rate, () -> TankPartner.of("Product A", rate), read, "product", why, cure);
  }

  static Stream<Arguments> rates() {
    return Stream.of(
        rate("100 g ai/ha", "100 g ai/ha", "too little by the strength", "strength of the form"),
        rate("20 g ai/100 L", "20 g ai/100 L", "too little by the strength", "strength of the f"),
        rate("5 mL/plant", "product per plant", "area of the field", "does not depend on a spray"),
        rate("0.75 g/m row", "metre of row", "area of the field", "does not depend on a spray"),
        rate("4 g/kg seed", "mass of seed", "area of the field", "does not depend on a spray"),
        rate("10 mL/spot", "product per spot", "area of the field", "does not depend on a spray"),
        rate("0.5 L/10000 m² LWA", "leaf-wall area", "area of the field", "canopy of the label"),
        rate("20 mL/1000 m³ TRV", "tree-row volume", "area of the field", "canopy of the label"),
        rate("2 kg/t manure (wet)", "wet substrate", "area of the field", "not depend on a spray"));
  }

  static Stream<Arguments> mixes() {
    return Stream.of(
        bad(
            "no product",
            () -> plan().evaluate(),
            "without a product",
            "one or more",
            "water",
            "label rates"),
        bad(
            "twice",
            () -> plan().with(a()).with(a()),
            "\"Product A\" is twice",
            "once",
            "measured out twice",
            "leave one"),
        bad(
            "nameless",
            () -> TankPartner.of(" ", "1 L/ha"),
            "without a name",
            "on the label",
            "what goes into the tank",
            "name the product"),
        bad(
            "nothing",
            () -> TankPartner.of("Product A", NOTHING),
            "a rate of 0 L/ha",
            "above zero",
            "no partner",
            "copy the rate"),
        bad(
            "granule",
            () -> a().as(Formulation.of("GR")),
            "GR, granule",
            "diluted in water",
            "used undiluted",
            "by itself"));
  }

  static Stream<Arguments> fillings() {
    return Stream.of(
        bad(
            "decimal slip",
            () -> plan().with(TankPartner.of("Product A", "2 L/L spray")).evaluate(),
            "more than fill",
            "room for water",
            "ten or a hundred times",
            "decimal point"),
        bad(
            "many loads",
            () -> tiny().evaluate(),
            "1110 L of spray from a tank that brings out 0.001 L",
            "100000",
            "wrong unit",
            "units of the field"),
        bad(
            "too much left",
            () -> plan().with(a()).evaluate().check(Volume.parse("1200 L")),
            "1200 L of spray left of 1110 L",
            "less left",
            "nothing was sprayed",
            "read the mark"),
        bad(
            "overfull",
            () -> plan().with(a()).evaluate().strengthOfFullDoseIn(new Volume(401)),
            "401 L of spray in a tank of 400 L",
            "can hold",
            "divided by the spray",
            "mark"),
        bad(
            "empty",
            () -> plan().with(a()).evaluate().strengthOfFullDoseIn(new Volume(0)),
            "0 L of spray",
            "above zero",
            "divided by the spray",
            "mark"));
  }

  static Stream<Arguments> fieldsAndTanks() {
    return Stream.of(
        bad(
            "field name",
            () -> SprayedField.parse("", "1 ha"),
            "without a name",
            "farm uses",
            "for which field",
            "name the field"),
        bad(
            "no land",
            () -> new SprayedField("A", new Area(0), AreaUnit.HECTARE),
            "0 m²",
            "above zero",
            "counted on the area",
            "measure the field"),
        bad(
            "no bigha",
            () -> SprayedField.of("A", Double.NaN, LandUnit.BIGHA_PUCCA),
            "NaN",
            "in bigha (pucca)",
            "counted on the area",
            "measure the field"),
        bad(
            "tank",
            () -> SprayTank.knapsack(new Volume(0)),
            "knapsack of 0 L",
            "above zero",
            "number of fillings",
            "highest mark"),
        bad(
            "dead",
            () -> SprayTank.mounted(LITRES_400).withDeadVolume(LITRES_400),
            "dead volume of 400 L",
            "below the capacity",
            "sprays nothing",
            "measure the dead"),
        bad(
            "pumps",
            () -> PumpsPerArea.of(0, AreaUnit.ACRE),
            "0.0 pumps per ac",
            "above zero",
            "dose per pump",
            "count the pumps"),
        bad(
            "minutes",
            () ->
                new KnapsackJobPlan(
                    SprayedField.parse("A", "1 ha"),
                    PumpsPerArea.of(12, AreaUnit.HECTARE),
                    new WorkTime(0)),
            "0 s for a pump",
            "above zero",
            "hours of the job",
            "from one filling to the next"));
  }

  static Stream<Arguments> packs() {
    var litre = PackOffer.of("1 L", Price.of("9", "OVC"));
    return Stream.of(
        bad(
            "price",
            () -> Price.of("1,50", "OVC"),
            "\"1,50\"",
            "decimal point",
            "comma",
            "at most one point"),
        bad("paid", () -> Price.of("-1", "OVC"), "-1 OVC", "zero or more", "being paid", "copy"),
        bad(
            "currency",
            () -> Price.of("1", " "),
            "without a currency",
            "code or the name",
            "two currencies",
            "write the currency"),
        bad(
            "currencies",
            () ->
                Purchase.of(
                    "A", amount("1 L"), List.of(litre, PackOffer.of("2 L", Price.of("9", "XYZ")))),
            "OVC and in XYZ",
            "one currency",
            "rate of exchange",
            "into one currency"));
  }

  static Stream<Arguments> stocksAndPumps() {
    var litre = PackOffer.of("1 L", Price.of("9", "OVC"));
    return Stream.of(
        bad(
            "stock of another measure",
            () -> Purchase.of("A", amount("1 L"), amount("1 kg"), List.of(litre)),
            "1 kg of A in hand",
            "measured as the product is dosed",
            "is taken from what has to be bought",
            "in the measure of the rate"),
        bad(
            "stock that is a range",
            () -> a().withPacks(litre).withStock(amount("1-2 L")),
            "1 to 2 L of Product A in hand",
            "one amount",
            "is taken from what has to be bought",
            "measure what is left"),
        bad(
            "stock without packs",
            () -> a().withStock(amount("1 L")),
            "no packs that are sold",
            "the packs first",
            "bought in whole packs",
            "before the stock"),
        bad(
            "empty pumps",
            () -> PumpsPerArea.of(5, AreaUnit.ACRE).sprayVolume(Volume.parse("0 L")),
            "brings out 0 L",
            "above zero",
            "pumps times what each",
            "measuring jug"));
  }

  static Stream<Arguments> purchases() {
    var litre = PackOffer.of("1 L", Price.of("9", "OVC"));
    return Stream.of(
        bad(
            "range",
            () -> Purchase.of("A", amount("1-2 L"), List.of(litre)),
            "need of 1 to 2 L",
            "one amount",
            "do not cover its high end",
            "each by itself"),
        bad(
            "no pack",
            () -> Purchase.of("A", amount("1 L"), List.of()),
            "no pack of A",
            "sizes that are sold",
            "whole packs",
            "from the shop"),
        bad(
            "kinds",
            () -> Purchase.of("A", amount("1 kg"), List.of(litre)),
            "a pack holds 1 L",
            "as the product is dosed",
            "never guessed",
            "in the measure of the rate"),
        bad(
            "kinds in partner",
            () -> a().withPacks(PackOffer.of("1 kg")),
            "a pack holds 1 kg",
            "as the product is dosed",
            "never guessed",
            "in the measure of the rate"),
        bad(
            "empty pack",
            () -> PackOffer.of("0 L"),
            "holds 0 L",
            "above zero",
            "bought whole",
            "copy the content"),
        bad(
            "uncertain pack",
            () -> PackOffer.of("1-2 L"),
            "holds 1 to 2 L",
            "one amount",
            "bought whole",
            "copy the content"));
  }

  static Stream<Arguments> vessels() {
    var kit = MeasuringKit.usual();
    var spoon = MeasuringVessel.spoon(VolumeUnit.US_TEASPOON);
    var scale = new Scale(Mass.parse("1 kg"), Mass.parse("1 g"));
    return Stream.of(
        bad(
            "powder",
            () -> kit.measure(amount("10 g"), spoon),
            "10 g of a solid product",
            "scale",
            "too little",
            "state the bulk density"),
        bad(
            "weighed liquid",
            () -> kit.measure(amount("10 mL"), scale),
            "10 mL of a liquid",
            "vessel for volumes",
            "never guessed",
            "syringe, cylinder or cup"),
        bad(
            "coarse",
            () -> kit.measure(amount("3 g"), scale),
            "wrong by up to 16.7 %",
            "at most 5 %",
            "as it is",
            "finer marks"),
        bad(
            "living",
            () -> kit.measure(amount("1000000 CFU"), scale),
            "is to be measured out",
            "volume or a mass",
            "laboratory",
            "tested viability"),
        bad(
            "other sachet",
            () -> kit.measure(amount("10 mL"), new Sachet(amount("10 g"))),
            "10 mL from a whole sachet of 10 g",
            "as the product is dosed",
            "never guessed",
            "copy the content"));
  }

  static Stream<Arguments> kits() {
    var kit = MeasuringKit.usual();
    return Stream.of(
        bad(
            "marks",
            () -> new Graduated(GraduatedKind.CUP, Volume.parse("1 L"), Volume.parse("2 L")),
            "marks every 2 L",
            "not further apart",
            "comes from the marks",
            "distance of two"),
        bad(
            "no resolution",
            () -> new Scale(new Mass(1), new Mass(0)),
            "marks every 0 kg",
            "above zero",
            "comes from the marks",
            "last digit"),
        bad(
            "nameless spoon",
            () -> new Level("", Volume.parse("5 mL")),
            "spoon or cap \"\"",
            "a name and a volume",
            "35 %",
            "with a syringe"),
        bad(
            "empty sachet",
            () -> new Sachet(amount("0 g")),
            "holds 0 g",
            "above zero",
            "whole",
            "copy the content"),
        bad("no limit", () -> kit.within(0), "0.0", "above 0", "bucket", "per cent as a share"),
        bad("per cent as limit", () -> kit.within(5), "5.0", "at most 0.5", "bucket", "share"));
  }

  static Stream<Arguments> orders() {
    var source = TankSources.MANITOBA;
    var step = new MixingStep("Emulsions", List.of(MixClass.EMULSION), Optional.empty());
    return Stream.of(
        bad(
            "no steps",
            () -> new MixingOrder("Label", List.of(), source),
            "no steps",
            "at least one step",
            "names the order",
            "order of the label"),
        bad(
            "twice",
            () -> new MixingOrder("Label", List.of(step, step), source),
            "emulsifiable concentrates in twice",
            "one step",
            "one place",
            "take the class out"),
        bad(
            "no words",
            () -> new MixingStep("", List.of(), Optional.empty()),
            "without words",
            "what is done",
            "reads it",
            "in a few words"),
        bad(
            "share",
            () -> new MixingStep.WaterShare(0.5, 50),
            "0.5 to 50.0",
            "at most 1",
            "counted from them",
            "a half as 0.5"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({
    "rates",
    "mixes",
    "fillings",
    "fieldsAndTanks",
    "packs",
    "purchases",
    "stocksAndPumps",
    "vessels",
    "kits",
    "orders"
  })
  void saysWhatWasReadExpectedWhyAndTheCure(
      String name, ThrowingCallable call, String read, String expected, String why, String cure) {
    var problem = catchThrowableOfType(InputProblem.class, call);
    assertThat(problem).as(name).isNotNull();
    assertThat(problem.read()).contains(read);
    assertThat(problem.expected()).contains(expected);
    assertThat(problem.why()).contains(why);
    assertThat(problem.cure()).contains(cure);
    assertThat(problem).hasMessageContainingAll("Expected:", "Why:", "Mend:");
  }

  @Test
  void thereAreManyOfThem() {
    long count =
        Stream.of(
                rates(),
                mixes(),
                fillings(),
                fieldsAndTanks(),
                packs(),
                purchases(),
                stocksAndPumps(),
                vessels(),
                kits(),
                orders())
            .mapToLong(Stream::count)
            .sum();
    assertThat(count).isEqualTo(55);
  }

  private static TankPartner a() {
    return TankPartner.of("Product A", "1 L/ha");
  }

  private static TankMixPlan tiny() {
    return TankMixPlan.of(
            SprayedField.parse("Mill Piece", "3.7 ha"),
            SprayVolume.parse("300 L/ha"),
            SprayTank.mounted(Volume.parse("1 mL")))
        .with(a());
  }
}
