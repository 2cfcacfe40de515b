package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
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
        "\\frac12.5|<mfrac><mn>1</mn><mn>2</mn></mfrac><mo>.</mo><mn>5</mn>",
        "x^10|<msup><mi>x</mi><mn>1</mn></msup><mn>0</mn>",
        "\\sqrt{a}|<msqrt><mrow><mi>a</mi></mrow></msqrt>",
        "444.6\\,\\text{°C d}|<mn>444.6</mn><mspace width=\"0.17em\"></mspace><mtext>°C\u00a0d</mtext>",
        "a - b|<mi>a</mi><mo>−</mo><mi>b</mi>",
        "\\alpha < 2|<mi>α</mi><mo>&lt;</mo><mn>2</mn>",
        "\\left( x \\right]|<mrow><mo>(</mo><mrow><mi>x</mi></mrow><mo>]</mo></mrow>",
        "\\unknown|<mtext>\\unknown</mtext>",
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\\sqrt[3]{x}|<mroot><mrow><mi>x</mi></mrow><mrow><mn>3</mn></mrow></mroot>",
        "\\binom{n}{k}|<mfrac linethickness=\"0\"><mrow><mi>n</mi></mrow><mrow><mi>k</mi></mrow></mfrac>",
        "\\int_0^1 f|<msubsup><mo>∫</mo><mn>0</mn><mn>1</mn></msubsup>",
        "f'|<msup><mi>f</mi><mo>′</mo></msup>",
        "f''_i|<msubsup><mi>f</mi><mi>i</mi><mo>″</mo></msubsup>",
        "\\hat\\beta|<mover><mi>β</mi><mo>^</mo></mover>",
        "\\vec{v}|<mover><mrow><mi>v</mi></mrow><mo>→</mo></mover>",
        "\\underline{a}|<mrow style=\"border-bottom:0.06em solid;padding-bottom:0.12em\"><mrow><mi>a</mi>",
        "\\mathbb{R}|<mi>ℝ</mi>",
        "\\mathbf{x}|<mi>\uD835\uDC31</mi>",
        "\\mathcal L|<mi>ℒ</mi>",
        "\\text{if $x$ is {so}}|<mtext>if\u00a0</mtext><mrow><mi>x</mi></mrow><mtext>\u00a0is\u00a0{so}</mtext>",
        "\\operatorname{arg\\ min}|<mi>arg\u00a0min</mi>",
        "\\sin x|<mi>sin</mi><mspace width=\"0.17em\"></mspace><mi>x</mi>",
        "\\sin(x)|<mi>sin</mi><mo stretchy=\"false\">(</mo>",
        "a \\not= b|<mo>=\u0338</mo>",
        "\\overset{d}{=}|<mover><mrow><mo>=</mo></mrow><mrow><mi>d</mi></mrow></mover>",
        "\\left\\lfloor x \\middle/ y \\right.|<mo>⌊</mo><mrow><mi>x</mi></mrow><mo>/</mo>",
        "\\le\\Leftarrow|<mo>≤</mo><mo>⇐</mo>",
        "3{,}5|<mn>3</mn><mrow><mo>,</mo></mrow><mn>5</mn>",
        "a % remark|<mrow><mi>a</mi></mrow>",
        "50\\%|<mn>50</mn><mo>%</mo>"
      })
  void more(String tex, String part) {
    assertThat(MathMarkup.of(tex, false)).contains(part);
  }

  @Test
  void matricesHaveBracketsRowsAndColumns() {
    var math = MathMarkup.of("\\begin{pmatrix} a & b \\\\[2pt] c & d \\\\ \\end{pmatrix}^T", true);
    assertThat(math)
        .contains("<msup><mrow><mo>(</mo><mtable>")
        .contains("<mo>)</mo></mrow><mi>T</mi>");
    assertThat(math.split("<mtr>", -1)).hasSize(3);
    assertThat(MathMarkup.of("\\begin{array}{l|r} a & b \\end{array}", true))
        .contains("text-align:left\"><mrow><mi>a")
        .contains("text-align:right\"><mrow><mi>b");
  }

  @Test
  void linesMayBeAligned() {
    var aligned = MathMarkup.of("\\begin{aligned} a &= b \\\\ &= c \\end{aligned}", true);
    assertThat(aligned.split("<mtr>", -1)).hasSize(3);
    assertThat(aligned).doesNotContain("<mtext>");
    assertThat(MathMarkup.of("a &= b \\\\ &= c", true).split("<mtr>", -1)).hasSize(3);
    assertThat(MathMarkup.of("\\begin{align*} a &= b \\tag{1} \\end{align*}", true))
        .contains("<mtext>(1)</mtext>");
  }

  @Test
  void nothingIsTooDeepOrTooOdd() {
    for (var piece :
        new String[] {"{", "\\hat", "\\frac", "\\left(", "x^", "\\begin{cases}", "\\sqrt["}) {
      var math = MathMarkup.of(piece.repeat(5_000), true);
      assertThat(math).as(piece).startsWith("<math").endsWith("</semantics></math>");
    }
    var random = new Random(7);
    var pieces =
        new String[] {
          "\\",
          "{",
          "}",
          "&",
          "^",
          "_",
          "'",
          "$",
          "%",
          "[",
          "]",
          "x",
          "1",
          " ",
          "\\frac",
          "\\begin{cases}",
          "\\end{cases}",
          "\\left",
          "\\right",
          "\\text",
          "\\middle",
          "\\not",
          "\n"
        };
    for (var i = 0; i < 3_000; i++) {
      var tex = new StringBuilder();
      for (var n = random.nextInt(12); n >= 0; n--) {
        tex.append(pieces[random.nextInt(pieces.length)]);
      }
      var math = MathMarkup.of(tex.toString(), random.nextBoolean());
      assertThat(math.split("<m[a-z]+|<semantics", -1))
          .as(tex.toString())
          .hasSameSizeAs(math.split("</m[a-z]+>|</semantics>", -1));
    }
  }
}
