package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.units.Length;
import agro.units.MassPerVolume;
import agro.units.UnreadableQuantity;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Inputs that nobody can use, each with what the message has to say. */
class BadDoseInputTest {

  static List<NamedCsvRecord> inputs() {
    return ReferenceTable.read(BadDoseInputTest.class, "bad-inputs.csv");
  }

  @ParameterizedTest
  @MethodSource("inputs")
  void isRefusedWithASentenceThatHelps(NamedCsvRecord row) {
    var reader = reader(row.getField("what"));
    var problem = catchThrowable(() -> reader.apply(row.getField("text")));

    assertThat(problem).isInstanceOfAny(InputProblem.class, UnreadableQuantity.class);
    assertThat(problem.getMessage())
        .contains(row.getField("words"))
        .contains("Expected: ")
        .contains("Why: ")
        .contains("Mend: ");
  }

  private static Function<String, ?> reader(String what) {
    return switch (what) {
      case "rate" -> LabelRate::parse;
      case "area" -> ProductPerArea::parse;
      case "active" -> ActivePerArea::parse;
      case "spray" -> SprayVolume::parse;
      case "strength" -> Strength::parse;
      case "activeStrength" -> ActiveStrength::parse;
      case "living" -> LivingStrength::parse;
      case "formulation" -> Formulation::of;
      case "amount" -> ProductAmount::parse;
      default -> throw new IllegalArgumentException(what);
    };
  }

  @Test
  void aDensityIsNeverGuessed() {
    var byMass = ActiveStrength.parse("18.5 % w/w");
    var byVolume = ActiveStrength.parse("200 g/L");
    var rate = ActivePerArea.parse("100 g ai/ha");

    refused(() -> rate.product(byMass, ProductState.LIQUID), "the density of the product");
    refused(() -> rate.product(byVolume, ProductState.SOLID), "withDensity");
    refused(() -> byMass.activeIn(ProductAmount.parse("1 L")), "the density of the product");
    refused(() -> byVolume.activeIn(ProductAmount.parse("1 kg")), "1.09 kg/L");
  }

  @Test
  void livingUnitsAreNoMass() {
    var strength = ActiveStrength.parse("200 g/L");
    var spores = ProductAmount.parse("1000000 spores");

    refused(() -> strength.activeIn(spores), "nobody can weigh a living unit");
    refused(
        () ->
            LivingStrength.parse("2 x 10^9 CFU/g")
                .productForLiving((ProductAmount.Living) spores, ProductState.SOLID),
        "different things");
    refused(() -> spores.plus(ProductAmount.parse("1 L")), "nothing in common");
    refused(() -> new Viability(1.2), "a share above 0 and up to 1");
  }

  @Test
  void acidAndSaltAreKeptApart() {
    var salt = ActiveStrength.parse("480 g/L");
    var rate = ActivePerArea.parse("720 g ae/ha");
    var ratio = new SaltRatio(0.75);

    refused(() -> rate.product(salt, ProductState.LIQUID), "stated as acid equivalent");
    refused(
        () ->
            ratio.convert(
                ActivePerArea.parse("720 g ai/ha").perHectare(), ActiveBasis.ACID_EQUIVALENT),
        "either of the two");
    refused(
        () -> SaltRatio.of(MassPerVolume.parse("480 g/L"), MassPerVolume.parse("360 g/L")),
        "a salt weighs more");
  }

