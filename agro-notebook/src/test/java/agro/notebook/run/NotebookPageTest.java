package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class NotebookPageTest {

  private static NotebookRun run;
  private static String page;

  @BeforeAll
  static void runOnce() {
    run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .prose("# A title & more", "", "Prose with <script>alert(1)</script> in it.")
                    .prose("## Traps", "", "| trap | moths |", "|---|--:|", "| T1 | 4 |")
                    .code("// a < b", "\"<b>text</b>\"")
                    .prose("## Traps", "", "The mean $\\bar T$ costs $5 or $6.")
                    .prose("### Pictures", "[bad](javascript:alert(1))")
                    .code(
                        "import agro.notebook.display.*;",
                        "import agro.working.*;",
                        "var numbers = ResultTable.of(\"Numbers\",",
                        "  List.of(ResultTable.Column.of(\"x\", \"°C\")),",
                        "  List.of(List.of(Cell.number(1, 0))));",
                        "FigureBundle.of(new byte[] {1, 2}, \"A \\\"line\\\" rises\", \"Caption\", numbers)")
                    .code(
                        "MimeBundle.of(MimeBundle.HTML, \"<SCRIPT>x()</SCRIPT>\")",
                        "  .with(MimeBundle.TEXT, \"instead\")")
                    .document());
    page = run.toPage(CodeView.FOLDED);
  }

  @Test
  void nothingRunsAndNothingIsLoaded() {
    assertThat(page.toLowerCase(Locale.ROOT)).doesNotContain("<script");
    assertThat(page)
        .contains("default-src 'none'")
        .contains("&lt;script&gt;alert(1)")
        .contains("<p class=\"value\">instead</p>")
        .doesNotContain("href=\"javascript")
        .doesNotContain("http://")
        .doesNotContain("https://")
        .doesNotContain("<link");
  }

  @Test
  void contentsComeFromTheHeadings() {
    assertThat(page)
        .contains("<title>A title &amp; more</title>")
        .contains("<li class=\"level-2\"><a href=\"#traps\">Traps</a></li>")
        .contains("<li class=\"level-2\"><a href=\"#traps-2\">Traps</a></li>")
        .contains("<li class=\"level-3\"><a href=\"#pictures\">Pictures</a></li>")
        .contains("<h2 id=\"traps-2\">");
    assertThat(page.indexOf("<h1")).isLessThan(page.indexOf("<nav"));
  }

  @Test
  void codeIsFoldedOrShown() {
    assertThat(page).contains("<details class=\"code\"><summary>Java, cell 1</summary>");
    assertThat(page).contains("// a &lt; b");
    assertThat(run.toPage(CodeView.SHOWN)).contains("<details class=\"code\" open>");
  }

  @Test
  void valuesAreEscaped() {
    assertThat(page).contains("&lt;b&gt;text&lt;/b&gt;").doesNotContain("<b>text");
  }

  @Test
  void tablesAndFigures() {
    assertThat(page)
        .contains("<th align=\"right\">moths</th>")
        .contains("alt=\"A &quot;line&quot; rises\"")
        .contains("<figcaption>Caption</figcaption>")
        .contains("src=\"data:image/png;base64,AQI=\"");
  }

  @Test
  void dollarsBeforeAmountsAreNoFormulas() {
    assertThat(page).contains("costs $5 or $6.").contains("<mover><mi>T</mi><mo>¯</mo></mover>");
  }

  @Test
  void everyPictureHasWords() {
    var pictures = Pattern.compile("<img [^>]*>").matcher(page).results().toList();
    assertThat(pictures)
        .isNotEmpty()
        .allSatisfy(picture -> assertThat(picture.group()).containsPattern(" alt=\"[^\"]+\""));
  }

  @Test
  void contentsStandBetweenIntroductionAndFirstPartOfOneCell() {
    var html =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .prose("# T", "intro", "## A", "a", "## B", "## C")
                    .document())
            .toPage(CodeView.FOLDED);
    assertThat(html).containsSubsequence("<h1", "intro", "</section>", "<nav", "<section", "<h2");
  }

  /** A sheet to hand out is printed alone; no other step is. */
  @Test
  void aCellMayAskForAPageOfItsOwn() {
    var sheet =
        NotebookRunner.standard()
            .run(SampleNotebook.empty().tagged("own-page", "1 + 1").code("2 + 2").document())
            .toPage(CodeView.FOLDED);
    assertThat(sheet).containsOnlyOnce("class=\"step own-page\"").contains("class=\"step\"");
  }
}
