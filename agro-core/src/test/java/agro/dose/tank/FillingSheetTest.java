package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Volume;
import agro.units.WorkTime;
import agro.working.Caution;
import agro.working.Cell;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sheet that is taken to the sprayer, from invented fields and products. */
class FillingSheetTest {

  private static TankMix three() {
    return OsmereVale.threePartners().evaluate();
  }

  private static TankMixPlan small(String name) {
    return TankMixPlan.of(
        SprayedField.parse(name, "0.5 ha"),
        SprayVolume.parse("200 L/ha"),
        SprayTank.knapsack(Volume.parse("20 L")));
  }

  private static List<String> column(FillingSheet sheet, int job, int column) {
    return sheet.fieldTable(sheet.jobs().get(job)).orElseThrow().rows().stream()
        .map(row -> row.get(column).printed())
        .toList();
  }

  /** Granules, agitate, concentrate, surfactant: a line for each, in the order of the mix. */
  @Test
  void linesStandInTheOrderOfMixing() {
    var sheet = FillingSheet.of("Sheet", FieldJob.of(three()));
    assertThat(column(sheet, 0, 0))
        .filteredOn(name -> name.startsWith("Product") || name.startsWith("Fill"))
        .containsExactly(
            "Fill the tank half to three quarters with water",
            "Product B",
            "Product A",
            "Product C",
            "Fill up with water to");
    assertThat(sheet.presentation().toText())
        .contains(
            "Order of mixing after Oklahoma State University Extension. Herbicide Mixing Order",
            Caution.HEADING);
  }

  /** 100 L in five pumps of 20 L; 0.1 ha a pump takes 120 to 150 mL of 1.2-1.5 L/ha. */
  @Test
  void equalPumpsShareOneColumn() {
    var mix = small("Croft").with(OsmereVale.productA()).evaluate();
    var sheet = FillingSheet.of("Sheet", FieldJob.of(mix).taking(new WorkTime(5400)));
    var table = sheet.fieldTable(sheet.jobs().get(0)).orElseThrow();
    assertThat(table.columns())
        .extracting(column -> column.name())
        .containsExactly("In this order", "pumps 1 to 5, each", "in all", "measure with");
    assertThat(column(sheet, 0, 1)).contains("120 to 150 mL", "20 L", "0.1 ha");
    assertThat(column(sheet, 0, 2)).contains("600 to 750 mL", "100 L", "0.5 ha");
    assertThat(table.notes()).containsExactly("About 1.5 h of work.");
    assertThat(sheet.presentation().toText()).doesNotContain("Order of mixing");
  }

  /** One pump alone needs no column of totals. */
  @Test
  void aSinglePump() {
    var plan =
        TankMixPlan.of(
            SprayedField.parse("Strip", "0.05 ha"),
            SprayVolume.parse("200 L/ha"),
            SprayTank.knapsack(Volume.parse("20 L")));
    var job = FieldJob.of(plan.with(OsmereVale.productA()).evaluate()).remarking("Before noon.");
    var table = FillingSheet.of("Sheet", job).fieldTable(job).orElseThrow();
    assertThat(table.columns())
        .extracting(column -> column.name())
        .containsExactly("In this order", "pump 1", "measure with");
    assertThat(table.notes()).containsExactly("Before noon.");
  }

  /** 5.6 L for the large field and 0.75 L for the small one: 6.35 L, as 5 L + 2 × 1 L. */
  @Test
  void packsAreForAllFieldsTogether() {
    var sheet =
        FillingSheet.of(
            "Sheet",
            FieldJob.of(three()),
            FieldJob.of(small("Croft").with(OsmereVale.productA()).evaluate()));
    var first = sheet.shopping().orElseThrow().rows().get(0);
    assertThat(first)
        .extracting(Cell::printed)
        .contains("5.08 to 6.35 L", "1 × 5 L + 2 × 1 L", "123.80 OVC");
  }

  @Test
  void aMixAgainstALabelIsNamedAndWithheld() {
    var limits =
        LabelLimits.of("Product D").with(DoseLimit.maximum(ProductPerArea.parse("2 L/ha")));
    var over =
        small("Croft")
            .with(
                TankPartner.of("Product D", "3 L/ha")
                    .withLimits(limits)
                    .withPacks(PackOffer.of("1 L")))
            .evaluate();
    var sheet = FillingSheet.of("Sheet", FieldJob.of(over), FieldJob.of(three()));
    assertThat(sheet.fieldTable(sheet.jobs().get(0))).isEmpty();
    assertThat(sheet.presentation().toText())
        .contains("Croft: do not fill the sprayer", "over the maximum", "Mill Piece")
        .doesNotContain("300 mL", "1.5 L of Product D");
    assertThat(sheet.shopping().orElseThrow().rows())
        .noneMatch(row -> row.get(0).printed().equals("Product D"));
  }

  /** A warning that holds in two fields stands once, with both. */
  @Test
  void warningsStandOnce() {
    var unknown = TankPartner.of("Product E", "1 L/ha");
    var sheet =
        FillingSheet.of(
            "Sheet",
            FieldJob.of(small("Croft").with(unknown).evaluate()),
            FieldJob.of(small("Lane").with(unknown).evaluate()));
    assertThat(sheet.presentation().toMarkdown())
        .containsOnlyOnce("Look first")
        .contains("(Croft, Lane): Product E: limits of the label. Not recorded.");
  }

  @Test
  void aProductWithoutAPlaceIsKept() {
    var mix = small("Croft").with(TankPartner.of("Product E", "1 L/ha")).evaluate();
    assertThat(column(FillingSheet.of("Sheet", FieldJob.of(mix)), 0, 0))
        .contains("Product E (when: see its label)");
  }

  @Test
  void textFromDataIsEscaped() {
    var mix = small("<b>Croft</b>").with(OsmereVale.productA()).evaluate();
    var html = FillingSheet.of("<i>Sheet</i>", FieldJob.of(mix)).presentation().toHtml();
    assertThat(html).doesNotContain("<b>Croft", "<i>Sheet").contains("&lt;b&gt;Croft");
  }

  @Test
  void refusesASheetForNoField() {
    assertThatThrownBy(() -> FillingSheet.of("Sheet"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("for 0 fields")
        .hasMessageContaining("at least one field");
    var job = FieldJob.of(three());
    assertThatThrownBy(() -> FillingSheet.of(" ", job)).isInstanceOf(InputProblem.class);
  }

  /** The product keeps its label and its packs at another rate. */
  @Test
  void anotherRateOfTheSameProduct() {
    var a = OsmereVale.productA();
    var lower = a.at(ProductPerArea.parse("0.6 L/ha"));
    assertThat(lower.packs()).isEqualTo(a.packs());
    assertThat(lower.label()).isEqualTo(a.label());
    assertThat(lower.rate()).isEqualTo(ProductPerArea.parse("0.6 L/ha"));
  }

  /** One store serves all fields: what is in it is taken off once. */
  @Test
  void stockInHandIsTakenOffOnce() {
    var partner = OsmereVale.productA().withStock(ProductAmount.parse("6 L"));
    var mix = OsmereVale.onlyWith(partner).evaluate();
    var sheet = FillingSheet.of("Two fields", FieldJob.of(mix), FieldJob.of(mix));
    assertThat(sheet.shopping().orElseThrow().rows().get(0).get(1).printed())
        .endsWith("11.2 L, 6 L in hand");
    assertThat(sheet.shopping().orElseThrow().rows().get(0).get(3).printed())
        .isEqualTo("1 × 5 L + 1 × 1 L");
  }
}
