package agro.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plot tables as people write them, and what is taken from them. */
class PlotTableTest {

  private static final LocalDate JUNE = LocalDate.of(2026, 6, 3);

  private static final String PLANTS =
      """
      plot,block,treatment,date,plant,larvae,damaged,leaves,weather
      1,1,untreated,2026-06-03,1,4,3,10,dry
      1,1,untreated,2026-06-03,2,6,5,12,dry
      2,1,soap,2026-06-03,1,1,0,10,dry
      2,1,soap,2026-06-03,2,NA,2,9,dry
      3,2,soap,2026-06-03,1,2,1,11,dry
      3,2,soap,2026-06-03,2,,0,10,dry
      10,2,untreated,2026-06-03,1,8,7,10,dry
      10,2,untreated,2026-06-03,2,3,4,10,dry
      """;

  private static final PlotColumns COLUMNS =
      PlotColumns.ofCounts("larvae").withResponse(TrialResponse.countOutOf("damaged", "leaves"));

  @Test
  void plantsBecomeSubSamplesOfTheirPlot() {
    var trial = FieldTrial.parse("Osmere Vale", PLANTS, COLUMNS);

    var larvae = trial.variable("larvae").on(JUNE);

    assertThat(larvae.labels(TrialPlot::name)).containsExactly("1", "2", "3", "10");
    assertThat(larvae.means()).containsExactly(5, 1, 2, 5.5);
    assertThat(larvae.totals()).containsExactly(10, 1, 2, 11);
    assertThat(larvae.subSamples()).containsExactly(2, 1, 1, 2);
    assertThat(larvae.treatments()).containsExactly("untreated", "soap", "soap", "untreated");
    assertThat(larvae.levels("treatment")).isEqualTo(larvae.treatments());
    assertThat(larvae.blocks()).containsExactly("1", "1", "2", "2");
    assertThat(larvae.equalSubSamples()).isFalse();
    assertThat(trial.replicates()).containsEntry("soap", 2).containsEntry("untreated", 2);
    assertThat(trial.variable("damaged").on(JUNE).outOf()).containsExactly(22, 19, 21, 20);
    assertThat(trial.variable("damaged").on(JUNE).values().get(0).share()).isEqualTo(8 / 22.0);
  }

  @Test
  void theTrialShowsItself() {
    var page = FieldTrial.parse("Osmere Vale", PLANTS, COLUMNS).presentation();

    assertThat(page.toText())
        .contains(
            "randomised complete blocks", "damaged (count out of n)", "No value was corrected");
    assertThat(page.toHtml()).contains("weather").contains("untreated");
  }

  @Test
  void theReportNamesWhatWasAssumedLeftOutAndMissing() {
    var report = FieldTrial.parse("Osmere Vale", PLANTS, COLUMNS).report();

    assertThat(report.rowsRead()).isEqualTo(8);
    assertThat(report.entries(Deed.DROPPED)).hasSize(1);
    assertThat(report.entries(Deed.DROPPED).get(0).location().column()).isEqualTo("weather");
    assertThat(report.entries(Deed.ASSUMED))
        .anyMatch(entry -> entry.text().contains("usual names"))
        .anyMatch(entry -> entry.text().contains("\"NA\"") && entry.location().line() == 5);
    assertThat(report.entries(Deed.NOTED))
        .anyMatch(entry -> entry.text().contains("empty") && entry.location().line() == 7);
  }

  @Property(seed = "8", tries = 40)
  void theOrderOfLinesChangesNothing(@ForAll long seed) {
    var lines = new ArrayList<>(List.of(PLANTS.split("\n")));
    var heading = lines.remove(0);
    Collections.shuffle(lines, new Random(seed));
    var shuffled =
        FieldTrial.parse("t", heading + "\n" + String.join("\n", lines), COLUMNS)
            .variable("larvae")
            .on(JUNE);

    var plain = FieldTrial.parse("t", PLANTS, COLUMNS).variable("larvae").on(JUNE);

    assertThat(shuffled).isEqualTo(plain);
  }

  @Test
  void repeatedLinesWithoutPlantNumbersAreSubSamplesToo() {
    var trial =
        FieldTrial.parse(
            "t",
            """
            plot,block,treatment,larvae
            1,1,a,4
            1,1,a,4
            2,1,b,1
            2,1,b,3
            3,2,b,2
            3,2,b,5
            4,2,a,0
            4,2,a,7
            """,
            PlotColumns.ofCounts("larvae"));

    assertThat(trial.plots()).hasSize(4);
    assertThat(trial.variable("larvae").onTheOnlyDay().means()).containsExactly(4, 2, 3.5, 3.5);
    assertThat(trial.report().entries(Deed.ASSUMED))
        .anyMatch(
            entry -> entry.text().contains("sub-samples") && entry.text().contains("4 cases"));
    assertThat(trial.review().findings(TrialFinding.Kind.SUB_SAMPLES))
        .singleElement()
        .satisfies(finding -> assertThat(finding.text()).contains("no replicates"));
  }

  @Test
  void withoutPlotsATreatmentInABlockIsOnePlot() {
    var text = "block,treatment,larvae\n1,a,4\n1,a,6\n1,b,1\n2,a,3\n2,b,2\n2,b,2\n";

    var trial = FieldTrial.parse("t", text, PlotColumns.ofCounts("larvae"));

    assertThat(trial.plots()).hasSize(4);
    assertThat(trial.variable("larvae").onTheOnlyDay().means()).containsExactly(5, 1, 3, 2);
    assertThat(trial.report().toString()).contains("no replicates");
  }

