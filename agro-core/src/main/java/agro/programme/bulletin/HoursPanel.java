package agro.programme.bulletin;

import agro.programme.window.HourVerdict;
import agro.programme.window.SprayHours;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Place;
import java.time.LocalDate;
import java.util.List;

/** Hours that meet the user's own limits: a column a day, the day running from top to bottom. */
final class HoursPanel {

  /** Days that are shown. */
  static final int DAYS = 7;

  private static final int HOURS = 24;
  private static final double MEETS = 0.3;
  private static final Sheet.Type DAY = new Sheet.Type(3.4, false, Align.MIDDLE);
  private static final Sheet.Type SIGN = new Sheet.Type(1.6, true, Align.MIDDLE);

  private HoursPanel() {}

  static void draw(
      Sheet.Builder sheet,
      SprayHours hours,
      LocalDate first,
      SeasonFigure.Span panel,
      double left,
      double right,
      BulletinText text) {
    sheet.words(left, panel.top() - 1.6, text.say("picture.hours"), SeasonFigure.TITLE);
    double width = (right - left) / DAYS;
    for (var day : hours.days()) {
      double x = left + width * (day.day().toEpochDay() - first.toEpochDay());
      for (var hour : day.hours()) {
        hour(sheet, hours, hour, x, width, panel);
      }
    }
    for (int hour = 0; hour <= HOURS; hour += 6) {
      double y = y(hour, panel);
      sheet.line(left, y, right, y, SeasonFigure.HAIR);
      sheet.words(left - 1, y + 1.2, text.say("hours", "number", hour), SeasonFigure.TICK);
    }
    for (int i = 0; i <= DAYS; i++) {
      sheet.line(
          left + width * i, panel.top(), left + width * i, panel.bottom(), SeasonFigure.HAIR);
      if (i < DAYS) {
        var day = first.plusDays(i);
        sheet.words(left + width * (i + 0.5), panel.bottom() + 4.2, day.getDayOfMonth() + ".", DAY);
      }
    }
  }

  private static double y(double hour, SeasonFigure.Span panel) {
    return panel.top() + panel.height() * hour / HOURS;
  }

  private static void hour(
      Sheet.Builder sheet,
      SprayHours hours,
      HourVerdict hour,
      double x,
      double width,
      SeasonFigure.Span panel) {
    var start = hour.hour().start().atZone(hours.field().zone()).toLocalTime();
    double from = start.getHour() + start.getMinute() / 60.0;
    double top = y(from, panel);
    double bottom = y(Math.min(HOURS, from + 1), panel);
    if (hour.meetsAll()) {
      sheet.shade(
          List.of(
              new Place(x, top),
              new Place(x + width, top),
              new Place(x + width, bottom),
              new Place(x, bottom)),
          MEETS);
    } else if (hour.refusing().isEmpty()) {
      sheet.words(x + width / 2, bottom - 0.1, "?", SIGN);
    }
  }
}
