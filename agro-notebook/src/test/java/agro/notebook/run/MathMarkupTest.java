package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MathMarkupTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "T_L|<msub><mi>T</mi><mi>L</mi></msub>",
        "x^2|<msup><mi>x</mi><mn>2</mn></msup>",
        "x_i^2|<msubsup><mi>x</mi><mi>i</mi><mn>2</mn></msubsup>",
        "x^2_i|<msubsup><mi>x</mi><mi>i</mi><mn>2</mn></msubsup>",
        "\\frac{1}{2}|<mfrac><mrow><mn>1</mn></mrow><mrow><mn>2</mn></mrow></mfrac>",
        "\\frac12.5|<mfrac><mn>12.5</mn><mrow></mrow></mfrac>",
        "\\sqrt{a}|<msqrt><mrow><mi>a</mi></mrow></msqrt>",
        "444.6\\,\\text{°C d}|<mn>444.6</mn><mspace width=\"0.17em\"></mspace><mtext>°C\u00a0d</mtext>",
        "a - b|<mi>a</mi><mo>−</mo><mi>b</mi>",
        "\\alpha < 2|<mi>α</mi><mo>&lt;</mo><mn>2</mn>",
        "\\left( x \\right]|<mrow><mo>(</mo><mrow><mi>x</mi></mrow><mo>]</mo></mrow>",
        "\\unknown|<mtext>unknown</mtext>",
        "a } b|<mrow><mi>a</mi></mrow><mo>}</mo><mrow><mi>b</mi></mrow>"
      })
  void formulas(String tex, String part) {
    assertThat(MathMarkup.of(tex, false)).contains(part);
  }

  @Test
  void boundsStandBelowAndAboveOnALineOfTheirOwn() {
    assertThat(MathMarkup.of("\\sum_{i=1}^n x", true)).contains("<munderover>");
    assertThat(MathMarkup.of("\\sum_{i=1}^n x", false)).contains("<msubsup>");
  }

  @Test
  void casesAreRows() {
    var math = MathMarkup.of("\\begin{cases} 0 & x < 0 \\\\ 1 & \\text{else} \\end{cases}", true);
    assertThat(math).contains("<mo>{</mo><mtable>");
    assertThat(math.split("<mtr>", -1)).hasSize(3);
    assertThat(math.split("<mtd", -1)).hasSize(5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"\\", "{", "}", "x_", "\\frac{1", "\\left(", "\\begin{cases}", "\\text{a", "& &"})
  void whatIsCutOffIsShownAllTheSame(String tex) {
    assertThat(MathMarkup.of(tex, true)).startsWith("<math").endsWith("</semantics></math>");
  }
}
