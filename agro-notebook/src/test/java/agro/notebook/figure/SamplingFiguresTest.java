package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.MoneyPerArea;
import agro.sampling.injury.PestMeasure;
import agro.sampling.injury.UncertainInjuryLevel;
import agro.sampling.injury.UncertainNumber;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.EndRule;
import agro.sampling.sequential.PlanCurve;
import agro.sampling.sequential.PlanRobustness;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.WaldLines;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Counts and prices are invented. */
class SamplingFiguresTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final SequentialPlan PLAN =
      SequentialPlan.truncated(
          WaldLines.of(new CountFamily.Clumped(0.9), 2, 4, 0.1, 0.1), 30, EndRule.CALL_HIGH);

  private static DrawnFigure treatment(int... counts) {
    var level =
        InjuryLevel.of(
            MoneyPerArea.perHectare(45, "EUR"),
            CropLoss.share(0.01, MoneyPerArea.perHectare(1200, "EUR")),
            0.8,
            PestMeasure.pestsPer(PLANT));
    var uncertain =
        UncertainInjuryLevel.of(level).withCostPerHectare(UncertainNumber.triangular(35, 45, 60));
    return TreatmentFigure.of(
        uncertain.distribution().decide(CountSample.of("plot", PLANT, counts)));
  }

  @Test
  void treatmentTellsItsRegionsInWordsAndGreys() {
    var figure = treatment(9, 12, 7, 11, 8, 10);
    assertThat(figure.alternative())
        .contains("Leave up to", "look on between", "Verdict: treat:", "above 99 %");
    assertThat(figure.caption()).contains("product label");
    assertThat(FigureSamples.cell(figure, 0, "If known")).isEqualTo("leave");
    assertThat(FigureSamples.cell(figure, 20, "If known")).isEqualTo("treat");
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.LIGHT_GREY)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.VERMILION)).isFalse();
    assertThat(FigureSamples.holds(picture, FigureLook.BLUE)).isFalse();
  }

  @Test
  void treatmentDrawsAnEmptyFieldAndAnExactLevel() {
    assertThat(treatment(0, 0, 0, 0, 0, 0, 0, 0, 0, 0).alternative()).contains("Verdict: leave");
    FigureSamples.picture(treatment(4, 5));
  }

  @Test
  void plansAreDrawnForSeveralExponents() {
    var tried =
        PlanRobustness.ofExponents(
            PLAN, List.of(0.45, 0.9, Double.POSITIVE_INFINITY), List.of(1.0, 2.0, 3.0, 4.0, 6.0));
    var figure = PlanFigure.of(tried);
    assertThat(figure.alternative())
        .contains("K = 0.45: the chance of calling the field low", "At random: ");
    assertThat(FigureSamples.cell(figure, 0, "Fields")).isEqualTo("k = 0.45");
    FigureSamples.picture(figure);
    FigureSamples.picture(
        PlanFigure.of(PlanCurve.exact(PLAN, new CountFamily.Clumped(1), List.of(1.0, 2.0))));
  }
}
