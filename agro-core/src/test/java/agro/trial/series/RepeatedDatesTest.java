package agro.trial.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.trial.Assessment;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RepeatedDatesTest {

  private static final Map<String, Double> BY_R = SeriesData.computed("dates.csv");

  /** Data sets of base R, repeated.csv; times are taken as days. */
  private static List<DatedFigure> data(String name) {
    var figures = new ArrayList<DatedFigure>();
    var set = name.startsWith("co2") ? "co2" : "chicks";
    for (var row : ReferenceTable.read(RepeatedDatesTest.class, "repeated.csv")) {
      if (row.getField("set").equals(set)) {
        boolean blocks = name.equals("co2 in blocks");
        var treatment = row.getField("treatment");
        var parts = treatment.split("[.]", -1);
        var plot =
            TrialPlot.of(
                row.getField("subject"), blocks ? parts[0] : "", blocks ? parts[1] : treatment);
        figures.add(
            new DatedFigure(
                plot,
                SeriesData.START.plusDays(ReferenceTable.whole(row, "time")),
                ReferenceTable.number(row, "value")));
      }
    }
    return figures;
  }

  private static DatedFigures figures(List<DatedFigure> list) {
    return new DatedFigures("size", "g", list, List.of());
  }

  private static void agrees(double value, String name, double percent) {
    assertThat(value).as(name).isCloseTo(BY_R.get(name), withinPercentage(percent));
  }

  /** CO2 and ChickWeight by base R, dates.R; chicks that lack a day are left out. */
  @ParameterizedTest
  @ValueSource(strings = {"co2", "co2 in blocks", "chicks"})
  void splitPlotInTimeAgreesWithR(String name) {
    var split = SplitPlotInTime.of(figures(data(name)));
    agrees(split.treatment().orElseThrow().f(), name + "/treatment F", 1e-6);
    agrees(split.date().orElseThrow().f(), name + "/date F", 1e-6);
    var product = split.product().orElseThrow();
    agrees(product.f(), name + "/product F", 1e-6);
    agrees(product.df1(), name + "/product df", 1e-6);
    agrees(product.df2(), name + "/within df", 1e-6);
    agrees(split.sphericity().greenhouseGeisser(), name + "/gg", 1e-6);
    agrees(split.sphericity().huynhFeldt().orElseThrow(), name + "/hf", 1e-6);
    agrees(split.cautiousChanceOfProduct().orElseThrow(), name + "/gg chance", 1e-5);
    agrees(split.huynhFeldtChanceOfProduct().orElseThrow(), name + "/hf chance", 1e-5);
    agrees(split.sphericity().mauchly().orElseThrow(), name + "/mauchly", 1e-5);
    agrees(split.sphericity().mauchlyChance().orElseThrow(), name + "/mauchly chance", 1e-3);
    assertThat(split.leftOut()).hasSize(name.equals("chicks") ? 4 : 0);
  }

  /** With complete data, equal correlation is the split plot in time. */
  @ParameterizedTest
  @ValueSource(strings = {"co2", "co2 in blocks"})
  void equalCorrelationIsTheSplitPlotInTime(String name) {
    var course =
        RepeatedDates.withDefaults().with(DateCorrelation.EQUAL).evaluate(figures(data(name)));
    agrees(course.treatment().f(), name + "/treatment F", 1e-3);
    agrees(course.date().f(), name + "/date F", 1e-3);
    agrees(course.treatmentByDate().f(), name + "/product F", 1e-3);
    agrees(course.treatmentByDate().df2(), name + "/within df", 1e-3);
  }

  /** ChickWeight with chicks that lack days, by statsmodels, mixed.py. */
  @Test
  void missingDatesAreTakenByTheModel() {
    var python = SeriesData.computed("mixed.csv");
    var course =
        RepeatedDates.withDefaults().with(DateCorrelation.EQUAL).evaluate(figures(data("chicks")));
    assertThat(course.variances().get(0).estimate())
        .isCloseTo(python.get("chicks/plot"), withinPercentage(1e-2));
    assertThat(course.variances().get(1).estimate())
        .isCloseTo(python.get("chicks/residual"), withinPercentage(1e-2));
    assertThat(course.treatmentByDate().f())
        .isCloseTo(python.get("chicks/product F"), withinPercentage(5e-2));
    assertThat(course.presentation().toText()).contains("Left out").doesNotContain("NaN");
  }

  @Test
  void growthIsLikelierUnderAFallingCorrelation() {
    var course = RepeatedDates.withDefaults().evaluate(figures(data("chicks")));
    assertThat(course.correlation()).isEqualTo(DateCorrelation.FALLING);
    assertThat(course.advantageOfFalling()).isPositive();
    assertThat(course.correlationOfShortest().orElseThrow()).isBetween(0.5, 1.0);
    assertThat(course.evenlySpaced()).isTrue();
    assertThat(course.meansByDate()).hasSize(6);
    assertThat(course.on(SeriesData.START).means()).hasSize(4);
  }

  @Test
  void unevenDatesAreTold() {
    var course = RepeatedDates.withDefaults().evaluate(figures(data("co2")));
    assertThat(course.evenlySpaced()).isFalse();
    assertThat(course.advice().toString()).contains("spaced unevenly");
  }

  @Test
  void orderNamesAndUnitsChangeNothing() {
    var first = RepeatedDates.withDefaults().evaluate(figures(data("co2")));
    var changed = new ArrayList<DatedFigure>();
    var names = new HashMap<String, String>();
    for (var each : data("co2")) {
      var treatment = each.plot().treatment();
      var other = names.computeIfAbsent(treatment, key -> "x" + (9 - names.size()));
      var plot = TrialPlot.of("p" + each.plot().name().hashCode(), "", other);
      changed.add(new DatedFigure(plot, each.date().plusDays(30), 1000 * each.value()));
    }
    Collections.shuffle(changed, new Random(8));
    var second = RepeatedDates.withDefaults().evaluate(figures(changed));
    for (int i = 0; i < 3; i++) {
      assertThat(second.tests().get(i).f())
          .isCloseTo(first.tests().get(i).f(), withinPercentage(1e-3));
    }
    assertThat(second.splitPlot().orElseThrow().sphericity().greenhouseGeisser())
        .isCloseTo(first.splitPlot().orElseThrow().sphericity().greenhouseGeisser(), offset(1e-9));
  }

  private static FieldTrial trial() {
    var lines = new ArrayList<Assessment>();
    var random = new Random(11);
    int[] days = {0, 7, 21};
    for (int block = 1; block <= 4; block++) {
      for (int t = 0; t < 3; t++) {
        for (int d = 0; d < days.length; d++) {
          var plot = TrialPlot.of(block + "-" + t, "" + block, "t" + t);
          double value = 4 + t * d * 3 + block + random.nextInt(6);
          lines.add(Assessment.of(plot, SeriesData.START.plusDays(days[d]), "aphids", value));
        }
      }
    }
    return FieldTrial.of("Osmere Vale", List.of(TrialResponse.count("aphids")), lines);
  }

  @Test
  void summariesComeFirstAndArePlainAnalysesOfPlots() {
    var unit = SamplingUnit.of(SamplingUnit.Kind.PLANT);
    var course =
        RepeatedDates.withDefaults()
            .with(
                DateSummary.mean(),
                DateSummary.area(unit),
                DateSummary.lastDate(),
                DateSummary.highest(),
                DateSummary.meanOverTime(unit),
                DateSummary.timeAbove(6))
            .evaluate(trial(), "aphids");
    assertThat(course.summaries()).hasSize(6);
    assertThat(course.summaries().get(1).treatments().df2()).isEqualTo(6);
    var area = course.summaries().get(1).figures().values();
    var mean = course.summaries().get(4).figures().values();
    for (int i = 0; i < area.length; i++) {
      assertThat(area[i]).isCloseTo(21 * mean[i], offset(1e-9));
    }
    var text = course.presentation().toText();
    assertThat(text.indexOf("mean of the dates")).isLessThan(text.indexOf("Repeated dates"));
    assertThat(text).doesNotContain("NaN");
  }

  /** The default data show no correlation within plots; dates do not become plots for that. */
  @Test
  void treatmentsHaveNoMoreDegreesOfFreedomThanPlotsGive() {
    for (var correlation : DateCorrelation.values()) {
      var course = RepeatedDates.withDefaults().with(correlation).evaluate(trial(), "aphids");
      assertThat(course.treatment().df2()).as(correlation.words()).isLessThanOrEqualTo(6);
    }
  }

  @Test
  void scatterThatGrowsIsSaid() {
    var course = RepeatedDates.withDefaults().evaluate(figures(data("chicks")));
    assertThat(course.spread()).hasSize(6);
    assertThat(course.advice().toString()).contains("scatter unlike");
    double first = course.on(SeriesData.START).largestErrorOfDifference();
    double last = course.on(SeriesData.START.plusDays(20)).largestErrorOfDifference();
    assertThat(last).isGreaterThan(20 * first);
    var pooled =
        RepeatedDates.withDefaults()
            .with(DateErrors.POOLED)
            .evaluate(figures(data("chicks")).transformed("log of x", Math::log));
    assertThat(pooled.on(SeriesData.START).largestErrorOfDifference())
        .isCloseTo(
            pooled.on(SeriesData.START.plusDays(4)).largestErrorOfDifference(), offset(0.02));
  }

  /** A day without any animal has no letters, and the other days keep theirs. */
  @Test
  void aDayOfZerosIsNoObstacle() {
    var lines = new ArrayList<Assessment>();
    for (var each : trial().assessments()) {
      boolean first = each.date().orElseThrow().equals(SeriesData.START);
      lines.add(first ? each.withValue(OptionalDouble.of(0)) : each);
    }
    var trial = FieldTrial.of("x", List.of(TrialResponse.count("aphids")), lines);
    var course = RepeatedDates.withDefaults().evaluate(trial, "aphids");
    assertThat(course.meansByDate()).hasSize(2);
    assertThat(course.notes().toString()).contains("No comparison of means on 2026-05-01");
    assertThat(course.presentation().toText()).doesNotContain("NaN");
  }

  @Test
  void timeAboveALevelIsReadOffStraightLines() {
    assertThat(DateSummary.shareAbove(-1, 3)).isEqualTo(0.75);
    assertThat(DateSummary.shareAbove(3, -1)).isEqualTo(0.75);
    assertThat(DateSummary.shareAbove(-1, 0)).isZero();
    assertThat(DateSummary.shareAbove(2, 0)).isEqualTo(1);
  }

  @Test
  void plotsThatLackADateAreNamed() {
    var lines = new ArrayList<>(trial().assessments());
    lines.set(1, lines.get(1).withValue(OptionalDouble.empty()));
    var trial = FieldTrial.of("x", List.of(TrialResponse.count("aphids")), lines);
    var mean = DateSummary.mean().of(trial, "aphids");
    assertThat(mean.figures()).hasSize(11);
    assertThat(mean.notes()).containsExactly("plot 1-0 is left out: no value on 2026-05-08");
    assertThat(DateSummary.lastDate().of(trial, "aphids").figures()).hasSize(12);
    assertThatThrownBy(() -> DateSummary.onlyDate().of(trial, "aphids"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("3 dates");
  }

  @Test
  void datesAreNoReplicates() {
    var one = data("co2");
    one.removeIf(each -> !each.plot().name().endsWith("1"));
    assertThatThrownBy(() -> RepeatedDates.withDefaults().evaluate(figures(one)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no replicates");
    var day = data("co2");
    day.removeIf(each -> !each.date().equals(SeriesData.START.plusDays(95)));
    assertThatThrownBy(() -> figures(day))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("1 date");
    var equal = new ArrayList<DatedFigure>();
    data("co2").forEach(each -> equal.add(new DatedFigure(each.plot(), each.date(), 3)));
    assertThatThrownBy(() -> RepeatedDates.withDefaults().evaluate(figures(equal)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("values equal to 3");
  }
}