  @Test
  void linesThatMayBePlotsOrPlantsAreRefusedUntilDeclared() {
    var text = "treatment,larvae\na,4\na,6\nb,1\nb,2\n";
    var columns = PlotColumns.ofCounts("larvae");

    assertThatThrownBy(() -> FieldTrial.parse("t", text, columns))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("plants are no replicates")
        .hasMessageContaining("withEachLineAPlot");
    var trial = FieldTrial.parse("t", text, columns.withEachLineAPlot());
    assertThat(trial.replicates()).containsEntry("a", 2).containsEntry("b", 2);
    assertThat(trial.review().design())
        .isEqualTo(new TrialDesign.CompletelyRandomised(List.of("treatment")));
  }

  @Test
  void eachLineAPlotIsRefusedOverSeveralDays() {
    var text = "treatment,date,larvae\na,2026-06-03,4\na,2026-06-10,6\n";

    assertThatThrownBy(
            () -> FieldTrial.parse("t", text, PlotColumns.ofCounts("larvae").withEachLineAPlot()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("two replicates");
  }

  @Test
  void plotsNumberedAnewInEachBlockAreToldApartByBlock() {
    var text = "block,plot,treatment,larvae\nA,1,x,4\nA,2,y,6\nB,1,y,1\nB,2,x,3\n";

    var trial = FieldTrial.parse("t", text, PlotColumns.ofCounts("larvae"));

    assertThat(trial.plots().stream().map(TrialPlot::name))
        .containsExactly("A/1", "A/2", "B/1", "B/2");
    assertThat(trial.review().isSound()).isTrue();
  }

  @Test
  void daysMayBeHeadings() {
    var text =
        """
            plot,block,treatment,larvae 2026-06-03,larvae 2026-06-10
            1,1,a,4,2
            2,1,b,6,
            3,2,b,1,0
            4,2,a,5,5
            """;

    var variable =
        FieldTrial.parse("t", text, PlotColumns.ofCounts("larvae").withDatesAsHeadings())
            .variable("larvae");

    assertThat(variable.dates()).containsExactly(JUNE, LocalDate.of(2026, 6, 10));
    assertThat(variable.on(JUNE).means()).containsExactly(4, 6, 1, 5);
    assertThat(variable.on(LocalDate.of(2026, 6, 10)).missing())
        .singleElement()
        .satisfies(plot -> assertThat(plot.name()).isEqualTo("2"));
    assertThat(variable.onEachDay()).hasSize(2);
    assertThatThrownBy(variable::onTheOnlyDay)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no replicates");
  }

  @Test
  void filesWithSemicolonsCommasAndOtherDatesAreRead(@TempDir Path folder) throws IOException {
    var file = folder.resolve("vale.csv");
    Files.writeString(
        file,
        "Parzelle;Wdh;Variante;Datum;Ertrag;n\n1;1;Öl;3.6.2026;4,5;1\n2;1;ohne;3.6.2026;3,25;1\n");
    var columns =
        PlotColumns.withDefaults()
            .withColumn(PlotColumns.Role.PLOT, "Parzelle")
            .withColumn(PlotColumns.Role.BLOCK, "Wdh")
            .withColumn(PlotColumns.Role.DATE, "Datum")
            .withFactor("Variante")
            .withDatePattern("d.M.uuuu")
            .withResponse(TrialResponse.measure("Ertrag", "kg"))
            .withFormat(DelimitedFormat.SEMICOLON);

    var trial = FieldTrial.read(file, columns);

    assertThat(trial.name()).isEqualTo("vale");
    assertThat(trial.variable("Ertrag").on(JUNE).means()).containsExactly(4.5, 3.25);
    assertThat(trial.factors()).containsExactly("Variante");
  }

  @Test
  void sitesAndYearsHaveTheirOwnPlots() {
    var text =
        """
            site,year,plot,block,treatment,larvae
            hill,2025,1,1,a,1
            hill,2025,2,1,b,2
            hill,2026,1,1,b,3
            hill,2026,2,1,a,4
            moor,2026,1,1,a,5
            moor,2026,2,1,b,6
            """;

    var trial = FieldTrial.parse("t", text, PlotColumns.ofCounts("larvae"));

    assertThat(trial.plots()).hasSize(6);
    assertThat(trial.environments()).containsExactly("hill 2025", "hill 2026", "moor 2026");
    var values = trial.variable("larvae").onTheOnlyDay();
    assertThat(values.where(plot -> plot.site().equals("hill")).means())
        .containsExactly(1, 2, 3, 4);
    assertThat(values.environments()).contains("moor 2026");
  }

  @Test
  void unknownNamesAreRefusedWithThoseThatExist() {
    var trial = FieldTrial.parse("Osmere Vale", PLANTS, COLUMNS);

    assertThatThrownBy(() -> trial.variable("larva"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("\"larvae\"");
    assertThatThrownBy(() -> trial.variable("larvae").on(JUNE.plusDays(1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2026-06-03");
    assertThatThrownBy(() -> trial.withControls("water"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("untreated");
    assertThatThrownBy(() -> FieldTrial.parse("t", PLANTS, PlotColumns.withDefaults()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("declared variables");
    assertThatThrownBy(() -> FieldTrial.parse("t", "plot,larvae\n1,2\n", COLUMNS))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("treatment");
  }
}
