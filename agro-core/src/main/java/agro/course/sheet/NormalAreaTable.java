package agro.course.sheet;

import agro.report.InputProblem;
import agro.stats.NormalTail;
import agro.working.Sheet;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Area below a deviate of the standard normal curve, for deviates from 0.00 to 3.99.
 *
 * @param decimals decimals of the printed areas, 3 to 5
 */
public record NormalAreaTable(int decimals) implements PrintableSheet {

  private static final int USUAL = 4;
  private static final int STEPS = 399;

  /**
   * Checks the decimals.
   *
   * @throws InputProblem when they are not 3 to 5
   */
  public NormalAreaTable {
    if (decimals < 3 || decimals > 5) {
      throw InputProblem.of("a table with " + decimals + " decimals")
          .expected("3 to 5")
          .because("steps of 0.01 carry no more digits")
          .mend("take 4");
    }
  }

  /**
   * The table with four decimals.
   *
   * @return the table
   */
  public static NormalAreaTable of() {
    return new NormalAreaTable(USUAL);
  }

  private PrintedEntries entries() {
    var entries = new PrintedEntries();
    for (int step = 0; step <= STEPS; step++) {
      entries.add(step / 100.0, entry(step));
    }
    return entries;
  }

  /**
   * Area below a deviate as a student finds it: the entry, or a straight line between two; for a
   * negative deviate one minus that of the positive one.
   *
   * @param deviate z, any number
   * @return the area with the decimals of the table; 1 beyond 3.99
   * @throws InputProblem when the deviate is not a number
   */
  public double lookUp(double deviate) {
    if (Double.isNaN(deviate)) {
      throw InputProblem.of("the area below no number")
          .expected("a deviate")
          .because("the table is entered with it")
          .mend("look for a division by 0");
    }
    if (deviate < 0) {
      return HandNumbers.rounded(1 - lookUp(-deviate), decimals);
    }
    if (deviate > STEPS / 100.0) {
      return 1;
    }
    double place = HandNumbers.rounded(100 * deviate, 9);
    int low = (int) Math.floor(place);
    return low == place
        ? entry(low)
        : HandNumbers.between(entry(low), entry(low + 1), place - low, decimals);
  }

  private double entry(int hundredths) {
    return HandNumbers.rounded(NormalTail.below(hundredths / 100.0), decimals);
  }

  /**
   * Deviate below which a share lies, read backwards.
   *
   * @param area share, between the ends of the table
   * @return z with three decimals
   * @throws InputProblem when the share lies outside the table
   */
  public double lookUpDeviate(double area) {
    var entries = entries();
    if (!(area >= 1 - entries.mostEntry() && area <= entries.mostEntry())) {
      throw InputProblem.of("the deviate of an area of " + area)
          .expected("a share within the table")
          .because("the table ends at 3.99")
          .mend("give a share between 0 and 1");
    }
    return area < 0.5 ? -entries.backwards(1 - area, 3) : entries.backwards(area, 3);
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("normal.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = page.paragraph(PaperPage.LEFT, 28, words.say("normal.rule"), PaperPage.TEXT, width);
    y = table(words).draw(page, PaperPage.LEFT, y + 3, width, 5.2);
    page.paragraph(PaperPage.LEFT, y + 7, words.say("normal.often"), PaperPage.TEXT, width);
    PaperPage.foot(page, words.say("normal.foot"));
    return page.build();
  }

  private TableDrawing table(Wording words) {
    var rows = new ArrayList<List<String>>();
    for (int tenth = 0; tenth < 40; tenth++) {
      var row = new ArrayList<String>();
      row.add(TableDrawing.number(words, tenth / 10.0, 1));
      for (int digit = 0; digit <= 9; digit++) {
        double area = NormalTail.below((10 * tenth + digit) / 100.0);
        row.add(TableDrawing.number(words, area, decimals));
      }
      rows.add(row);
    }
    return new TableDrawing(TableDrawing.digits("z"), rows);
  }
}
