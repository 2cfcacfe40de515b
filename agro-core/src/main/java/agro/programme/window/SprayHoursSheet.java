package agro.programme.window;

import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Hours on paper. A day is a line of 24 places; a black bar runs through the hours that meet all
 * limits, and letters name the limits that refuse the others. The night is grey.
 */
final class SprayHoursSheet {

  private static final int DAYS = 21;
  private static final double LEFT = 37;
  private static final double TOP = 36;
  private static final double PLACE = 5.6;
  private static final double LINE = 7.2;
  private static final double RIGHT = LEFT + 24 * PLACE;
  private static final Sheet.Type SMALL = new Sheet.Type(2.3, false, Align.MIDDLE);
  private static final Sheet.Type TEXT = new Sheet.Type(3.1, false, Align.START);
  private static final Pen THIN = new Pen(0.15, 0.6, false);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private final SprayHours hours;
  private final Optional<SprayJob> job;
  private final Sheet.Builder page;

  private SprayHoursSheet(SprayHours hours, String title, Optional<SprayJob> job) {
    this.hours = hours;
    this.job = job;
    page = Sheet.a4(title);
    page.words(15, 18, title, new Sheet.Type(5, true, Align.START));
    page.words(15, 24, "Hours that meet your own limits, " + hours.field().name(), TEXT);
  }

  static List<Sheet> sheets(SprayHours hours, String title, Optional<SprayJob> job) {
    var sheets = new ArrayList<Sheet>();
    for (int from = 0; from < hours.days().size(); from += DAYS) {
      int to = Math.min(hours.days().size(), from + DAYS);
      sheets.add(new SprayHoursSheet(hours, title, job).draw(hours.days().subList(from, to)));
    }
    return sheets;
  }

  private Sheet draw(List<SprayDay> days) {
    for (int hour = 0; hour <= 24; hour += 3) {
      page.words(LEFT + hour * PLACE, TOP - 2, String.valueOf(hour), SMALL);
    }
    page.words(RIGHT + 4, TOP - 2, "longest", new Sheet.Type(2.3, false, Align.START));
    double y = TOP;
    for (var day : days) {
      day(day, y);
      y += LINE;
    }
    legend(y + 4);
    return page.build();
  }

  private void day(SprayDay day, double y) {
    page.words(15, y + 4.8, DAY.format(day.day()), TEXT);
    var sun = SunTimes.of(hours.field());
    for (var verdict : day.hours()) {
      double x = LEFT + PLACE * placeOf(verdict);
      double width = PLACE * widthOf(day, verdict);
      boolean night =
          sun.isPresent()
              && sun.get()
                  .touchesNight(
                      verdict.hour().start(),
                      day.day(),
                      java.time.Duration.ZERO,
                      java.time.Duration.ZERO);
      if (night) {
        shade(x, y, width, LINE, 0.9);
      }
      page.box(x, y, width, LINE, THIN);
      if (verdict.meetsAll()) {
        shade(x, y + 2.4, width, 2.4, 0);
      } else {
        letters(verdict.letters(), x + width / 2, y);
      }
    }
    page.words(RIGHT + 4, y + 4.8, beside(day), new Sheet.Type(2.7, false, Align.START));
  }

  /** Two lines of at most three letters. */
  private void letters(String letters, double x, double y) {
    int half = letters.length() > 3 ? 3 : letters.length();
    page.words(x, y + (letters.length() > 3 ? 3.1 : 4.5), letters.substring(0, half), SMALL);
    if (letters.length() > 3) {
      page.words(x, y + 5.9, letters.substring(half), SMALL);
    }
  }

  private void shade(double x, double y, double width, double height, double grey) {
    page.shade(
        List.of(
            new Place(x, y),
            new Place(x + width, y),
            new Place(x + width, y + height),
            new Place(x, y + height)),
        grey);
  }

  /** Place on the clock; the second of two equal hours gets the right half of it. */
  private double placeOf(HourVerdict verdict) {
    var time = verdict.hour().start().atZone(hours.field().zone());
    boolean second =
        hours.field().zone().getRules().getValidOffsets(time.toLocalDateTime()).size() > 1
            && time.equals(time.withLaterOffsetAtOverlap());
    return time.toLocalTime().toSecondOfDay() / 3600.0 + (second ? 0.5 : 0);
  }

  private double widthOf(SprayDay day, HourVerdict verdict) {
    var time = verdict.hour().start().atZone(hours.field().zone());
    boolean twice =
        day.dayHours() > 24
            && hours.field().zone().getRules().getValidOffsets(time.toLocalDateTime()).size() > 1;
    return twice ? 0.5 : 1;
  }

  private String beside(SprayDay day) {
    var run = day.longestRun() + " h";
    var fit = job.isEmpty() ? "" : day.fits(job.get()) ? ", job fits" : ", too short";
    return run + fit + (day.complete() ? "" : " *");
  }

  private void legend(double from) {
    double y = from + 4;
    shade(15, y - 2.4, 8, 2.4, 0);
    y =
        page.paragraph(
            26,
            y,
            "all limits are met; grey: night; ? or *: a value or hour is missing",
            TEXT,
            165);
    for (var limit : hours.limits().limits()) {
      page.words(15, y, limit.letter(), new Sheet.Type(3.1, true, Align.START));
      y = page.paragraph(26, y, "not met: " + limit.words(), TEXT, 165);
    }
    for (var left : hours.notJudged()) {
      y = page.paragraph(15, y, "Not judged: " + left + ".", TEXT, 176);
    }
    if (job.isPresent()) {
      var words = "The job takes " + Numbers.fixed(job.get().hours(), 1) + " h.";
      y = page.paragraph(15, y, words, TEXT, 176);
    }
    y = page.paragraph(15, y + 2, Caution.LABEL_FIRST.line(), TEXT, 176);
    page.paragraph(15, y, Caution.PEOPLE_WATER_BEES.line(), TEXT, 176);
  }
}
