package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellOutput;
import agro.notebook.kernel.StandardStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageOutputsTest {

  private final PageOutputs outputs = new PageOutputs(new PageProse(Path.of(".")));

  private String shown(String type, String content) {
    return outputs.html(MimeBundle.of(type, content).with(MimeBundle.TEXT, "a \"map\""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"image/png", "image/jpeg", "image/gif", "image/webp"})
  void picturesHaveTheirWords(String format) {
    assertThat(shown(format, "AQ\nI="))
        .contains("<img src=\"data:" + format + ";base64,AQI=\" alt=\"a &quot;map&quot;\">");
    assertThat(shown(format, "\"><script>x</script>")).contains("a &quot;map&quot;</p>");
  }

  @Test
  void drawingsAreIsolated() {
    assertThat(shown("image/svg+xml", "<svg onload=\"x()\"></svg>"))
        .contains("<img src=\"data:image/svg+xml;base64,")
        .contains("alt=\"a &quot;map&quot;\"")
        .doesNotContain("onload");
    assertThat(shown("image/svg+xml", "no drawing")).contains("a &quot;map&quot;</p>");
  }

  @Test
  void formulasAreFormulas() {
    for (var tex : new String[] {"$$x^2$$", "\\[x^2\\]", "x^2", " $$ x^2 $$ "}) {
      assertThat(shown("text/latex", tex))
          .contains("<math display=\"block\"><semantics>")
          .contains("<msup><mi>x</mi><mn>2</mn></msup>");
    }
    assertThat(shown("text/latex", "$x$")).contains("<math><semantics>");
    assertThat(shown("text/latex", "With $x$ and $y$.")).contains("<p>With <math>");
  }

  @Test
  void jsonIsFoldedWhenItIsLong() {
    assertThat(shown("application/json", "{\"a\":[1,2]}"))
        .contains("<details class=\"json\" open>")
        .contains("&quot;a&quot;: [\n    1,");
    assertThat(shown("application/json", "[1,2,3,4,5,6,7,8,9,10,11,12,13]"))
        .contains("<details class=\"json\"><summary>");
  }

  @Test
  void whatShowsNothingGivesWayToTheNextForm() {
    var widget =
        MimeBundle.of("text/html", "<div id=\"p\"></div><script>draw()</script>")
            .with("image/png", "AQI=")
            .with("text/plain", "plot");
    assertThat(outputs.html(widget)).contains("<img").doesNotContain("draw");
    assertThat(outputs.html(MimeBundle.of("application/x-other", "1")))
        .contains("cannot show: application/x-other");
    assertThat(outputs.html(MimeBundle.EMPTY)).isEmpty();
  }

  @Test
  void markdownFromCellsIsProse() {
    assertThat(shown("text/markdown", "**a** $x$ <b>c</b> <script>d</script>"))
        .contains("<strong>a</strong>")
        .contains("<mi>x</mi>")
        .contains("<b>c</b>")
        .contains("&lt;script&gt;");
  }

  @Test
  void printedTextIsSettledAndColoured() {
    var printed = new CellOutput.Printed(StandardStream.ERROR, "1 %\r\u001b[31m<99 %>\u001b[0m\n");
    assertThat(outputs.html(printed))
        .isEqualTo(
            "<pre class=\"remark\"><span style=\"color:#a3201b\">&lt;99 %&gt;</span></pre>\n");
    assertThat(outputs.html(new CellOutput.Printed(StandardStream.OUTPUT, "\n"))).isEmpty();
  }
}
