package agro.notebook.page;

import static org.assertj.core.api.Assertions.assertThat;

import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrintedTextTest {

  @Test
  void aNumberKeepsItsUnitOnTheLine() {
    assertThat(PrintedText.html("takes 4.2 °F more, 37,5 mL"))
        .isEqualTo(
            "takes <span class=\"measure\">4.2 °F</span> more,"
                + " <span class=\"measure\">37,5 mL</span>");
    assertThat(PrintedText.html("product A1 of 3")).isEqualTo("product A1 of 3");
    assertThat(PrintedText.html("5 Schwellenwertbestimmungen")).doesNotContain("span");
  }

  @Test
  void aHyphenBeforeANumberIsAMinusAndNoOtherIs() {
    assertThat(PrintedText.html("-58.9")).isEqualTo("−58.9");
    assertThat(PrintedText.html("(-0,5); 2026-11-26; S-01; 3-4; LD-50"))
        .isEqualTo("(−0,5); 2026-11-26; S-01; 3-4; LD-50");
  }

  @Test
  void exponentsAreRaised() {
    assertThat(PrintedText.html("s² = a · m^b")).isEqualTo("s² = a · m<sup>b</sup>");
    assertThat(PrintedText.html("10^0,6541")).isEqualTo("10<sup>0,6541</sup>");
    assertThat(PrintedText.html("10^log LD50")).isEqualTo("10<sup>log LD50</sup>");
    assertThat(PrintedText.html("L · 10^(z / b) × e^(−r · t)"))
        .isEqualTo("L · 10<sup>z / b</sup> × e<sup>−r · t</sup>");
  }

  @Test
  void markupInTextStaysText() {
    assertThat(PrintedText.html("<b>5 mL</b> & 3^<i>"))
        .isEqualTo("&lt;b&gt;<span class=\"measure\">5 mL&lt;/b&gt;</span> &amp; 3^&lt;i&gt;");
  }

  @Test
  void writtenNumbersStandBelowOneAnotherAndCodesDoNot() {
    var table =
        ResultTable.of(
            "sizes",
            List.of(Column.of("code"), Column.of("flow")),
            List.of(
                List.of(Cell.text("01"), Cell.text("0,4")),
                List.of(Cell.text("15"), Cell.text("12"))));
    var code = PrintedColumn.of(table, 0, Cell::printed);
    var flow = PrintedColumn.of(table, 1, Cell::printed);
    assertThat(code.isNumeric()).isFalse();
    assertThat(code.cell(0)).isEqualTo("<td>01</td>");
    assertThat(flow.isNumeric()).isTrue();
    assertThat(flow.cell(0)).isEqualTo("<td class=\"number\">0,4</td>");
    assertThat(flow.cell(1)).isEqualTo("<td class=\"number\">12\u2008\u2007</td>");
  }
}
