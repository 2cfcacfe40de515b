package agro.trial.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialPlot;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.working.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The map, the sheet for the field and the key: what they show, and what they hide. */
class FieldPagesTest {

  private static final TreatmentFactor FACTOR =
      TreatmentFactor.treatments("untreated", "soap <2 %>", "neem oil", "kaolin");

  private static TrialPlan plan() {
    var ground =
        TrialGround.of(Length.of(3, LengthUnit.METRE), Length.of(8, LengthUnit.METRE))
            .withPaths(Length.of(0.5, LengthUnit.METRE), Length.of(2, LengthUnit.METRE))
            .onSlope(CompassPoint.SOUTH_WEST)
            .withNote("Hedge along the right edge");
    return TrialPlan.completeBlocks("Osmere Vale", 4, FACTOR)
        .withControls("untreated")
        .onGround(ground);
  }

  private static List<String> words(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Sheet.Words.class::isInstance)
        .map(mark -> ((Sheet.Words) mark).text())
        .toList();
  }

  @Test
  void theMapShowsPlotsTreatmentsBlocksSizesSlopeAndSeed() {
    var layout = plan().draw(11);

    var words = words(layout.fieldMap());

    for (var plot : layout.plots()) {
      assertThat(words).contains(plot.name());
    }
    assertThat(words).contains("Block 1", "Block 4", "N", "3 m", "8 m", "path 2 m", "13.5 m");
    assertThat(words).contains("38 m in all").filteredOn("untreated"::equals).hasSize(4);
    assertThat(String.join(" ", words))
        .contains("Seed 11", "randomised complete blocks", "falls to the south-west", "Hedge")
        .contains("blocks lie across it", "Grey: untreated");
    assertThat(layout.fieldMap().toSvg()).contains("soap").doesNotContain("<2");
  }

  @Property(seed = "8", tries = 40)
  void nothingLiesOutsideThePaperWhateverTheSize(
      @ForAll @IntRange(min = 2, max = 24) int treatments,
      @ForAll @IntRange(min = 2, max = 8) int blocks,
      @ForAll @IntRange(min = 1, max = 30) int width,
      @ForAll @IntRange(min = 1, max = 30) int length) {
    var levels = new ArrayList<String>();
    for (int i = 0; i < treatments; i++) {
      levels.add("a treatment with a long name, number " + i);
    }
    var layout =
        TrialPlan.completeBlocks("t", blocks, new TreatmentFactor("treatment", levels))
            .onGround(
                TrialGround.of(
                    Length.of(width, LengthUnit.METRE), Length.of(length, LengthUnit.METRE)))
            .draw(1);
    var sheets = new ArrayList<>(layout.fieldSheet(3, "larvae", "mines").pages());
    sheets.add(layout.fieldMap());
    sheets.addAll(layout.keyPages());

    for (var sheet : sheets) {
      for (var mark : sheet.marks()) {
        places(mark).forEach(place -> assertInside(place, sheet));
      }
    }
  }

  private static List<Sheet.Place> places(Sheet.Mark mark) {
    if (mark instanceof Sheet.Line line) {
      return List.of(line.from(), line.to());
    }
    if (mark instanceof Sheet.Box box) {
      var far =
          new Sheet.Place(box.corner().x() + box.widthMm(), box.corner().y() + box.heightMm());
      return List.of(box.corner(), far);
    }
    if (mark instanceof Sheet.Shade shade) {
      return shade.corners();
    }
    return List.of(((Sheet.Words) mark).at());
  }

  private static void assertInside(Sheet.Place place, Sheet sheet) {
    assertThat(place.x()).isBetween(5.0, sheet.widthMm() - 5);
    assertThat(place.y()).isBetween(5.0, sheet.heightMm() - 3);
  }

  @Test
  void hiddenTreatmentsStandOnTheKeyAlone() {
    for (var blinding : List.of(Blinding.TREATMENT_CODES, Blinding.PLOT_NUMBERS)) {
      var layout = plan().withBlinding(blinding).draw(11);
      var shown = new ArrayList<>(words(layout.fieldMap()));
      layout.fieldSheet(2, "larvae").pages().forEach(page -> shown.addAll(words(page)));
      shown.add(layout.fieldSheet(2, "larvae").toCsv());

      for (var treatment : layout.plan().treatments()) {
        assertThat(String.join("\n", shown)).doesNotContain(treatment);
        assertThat(words(layout.keyPages().get(0)).stream().collect(Collectors.joining(" ")))
            .contains(treatment, layout.codeOf(treatment));
      }
      assertThat(layout.treatmentsByPlot()).isEqualTo(plan().draw(11).treatmentsByPlot());
    }
  }

  @Test
  void codesDifferAndTellNothing() {
    var layout = plan().withBlinding(Blinding.TREATMENT_CODES).draw(11);

    var codes = layout.plan().treatments().stream().map(layout::codeOf).toList();

    assertThat(codes).doesNotHaveDuplicates().allMatch(code -> code.matches("[A-Z]{2}"));
    assertThat(codes)
        .isNotEqualTo(
            plan().draw(12).plan().treatments().stream().map(plan().draw(12)::codeOf).toList());
  }

  @Test
  void aSheetScoredBlindGetsItsTreatmentsBackAndItsLostPlots() {
    for (var blinding : Blinding.values()) {
      var layout = plan().withBlinding(blinding).draw(11);
      var filled = new ArrayList<String>();
      int number = 0;
      for (var line : layout.fieldSheet(1, "larvae").toCsv().lines().toList()) {
        boolean data = !line.startsWith("#") && !line.startsWith("plot,");
        boolean lost = line.startsWith("7,");
        if (!lost) {
          filled.add(data ? line.replaceFirst(",,,$", ",2026-06-03,A. B.," + number++) : line);
        }
      }

      var scored = FieldTrial.parse("t", String.join("\n", filled), PlotColumns.ofCounts("larvae"));
      var opened = scored.withPlotsOf(layout.plots());

      assertThat(opened.plots().stream().map(TrialPlot::toString))
          .containsExactlyInAnyOrderElementsOf(
              layout.plots().stream().map(TrialPlot::toString).toList());
      assertThat(opened.review().design()).isEqualTo(layout.design());
      var values = opened.variable("larvae").on(opened.dates().get(0));
      assertThat(values.missing()).extracting(TrialPlot::name).containsExactly("7");
      assertThat(values.values()).hasSize(15);
      assertThat(opened.report().toString()).contains("plot 7 had no line");
    }
  }

  @Test
  void theFieldSheetGoesInTheOrderOfWalkingAndKeepsAPlotOnOnePage() {
    var layout = plan().draw(11);

    var pages = layout.fieldSheet(7, "larvae", "damaged leaves").pages();

    assertThat(pages).hasSize(4);
    for (var page : pages) {
      assertThat(words(page)).filteredOn("7"::equals).hasSizeGreaterThanOrEqualTo(4);
      assertThat(words(page)).contains("larvae", "damaged leaves", "Date", "Assessed by");
      assertThat(String.join(" ", words(page))).contains("Seed 11", "randomised complete blocks");
    }
    var places =
        layout.plots().stream()
            .map(plot -> plot.place().orElseThrow())
            .map(place -> place.row() + "." + place.column())
            .toList();
    assertThat(places).startsWith("1.1", "1.2", "1.3", "1.4", "2.4", "2.3", "2.2", "2.1", "3.1");
    assertThat(layout.plots().stream().map(TrialPlot::name)).startsWith("1", "2", "3", "4", "5");
    var html = layout.fieldSheet(7, "larvae").toHtml();
    assertThat(Pattern.compile("<svg ").matcher(html).results().count()).isEqualTo(4);
    assertThat(html).contains("size: 210mm 297mm").doesNotContain("<?xml").doesNotContain("<2");
  }

  @Test
  void plotsAreNumberedByBlockWhenAsked() {
    var layout = plan().withNumbering(PlotNumbering.BLOCK_HUNDREDS).draw(11);

    assertThat(layout.plots())
        .allMatch(plot -> plot.name().startsWith(plot.block() + "0") && plot.name().length() == 3);
    assertThat(layout.treatmentsByPlot().values())
        .containsExactlyInAnyOrderElementsOf(plan().draw(11).treatmentsByPlot().values());
  }

  @Test
  void columnsThatTheSheetHasItselfAreRefused() {
    var layout = plan().draw(11);

    assertThatThrownBy(() -> layout.fieldSheet(1, "larvae", "Plot"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("different names");
    assertThatThrownBy(() -> layout.fieldSheet(1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("1 to 8");
  }
}
