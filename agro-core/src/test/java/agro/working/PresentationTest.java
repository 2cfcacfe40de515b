package agro.working;

import static org.assertj.core.api.Assertions.assertThat;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.source.Reference;
import agro.working.ResultTable.Column;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A result laid out from blocks. */
class PresentationTest {

  private static final Presentation ALL =
      Presentation.titled("Flight of the moth")
          .paragraph("Dates below 5 °C are left out.")
          .fact("field", "Upper Croft")
          .fact("sum", "444.6 °C·d")
          .table(
              ResultTable.of(
                  "Dates", List.of(Column.of("flight")), List.of(List.of(Cell.text("second")))))
          .working(Working.of("Sum").step("Total", "", "", "444.6 °C·d"))
          .cautions(List.of(Caution.LABEL_FIRST))
          .sources(
              List.of(Reference.commonPractice("A habit"), Reference.commonPractice("A habit")))
          .build();

  @Test
  void text() {
    assertThat(ALL.toText())
        .isEqualTo(
            """
            Flight of the moth
            ==================

            Dates below 5 °C are left out.

            field:  Upper Croft
            sum:    444.6 °C·d

            Dates

            flight
            ------
            second

            Sum

            1. Total
               444.6 °C·d

            Before you use these figures
            - The product label and local law come first and override every figure here.

            Sources
            - A habit [common practice, no source]""");
  }

  @Test
  void markdown() {
    assertThat(ALL.toMarkdown())
        .startsWith(
            """
            ## Flight of the moth

            Dates below 5 °C are left out.

            - field: Upper Croft
            - sum: 444.6 °C·d

            **Dates**

            | flight |
            | :--- |
            | second |

            **Sum**
            """)
        .contains("**Before you use these figures**\n\n- The product label")
        .endsWith("- A habit \\[common practice, no source\\]");
  }

  @Test
  void html() {
    assertThat(ALL.toHtml())
        .startsWith(
            """
            <section class="agro-presentation">
            <h2>Flight of the moth</h2>
            <p>Dates below 5 °C are left out.</p>
            <dl class="agro-facts">
            <dt>field</dt><dd>Upper Croft</dd>
            <dt>sum</dt><dd>444.6 °C·d</dd>
            </dl>
            <div class="agro-table">
            """)
        .contains("<section class=\"agro-working\">", "<aside class=\"agro-cautions\">")
        .endsWith("</aside>\n</section>");
  }

  @Test
  void nothingFromDataIsMarkup() {
    var hostile = "<script>alert(1)</script>";
    var presentation =
        Presentation.titled(hostile)
            .paragraph(hostile)
            .fact(hostile, hostile)
            .sources(List.of(Reference.commonPractice(hostile)))
            .build();
    assertThat(presentation.toHtml()).doesNotContain("<script", "</script");
    assertThat(presentation.toMarkdown()).doesNotContain("<script", "</script");
  }

  @Test
  void emptyCautionsAndSourcesAddNothing() {
    assertThat(Presentation.titled("t").cautions(List.of()).sources(List.of()).build().blocks())
        .isEmpty();
  }

  @Test
  void partsAreTakenOverWithTheirTitle() {
    var part = Presentation.titled("Part").fact("a", "1").build();
    var whole = Presentation.titled("Whole").fact("b", "2").part(part).build();
    assertThat(whole.toText()).isEqualTo("Whole\n=====\n\nb:  2\n\nPart\n\na:  1");
    assertThat(whole.presentation()).isSameAs(whole);
  }

  @Test
  void blocksWithTheirOwnHeadingNeedNoTitle() {
    var working = Working.of("Sum").step("Total", "", "", "1");
    assertThat(working.presentation().toText()).isEqualTo(working.toText());
    assertThat(working.presentation().toHtml()).doesNotContain("<h2>");
    var table = ResultTable.of("t", List.of(Column.of("x")), List.of());
    assertThat(table.presentation().toMarkdown()).isEqualTo(table.toMarkdown());
  }

  @Test
  void longTitlesAndParagraphsAreWrapped() {
    var text =
        Presentation.titled("title ".repeat(30)).paragraph("word ".repeat(60)).build().toText();
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    assertThat(text).contains("title\n====");
  }

  @Test
  void reportWithoutDeeds() {
    assertThat(Presentation.of(new ReadReport("log.csv", 12, List.of())).toText())
        .isEqualTo(
            """
            log.csv: 12 rows read; nothing was assumed, mended, dropped or filled.""");
  }

  @Test
  void reportShowsDeedsWithPlaces() {
    var collector = new ReadReport.Collector("log.csv");
    collector.add(Deed.DROPPED, SourceLocation.line("log.csv", 4), "<b>99</b> is too hot");
    collector.add(Deed.ASSUMED, SourceLocation.NONE, "2 m above the ground");
    var laid = Presentation.of(collector.report());
    assertThat(laid.toText())
        .isEqualTo(
            """
            log.csv: 0 rows read; 1 assumed, 1 dropped

            Assumed, mended, dropped, filled

            Deed     Place            What and why
            -------  ---------------  --------------------
            assumed  all              2 m above the ground
            dropped  log.csv, line 4  <b>99</b> is too hot""");
    assertThat(laid.toHtml())
        .contains("<details class=\"agro-folded\">", "<summary>log.csv: 0 rows read;")
        .doesNotContain("<details open");
    assertThat(laid.toHtml()).contains("&lt;b&gt;99&lt;/b&gt;").doesNotContain("<b>");
  }

  @Test
  void longReportSaysWhatItLeavesOut() {
    var collector = new ReadReport.Collector("log.csv");
    for (int i = 1; i <= 21; i++) {
      collector.add(Deed.DROPPED, SourceLocation.line("log.csv", i), "too hot");
    }
    var text = Presentation.of(collector.report()).toText();
    assertThat(text)
        .contains("21 dropped", "log.csv, line 20")
        .doesNotContain("log.csv, line 21")
        .endsWith("Note: 1 more entry is not shown here; the report object holds them all.");
    collector.add(Deed.DROPPED, SourceLocation.line("log.csv", 22), "too hot");
    assertThat(Presentation.of(collector.report()).toText()).contains("2 more entries are");
  }
}
