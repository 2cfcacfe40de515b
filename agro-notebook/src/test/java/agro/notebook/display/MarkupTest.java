package agro.notebook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a reader writes in another language is shown as what it means. */
class MarkupTest {

  @Test
  void htmlKeepsItsWordsForReadersWithoutAPage() {
    var bundle =
        Markup.html("<style>p{}</style><p>a &lt; b<br>c</p><table><tr><td>1</td><td>2</td></tr>");
    assertThat(bundle.plainText()).isEqualTo("a < b\nc\n1  2");
    assertThat(bundle.get(MimeBundle.HTML).orElseThrow()).startsWith("<style>");
    assertThat(Markup.html("1 < 2").plainText()).isEqualTo("1 < 2");
  }

  @Test
  void formulasGetTheirDollarSigns() {
    var bare = Markup.latex("\\frac{a}{b}");
    assertThat(bare.get(MimeBundle.LATEX)).contains("$$\\frac{a}{b}$$");
    assertThat(bare.get(MimeBundle.MARKDOWN)).contains("$$\\frac{a}{b}$$");
    assertThat(bare.plainText()).isEqualTo("\\frac{a}{b}");
    assertThat(Markup.latex("$x$").get(MimeBundle.LATEX)).contains("$x$");
    assertThat(Markup.latex("\\begin{align}x\\end{align}").get(MimeBundle.LATEX))
        .contains("\\begin{align}x\\end{align}");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        " [1, -2.5e+3, 0, true, false, null] ",
        "\"\\u00e9\\n\"",
        "{\"a\":{\"b\":[]}}",
        "0.1"
      })
  void jsonIsTaken(String text) {
    assertThat(Markup.json(text).get(MimeBundle.JSON)).contains(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[1,]",
        "{a:1}",
        "01",
        "1.",
        "+1",
        "NaN",
        "'a'",
        "\"a",
        "\"\\x\"",
        "{} x",
        "\"\t\"",
        "{\"a\" 1}",
        "[1 2]",
        "tru",
        "\"\\u00g0\"",
        "-",
        "1e"
      })
  void otherTextIsRefused(String text) {
    assertThatThrownBy(() -> Markup.json(text))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 1");
    assertThatThrownBy(() -> MimeBundle.of("application/geo+json", text))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void deepJsonIsRefusedInsteadOfOverflowing() {
    assertThatThrownBy(() -> Markup.json("[".repeat(100_000)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("levels");
  }

  @Test
  void theFormatsWantedAreChosen() {
    assertThat(Display.render("<b>K</b>", "text/html").get(MimeBundle.HTML)).contains("<b>K</b>");
    assertThat(Display.render("<b>K</b>", "text/html").plainText()).isEqualTo("K");
    assertThat(Display.render(new byte[] {1}, "image/png").get(MimeBundle.PNG)).contains("AQ==");
    var map = java.util.Map.of("a", 1);
    assertThat(Display.render(map, "text/plain").data().keySet()).containsExactly("text/plain");
    assertThat(Display.render(map, "text/html").data().keySet())
        .containsExactly("text/html", "text/plain");
    assertThat(Display.render("{", "application/json").plainText()).contains("could not be shown");
    assertThat(Display.render(null, "text/html").plainText()).isEqualTo("null");
  }
}
