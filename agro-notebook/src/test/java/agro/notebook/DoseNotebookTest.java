package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.DoseFinding;
import agro.dose.LimitCheckResult;
import agro.dose.PerLitreDoseResult;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.dose.scaling.BandTreatmentResult;
import agro.dose.sprayer.CalibratedVolume;
import agro.notebook.figure.DrawnFigure;
import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The course on dose arithmetic says what it is meant to say. Every expectation is worked by hand
 * from the definitions of the units and the formulas that the notebook prints; products, rates and
 * limits are invented.
 */
class DoseNotebookTest {

  private static NotebookRun run;

  @BeforeAll
  static void runTheCourse() {
    run =
        NotebookRunner.standard()
            .run(Path.of("..", "notebooks").resolve("03-dose-arithmetic.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  private static String page() {
    return run.toPage(CodeView.FOLDED).replace('\u00a0', ' ');
  }

  private static List<List<String>> printed(String check) {
    return run.checked(check, ResultTable.class).rows().stream()
        .map(row -> row.stream().map(cell -> cell.printed().replace('\u00a0', ' ')).toList())
        .toList();
  }

  private static String lastResult(String check) {
    var steps = run.checked(check, Working.class).steps();
    return steps.get(steps.size() - 1).result();
  }

  /** 250 and 300 mL on 0.40468564 ha are 617.8 and 741.3 mL/ha. */
  @Test
  void aRateSaysWhatItIs() {
    assertThat(printed("kinds"))
        .hasSize(8)
        .contains(
            List.of("250-300 mL/acre", "product per area of the field", "617.8 to 741.3 mL/ha"),
            List.of("0.2 % v/v", "product per volume of spray", "2 mL/L spray"),
            List.of("100 g ai/ha", "active ingredient per area of the field", "100 g ai/ha"));
  }

  /** A bigha of 27 225 square feet (2529 m²) and the one of Nepal, 6772.63 m². */
  @Test
  void landHasAPlace() {
    assertThat(printed("bighas"))
        .hasSize(9)
        .contains(
            List.of("pucca, Bihar, central India, Rajasthan pucca", "2529", "3.95"),
            List.of("Nepal, Nepal Terai", "6773", "1.48"));
    assertThat(page()).contains("stands for more than one unit", "3 marla (Lahore)");
  }

  /** 1.2 and 1.5 L/ha on 3.7 ha; 300 L/ha from 400 L leave a last load of 1110 - 800 = 310 L. */
  @Test
  void theFieldAndTheTank() {
    assertThat(lastResult("need")).isEqualTo("4.44 to 5.55 L");
    assertThat(run.checked("need", Working.class).cautions()).isEqualTo(Caution.all());
    assertThat(printed("mix"))
        .element(1)
        .isEqualTo(List.of("3", "part", "310 L", "1.033", "1.24 to 1.55 L", "308.4 to 308.8 L"));
  }

  /** 100 g of active ingredient at 200 g/L; 200 mL of 40 % are 80 mL, 0.5 % of 16 L. */
  @Test
  void strengths() {
    assertThat(lastResult("active")).isEqualTo("500 mL/ha");
    var dilution = run.checked("dilution", Working.class).steps();
    assertThat(dilution.get(0).result()).isEqualTo("200 mL");
    assertThat(dilution.get(2).result()).isEqualTo("1 in 80");
    assertThat(page()).contains("Expected: the density of the product");
  }

  /** 60 of 500 L/ha is 0.12 of the dose. */
  @Test
  void aDosePerLitre() {
    var low = run.checked("low", PerLitreDoseResult.class);
    assertThat(low.departure()).isCloseTo(0.12, within(1e-12));
    assertThat(low.worst()).isEqualTo(Severity.WARNING);
    assertThat(low.findings().get(0).sentence()).contains("60 mL/ha, 8.3 times less");
  }

  /** 3.55 L in three walks over 60 m²; t of two degrees of freedom is 4.303. */
  @Test
  void calibration() {
    var walk = run.checked("walk", CalibratedVolume.class);
    assertThat(walk.perFieldArea().perArea().litresPerHectare())
        .isCloseTo(1e4 * 3.55 / 3 / 60, within(1e-9));
    assertThat(walk.relativeHalfWidth(0.95).orElseThrow()).isCloseTo(0.0737, within(5e-5));
    assertThat(run.checked("boom", SprayVolume.class).perArea().litresPerHectare())
        .isCloseTo(240, within(1e-9));
  }

  @Test
  void partOfTheField() {
    var band = run.checked("band", BandTreatmentResult.class);
    assertThat(band.treatedShare()).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(band.perField().perHectare().lowNumber()).isCloseTo(1.0 / 3, within(1e-12));
  }

  /** 1.8 over 1.5 L/ha; 6 of 10 days; 19 of 21 days before the harvest. */
  @Test
  void limits() {
    var errors = run.checked("limits", LimitCheckResult.class).of(Severity.ERROR);
    assertThat(errors)
        .extracting(DoseFinding::rule)
        .containsExactlyInAnyOrder(
            "maximum dose per application",
            "interval between applications per season",
            "pre-harvest interval");
    assertThat(page()).contains("10 days", "24 h").doesNotContain("PT24H");
  }

  /**
   * Sizes worked by hand: 4046.8564 m² of an acre; 4.54609 and 3.785411784 L of a gallon;
   * 28.4130625 and 29.5735296 mL of a fluid ounce; 20 and 14.7868 mL of a spoon; the largest and
   * the smallest printed size of a land unit; 400 of 310 L; √2 of 2; 1/1.1 and 1/0.9; 1/√1.28.
   */
  @ParameterizedTest
  @CsvSource({
    "US gallon and imperial gallon, 0.832674, 1.200950",
    "US and imperial fluid ounce, 0.960760, 1.040843",
    "ounce rounded to 30 mL, 1.014421, 1.014421",
    "ounce of weight for a fluid ounce (of water), 0.958611, 0.958611",
    "US and Australian tablespoon, 0.739338, 1.352561",
    "teaspoon for tablespoon, 0.333333, 0.333333",
    "pounds and kilograms, 0.453592, 2.204623",
    "millilitres of powder taken as grams, 0.32, 0.96",
    "decimal point one place off, 0.1, 10",
    "per cent forgotten: 0.2 % as 0.2, 100, 100",
    "acre and hectare, 0.404686, 2.471054",
    "bigha of another place, 0.093277, 10.7206",
    "katha of another place, 0.197535, 5.0624",
    "manzana of another place, 0.697225, 1.434257",
    "marla of another place, 0.826446, 1.21",
    "top of a range for its bottom, 6.666667, 6.666667",
    "'full dose in the last, part load', 1.290323, 1.290323",
    "full dose in a half-filled tank, 2, 2",
    "density of a liquid left out (1.09 kg/L), 1.09, 1.09",
    "active rate taken for product (5 to 80 %), 0.05, 0.8",
    "acid equivalent and salt, 0.75, 1.333333",
    "'mix for 500 L/ha put out at 60 L/ha, or back', 0.12, 8.333333",
    "parts per million w/w and w/v (0.8 kg/L), 0.8, 1.25",
    "1 in 10 and 1 + 10, 0.909091, 1.1",
    "10 % too fast or too slow, 0.909091, 1.111111",
    "'worn nozzles, 10 % over', 1.1, 1.1",
    "pressure doubled to double the dose, 0.707107, 0.707107",
    "nozzle spacing taken for the boom (6 nozzles), 0.166667, 0.166667",
    "dense liquid calibrated with water (1.28 kg/L), 0.883883, 0.883883",
    "amount for the field put into bands, 3, 3",
  })
  void mistakesHaveTheirSize(String name, double least, double most) {
    var row =
        run.checked("slips", DrawnFigure.class).data().rows().stream()
            .filter(cells -> cells.get(0).printed().equals(name))
            .findFirst()
            .orElseThrow();
    assertThat(((Cell.Figure) row.get(2)).value()).isCloseTo(least, within(1e-4 * least));
    assertThat(((Cell.Figure) row.get(3)).value()).isCloseTo(most, within(1e-4 * most));
    assertThat(row.get(4).printed()).isNotBlank();
  }

  @Test
  void theFigureHoldsAllMistakes() {
    var slips = run.checked("slips", DrawnFigure.class);
    assertThat(slips.data().rows()).hasSize(30);
    assertThat(printed("stops"))
        .hasSize(30)
        .contains(
            List.of(
                "acre and hectare", "÷ 2.47 or × 2.47", "a rate keeps the area it is written for"));
    assertThat(run.pictures()).containsOnlyKeys("dose-mistakes");
    assertThat(page()).contains(Caution.HEADING, "Osmere Vale", "invented");
  }
}
