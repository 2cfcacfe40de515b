package agro.sampling.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.EndRule;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.TallyPlan;
import agro.sampling.sequential.TallyRelation;
import agro.sampling.sequential.WaldLines;
import agro.source.Reference;
import agro.working.Sheet;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class ScoutingSheetTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final WaldLines LINES = WaldLines.of(new CountFamily.Clumped(0.9), 2, 4, 0.1, 0.1);

  private static ScoutingSheet sheet(int most) {
    var plan = SequentialPlan.truncated(LINES, most, EndRule.BY_THE_MIDDLE);
    return ScoutingSheet.of(plan, PLANT, "Aphids on <cabbage> & kale");
  }

  private static List<String> words(Sheet sheet) {
    return sheet.marks().stream()
        .filter(Sheet.Words.class::isInstance)
        .map(mark -> ((Sheet.Words) mark).text())
        .toList();
  }

  @Test
  void everyLimitOfThePlanStandsOnThePage() {
    var plan = sheet(50).plan();
    var words = words(sheet(50).sheet());
    for (int n = 1; n <= 50; n++) {
      assertThat(words).contains(Integer.toString(n));
      if (plan.lastLow(n) >= 0) {
        assertThat(words).contains(Long.toString(plan.lastLow(n)));
      }
      assertThat(words).contains(Long.toString(plan.firstHigh(n)));
    }
    assertThat(String.join(" ", words))
        .contains("Write down its count", "After 50 stop in any case", "product label")
        .contains("Wald, A. (1947)");
  }

  @Test
  void longPlansAreCountedInBatches() {
    var words = words(sheet(150).sheet());
    assertThat(words)
        .contains("1–3", "148–150", "Counts in batches of 3, and limits of the total behind each");
  }

  @Test
  void nothingLeavesThePaper() {
    for (int most : new int[] {1, 7, 60, 61, 999}) {
      for (var mark : sheet(most).sheet().marks()) {
        if (mark instanceof Sheet.Words words) {
          double wide = Sheet.width(words.text(), words.type());
          double left =
              switch (words.type().align()) {
                case START -> words.at().x();
                case MIDDLE -> words.at().x() - wide / 2;
                case END -> words.at().x() - wide;
              };
          assertThat(left).as(words.text()).isGreaterThan(5);
          assertThat(left + wide).as(words.text()).isLessThan(205);
          assertThat(words.at().y()).as(words.text()).isBetween(5.0, 292.0);
        } else if (mark instanceof Sheet.Box box) {
          assertThat(box.corner().y() + box.heightMm()).isLessThan(275);
        }
      }
    }
  }

  @Test
  void textIsEscapedAndTheDrawingIsWellFormed() throws Exception {
    var svg = sheet(20).withSource(Reference.invented("a <test> & more")).sheet().toSvg();
    assertThat(svg).contains("Aphids on &lt;cabbage&gt; &amp; kale").doesNotContain("<cabbage>");
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)));
    assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("210mm");
    assertThat(document.getElementsByTagName("text").getLength()).isGreaterThan(80);
  }

  @Test
  void onlyGreysAreUsed() {
    var html = sheet(20).sheet().toHtml();
    var colours =
        java.util.regex.Pattern.compile("#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})\"")
            .matcher(html)
            .results()
            .toList();
    assertThat(colours).hasSizeGreaterThan(50);
    assertThat(colours)
        .allSatisfy(
            found ->
                assertThat(found.group(1)).isEqualTo(found.group(2)).isEqualTo(found.group(3)));
    assertThat(html).contains("@page { size: 210mm 297mm", "<html lang=\"en\">");
  }

  @Test
  void tallySheetsAskForMarks(@TempDir Path folder) throws IOException {
    var tallies = TallyPlan.of(new TallyRelation.MoreThan(2, 0.9), 2, 4, 0.1, 0.1);
    var sheet =
        ScoutingSheet.of(tallies, tallies.upTo(40, EndRule.CALL_HIGH), PLANT, "Aphids")
            .withInstruction("Take every tenth plant.");
    var file = folder.resolve("sheet.html");
    sheet.saveHtml(file);
    assertThat(Files.readString(file, StandardCharsets.UTF_8))
        .contains("Take every tenth plant.", "Mark it with 1", "the field is high.");
  }

  @Test
  void badInputIsRefused() {
    assertThatThrownBy(() -> ScoutingSheet.of(SequentialPlan.of(LINES), PLANT, "Aphids"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a sheet for a plan without an end");
    assertThatThrownBy(
            () ->
                sheet(10)
                    .withInstruction("a")
                    .withInstruction("b")
                    .withInstruction("c")
                    .withInstruction("d")
                    .withInstruction("e"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("at most 4 instructions");
  }
}
