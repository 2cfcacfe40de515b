package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.sampling.SamplingUnit;
import agro.sampling.injury.ProgressCurve.Between;
import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.trial.analysis.AnalysisRoute;
import agro.trial.analysis.TrialAnalysis;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyEvaluation;
import agro.trial.load.BlockRule;
import agro.trial.load.LoadMeasure;
import agro.trial.load.LoadYieldLine;
import agro.trial.load.PestLoad;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TrialFiguresTest {

  @Test
  void residualsOfATrialNameThePlotsThatStandOff() {
    var figure = ResidualFigure.of(TrialSamples.analysed());
    assertThat(figure.alternative()).contains("residuals of 30 observations", "Beyond 2: 404");
    assertThat(FigureSamples.cell(figure, 0, "Plot")).isEqualTo("101");
    FigureSamples.picture(figure);
  }

  /** Fitted 2 and 5 by hand; residuals -1, 0, 1 twice over s = 1 and leverage 1/3: 1/sqrt(2/3). */
  @Test
  void residualsOfAModelWorkedByHand() {
    var groups = Factor.of("group", "a", "a", "a", "b", "b", "b");
    var figure = ResidualFigure.of(LinearModel.oneWay(groups).fit(1, 2, 3, 4, 5, 6));
    assertThat(FigureSamples.cell(figure, 2, "Fitted")).isEqualTo("2.000");
    assertThat(FigureSamples.cell(figure, 2, "Residual")).isEqualTo("1.22");
    assertThat(figure.alternative()).contains("from -1.22 to 1.22", "Beyond 2: none");
    FigureSamples.picture(figure);
  }

  @Test
  void ranksHaveNoResiduals() {
    var ranks =
        TrialAnalysis.of(TrialSamples.vale(), "larvae")
            .on(TrialSamples.DAY_3)
            .with(AnalysisRoute.RANKS)
            .evaluate();
    var figure = ResidualFigure.of(ranks);
    assertThat(figure.alternative()).contains("no residuals");
    FigureSamples.picture(figure);
    FigureSamples.picture(TrialMeansFigure.of(ranks));
  }

  @Test
  void everyPlotStandsBehindItsMean() {
    var figure = TrialMeansFigure.of(TrialSamples.analysed());
    assertThat(figure.data().rows()).hasSize(30);
    assertThat(figure.alternative())
        .contains("A untreated 6.64", "plots 3.3 to 10.9", "Smallest significant difference");
    assertThat(figure.caption()).contains("log10", "were not shown to be equal");
    FigureSamples.picture(figure);
  }

  @Test
  void countsAreDrawnOnAPlainAxis() {
    var counted =
        TrialAnalysis.of(TrialSamples.vale(), "larvae")
            .on(TrialSamples.DAY_3)
            .with(AnalysisRoute.QUASI_POISSON)
            .evaluate();
    var figure = TrialMeansFigure.of(counted);
    assertThat(figure.caption()).doesNotContain("log10");
    FigureSamples.picture(figure);
  }

  @Test
  void meansOfOneFactorHoldThePlotsOfTheOther() {
    var analysed = TrialAnalysis.of(TrialSamples.factorial(), "yield").evaluate();
    for (var means : analysed.means()) {
      var figure = TrialMeansFigure.of(analysed, means);
      assertThat(figure.data().rows()).as(means.title()).hasSize(12);
      FigureSamples.picture(figure);
    }
    assertThat(analysed.means()).hasSizeGreaterThan(2);
  }

  @Test
  void theScaleOfLogarithmsHasRoundTicksApart() {
    var scale = MeansScale.of(TrialSamples.analysed());
    var ticks = scale.ticks(scale.place(0), scale.place(12));
    assertThat(ticks).contains(0.0, 1.0, 10.0).isSorted();
    for (int i = 1; i < ticks.size(); i++) {
      assertThat(scale.place(ticks.get(i)) - scale.place(ticks.get(i - 1)))
          .isGreaterThan(0.06 * scale.place(12));
    }
    assertThat(scale.value(scale.place(3.5)))
        .isCloseTo(3.5, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(scale.place(-2)).isNaN();
  }

  /** Abbott pooled by hand: 1 - 121/68 = -77.9 %. */
  @Test
  void efficaciesBelowZeroStayBelowZero() {
    var figure = EfficacyFigure.of(TrialSamples.harmful());
    assertThat(figure.alternative()).contains("worse -78 on day 3", "gone 100 on day 3");
    FigureSamples.picture(figure);
  }

  @Test
  void efficaciesOfTheVale() {
    var course =
        EfficacyCourse.of(
            TrialSamples.vale(), "larvae", TrialSamples.TREATED, EfficacyEvaluation.withDefaults());
    var figure = EfficacyFigure.of(course);
    assertThat(figure.data().rows()).hasSize(15);
    assertThat(figure.caption()).contains("Henderson-Tilton", "label and local law come first");
    FigureSamples.picture(figure);
  }

  @Test
  void loadsAreTheAreasUnderTheCurves() {
    var figure = LoadFigure.of(TrialSamples.load());
    assertThat(figure.alternative()).contains("A untreated 207 (157 to 265)");
    assertThat(figure.caption()).contains("Plot 301: no count");
    FigureSamples.picture(figure);
    var plant = PestLoad.withDefaults(SamplingUnit.of(SamplingUnit.Kind.PLANT));
    var grown = plant.with(Between.EXPONENTIAL).with(LoadMeasure.MEAN_PER_DAY);
    var mean = LoadFigure.of(grown.evaluate(TrialSamples.vale(), "larvae"));
    assertThat(mean.caption()).contains("growth at an even rate");
    FigureSamples.picture(mean);
    var stairs =
        LoadFigure.of(plant.with(LoadMeasure.STAIRS).evaluate(TrialSamples.vale(), "larvae"));
    FigureSamples.picture(stairs);
    var share = LoadFigure.of(plant.withRelativeTo(100).evaluate(TrialSamples.vale(), "larvae"));
    assertThat(share.alternative()).contains("share of the greatest area");
    FigureSamples.picture(share);
  }

  /** Yields on a line of slope -0.1 with heights of blocks: adjusted, all lie on it. */
  @Test
  void theHeightOfABlockIsTakenOff() {
    var load = TrialSamples.load();
    Map<String, MassPerArea> yields = new HashMap<>();
    for (var plot : load.plots()) {
      double tonnes = 60 - 0.1 * plot.value() + Integer.parseInt(plot.block());
      yields.put(plot.plot(), MassPerArea.of(tonnes, MassPerAreaUnit.TONNE_PER_HECTARE));
    }
    var within = LoadYieldFigure.of(LoadYieldLine.of(load, yields, BlockRule.WITHIN_BLOCKS));
    for (int i = 0; i < within.data().rows().size(); i++) {
      double drawn = Double.parseDouble(FigureSamples.cell(within, i, "As drawn"));
      double loaded = Double.parseDouble(FigureSamples.cell(within, i, "Load"));
      assertThat(drawn).isCloseTo(63 - 0.1 * loaded, org.assertj.core.api.Assertions.within(0.02));
    }
    FigureSamples.picture(within);
    var across = LoadYieldFigure.of(LoadYieldLine.of(load, yields, BlockRule.ACROSS_PLOTS));
    assertThat(across.alternative()).contains("t/ha for each hundred pest-days per plant");
    FigureSamples.picture(across);
  }

  @Test
  void theMapTellsEveryPlot() {
    var values = TrialSamples.vale().variable("larvae").on(LocalDate.of(2026, 5, 29));
    var figure = TrialMapFigure.of(values);
    assertThat(figure.data().rows()).hasSize(30);
    assertThat(figure.alternative()).contains("row 3: 301 F microbial, 302 E double full 1.2");
    FigureSamples.picture(figure);
    var nowhere = TrialMapFigure.of(TrialSamples.factorial());
    assertThat(nowhere.alternative()).contains("No map can be drawn");
    FigureSamples.picture(nowhere);
  }
}
