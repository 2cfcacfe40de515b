package agro.course.handwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.sheet.BundlesOfTwoLanguages;
import agro.trial.bioassay.DoseGroup;
import agro.working.ResultTable;
import agro.working.TextLanguage;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The calculation in print, in both languages. */
class HandProbitPrintTest {

  private static final HandProbitFit ROTENONE =
      HandProbit.of(HandAssays.named("rotenone")).with(HandRounding.TEXTBOOK).cycles(2);
  private static final HandProbitFit CONTROL = HandProbit.of(HandAssays.named("bugres")).cycles(2);

  @Test
  void bothLanguagesAreComplete() throws IOException {
    BundlesOfTwoLanguages.check(HandProbitPrintTest.class, "handwork");
  }

  @Test
  void everyFormIsWrittenInBothLanguages() {
    for (var language : TextLanguage.values()) {
      for (var fit : new HandProbitFit[] {ROTENONE, CONTROL, flat(), two(), falling()}) {
        var page = fit.presentation(language);
        assertThat(page.toText()).contains("LD50").doesNotContain("{");
        assertThat(page.toHtml()).contains("<table");
        assertThat(fit.working(language).toLatex()).isNotBlank();
      }
    }
  }

  private static HandProbitFit flat() {
    return HandProbit.of(
            HandAssays.of(
                "flat", DoseGroup.of(1, 10, 4), DoseGroup.of(2, 10, 5), DoseGroup.of(4, 10, 6)))
        .cycles(2);
  }

  private static HandProbitFit two() {
    return HandProbit.of(HandAssays.of("", DoseGroup.of(1, 50, 10), DoseGroup.of(10, 50, 40)))
        .cycles(7);
  }

  private static HandProbitFit falling() {
    return HandProbit.of(
            HandAssays.of("LD50 falling", DoseGroup.of(1, 50, 40), DoseGroup.of(10, 50, 10)))
        .cycles(1);
  }

  @Test
  void germanHasDecimalCommasAndNoEnglish() {
    var text = CONTROL.presentation(TextLanguage.GERMAN).toText();
    assertThat(text)
        .contains("Durchgang 1", "Quellen:", "Getötet %")
        .doesNotContain("Cycle", "Dead", "Note", "value from memory", "Before you use")
        .doesNotContainPattern("[0-9]\\.[0-9]{2,} ");
  }

  @Test
  void theResultDoesNotDependOnTheMachine() {
    var before = Locale.getDefault();
    var text = ROTENONE.presentation(TextLanguage.GERMAN).toText();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(ROTENONE.presentation(TextLanguage.GERMAN).toText()).isEqualTo(text);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void tablesHoldEveryDoseAndTheSums() {
    ResultTable table = ROTENONE.cycleTable(1, TextLanguage.ENGLISH);
    assertThat(table.rows()).hasSize(5);
    assertThat(table.notes().get(0)).contains("Σnw = ", "Σnwy² = ");
    assertThat(ROTENONE.countTable(TextLanguage.ENGLISH).columns()).hasSize(6);
    assertThat(CONTROL.countTable(TextLanguage.ENGLISH).columns()).hasSize(7);
  }

  /** Who divides the printed numbers gets the printed slope. */
  @Test
  void printedSlopesFollowFromPrintedSums() {
    for (var set : new String[] {"rotenone", "deguelin", "bugres"}) {
      var fit = HandProbit.of(HandAssays.named(set)).with(HandRounding.TEXTBOOK).cycles(3);
      var slopes =
          fit.working().steps().stream()
              .filter(step -> step.formula().equals("b = Sxy / Sxx"))
              .toList();
      assertThat(slopes).hasSize(3);
      for (var step : slopes) {
        var parts = step.substitution().split(" / ", -1);
        double quotient = Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
        assertThat(Double.parseDouble(step.result())).isCloseTo(quotient, within(5.0001e-5));
      }
    }
  }

  @Test
  void thePaperHasTheLineAndItsPoints() {
    var paper = ROTENONE.paper(TextLanguage.ENGLISH);
    assertThat(paper.points()).hasSize(5);
    assertThat(paper.cycles()).isEqualTo(2);
    assertThat(paper.line()).contains(ROTENONE.line());
    assertThat(paper.sheet(TextLanguage.GERMAN).toSvg()).contains("LD50 = 4,8");
  }

  @Test
  void printSaysHowFarTheResultIsFromMaximumLikelihood() {
    assertThat(ROTENONE.presentation().toText()).contains("Maximum likelihood gives Y = 2.1125");
  }
}