  @Test
  void whatIsMissingForAConversionIsNamed() {
    var none = FieldFigures.none();
    var area = ProductPerArea.parse("300 mL/acre");

    missing(area, none, RateKind.PRODUCT_PER_PLANT, "the number of plants on a hectare");
    missing(area, none, RateKind.PRODUCT_PER_ROW_LENGTH, "distance from row to row");
    missing(area, none, RateKind.PRODUCT_PER_SPRAY_VOLUME, "spray volume of the sprayer");
    missing(area, none, RateKind.PRODUCT_PER_SEED_MASS, "seed rate");
    missing(area, none, RateKind.PRODUCT_PER_WET_SUBSTRATE, "wet mass of substrate");
    missing(area, none, RateKind.PRODUCT_PER_SPOT, "number of spots");
    missing(
        ProductPerTray.parse("2 g/tray"),
        none.plants(10_000),
        RateKind.PRODUCT_PER_AREA,
        "number of cells in a tray");
    refused(
        () -> RateConversion.convert(area, none, RateKind.ACTIVE_PER_AREA), "through its strength");
  }

  @Test
  void aGroundRateBecomesNoWallRateWithoutTheCanopyOfTheLabel() {
    var orchard = canopy();
    var figures = FieldFigures.none().canopy(orchard);
    var ground = ProductPerArea.parse("1.5 L/ha");

    missing(
        ground, figures, RateKind.PRODUCT_PER_LEAF_WALL_AREA, "reference canopy that the label");
    missing(
        ground, figures, RateKind.PRODUCT_PER_TREE_ROW_VOLUME, "reference canopy that the label");
    missing(
        ProductPerSprayVolume.parse("50 mL/100 L"),
        figures.spray(SprayVolume.parse("500 L/ha")),
        RateKind.PRODUCT_PER_LEAF_WALL_AREA,
        "reference canopy that the label");
  }

  @Test
  void figuresThatNoFieldHas() {
    var rate = ProductPerTreeRowVolume.parse("20 mL/1000 m3 TRV");

    refused(() -> FieldFigures.none().rows(metres(0)), "a finite number above zero");
    refused(() -> FieldFigures.none().bands(metres(0.8), metres(0.75)), "overlap");
    refused(() -> new Canopy(metres(3), metres(0), metres(4)), "canopy width");
    refused(() -> new LeafWallArea(Double.NaN), "above zero");
    refused(() -> new TreeRowVolume(-1), "above zero");
    refused(() -> new TreeRowVolume(10_000).spray(90, 1.3), "denser than a full one");
    refused(() -> new TreeRowSpray(canopy(), 0, 1), "a finite volume above zero");
    missing(rate, FieldFigures.none(), RateKind.PRODUCT_PER_AREA, "tree-row volume of the orchard");
  }

  @Test
  void limitsAndPlansThatContradictThemselves() {
    var day = LocalDate.of(2026, 6, 22);
    var dose = ProductPerArea.parse("0.5 L/ha");
    var plan = PlannedUse.of(dose).on(day);

    refused(() -> ApplicationLimit.maximum(0), "not as a number");
    refused(() -> IntervalLimit.ofDays(0), "days between applications");
    refused(() -> PreHarvestLimit.ofDays(-1), "days before harvest");
    refused(() -> ReEntryLimit.ofHours(-4), "re-entry");
    refused(() -> new UseCondition("  "), "no condition at all");
    refused(() -> plan.harvestedOn(day.minusDays(1)), "before spraying");
    refused(() -> plan.after(PastUse.sameCrop(day.plusDays(1), dose)), "after the planned one");
    refused(() -> Product.of(" ", "EC", "200 g/L"), "without a name");
    refused(() -> Product.of("Product A", "AE", "200 g/L").state(), "poured or weighed");
  }

  private static Canopy canopy() {
    return new Canopy(metres(3), metres(1.2), metres(4));
  }

  private static Length metres(double metres) {
    return new Length(metres);
  }

  private static void missing(ProductRate rate, FieldFigures figures, RateKind to, String words) {
    refused(() -> RateConversion.convert(rate, figures, to), words);
  }

  private static void refused(ThrowingCallable call, String words) {
    assertThatThrownBy(call)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(words)
        .hasMessageContaining("Expected: ")
        .hasMessageContaining("Why: ")
        .hasMessageContaining("Mend: ");
  }
}
