package agro.notebook.page;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.Renderers;
import agro.notebook.figure.TrialSamples;
import agro.trial.analysis.TrialAnalysis;
import agro.trial.analysis.TrialReport;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialPageTest {

  /** The words of a page: no pictures and no style. */
  private static String words(String html) {
    return html.replaceAll("base64,[^\"]*", "").replaceAll("(?s)<style>.*?</style>", "");
  }

  @Test
  void aTrialAloneHasDesignFindingsMapAndCautions() {
    var html = words(TrialPage.of(TrialSamples.vale()).html());
    assertThat(html)
        .contains("randomised complete blocks", "6 treatments", "Map of the field")
        .contains("Plot 301 has no value", "No value was corrected", "Before you use these figures")
        .doesNotContain("Efficacy", "Pest load", "Value of graded");
  }

  @Test
  void theFrontSheetHasTheTestAndTheTable() {
    var page =
        TrialPage.of(TrialSamples.vale()).with(TrialSamples.analysed()).titled("A <b>trial</b>");
    var html = words(page.html());
    assertThat(html).contains("<h1>A &lt;b&gt;trial&lt;/b&gt;</h1>", "F = ", "df = 5, 20");
    assertThat(page.summary().columns()).hasSize(3);
    assertThat(page.summary().rows()).hasSize(6);
    assertThat(html.indexOf("The trial in one table")).isLessThan(html.indexOf("Assumptions"));
  }

  @Test
  void aReportGivesItsDaysEfficacyAndLoad() {
    var report =
        TrialReport.of(TrialAnalysis.of(TrialSamples.vale(), "larvae"))
            .treatedOn(TrialSamples.TREATED);
    var page = TrialPage.of(report);
    assertThat(words(page.html()))
        .contains("Analysis of larvae, 2026-05-18", "Analysis of larvae, 2026-06-09")
        .contains("treated on 2026-05-19", "Henderson");
    assertThat(page.toString()).contains("efficacy").doesNotContain("pest load");
  }

  @Test
  void namesFromDataAreHarmless() {
    var trial = TrialSamples.factorial();
    var analysed = TrialAnalysis.of(trial, "yield").evaluate();
    var html = TrialPage.of(trial).with(analysed).withRemark("a < b & c").html();
    assertThat(words(html))
        .doesNotContain("<b>salt", "<i>factorial", "NaN")
        .contains("&lt;b&gt;salt", "a &lt; b &amp; c");
  }

  @Test
  void itIsWrittenWholeAndNeedsNothingElse(@TempDir Path folder) throws Exception {
    var file = folder.resolve("new").resolve("trial.html");
    TrialPage.of(TrialSamples.vale()).write(file);
    var html = Files.readString(file);
    assertThat(html)
        .startsWith("<!DOCTYPE html>")
        .endsWith("</html>\n")
        .contains("size: A4 portrait");
    assertThat(words(html)).doesNotContain("http://", "https://", "<script", "src=\"/");
  }

  @Test
  void aNotebookShowsIt() {
    var bundle = Renderers.standard().render(TrialPage.of(TrialSamples.vale()));
    assertThat(bundle.get(MimeBundle.HTML))
        .hasValueSatisfying(
            html -> assertThat(html).contains("trial-page").doesNotContain("<!DOCTYPE"));
  }
}
