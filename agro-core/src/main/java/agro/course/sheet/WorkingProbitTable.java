package agro.course.sheet;

import agro.report.InputProblem;
import agro.working.Sheet;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Least and most working probit, range and weighting coefficient for expected probits from 1 to 9
 * in steps of 0.1, with four decimals and from 100 on with one: what a calculation by hand needs
 * beside {@link ProbitTable}.
 */
public record WorkingProbitTable() implements PrintableSheet {

  private static final int DECIMALS = 4;
  private static final int FIRST = 10;
  private static final int LAST = 90;
  private static final double LARGE = 100;

  /**
   * One line of the table.
   *
   * @param expected expected probit Y
   * @param least working probit where none died
   * @param range 1 / Z
   * @param most working probit where all died
   * @param weight weighting coefficient of one animal
   */
  public record Entry(double expected, double least, double range, double most, double weight) {}

  /**
   * The table.
   *
   * @return the table
   */
  public static WorkingProbitTable of() {
    return new WorkingProbitTable();
  }

  /**
   * The line of an expected probit, by straight lines between printed ones.
   *
   * @param expected Y, 1 to 9
   * @return the line, rounded as printed
   * @throws InputProblem when Y lies outside the table
   */
  public Entry lookUp(double expected) {
    if (!(expected >= FIRST / 10.0 && expected <= LAST / 10.0)) {
      throw InputProblem.of("an expected probit of " + expected + " from the table")
          .expected("1 to 9")
          .because("beyond it an animal carries next to no weight")
          .mend("leave the dose out, and say so");
    }
    double place = HandNumbers.rounded(10 * expected, 9);
    int low = (int) Math.min(LAST - 1, Math.floor(place));
    double share = place - low;
    var one = entry(low);
    var other = entry(low + 1);
    return new Entry(
        expected,
        between(one.least, other.least, share),
        between(one.range, other.range, share),
        between(one.most, other.most, share),
        between(one.weight, other.weight, share));
  }

  private static double between(double low, double high, double share) {
    return printed(low + share * (high - low));
  }

  private static Entry entry(int tenths) {
    var exact = WorkingProbit.at(tenths / 10.0);
    return new Entry(
        tenths / 10.0,
        printed(exact.least()),
        printed(exact.range()),
        printed(exact.most()),
        printed(exact.weight()));
  }

  /** Four decimals, and one for numbers that would not fit their column. */
  private static int decimals(double value) {
    return Math.abs(value) >= LARGE ? 1 : DECIMALS;
  }

  private static double printed(double value) {
    return HandNumbers.rounded(value, decimals(value));
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("working.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = page.paragraph(PaperPage.LEFT, 28, words.say("working.rule"), PaperPage.TEXT, width);
    double block = (width - 6) / 2;
    var heads =
        List.of(
            "Y",
            words.say("working.least"),
            words.say("working.range"),
            words.say("working.most"),
            words.say("working.weight"));
    for (int i = 0; i < 2; i++) {
      var rows = rows(words, i == 0 ? FIRST : 51, i == 0 ? 50 : LAST);
      new TableDrawing(heads, rows)
          .draw(page, PaperPage.LEFT + i * (block + 6), y + 3, block, 5.25);
    }
    PaperPage.foot(page, words.say("working.foot"));
    return page.build();
  }

  private static List<List<String>> rows(Wording words, int from, int to) {
    var rows = new ArrayList<List<String>>();
    for (int tenths = from; tenths <= to; tenths++) {
      var entry = entry(tenths);
      rows.add(
          List.of(
              TableDrawing.number(words, entry.expected, 1),
              text(words, entry.least),
              text(words, entry.range),
              text(words, entry.most),
              text(words, entry.weight)));
    }
    return rows;
  }

  private static String text(Wording words, double value) {
    return TableDrawing.number(words, value, decimals(value));
  }
}
