package agro.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.source.Reference;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The steps of a calculation in four forms. */
class WorkingTest {

  private static final Reference ARITHMETIC =
      Reference.commonPractice("The mean of a day is the mean of its extremes");

  private static final Working MEAN =
      Working.of("Mean of a day")
          .step("Mean", "M = (a + b) / 2", "(30 °C + 10 °C) / 2", "20 °C", ARITHMETIC)
          .step("Verdict", "", "", "The day is warm", ARITHMETIC)
          .withCautions(List.of(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER));

  @Test
  void text() {
    assertThat(MEAN.toText())
        .isEqualTo(
            """
            Mean of a day

            1. Mean
               M = (a + b) / 2
               = (30 °C + 10 °C) / 2
               = 20 °C

            2. Verdict
               The day is warm

            Sources
            - The mean of a day is the mean of its extremes [common practice, no source]

            Before you use these figures
            - The product label and local law come first and override every figure here.
            - Ask a licensed adviser before you act on a computed figure.""");
  }

  @Test
  void markdown() {
    assertThat(MEAN.toMarkdown())
        .isEqualTo(
            """
            **Mean of a day**

            1. Mean\\
               `M = (a + b) / 2`\\
               `= (30 °C + 10 °C) / 2`\\
               `= 20 °C`

            2. Verdict\\
               `The day is warm`

            **Sources**

            - The mean of a day is the mean of its extremes \\[common practice, no source\\]

            **Before you use these figures**

            - The product label and local law come first and override every figure here.
            - Ask a licensed adviser before you act on a computed figure.""");
  }

  @Test
  void html() {
    assertThat(MEAN.toHtml())
        .startsWith(
            "<section class=\"agro-working\">\n<h3>Mean of a day</h3>\n<ol>\n<li><p>Mean</p>")
        .contains("<p class=\"agro-formula\">= (30 °C + 10 °C) / 2</p>")
        .contains("<aside class=\"agro-sources\">\n<h3>Sources</h3>")
        .contains("<aside class=\"agro-cautions\">\n<h3>Before you use these figures</h3>")
        .endsWith("</section>");
  }

  @Test
  void latex() {
    assertThat(MEAN.toLatex())
        .isEqualTo(
            """
            \\paragraph{Mean of a day}
            \\begin{enumerate}
            \\item Mean
            \\par M = (a + b) / 2
            \\par = (30 \\textdegree{}C + 10 \\textdegree{}C) / 2
            \\par = 20 \\textdegree{}C
            \\item Verdict
            \\par The day is warm
            \\end{enumerate}
            \\paragraph{Sources}
            \\begin{itemize}
            \\item The mean of a day is the mean of its extremes [common practice, no source]
            \\end{itemize}
            \\paragraph{Before you use these figures}
            \\begin{itemize}
            \\item The product label and local law come first and override every figure here.
            \\item Ask a licensed adviser before you act on a computed figure.
            \\end{itemize}""");
  }

  @Test
  void nothingFromDataIsMarkup() {
    var hostile = "<img src=x onerror=alert(1)>";
    var working =
        Working.of(hostile)
            .step(hostile, hostile, hostile, hostile, Reference.commonPractice(hostile));
    assertThat(working.toHtml()).doesNotContain("<img");
    assertThat(working.toMarkdown().replaceAll("`[^`]*`", "")).doesNotContain("<img");
  }

  @Test
  void workingsFollowEachOtherAndKeepCautionsOnce() {
    var first =
        Working.of("first").step("a", "", "", "1").withCautions(List.of(Caution.LABEL_FIRST));
    var both = first.followedBy(MEAN);
    assertThat(both.title()).isEqualTo("first");
    assertThat(both.steps()).extracting(Working.Step::name).containsExactly("a", "Mean", "Verdict");
    assertThat(both.cautions()).containsExactly(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER);
    assertThat(both.references()).containsExactly(ARITHMETIC);
    assertThat(first.steps()).hasSize(1);
  }

  @Test
  void workingWithoutStepsIsItsTitle() {
    assertThat(Working.of("Nothing yet").toText()).isEqualTo("Nothing yet");
    assertThat(Working.of("Nothing yet").toLatex()).isEqualTo("\\paragraph{Nothing yet}");
  }

  @Test
  void titlesNamesAndResultsAreNeeded() {
    assertThatThrownBy(() -> Working.of(" "))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a working needs a title");
    assertThatThrownBy(() -> Working.of("t").step("a", "x = 1", "", ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a step needs a name and a result");
  }

  /** The subjects that every figure about a spray must name; common practice, no source. */
  @Test
  void cautionsNameLabelLawLimitsProtectionAndAdviser() {
    assertThat(Caution.HEADING).isEqualTo("Before you use these figures");
    assertThat(Caution.all()).containsExactly(Caution.values()).isUnmodifiable();
    assertThat(Caution.all().stream().map(Caution::line).reduce("", String::concat))
        .contains(
            "label",
            "law",
            "registered",
            "maximum dose",
            "number of applications",
            "interval between applications",
            "pre-harvest interval",
            "re-entry interval",
            "protective equipment",
            "people, water and bees",
            "licensed adviser");
  }
}
