package agro.course.sheet;

import agro.report.InputProblem;
import agro.stats.UpperTail;
import agro.working.Sheet;
import agro.working.TextLanguage;
import java.util.List;

/**
 * Values that chi-squared exceeds by chance, for 1 to 30 degrees of freedom.
 *
 * @param decimals decimals of the printed values, 2 to 4
 */
public record ChiSquaredTable(int decimals) implements PrintableSheet {

  private static final int USUAL = 3;
  private static final int LAST = 30;

  /**
   * Checks the decimals.
   *
   * @throws InputProblem when they are not 2 to 4
   */
  public ChiSquaredTable {
    StudentTable.requireDecimals(decimals);
  }

  /**
   * The table with three decimals.
   *
   * @return the table
   */
  public static ChiSquaredTable of() {
    return new ChiSquaredTable(USUAL);
  }

  private CriticalTable table() {
    return new CriticalTable(CriticalTable.rows(), decimals, UpperTail::chiSquaredExceededWith);
  }

  /**
   * Chi-squared as a student finds it.
   *
   * @param degreesOfFreedom 1 to 30
   * @param level chance of a larger value
   * @return the value with the decimals of the table
   * @throws InputProblem when the table has no such row
   */
  public double lookUp(int degreesOfFreedom, TableLevel level) {
    if (degreesOfFreedom > LAST) {
      throw InputProblem.of(degreesOfFreedom + " degrees of freedom from the table")
          .expected("1 to 30")
          .because("the values rise with the degrees of freedom, and no row stands for more")
          .mend("compare √(2χ²) − √(2 df − 1) with a normal deviate");
    }
    return table().lookUp(degreesOfFreedom, level);
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("chi.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = page.paragraph(PaperPage.LEFT, 28, words.say("chi.rule"), PaperPage.TEXT, width);
    table().drawing(words, List.of()).draw(page, PaperPage.LEFT, y + 3, width, 6.6);
    PaperPage.foot(page, words.say("chi.foot"));
    return page.build();
  }
}
