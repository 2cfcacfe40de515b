package agro.trial.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class EfficacyEvaluationTest {

  private static final double[] TB = {31, 52, 18, 40, 27};
  private static final double[] TA = {4, 9, 1, 5, 6};
  private static final double[] CB = {29, 60, 22, 35, 30};
  private static final double[] CA = {33, 71, 19, 48, 36};

  static List<PlotCounts> plots(boolean blocks) {
    var plots = new ArrayList<PlotCounts>();
    for (int i = 0; i < TB.length; i++) {
      var block = blocks ? "" + (i + 1) : "";
      plots.add(PlotCounts.of(block, "A", TB[i], TA[i]).named("A" + i));
      plots.add(PlotCounts.of(block, "control", CB[i], CA[i]).named("C" + i));
    }
    return plots;
  }

  private static TreatmentEfficacy evaluate(EfficacyFormula formula, List<PlotCounts> plots) {
    return EfficacyEvaluation.withDefaults()
        .with(formula)
        .evaluate(EfficacyData.ofCounts("control", plots))
        .treatment("A");
  }

  /** By base R; blocks.csv, blocks.R. */
  @Test
  void agreesWithR() {
    for (var row : ReferenceTable.read(EfficacyEvaluationTest.class, "blocks.csv")) {
      var name = row.getField("case");
      var formula =
          name.startsWith("abbott") ? EfficacyFormula.ABBOTT : EfficacyFormula.HENDERSON_TILTON;
      var efficacy = evaluate(formula, plots(!name.endsWith("without blocks")));
      boolean mean = name.endsWith("mean");
      var estimate = mean ? efficacy.meanOfBlocks() : efficacy.pooled();
      var limits =
          estimate
              .limits(mean ? EfficacyInterval.STUDENT_T : EfficacyInterval.DELTA)
              .flatMap(EfficacyLimits::limits)
              .orElseThrow();
      assertThat(estimate.percent().orElseThrow())
          .as(name)
          .isCloseTo(ReferenceTable.number(row, "percent"), withinPercentage(1e-7));
      assertThat(estimate.standardError().orElseThrow())
          .isCloseTo(ReferenceTable.number(row, "standard_error"), withinPercentage(1e-7));
      assertThat(limits.low()).isCloseTo(ReferenceTable.number(row, "low"), withinPercentage(1e-7));
      assertThat(limits.high())
          .isCloseTo(ReferenceTable.number(row, "high"), withinPercentage(1e-7));
    }
  }

  @Property(seed = "8", tries = 20)
  void neitherRowsNorNamesMatter(@ForAll long seed) {
    var settings =
        EfficacyEvaluation.withDefaults().with(EfficacyFormula.HENDERSON_TILTON).withRefits(100, 5);
    var first = settings.evaluate(EfficacyData.ofCounts("control", plots(true))).treatment("A");
    var renamed = new ArrayList<PlotCounts>();
    for (var plot : plots(true)) {
      var block = "b" + (char) ('z' - plot.block().charAt(0) + '0');
      var treatment = plot.treatment().equals("A") ? "zz" : "a check";
      renamed.add(new PlotCounts(plot.plot(), block, treatment, plot.before(), plot.after(), 1, 1));
    }
    Collections.shuffle(renamed, new Random(seed));
    var second = settings.evaluate(EfficacyData.ofCounts("a check", renamed)).treatment("zz");
    assertThat(second.pooled()).isEqualTo(first.pooled());
    assertThat(second.meanOfBlocks()).isEqualTo(first.meanOfBlocks());
  }

  @Test
  void bootstrapStaysWithinTheBlocksAndAgreesRoughlyWithTheDelta() {
    var pooled = evaluate(EfficacyFormula.HENDERSON_TILTON, plots(true)).pooled();
    for (var method :
        List.of(EfficacyInterval.BOOTSTRAP_PERCENTILE, EfficacyInterval.BOOTSTRAP_BCA)) {
      var limits = pooled.limits(method).flatMap(EfficacyLimits::limits).orElseThrow();
      assertThat(limits.low()).isBetween(80.0, 86.5);
      assertThat(limits.high()).isBetween(88.0, 95.3);
    }
    assertThat(pooled.limits(EfficacyInterval.BOOTSTRAP_BCA).orElseThrow().reason())
        .contains("too narrow with 5 blocks");
  }

  @Test
  void nothingLeftOfTheTreatedIsHundredWithAnHonestLimit() {
    var plots = new ArrayList<PlotCounts>();
    for (var block : List.of("1", "2", "3", "4")) {
      plots.add(PlotCounts.of(block, "A", 25, 0));
      plots.add(PlotCounts.of(block, "control", 25, 30));
    }
    for (var formula : List.of(EfficacyFormula.ABBOTT, EfficacyFormula.HENDERSON_TILTON)) {
      var pooled = evaluate(formula, plots).pooled();
      assertThat(pooled.percent()).hasValue(100);
      assertThat(pooled.limits(EfficacyInterval.DELTA).orElseThrow().printed())
          .contains("none", "logarithm");
      assertThat(pooled.limits(EfficacyInterval.BOOTSTRAP_BCA).orElseThrow().limits()).isEmpty();
      var printed = pooled.limitsToPrint().orElseThrow();
      assertThat(printed.method()).isEqualTo(EfficacyInterval.INDIVIDUALS);
      assertThat(printed.limits().orElseThrow().low()).isBetween(90.0, 99.9);
      assertThat(printed.limits().orElseThrow().high()).isEqualTo(100);
    }
  }

  @Test
  void blocksWithoutValuesAreSaidAndThePooledOneIsPrinted() {
    var plots = new ArrayList<>(plots(true));
    plots.add(PlotCounts.of("6", "A", 10, 3));
    plots.add(PlotCounts.of("6", "control", 9, 0));
    var result =
        EfficacyEvaluation.withDefaults()
            .with(EfficacyFormula.HENDERSON_TILTON)
            .evaluate(EfficacyData.ofCounts("control", plots));
    var one = result.treatment("A");
    assertThat(one.meanOfBlocks().percent()).isEmpty();
    assertThat(one.pooled().percent()).isPresent();
    assertThat(one.toPrint()).isEqualTo(EfficacyEstimate.Summary.POOLED);
    var text = result.presentation().toText();
    assertThat(text).contains("no live pest on the control after", "pooled").doesNotContain("NaN");
    assertThat(result.blockTable().toText()).contains("not known").doesNotContain("NaN");
  }

  @Test
  void severalControlPlotsOfABlockArePooledAndMissingBlocksSaid() {
    var plots =
        List.of(
            PlotCounts.after("1", "A", 10),
            PlotCounts.after("1", "control", 30),
            PlotCounts.after("1", "control", 50).named("1 control again"),
            PlotCounts.after("2", "A", 10),
            PlotCounts.after("2", "control", 40),
            PlotCounts.after("3", "A", 12));
    var one = evaluate(EfficacyFormula.ABBOTT, plots);
    assertThat(one.blocks().get(0).percent().orElseThrow()).isCloseTo(75, offset(1e-9));
    assertThat(one.notes()).anyMatch(note -> note.contains("block 3 has no counts of control"));
    assertThat(one.plots()).hasSize(2);
  }

  @Test
  void mortalityGoesByTheSameRoad() {
    var plots =
        List.of(
            PlotMortality.of("1", "A", 40, 50),
            PlotMortality.of("1", "control", 6, 40),
            PlotMortality.of("2", "A", 45, 50),
            PlotMortality.of("2", "control", 3, 40));
    var result =
        EfficacyEvaluation.withDefaults().evaluate(EfficacyData.ofMortality("control", plots));
    assertThat(result.formula()).isEqualTo(EfficacyFormula.SCHNEIDER_ORELLI);
    var one = result.treatment("A");
    assertThat(one.blocks().get(0).percent().orElseThrow()).isCloseTo(76.4705882353, offset(1e-9));
    assertThat(one.pooled().percent().orElseThrow())
        .isCloseTo(100 * (1 - 15.0 / 100 / (71.0 / 80)), offset(1e-9));
    assertThatThrownBy(
            () ->
                EfficacyEvaluation.withDefaults()
                    .with(EfficacyFormula.HENDERSON_TILTON)
                    .evaluate(EfficacyData.ofMortality("control", plots)))
        .isInstanceOf(InputProblem.class);
  }

  /** The standard error as in limits.csv, by the delta method. */
  @Test
  void mortalityInOneBlockHasTheErrorOfSingleAnimals() {
    var plots = List.of(PlotMortality.of("", "A", 40, 50), PlotMortality.of("", "control", 6, 40));
    var result =
        EfficacyEvaluation.withDefaults().evaluate(EfficacyData.ofMortality("control", plots));
    var pooled = result.treatment("A").pooled();
    assertThat(pooled.standardError().orElseThrow()).isCloseTo(6.83616537, offset(1e-8));
    var limits = pooled.limitsToPrint().orElseThrow();
    assertThat(limits.method()).isEqualTo(EfficacyInterval.INDIVIDUALS);
    assertThat(limits.limits().orElseThrow().low()).isCloseTo(60.20342912, offset(1e-4));
    var all = List.of(PlotMortality.of("", "A", 50, 50), PlotMortality.of("", "control", 40, 40));
    var dead = EfficacyEvaluation.withDefaults().evaluate(EfficacyData.ofMortality("control", all));
    assertThat(dead.treatment("A").pooled().percent()).isEmpty();
    assertThat(dead.presentation().toText())
        .contains("a control mortality of 100 %")
        .doesNotContain("NaN");
  }

  @Test
  void oneBlockWithOnePlotHasNoScatter() {
    var plots = List.of(PlotCounts.after("", "A", 1.5), PlotCounts.after("", "control", 12.5));
    var pooled = evaluate(EfficacyFormula.ABBOTT, plots).pooled();
    assertThat(pooled.percent().orElseThrow()).isCloseTo(88, offset(1e-9));
    assertThat(pooled.limitsToPrint()).isEmpty();
    assertThat(pooled.limits()).allMatch(limits -> limits.limits().isEmpty());
  }

  @Test
  void badDataAreRefused() {
    assertThatThrownBy(() -> EfficacyData.ofCounts("check", plots(true)))
        .hasMessageContaining("no plot of the control \"check\"");
    var twice =
        List.of(
            PlotCounts.after("1", "A", 1),
            PlotCounts.after("1", "A", 2),
            PlotCounts.after("1", "control", 2));
    assertThatThrownBy(() -> EfficacyData.ofCounts("control", twice)).hasMessageContaining("twice");
    assertThatThrownBy(() -> EfficacyEvaluation.withDefaults().withLevel(95))
        .isInstanceOf(InputProblem.class);
  }
}
