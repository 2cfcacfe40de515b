package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.VarianceModel;
import agro.sampling.dispersion.NegativeBinomialFit;
import agro.sampling.field.PlanWalk;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.MoneyPerArea;
import agro.sampling.injury.PestMeasure;
import agro.sampling.injury.UncertainInjuryLevel;
import agro.sampling.injury.UncertainNumber;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.EndRule;
import agro.sampling.sequential.PlanCurve;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.TallyPlan;
import agro.sampling.sequential.TallyRelation;
import agro.sampling.sequential.WaldLines;
import agro.sampling.size.PrecisionStopLine;
import agro.working.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mites: Bliss and Fisher (1953). All other counts are invented. */
class CountingFiguresTest {

  private static final SamplingUnit LEAF = SamplingUnit.of(SamplingUnit.Kind.LEAF);
  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final WaldLines LINES = WaldLines.of(new CountFamily.Clumped(0.9), 2, 4, 0.1, 0.1);
  private static final SequentialPlan PLAN =
      SequentialPlan.truncated(LINES, 30, EndRule.BY_THE_MIDDLE).atLeast(5);
  private static final List<Double> MEANS = List.of(0.5, 2.0, 3.0, 4.0, 8.0);

  @Test
  void countsBesideBothLaws() {
    var mites = CountSample.ofFrequencies("mites", LEAF, 70, 38, 17, 10, 9, 3, 2, 1);
    var figure = CountFigure.of(NegativeBinomialFit.of(mites));
    assertThat(figure.alternative())
        .contains("70 without any, where 69.5 are expected", "k = 1.02", "47.7 at random");
    assertThat(FigureSamples.cell(figure, 1, "Negative binomial")).isEqualTo("37.60");
    assertThat(FigureSamples.cell(figure, 8, "Animals")).isEqualTo("8");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.LIGHT_GREY)).isTrue();
  }

  @Test
  void largeCountsComeInClassesAndKeepTheirNumber() {
    var sample = CountSample.of("plot", PLANT, 0, 3, 40, 106, 7, 12, 0, 61);
    var figure = CountFigure.of(NegativeBinomialFit.of(sample));
    assertThat(FigureSamples.cell(figure, 0, "Animals")).isEqualTo("0 to 4");
    int counted = 0;
    for (int row = 0; row < figure.data().rows().size(); row++) {
      counted += Integer.parseInt(FigureSamples.cell(figure, row, "Counted"));
    }
    assertThat(counted).isEqualTo(8);
    assertThat(figure.data().rows().size()).isBetween(12, 24);
    FigureSamples.picture(figure);
  }

  @Test
  void evenCountsHaveNoFiniteExponent() {
    var even = CountSample.of("even", PLANT, 1, 1, 2, 1, 2, 1);
    var figure = CountFigure.of(NegativeBinomialFit.of(even));
    assertThat(figure.caption()).contains("No finite k");
    FigureSamples.picture(figure);
  }

  @Test
  void linesOfAPlanAndAWalkOnThem() {
    var figure = StopLineFigure.of(PLAN);
    assertThat(figure.alternative()).contains("The plan ends at 30 units");
    assertThat(FigureSamples.cell(figure, 3, "Low at or below")).isEqualTo("–");
    assertThat(FigureSamples.cell(figure, 29, "High at or above"))
        .isEqualTo(Long.toString(PLAN.firstHigh(30)));
    FigureSamples.picture(figure);
    var walk = PlanWalk.start(PLAN, PLANT);
    FigureSamples.picture(StopLineFigure.of(walk));
    walk = walk.count(2).count(0).count(5);
    assertThat(StopLineFigure.of(walk).alternative()).contains("Go on");
    walk = walk.count(30).count(9);
    var stopped = StopLineFigure.of(walk);
    assertThat(stopped.alternative()).contains("Stop: high");
    assertThat(FigureSamples.cell(stopped, 4, "Total of the walk")).isEqualTo("46");
    assertThat(FigureSamples.holds(FigureSamples.picture(stopped), FigureLook.BLUE)).isTrue();
  }

  @Test
  void aPlanWithoutAnEndIsNotDrawn() {
    assertThatThrownBy(() -> StopLineFigure.of(SequentialPlan.of(LINES)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("without an end");
  }

  /** Green: T = (D² / a)^(1/(b−2)) n^((b−1)/(b−2)); with a 1, b 1 and D 0.5 it is 4 animals. */
  @Test
  void theLineOfAPrecision() {
    var line = new PrecisionStopLine(new VarianceModel.Power(1, 1), 0.5);
    var figure = StopLineFigure.of(line, CountSample.of("plot", PLANT, 0, 1, 2, 0, 3, 1));
    assertThat(FigureSamples.cell(figure, 0, "Stop at")).isEqualTo("4.0");
    assertThat(figure.alternative()).contains("reached after 5 units with 6 animals");
    FigureSamples.picture(figure);
    var random = new PrecisionStopLine(new VarianceModel.NegativeBinomial(1), 0.25);
    assertThatThrownBy(
            () -> StopLineFigure.of(random, CountSample.of("few", PLANT, 0, 1, 2, 0, 3, 1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("more than 17");
  }

  @Test
  void plansUnderNamesOfOnesOwn() {
    var tally = TallyPlan.of(new TallyRelation.MoreThan(1, 0.9), 2, 4, 0.1, 0.1);
    var named = new LinkedHashMap<String, PlanCurve>();
    named.put("counting", PlanCurve.exact(PLAN, new CountFamily.Clumped(0.9), MEANS));
    named.put(
        "more than one",
        tally.curve(tally.upTo(30, EndRule.BY_THE_MIDDLE), tally.relation(), MEANS));
    var figure = PlanFigure.of(named);
    assertThat(figure.caption())
        .contains("Counting: Wald's test of a mean of 2", "More than one: ");
    assertThat(figure.data().rows()).hasSize(10);
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.VERMILION)).isTrue();
    assertThatThrownBy(() -> PlanFigure.of(new LinkedHashMap<>())).isInstanceOf(InputProblem.class);
    assertThatThrownBy(
            () -> PlanFigure.of(PlanCurve.exact(PLAN, new CountFamily.AtRandom(), List.of(2.0))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("two or more");
  }

  /**
   * The chance of one half lies where cost = value × loss × prevented: 45 / (1200 × 0.01 × 0.8).
   */
  @Test
  void regionsByTheValueOfTheCrop() {
    var level =
        InjuryLevel.of(
            MoneyPerArea.perHectare(45, "EUR"),
            CropLoss.share(0.01, MoneyPerArea.perHectare(1200, "EUR")),
            0.8,
            PestMeasure.pestsPer(PLANT));
    var uncertain =
        UncertainInjuryLevel.of(level).withCostPerHectare(UncertainNumber.between(40, 50));
    var figure = TreatmentRegionFigure.byValue(uncertain, 600, 1200);
    assertThat(FigureSamples.cell(figure, 10, "As likely as not at")).isEqualTo("4.69");
    assertThat(FigureSamples.cell(figure, 0, "As likely as not at")).startsWith("9.3");
    assertThat(figure.alternative()).contains("At 600 EUR/ha: leave up to");
    assertThat(figure.caption()).contains("product label");
    FigureSamples.picture(figure);
    assertThatThrownBy(() -> TreatmentRegionFigure.byValue(uncertain, 900, 600))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void aSheetIsShownAsADrawingWithItsWords() {
    var sheet = Sheet.a4("Counts").build();
    assertThat(new SheetRenderer().render(sheet).get("image/svg+xml").orElseThrow().toString())
        .contains("<svg");
  }
}
