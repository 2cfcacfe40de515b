package agro.course.sheet;

import agro.report.InputProblem;
import agro.stats.NormalQuantile;
import agro.stats.UpperTail;
import agro.working.Sheet;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;

/**
 * Two-sided values of Student's t for 1 to 30, 40, 60, 120 and unlimited degrees of freedom.
 *
 * @param decimals decimals of the printed values, 2 to 4
 */
public record StudentTable(int decimals) implements PrintableSheet {

  private static final int USUAL = 3;

  /**
   * Checks the decimals.
   *
   * @throws InputProblem when they are not 2 to 4
   */
  public StudentTable {
    requireDecimals(decimals);
  }

  static void requireDecimals(int decimals) {
    if (decimals < 2 || decimals > 4) {
      throw InputProblem.of("a table with " + decimals + " decimals")
          .expected("2 to 4")
          .because("so many are usual in print")
          .mend("take 3");
    }
  }

  /**
   * The table with three decimals.
   *
   * @return the table
   */
  public static StudentTable of() {
    return new StudentTable(USUAL);
  }

  private CriticalTable table() {
    return new CriticalTable(
        CriticalTable.rows(40, 60, 120),
        decimals,
        (chance, df) -> UpperTail.tExceededWith(chance / 2, df));
  }

  /**
   * t as a student finds it: where there is no row for the degrees of freedom, that of the next
   * smaller number, which errs on the safe side.
   *
   * @param degreesOfFreedom at least 1
   * @param level two-sided level
   * @return t with the decimals of the table
   * @throws InputProblem when there are no degrees of freedom
   */
  public double lookUp(int degreesOfFreedom, TableLevel level) {
    return table().lookUp(degreesOfFreedom, level);
  }

  /**
   * The value of the last row, the normal deviate.
   *
   * @param level two-sided level
   * @return the deviate with the decimals of the table
   */
  public double lookUpUnlimited(TableLevel level) {
    return HandNumbers.rounded(-NormalQuantile.of(level.chance() / 2), decimals);
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("student.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = page.paragraph(PaperPage.LEFT, 28, words.say("student.rule"), PaperPage.TEXT, width);
    var last = new ArrayList<String>();
    last.add("∞");
    for (var level : TableLevel.values()) {
      last.add(TableDrawing.number(words, lookUpUnlimited(level), decimals));
    }
    table().drawing(words, List.of(last)).draw(page, PaperPage.LEFT, y + 3, width, 6.2);
    PaperPage.foot(page, words.say("student.foot"));
    return page.build();
  }
}
