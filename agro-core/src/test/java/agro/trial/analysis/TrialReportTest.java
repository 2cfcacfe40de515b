package agro.trial.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialDesign;
import agro.trial.TrialResponse;
import agro.trial.load.PestLoad;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Several days and the report of a whole trial. Invented values. */
class TrialReportTest {

  private static final LocalDate TREATED = LocalDate.of(2026, 6, 2);

  private static FieldTrial blocks() {
    int[][] first = {{40, 38, 44}, {35, 39, 36}, {50, 47, 52}, {42, 45, 40}};
    int[][] second = {{55, 20, 9}, {48, 24, 6}, {61, 28, 12}, {57, 22, 8}};
    int[][] third = {{70, 45, 12}, {66, 40, 15}, {82, 52, 20}, {75, 48, 13}};
    var text = new StringBuilder("plot,block,treatment,date,larvae\n");
    String[] names = {"untreated", "soap <old>", "oil"};
    String[] days = {"2026-06-01", "2026-06-08", "2026-06-15"};
    for (int block = 0; block < 4; block++) {
      for (int t = 0; t < 3; t++) {
        int[] values = {first[block][t], second[block][t], third[block][t]};
        for (int day = 0; day < 3; day++) {
          text.append(3 * block + t + 1).append(',').append(block + 1).append(',');
          text.append(names[t]).append(',').append(days[day]).append(',').append(values[day]);
          text.append('\n');
        }
      }
    }
    return FieldTrial.parse("Osmere", text.toString(), PlotColumns.ofCounts("larvae"))
        .withControls("untreated");
  }

  @Test
  void severalDaysNeedADayOrTheCourse() {
    var analysis = TrialAnalysis.of(blocks(), "larvae");

    assertThatThrownBy(analysis::evaluate)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("repeated looks");
    var course = analysis.with(Transformation.squareRoot()).onEachDay();

    assertThat(course.days()).hasSize(3);
    assertThat(course.table().columns()).hasSize(4);
    assertThat(course.table().toText()).contains("soap <old>").contains(" a").contains(" c");
    assertThat(course.testTable().toText()).contains("2026-06-08").contains("df = 2, 6");
    assertThat(course.presentation().toHtml()).contains("soap &lt;old&gt;");
    var one = analysis.on(LocalDate.of(2026, 6, 8)).evaluate();
    assertThat(one.subject().title()).isEqualTo("larvae, 2026-06-08");
    assertThat(one.precision().hasFewDegreesOfFreedom()).isTrue();
    assertThat(one.presentation().toText()).contains("fewer than the 12");
  }

  @Test
  void onePageHoldsTheWholeTrial() {
    var report =
        TrialReport.of(TrialAnalysis.of(blocks(), "larvae").against("untreated"))
            .treatedOn(TREATED)
            .with(PestLoad.withDefaults(SamplingUnit.of(SamplingUnit.Kind.PLANT)));

    var text = report.presentation().toText();

    assertThat(text)
        .contains("Review of Osmere")
        .contains("No value was corrected")
        .contains("Efficacy over time")
        .contains("Dunnett's comparisons with a control")
        .contains("over the days of assessment")
        .doesNotContain("NaN");
    assertThat(report.efficacy().orElseThrow().dates()).hasSize(2);
    assertThat(report.load().orElseThrow().meansByTreatment()).hasSize(3);
    assertThat(report.sentences()).hasSize(3).allMatch(line -> line.contains("df = 2, 6"));
    assertThat(report.presentation().toHtml()).doesNotContain("<old>");
  }

  @Test
  void aReportOfOneDayHasNoCourse() {
    var report = TrialReport.of(TrialAnalysis.of(blocks(), "larvae").on(LocalDate.of(2026, 6, 15)));

    assertThat(report.presentation().toText()).doesNotContain("over the days of assessment");
    assertThat(report.sentences()).hasSize(1);
  }

  /** Binomial means are pooled shares, and quasi-binomial limits are wider by the dispersion. */
  @Test
  void sharesByTheBinomialRoute() {
    var trial =
        FieldTrial.parse(
            "t",
            """
            plot,block,treatment,dead,of
            1,1,a,4,20
            2,1,b,15,25
            3,2,a,9,20
            4,2,b,22,25
            5,3,a,3,20
            6,3,b,13,25
            """,
            PlotColumns.withDefaults().withResponse(TrialResponse.countOutOf("dead", "of")));
    var analysis =
        TrialAnalysis.of(trial, "dead")
            .with(new TrialDesign.CompletelyRandomised(List.of("treatment")));

    var binomial = analysis.with(AnalysisRoute.BINOMIAL).evaluate();
    var quasi = analysis.with(AnalysisRoute.QUASI_BINOMIAL).evaluate();

    var mean = binomial.treatmentMeans().mean("a");
    assertThat(mean.mean().getAsDouble()).isCloseTo(100 * 16 / 60.0, within(1e-8));
    assertThat(quasi.treatmentMeans().mean("a").limits().orElseThrow().width())
        .isGreaterThan(mean.limits().orElseThrow().width());
    assertThat(binomial.meansTable().toText()).contains("(%)");
    assertThat(binomial.plots().get(0).fitted().getAsDouble())
        .isCloseTo(100 * 16 / 60.0, within(1e-8));
    assertThat(binomial.treatmentMeans().pair("a", "b").ratio().getAsDouble())
        .isCloseTo(50 / 25.0 / (16 / 44.0), within(1e-7));
  }

  @Test
  void aLatinSquareTakesRowsAndColumnsOut() {
    String[] square = {"abcd", "bcda", "cdab", "dabc"};
    var text = new StringBuilder("plot,row,column,treatment,yield\n");
    var values = new ArrayList<Double>();
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 4; column++) {
        char treatment = square[row].charAt(column);
        double value = 20 + 5 * row + 2 * column + 3 * (treatment - 'a') + (row * column) % 3;
        values.add(value);
        text.append(4 * row + column + 1).append(',').append(row + 1).append(',');
        text.append(column + 1).append(',').append(treatment).append(',').append(value);
        text.append('\n');
      }
    }
    var trial =
        FieldTrial.parse(
            "t",
            text.toString(),
            PlotColumns.withDefaults().withResponse(TrialResponse.measure("yield", "kg")));

    var found = TrialAnalysis.of(trial, "yield").evaluate();

    assertThat(found.subject().design()).isInstanceOf(TrialDesign.LatinSquare.class);
    assertThat(found.effect("residual").degreesOfFreedom()).isEqualTo(6);
    assertThat(found.precision().blocking()).containsOnlyKeys("row", "column");
    assertThat(found.treatmentMeans().mean("a").mean().getAsDouble())
        .isCloseTo(
            (values.get(0) + values.get(7) + values.get(10) + values.get(13)) / 4, within(1e-9));
  }
}
