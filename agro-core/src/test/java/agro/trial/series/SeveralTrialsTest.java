package agro.trial.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.report.InputProblem;
import agro.stats.mixed.VarianceComponent;
import agro.trial.Assessment;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeveralTrialsTest {

  private static final Map<String, Double> BY_R = SeriesData.computed("sites.csv");

  private static PlotFigures figures(String name) {
    var all = SeriesData.barley(true);
    if (name.equals("unequal")) {
      all.removeIf(SeveralTrialsTest::isLost);
    }
    return SeriesData.yields(all);
  }

  private static boolean isLost(PlotFigure figure) {
    var plot = figure.plot();
    var treatment = plot.treatment();
    boolean trebi = treatment.equals("Trebi") && plot.site().equals("Duluth");
    boolean velvet =
        treatment.equals("Velvet") && List.of("Morris", "Waseca").contains(plot.site());
    boolean peatland = treatment.equals("Peatland") && plot.site().equals("Crookston");
    return trebi || velvet || (peatland && plot.block().equals("1931"));
  }

  private static void agrees(double value, String name) {
    assertThat(value).as(name).isCloseTo(BY_R.get(name), withinPercentage(1e-6));
  }

  /** Immer and others 1934 (barley.csv) by base R, sites.R. */
  @ParameterizedTest
  @ValueSource(strings = {"whole", "unequal"})
  void singleTrialsAndTheirVariancesAgreeWithR(String name) {
    var result = SeveralTrials.withDefaults().evaluate(figures(name));
    for (var trial : result.trials()) {
      agrees(trial.errorVariance().orElseThrow(), name + "/error of " + trial.site());
      agrees(trial.errorDegreesOfFreedom(), name + "/df of " + trial.site());
      agrees(trial.test().orElseThrow().f(), name + "/F of " + trial.site());
    }
    agrees(result.variances().bartlett().orElseThrow(), name + "/bartlett");
    agrees(result.variances().bartlettChance().orElseThrow(), name + "/bartlett chance");
    agrees(result.variances().ratio().orElseThrow(), name + "/ratio");
    agrees(result.variances().levene().orElseThrow().statistic(), name + "/levene");
  }

  /** The same source. */
  @ParameterizedTest
  @ValueSource(strings = {"whole", "unequal", "weighted"})
  void fixedSitesAgreeWithR(String name) {
    var weights = name.equals("weighted") ? SiteWeights.BY_ERROR_VARIANCE : SiteWeights.EQUAL;
    var result = SeveralTrials.withDefaults().with(weights).evaluate(figures(name));
    var fixed = result.fixed().orElseThrow();
    agrees(fixed.interaction().orElseThrow().f(), name + "/interaction F");
    agrees(fixed.interaction().orElseThrow().df1(), name + "/interaction df");
    agrees(fixed.treatments().orElseThrow().f(), name + "/treatment F");
    var error = fixed.rows().get(fixed.rows().size() - 1);
    agrees(error.meanSquare().orElseThrow(), name + "/error");
  }

  /** The same source: with balanced data the mixed model is the test against treatment by site. */
  @Test
  void randomSitesAgreeWithR() {
    var result = SeveralTrials.withDefaults().evaluate(figures("whole"));
    var random = result.random();
    agrees(random.treatments().f(), "whole/random F");
    agrees(random.treatments().df2(), "whole/random df");
    agrees(random.means().largestErrorOfDifference(), "whole/random error of difference");
    agrees(variance(random, "treatment by site"), "whole/variance treatment by site");
    var fixed = result.fixed().orElseThrow().means().orElseThrow();
    agrees(fixed.largestErrorOfDifference(), "whole/fixed error of difference");
  }

  /** Trials without an error of their own: treatment by site is the error. */
  @Test
  void sitesOfOneBlockAreAnalysedByTheirMeans() {
    var all = new ArrayList<PlotFigure>();
    for (var each : SeriesData.barley(true)) {
      var plot = each.plot();
      all.add(
          new PlotFigure(
              SeriesData.plot(plot.site() + " " + plot.block(), "1", plot.name(), plot.treatment()),
              each.value()));
    }
    var result = SeveralTrials.withDefaults().evaluate(SeriesData.yields(all));
    agrees(result.random().treatments().f(), "places/random F");
    agrees(result.random().treatments().df2(), "places/random df");
    agrees(result.random().means().largestErrorOfDifference(), "places/random error of difference");
    assertThat(result.fixed()).isEmpty();
    assertThat(result.variances().notes().get(0)).contains("one block");
    assertThat(result.random().notes().get(0)).contains("residual itself");
    assertThat(result.presentation().toText()).doesNotContain("NaN");
  }

  /** Crossed sites and years by statsmodels, mixed.py. */
  @Test
  void crossedSitesAndYearsAgreeWithStatsmodels() {
    var python = SeriesData.computed("mixed.csv");
    var result = SeveralTrials.withDefaults().evaluate(SeriesData.yields(SeriesData.barley(false)));
    var random = result.random();
    var names =
        Map.of(
            "site", "site",
            "year", "year",
            "site and year", "place",
            "treatment by site", "vs",
            "treatment by year", "vy",
            "residual", "residual");
    assertThat(random.variances()).hasSize(names.size());
    names.forEach(
        (ours, theirs) ->
            assertThat(variance(random, ours))
                .as(ours)
                .isCloseTo(python.get("barley/" + theirs), withinPercentage(1)));
    for (var mean : random.means().means()) {
      assertThat(mean.mean())
          .isCloseTo(python.get("barley/mean " + mean.treatment()), offset(1e-6));
    }
  }

  private static double variance(SitesAsRandom random, String name) {
    return random.variances().stream()
        .filter(each -> each.name().equals(name))
        .mapToDouble(VarianceComponent::estimate)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void neitherOrderOfRowsNorNamesNorUnitsChangeAnything() {
    var whole = figures("unequal");
    var changed = new ArrayList<PlotFigure>();
    for (var each : whole.figures()) {
      var plot = each.plot();
      changed.add(
          new PlotFigure(
              SeriesData.plot(
                  "z" + plot.site().hashCode(),
                  plot.block() + "b",
                  plot.name(),
                  Integer.toString(plot.treatment().hashCode())),
              1000 * each.value() + 7));
    }
    Collections.shuffle(changed, new Random(4));
    var first = SeveralTrials.withDefaults().evaluate(whole);
    var second = SeveralTrials.withDefaults().evaluate(SeriesData.yields(changed));
    assertThat(second.random().treatments().f())
        .isCloseTo(first.random().treatments().f(), withinPercentage(1e-4));
    assertThat(second.interaction().orElseThrow().f())
        .isCloseTo(first.interaction().orElseThrow().f(), withinPercentage(1e-6));
    assertThat(second.variances().bartlett().orElseThrow())
        .isCloseTo(first.variances().bartlett().orElseThrow(), withinPercentage(1e-6));
    var trebi = first.random().means().of("Trebi");
    var same = second.random().means().of(Integer.toString("Trebi".hashCode()));
    assertThat(same.mean()).isCloseTo(1000 * trebi.mean() + 7, withinPercentage(1e-4));
    assertThat(same.standardError().orElseThrow())
        .isCloseTo(1000 * trebi.standardError().orElseThrow(), withinPercentage(1e-2));
  }

  @Test
  void aPageSaysWhatIsMissingAndWhichQuestionIsAnswered() {
    var result = SeveralTrials.withDefaults().evaluate(figures("unequal"));
    var text = result.presentation().toText();
    assertThat(result.notes()).contains("Trebi is missing at Duluth");
    assertThat(text)
        .contains("not tested")
        .contains("other sites")
        .contains("F = ")
        .doesNotContain("NaN");
    assertThat(result.meansBySite()).hasSize(57);
    assertThat(result.table().rows()).hasSize(10);
  }

  @Test
  void trialsWithoutSitesAreKnownByTheirNames() {
    var north = trial("North", 0);
    var south = trial("South", 3);
    var result = SeveralTrials.withDefaults().evaluate("aphids", north, south);
    assertThat(result.figures().environments()).containsExactly("North", "South");
    assertThat(result.random().notes().toString()).contains("2 sites");
    assertThatThrownBy(() -> SeveralTrials.withDefaults().evaluate("aphids", north, north))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("two trials of \"North\"");
  }

  private static FieldTrial trial(String name, int more) {
    var lines = new ArrayList<Assessment>();
    for (int block = 1; block <= 3; block++) {
      for (int t = 0; t < 3; t++) {
        var plot = TrialPlot.of(block + "" + t, "" + block, "t" + t);
        int count = 10 + 4 * t + (block * 7 + t * 5 + more * block) % 6;
        lines.add(Assessment.of(plot, SeriesData.START.plusDays(more), "aphids", count));
      }
    }
    return FieldTrial.of(name, List.of(TrialResponse.count("aphids")), lines);
  }

  @Test
  void whatCannotBeAnalysedIsRefused() {
    var all = SeriesData.barley(true);
    refuses(all.stream().filter(each -> each.plot().site().equals("Duluth")).toList(), "one site");
    refuses(
        all.stream().filter(each -> each.plot().treatment().equals("Trebi")).toList(),
        "one treatment");
    refuses(all.stream().map(each -> new PlotFigure(each.plot(), 5)).toList(), "all 120 plots");
    refuses(
        all.stream()
            .filter(
                each ->
                    each.plot().site().equals("Duluth")
                        == each.plot().treatment().compareTo("P") > 0)
            .toList(),
        "share no site");
    refuses(
        all.stream()
            .map(each -> new PlotFigure(each.plot().inMainPlot("m"), each.value()))
            .toList(),
        "main plot");
    var twice = new ArrayList<>(all);
    twice.add(all.get(0));
    refuses(twice, "twice");
  }

  private static void refuses(List<PlotFigure> figures, String words) {
    assertThatThrownBy(
            () ->
                SeveralTrials.withDefaults().evaluate(SeriesData.yields(new ArrayList<>(figures))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(words);
  }

  /** However many blocks a site has, it counts once. */
  @Test
  void meansOverFixedSitesAreMeansOfTheirMeans() {
    var figures = new ArrayList<>(SeriesData.barley(true));
    for (var each : SeriesData.barley(true)) {
      var plot = each.plot();
      if (plot.site().equals("Duluth")) {
        figures.add(
            new PlotFigure(
                SeriesData.plot("Duluth", plot.block() + "x", plot.name() + "x", plot.treatment()),
                each.value() + plot.name().length() % 3));
      }
    }
    var result = SeveralTrials.withDefaults().evaluate(SeriesData.yields(figures));
    for (var mean : result.fixed().orElseThrow().means().orElseThrow().means()) {
      double expected =
          result.meansBySite().stream()
              .filter(each -> each.treatment().equals(mean.treatment()))
              .mapToDouble(SiteMean::mean)
              .average()
              .orElseThrow();
      assertThat(mean.mean()).isCloseTo(expected, offset(1e-9));
    }
  }

  @Test
  void weightsNeedAnErrorAtEverySite() {
    var figures = new ArrayList<PlotFigure>();
    for (var each : SeriesData.barley(true)) {
      boolean duluth = each.plot().site().equals("Duluth");
      if (!duluth || each.plot().block().equals("1931")) {
        figures.add(each);
      }
    }
    var equal = SeveralTrials.withDefaults().evaluate(SeriesData.yields(figures));
    assertThat(equal.variances().notes())
        .containsExactly("Duluth has no error of its own: it has one block");
    assertThat(equal.presentation().toText()).doesNotContain("NaN");
    var weighted = SeveralTrials.withDefaults().with(SiteWeights.BY_ERROR_VARIANCE);
    assertThatThrownBy(() -> weighted.evaluate(SeriesData.yields(figures)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Duluth");
  }
}
