package agro.course.sheet;

import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.List;

/** What all pages of this package share: margins, types, heading and foot. */
final class PaperPage {

  static final double LEFT = 14;
  static final double RIGHT = 196;
  static final double FOOT = 283;

  static final Pen FINE = new Pen(0.1, 0.62, false);
  static final Pen MIDDLE = new Pen(0.16, 0.42, false);
  static final Pen STRONG = new Pen(0.28, 0.15, false);
  static final Pen FRAME = new Pen(0.4, 0, false);
  static final Pen DRAWN = new Pen(0.7, 0, false);
  static final Pen READING = new Pen(0.35, 0, true);

  static final Sheet.Type TEXT = new Sheet.Type(3.3, false, Align.START);
  static final Sheet.Type BOLD = new Sheet.Type(3.6, true, Align.START);
  static final Sheet.Type SMALL = new Sheet.Type(2.6, false, Align.START);
  private static final double TITLE_SIZE = 6;

  private PaperPage() {}

  static Wording words(TextLanguage language) {
    return Wording.of(PaperPage.class, "sheet", language);
  }

  /** A page with its title, made smaller where it is long. */
  static Sheet.Builder titled(String title) {
    var page = Sheet.a4(title);
    double wide = Sheet.width(title, new Sheet.Type(TITLE_SIZE, true, Align.START));
    double size = TITLE_SIZE * Math.min(1, (RIGHT - LEFT) / (1.06 * wide));
    return page.words(LEFT, 19, title, new Sheet.Type(size, true, Align.START));
  }

  /** Lines to write name, course and date on. */
  static void blanks(Sheet.Builder page, Wording words, double y) {
    double x = LEFT;
    double width = (RIGHT - LEFT) / 3;
    for (var key : List.of("blank.name", "blank.course", "blank.date")) {
      var text = words.say(key);
      page.words(x, y, text, TEXT);
      page.line(x + Sheet.width(text, TEXT) + 1.5, y + 0.6, x + width - 4, y + 0.6, MIDDLE);
      x += width;
    }
  }

  /** Small print at the foot of the page, from its last line upwards. */
  static void foot(Sheet.Builder page, String text) {
    int lines = Sheet.wrap(text, SMALL, RIGHT - LEFT).size();
    page.paragraph(LEFT, FOOT - (lines - 1) * 1.32 * SMALL.sizeMm(), text, SMALL, RIGHT - LEFT);
  }
}
