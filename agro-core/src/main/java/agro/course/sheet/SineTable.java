package agro.course.sheet;

import agro.report.InputProblem;
import agro.working.Sheet;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Degree-days by the single sine from one printed table, without an arcsine. With mean M = (Tx +
 * Tn) / 2, half range A = (Tx − Tn) / 2 and z = (threshold − M) / A the degree-days of a day are D
 * = A f(z), f(z) = (cos θ − z (π/2 − θ)) / π with θ = arcsin z. At or below z = −1 the whole day is
 * warm and f = −z; from z = 1 on f = 0.
 *
 * @param decimals decimals of the printed entries, 3 to 5
 * @see agro.development.DegreeDayMethod#SINGLE_SINE
 */
public record SineTable(int decimals) implements PrintableSheet {

  private static final int USUAL = 4;
  private static final int STEPS = 100;

  /** Greatest error of a straight line between two exact entries, next to z = −1 and 1. */
  private static final double STRAIGHT = 4.5e-5;

  /**
   * Checks the decimals.
   *
   * @throws InputProblem when they are not 3 to 5
   */
  public SineTable {
    if (decimals < 3 || decimals > 5) {
      throw InputProblem.of("a table with " + decimals + " decimals")
          .expected("3 to 5")
          .because("steps of 0.01 carry no more digits, and fewer are too coarse for a day")
          .mend("take 4");
    }
  }

  /**
   * The table with four decimals.
   *
   * @return the table
   */
  public static SineTable of() {
    return new SineTable(USUAL);
  }

  /**
   * f(z), unrounded.
   *
   * @param z (threshold − mean) / half range
   * @return degree-days for each degree of half range
   */
  public static double factor(double z) {
    if (z >= 1) {
      return 0;
    }
    if (z <= -1) {
      return -z;
    }
    double angle = Math.asin(z);
    return (Math.cos(angle) - z * (Math.PI / 2 - angle)) / Math.PI;
  }

  /**
   * A printed entry.
   *
   * @param hundredths z in hundredths, −100 to 100
   * @return f rounded to the decimals of the table
   */
  public double entry(int hundredths) {
    if (Math.abs(hundredths) > STEPS) {
      throw InputProblem.of("an entry for z = " + hundredths / (double) STEPS)
          .expected("z from −1 to 1")
          .because("outside the whole day lies on one side of the threshold")
          .mend("at or below −1 take f = −z, from 1 on f = 0");
    }
    return HandNumbers.rounded(factor(hundredths / (double) STEPS), decimals);
  }

  /**
   * f(z) as a student finds it: the entry, or a straight line between two entries, rounded to the
   * decimals of the table.
   *
   * @param z (threshold − mean) / half range, finite
   * @return f, within {@link #errorBound} of the exact value
   * @throws InputProblem when z is not finite
   */
  public double lookUp(double z) {
    if (!Double.isFinite(z)) {
      throw InputProblem.of("z = " + z)
          .expected("a finite number")
          .because("z is (threshold − mean) / half range, and a day without range has none")
          .mend("where the extremes are equal, the degree-days are max(0, mean − threshold)");
    }
    if (z >= 1) {
      return 0;
    }
    if (z <= -1) {
      return HandNumbers.rounded(-z, decimals);
    }
    double place = HandNumbers.rounded(z * STEPS, 9);
    int low = (int) Math.floor(place);
    return low == place
        ? entry(low)
        : HandNumbers.between(entry(low), entry(low + 1), place - low, decimals);
  }

  /**
   * Degree-days of a day as a student finds them by the table, not rounded again.
   *
   * @param minCelsius lowest temperature in °C
   * @param maxCelsius highest temperature in °C, not below the lowest
   * @param thresholdCelsius lower threshold in °C
   * @return degree-days in °C·d
   * @throws InputProblem when the temperatures are not in order
   */
  public double degreeDays(double minCelsius, double maxCelsius, double thresholdCelsius) {
    if (!(maxCelsius >= minCelsius)) {
      throw InputProblem.of("a minimum of " + minCelsius + " and a maximum of " + maxCelsius)
          .expected("a maximum that is not below the minimum")
          .because("the half range would be negative")
          .mend("look for two temperatures that are swapped");
    }
    double mean = (maxCelsius + minCelsius) / 2;
    double half = (maxCelsius - minCelsius) / 2;
    return half == 0
        ? Math.max(0, mean - thresholdCelsius)
        : half * lookUp((thresholdCelsius - mean) / half);
  }

  /**
   * By how much {@link #lookUp} may be off: straight lines between entries, rounded entries, and
   * the rounding of the result.
   *
   * @return greatest difference from the exact f
   */
  public double errorBound() {
    return STRAIGHT + Math.pow(10, -decimals);
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    var words = PaperPage.words(language);
    var page = PaperPage.titled(words.say("sine.title"));
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    double y = 28;
    for (var key : List.of("sine.rule.one", "sine.rule.two", "sine.rule.three")) {
      y = page.paragraph(PaperPage.LEFT, y, words.say(key), PaperPage.TEXT, width) + 1;
    }
    y += 3;
    page.words(PaperPage.LEFT, y, words.say("sine.negative"), PaperPage.BOLD);
    y = half(words, -1).draw(page, PaperPage.LEFT, y + 2.5, width, 5.6);
    y += 8;
    page.words(PaperPage.LEFT, y, words.say("sine.positive"), PaperPage.BOLD);
    y = half(words, 1).draw(page, PaperPage.LEFT, y + 2.5, width, 5.6);
    y += 8;
    page.words(PaperPage.LEFT, y, words.say("sine.between"), PaperPage.BOLD);
    y = page.paragraph(PaperPage.LEFT, y + 5, example(words), PaperPage.TEXT, width) + 1;
    page.paragraph(PaperPage.LEFT, y, words.say("sine.upper"), PaperPage.TEXT, width);
    PaperPage.foot(page, words.say("sine.foot", "bound", TableDrawing.number(words, bound(), 5)));
    return page.build();
  }

  private double bound() {
    return Math.ceil(1e5 * errorBound()) / 1e5;
  }

  /** One sign of z: rows of tenths, columns of hundredths. */
  private TableDrawing half(Wording words, int sign) {
    var rows = new ArrayList<List<String>>();
    for (int tenth = 0; tenth < 10; tenth++) {
      var row = new ArrayList<String>();
      row.add((sign < 0 ? "−" : "") + TableDrawing.number(words, tenth / 10.0, 1));
      for (int digit = 0; digit <= 9; digit++) {
        row.add(TableDrawing.number(words, entry(sign * (10 * tenth + digit)), decimals));
      }
      rows.add(row);
    }
    var last = new ArrayList<String>();
    last.add((sign < 0 ? "−" : "") + TableDrawing.number(words, 1, 1));
    last.add(TableDrawing.number(words, entry(sign * STEPS), decimals));
    while (last.size() < 11) {
      last.add("");
    }
    rows.add(last);
    return new TableDrawing(TableDrawing.digits("z"), rows);
  }

  private String example(Wording words) {
    return words.say(
        "sine.example",
        "z",
        TableDrawing.number(words, -0.254, 3),
        "low",
        TableDrawing.number(words, -0.25, 2),
        "high",
        TableDrawing.number(words, -0.26, 2),
        "flow",
        TableDrawing.number(words, entry(-25), decimals),
        "fhigh",
        TableDrawing.number(words, entry(-26), decimals),
        "share",
        TableDrawing.number(words, 0.4, 1),
        "f",
        TableDrawing.number(words, lookUp(-0.254), decimals));
  }
}
