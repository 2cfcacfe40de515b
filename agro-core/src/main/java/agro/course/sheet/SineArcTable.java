package agro.course.sheet;

import agro.report.InputProblem;
import agro.working.Sheet;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of sines: whole degrees from 0 to 90 with their arc (radians) and sine, read forwards for
 * a sine and backwards for an arcsine.
 *
 * @param decimals decimals of the printed entries, 3 to 5
 */
public record SineArcTable(int decimals) implements PrintableSheet {

  private static final int USUAL = 4;
  private static final int RIGHT_ANGLE = 90;
  private static final int BLOCKS = 3;

  /**
   * Checks the decimals.
   *
   * @throws InputProblem when they are not 3 to 5
   */
  public SineArcTable {
    if (decimals < 3 || decimals > 5) {
      throw InputProblem.of("a table with " + decimals + " decimals")
          .expected("3 to 5")
          .because("steps of one degree carry no more digits")
          .mend("take 4");
    }
  }

  /**
   * The table with four decimals.
   *
   * @return the table
   */
  public static SineArcTable of() {
    return new SineArcTable(USUAL);
  }

  private double sineEntry(int degrees) {
    return HandNumbers.rounded(Math.sin(Math.toRadians(degrees)), decimals);
  }

  private double arcEntry(int degrees) {
    return HandNumbers.rounded(Math.toRadians(degrees), decimals);
  }

  /**
   * Sine of an angle as a student finds it.
   *
   * @param degrees angle, 0 to 90
   * @return the sine, by a straight line between whole degrees
   * @throws InputProblem when the angle is out of range
   */
  public double sine(double degrees) {
    if (!(degrees >= 0 && degrees <= RIGHT_ANGLE)) {
      throw InputProblem.of("an angle of " + degrees + " degrees")
          .expected("0 to 90")
          .because("the table ends there")
          .mend("sin(−a) = −sin a; cos a = sin(90° − a)");
    }
    int low = (int) Math.min(RIGHT_ANGLE - 1, Math.floor(degrees));
    return HandNumbers.between(sineEntry(low), sineEntry(low + 1), degrees - low, decimals);
  }

  /**
   * Angle in arc measure for a sine, the arcsine, as a student finds it by reading backwards. Near
   * 1 neighbouring entries differ in the last digit alone, and the angle is coarse.
   *
   * @param sine −1 to 1
   * @return arc in radians, −π/2 to π/2, by a straight line between whole degrees
   * @throws InputProblem when the sine is out of range
   */
  public double arc(double sine) {
    double size = Math.abs(sine);
    if (!(size <= 1)) {
      throw InputProblem.of("an angle whose sine is " + sine)
          .expected("−1 to 1")
          .because("no sine is larger")
          .mend("a threshold outside the day needs no sine");
    }
    int low = 0;
    while (low < RIGHT_ANGLE - 1 && sineEntry(low + 1) <= size) {
      low++;
    }
    double from = sineEntry(low);
    double to = sineEntry(low + 1);
    double share = to > from ? Math.min(1, (size - from) / (to - from)) : 1;
    double arc = HandNumbers.between(arcEntry(low), arcEntry(low + 1), share, decimals);
    return sine < 0 ? -arc : arc;
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("arc.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = page.paragraph(PaperPage.LEFT, 28, words.say("arc.rule"), PaperPage.TEXT, width);
    double block = (width - (BLOCKS - 1) * 6) / BLOCKS;
    for (int i = 0; i < BLOCKS; i++) {
      var rows = block(words, i * 30, i == BLOCKS - 1 ? RIGHT_ANGLE : i * 30 + 29);
      var heads = List.of(words.say("arc.degrees"), words.say("arc.arc"), words.say("arc.sine"));
      new TableDrawing(heads, rows).draw(page, PaperPage.LEFT + i * (block + 6), y + 4, block, 6.6);
    }
    PaperPage.foot(page, words.say("arc.foot"));
    return page.build();
  }

  private List<List<String>> block(Wording words, int from, int to) {
    var rows = new ArrayList<List<String>>();
    for (int degrees = from; degrees <= to; degrees++) {
      rows.add(
          List.of(
              degrees + "°",
              TableDrawing.number(words, arcEntry(degrees), decimals),
              TableDrawing.number(words, sineEntry(degrees), decimals)));
    }
    return rows;
  }
}
