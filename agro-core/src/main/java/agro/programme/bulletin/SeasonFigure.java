package agro.programme.bulletin;

import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.stream.Stream;

/**
 * The season in one picture over one scale of days: catch of a trap and night above, the share of
 * the stage, or of the flight, with its bands in the middle, and below, where they are known, the
 * hours of the next days that meet the user's own limits. It is narrow, so that its words can be
 * read on a phone, and grey, so that it can be copied.
 */
final class SeasonFigure {

  private static final double WIDTH = 110;
  private static final double LEFT = 14;
  private static final double RIGHT = 106;
  private static final double PANEL = 27;
  private static final double GAP = 11;
  private static final double TOP = 12;
  private static final int DAYS_BEFORE = 30;
  private static final int DAYS_AFTER = 14;

  static final Sheet.Type TITLE = new Sheet.Type(3.6, true, Align.START);
  static final Sheet.Type TICK = new Sheet.Type(3.4, false, Align.END);
  private static final Sheet.Type MONTH = new Sheet.Type(3.4, false, Align.START);
  private static final Sheet.Type TODAY = new Sheet.Type(3.4, true, Align.END);
  static final Pen HAIR = new Pen(0.15, 0.6, false);
  static final Pen AXIS = new Pen(0.3, 0.2, false);
  private static final Pen TODAY_PEN = new Pen(0.4, 0, true);

  private SeasonFigure() {}

  static BulletinPart.Picture of(
      FieldBulletin bulletin, PestBulletin pest, BulletinText text, boolean full) {
    var share = SharePanel.of(pest, bulletin.asOf(), text);
    var scale = scale(bulletin, pest, share);
    double bottom = TOP + 2 * PANEL + GAP;
    var title = text.say("picture.title", "pest", pest.pest(), "field", bulletin.field());
    var sheet = Sheet.a4(title);
    CatchPanel.draw(sheet, pest.catches(), scale, new Span(TOP, TOP + PANEL), text);
    share.draw(sheet, scale, new Span(TOP + PANEL + GAP, bottom));
    double end = bottom + 6;
    if (bulletin.hours().isPresent()) {
      var panel = new Span(bottom + GAP + 3, bottom + GAP + 3 + PANEL);
      HoursPanel.draw(sheet, bulletin.hours().get(), bulletin.asOf(), panel, LEFT, RIGHT, text);
      end = panel.bottom() + 6;
    }
    axis(sheet, scale, bottom, text);
    today(sheet, bulletin.asOf(), scale, bottom, text);
    var caption =
        text.say(
            full ? "picture.caption" : "picture.caption.short",
            "pest",
            pest.pest(),
            "what",
            share.name(),
            "day",
            text.day(bulletin.asOf()));
    if (bulletin.hours().isPresent()) {
      caption = caption + " " + text.say("picture.hours.caption");
    }
    var drawing = new Sheet(title, WIDTH, end, sheet.build().marks());
    return new BulletinPart.Picture(drawing, caption);
  }

  /** From top to bottom of a panel, in millimetres. */
  record Span(double top, double bottom) {
    double height() {
      return bottom - top;
    }
  }

  private static DateScale scale(FieldBulletin bulletin, PestBulletin pest, SharePanel share) {
    var asOf = bulletin.asOf();
    var first =
        Stream.concat(pest.catches().stream().map(CatchSpan::from), share.firstDay().stream())
            .min(LocalDate::compareTo)
            .orElse(asOf.minusDays(DAYS_BEFORE));
    var last =
        Stream.concat(Stream.of(asOf.plusDays(DAYS_AFTER)), share.lastDay().stream())
            .max(LocalDate::compareTo)
            .orElseThrow();
    return new DateScale(first, last, LEFT, RIGHT);
  }

  /** Months along the lower edge, and a hair line through all panels where one begins. */
  private static void axis(Sheet.Builder sheet, DateScale scale, double bottom, BulletinText text) {
    var month = YearMonth.from(scale.first()).plusMonths(1);
    double free = LEFT;
    for (; !month.atDay(1).isAfter(scale.last()); month = month.plusMonths(1)) {
      double x = scale.at(month.atDay(1));
      var name = text.say("month." + month.getMonthValue()).substring(0, 3);
      sheet.line(x, TOP, x, bottom + 1.5, HAIR);
      double end = x + 1 + Sheet.width(name, MONTH);
      if (x >= free && end <= RIGHT + 2) {
        sheet.words(x + 0.6, bottom + 4.4, name, MONTH);
        free = end + 1;
      }
    }
  }

  private static void today(
      Sheet.Builder sheet, LocalDate asOf, DateScale scale, double bottom, BulletinText text) {
    double x = scale.at(asOf);
    sheet.line(x, TOP - 0.5, x, TOP + PANEL, TODAY_PEN);
    sheet.line(x, bottom - PANEL, x, bottom, TODAY_PEN);
    var word = text.say("picture.today", "day", text.day(asOf));
    boolean fits = x - Sheet.width(word, TODAY) > LEFT;
    sheet.words(
        fits ? x - 1 : x + 1,
        TOP - 6.2,
        word,
        fits ? TODAY : new Sheet.Type(TODAY.sizeMm(), true, Align.START));
  }
}
