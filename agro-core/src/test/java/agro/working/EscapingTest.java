package agro.working;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text from data is never taken for an instruction. */
class EscapingTest {

  @Test
  void htmlReferences() {
    assertThat(HtmlText.escape("<b title=\"x\">R&D's</b>\t\n"))
        .isEqualTo("&lt;b title=&quot;x&quot;&gt;R&amp;D&#39;s&lt;/b&gt;\t\n");
    assertThat(HtmlText.escape("10 °C \uD83C\uDF3F")).isEqualTo("10 °C \uD83C\uDF3F");
    assertThat(HtmlText.escape("a\u0000b\u001Bc\u0085d")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd");
  }

  @Property(seed = "8")
  void htmlHasNoTagsAndNoOpenQuotes(@ForAll String text) {
    var escaped = HtmlText.escape(text);
    assertThat(escaped).doesNotContain("<", ">", "\"", "'");
    assertThat(escaped).doesNotContainPattern("&(?!(amp|lt|gt|quot|#39);)");
  }

  @Property(seed = "8")
  void htmlEscapesAreRead(@ForAll @Chars({'<', '>', '&', '"', '\'', 'a', ';', '#'}) String text) {
    var back =
        HtmlText.escape(text)
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&#39;", "'")
            .replace("&amp;", "&");
    assertThat(back).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '\0',
      value = {
        "*bold* _it_ `code`~\\*bold\\* \\_it\\_ \\`code\\`",
        "[a](b) ![c](d)~\\[a\\](b) !\\[c\\](d)",
        "<b>&amp;~&lt;b&gt;&amp;amp;",
        "a|b $x$ c\\d~a\\|b \\$x\\$ c\\\\d",
        "# heading~\\# heading",
        "### heading~\\### heading",
        "- item~\\- item",
        "+ item~\\+ item",
        "---~\\---",
        "===~\\===",
        "1. item~1\\. item",
        "12) item~12\\) item",
        "-~\\-",
        "-1.5~-1.5",
        "12.5 °C~12.5 °C",
        "+3~+3",
        "#3~#3"
      })
  void markdown(String text, String escaped) {
    assertThat(MarkdownText.escape(text)).isEqualTo(escaped);
  }

  @Property(seed = "8")
  void markdownIsOneLineWithoutTags(
      @ForAll
          @Chars({'<', '>', '|', '\n', '\r', '\t', '*', '`', '\\', ' ', '#', '-', '['})
          @CharRange(from = 'a', to = 'c')
          String text) {
    var escaped = MarkdownText.escape(text);
    assertThat(escaped).doesNotContain("<", ">", "\n", "\r");
    assertThat(escaped.replaceAll("\\\\.", "")).doesNotContain("|", "*", "`", "[", "\\");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '\0',
      value = {"M = (a + b) / 2~`M = (a + b) / 2`", "a`b~`` a`b ``", "a``b`~``` a``b` ```"})
  void markdownCode(String text, String span) {
    assertThat(MarkdownText.code(text)).isEqualTo(span);
  }

  @Test
  void blankCodeIsNoSpan() {
    assertThat(MarkdownText.code(" ")).isEmpty();
  }

  @Test
  void latex() {
    assertThat(LatexText.escape("50 % & \\x{1} #2 $3 a_b^c~d\n\"e\""))
        .isEqualTo(
            "50 \\% \\& \\textbackslash{}x\\{1\\} \\#2 \\$3 a\\_b\\textasciicircum{}c"
                + "\\textasciitilde{}d \\char34{}e\\char34{}");
    assertThat(LatexText.escape("5 °C·d ≥ μ"))
        .isEqualTo(
            "5 \\textdegree{}C\\textperiodcentered{}d" + " \\ensuremath{\\geq} \\ensuremath{\\mu}");
  }

  @Property(seed = "8")
  void latexHasNoCommandOfTheData(
      @ForAll @Chars({'\\', '{', '}', '%', '$', '&', '#', '_', '^', '~', 'a'}) String text) {
    // What is left without our own commands is harmless.
    var rest = LatexText.escape(text).replaceAll("\\\\(text[a-z]+\\{}|[{}#$%&_])", "");
    assertThat(rest).matches("a*");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+cmd",
        "-cmd",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "\n=1",
        "-1-1",
        "+1+cmd",
        "-",
        "\uFF1D1"
      })
  void formulasGetAnApostrophe(String text) {
    assertThat(SpreadsheetText.harmless(text)).isEqualTo("'" + text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-1.5", "+3", "-1,5", "-2e-7", "a=b", "T1", "'=1", "2024-05-31"})
  void otherTextStays(String text) {
    assertThat(SpreadsheetText.harmless(text)).isEqualTo(text);
  }

  @Property(seed = "8")
  void nothingFromDataIsAFormula(
      @ForAll @Chars({'=', '+', '-', '@', '\t', '\n', '1', '.', 'a'}) String text) {
    assertThat(SpreadsheetText.harmless(text))
        .matches("(?s)|[^=+@\\t\\n-].*|[+-][0-9]+(\\.[0-9]+)?");
  }

  @Test
  void plainTextSteersNoTerminal() {
    assertThat(PlainText.oneLine(" a\tb\r\nc\u001B[2Jd\u009B1m "))
        .isEqualTo("a b c\uFFFD[2Jd\uFFFD1m");
  }
}
