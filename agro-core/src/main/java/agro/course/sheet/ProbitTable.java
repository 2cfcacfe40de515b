package agro.course.sheet;

import agro.report.InputProblem;
import agro.working.Sheet;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Per cent to probits as in the classical table: rows of tens, columns of units, and tenths of a
 * per cent where the curve is steep, below 5 % and above 95 %.
 *
 * @param decimals decimals of the printed probits, 2 to 4
 */
public record ProbitTable(int decimals) implements PrintableSheet {

  private static final int USUAL = 2;
  private static final double LEAST = 0.1;
  private static final double MOST = 99.9;

  /** Below and from these on there are tenths of a per cent. */
  private static final double FINE_BELOW = 5;

  private static final double FINE_FROM = 95;

  /**
   * Checks the decimals.
   *
   * @throws InputProblem when they are not 2 to 4
   */
  public ProbitTable {
    if (decimals < 2 || decimals > 4) {
      throw InputProblem.of("a table with " + decimals + " decimals")
          .expected("2 to 4")
          .because("short tables print two and long ones four")
          .mend("take 2");
    }
  }

  /**
   * The short table with two decimals.
   *
   * @return the table
   */
  public static ProbitTable of() {
    return new ProbitTable(USUAL);
  }

  /** All printed pairs from 0.1 to 99.9 %. */
  private PrintedEntries entries() {
    var entries = new PrintedEntries();
    for (int tenths = 1; tenths < 1000; tenths++) {
      if (tenths < 10 * FINE_BELOW || tenths > 10 * FINE_FROM || tenths % 10 == 0) {
        entries.add(tenths / 10.0, entry(tenths / 10.0));
      }
    }
    return entries;
  }

  /**
   * The probit as a student finds it: the entry, or a straight line between two.
   *
   * @param percent per cent, 0.1 to 99.9
   * @return the probit with the decimals of the table
   * @throws InputProblem when the per cent lies outside the table
   */
  public double lookUp(double percent) {
    if (!(percent >= LEAST && percent <= MOST)) {
      throw InputProblem.of("the probit of " + percent + " % from the table")
          .expected("0.1 to 99.9 %")
          .because("none and all have no probit, and the table ends there")
          .mend("leave the dose out of the first line, or use working probits");
    }
    double step = percent < FINE_BELOW || percent >= FINE_FROM ? 0.1 : 1;
    double place = HandNumbers.rounded(percent / step, 9);
    double low = Math.floor(place);
    return low == place
        ? entry(low * step)
        : HandNumbers.between(entry(low * step), entry((low + 1) * step), place - low, decimals);
  }

  private double entry(double percent) {
    return HandNumbers.rounded(ProbitLine.probit(HandNumbers.rounded(percent, 1)), decimals);
  }

  /**
   * The per cent that belongs to a probit, read backwards.
   *
   * @param probit a probit between the ends of the table, 1.91 to 8.09
   * @return per cent with one decimal
   * @throws InputProblem when the probit lies outside the table
   */
  public double lookUpPercent(double probit) {
    var entries = entries();
    if (!(probit >= entries.leastEntry() && probit <= entries.mostEntry())) {
      throw InputProblem.of("the per cent of a probit of " + probit + " from the table")
          .expected("a probit from " + entries.leastEntry() + " to " + entries.mostEntry())
          .because("the table ends there")
          .mend("take below 0.1 % or above 99.9 %");
    }
    return entries.backwards(probit, 1);
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("probit.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = page.paragraph(PaperPage.LEFT, 28, words.say("probit.rule"), PaperPage.TEXT, width);
    y += 4;
    page.words(PaperPage.LEFT, y, words.say("probit.whole"), PaperPage.BOLD);
    y = whole(words).draw(page, PaperPage.LEFT, y + 2.5, width, 7) + 9;
    page.words(PaperPage.LEFT, y, words.say("probit.tenths"), PaperPage.BOLD);
    y = tenths(words).draw(page, PaperPage.LEFT, y + 2.5, width, 7) + 8;
    y = page.paragraph(PaperPage.LEFT, y, words.say("probit.between"), PaperPage.TEXT, width) + 1;
    page.paragraph(PaperPage.LEFT, y, words.say("probit.ends"), PaperPage.TEXT, width);
    PaperPage.foot(page, words.say("probit.foot"));
    return page.build();
  }

  private TableDrawing whole(Wording words) {
    var rows = new ArrayList<List<String>>();
    for (int ten = 0; ten < 100; ten += 10) {
      var row = new ArrayList<String>();
      row.add(Integer.toString(ten));
      for (int unit = 0; unit <= 9; unit++) {
        row.add(ten + unit == 0 ? "–" : printed(words, ten + unit));
      }
      rows.add(row);
    }
    return new TableDrawing(TableDrawing.digits("%"), rows);
  }

  private TableDrawing tenths(Wording words) {
    var rows = new ArrayList<List<String>>();
    for (int percent : new int[] {0, 1, 2, 3, 4, 95, 96, 97, 98, 99}) {
      var row = new ArrayList<String>();
      row.add(Integer.toString(percent));
      for (int tenth = 0; tenth <= 9; tenth++) {
        row.add(percent + tenth == 0 ? "–" : printed(words, percent + tenth / 10.0));
      }
      rows.add(row);
    }
    var heads = new ArrayList<String>();
    heads.add("%");
    for (int tenth = 0; tenth <= 9; tenth++) {
      heads.add(TableDrawing.number(words, tenth / 10.0, 1));
    }
    return new TableDrawing(heads, rows);
  }

  private String printed(Wording words, double percent) {
    return TableDrawing.number(words, ProbitLine.probit(percent), decimals);
  }
}
