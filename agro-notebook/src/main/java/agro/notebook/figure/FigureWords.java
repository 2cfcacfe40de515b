package agro.notebook.figure;

import agro.units.Numbers;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days, chances and amounts as the figures print them. */
final class FigureWords {

  static final String NOT_THIS_SEASON = "not this season";
  static final String DEGREE_DAYS = "°C·d";
  static final String SEASON_DEGREE_DAYS = "Degree-days since the season's start day (°C·d)";

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter LONG_DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private FigureWords() {}

  static String day(LocalDate day) {
    return DAY.format(day);
  }

  static String longDay(LocalDate day) {
    return LONG_DAY.format(day);
  }

  /** A chance in whole per cent; certainty is not for a forecast. */
  static String chance(double chance) {
    if (chance < 0.01) {
      return "below 1 %";
    }
    return chance > 0.99 ? "above 99 %" : Numbers.fixed(100 * chance, 0) + " %";
  }

  static String degreeDays(double degreeDaysC) {
    return Numbers.fixed(degreeDaysC, 0) + " " + DEGREE_DAYS;
  }

  /** Degree-days of a day, with a decimal. */
  static String degreeDaysFine(double degreeDaysC) {
    var printed =
        degreeDaysC > 0 && degreeDaysC < 0.05 ? "below 0.1" : Numbers.fixed(degreeDaysC, 1);
    return printed + " " + DEGREE_DAYS;
  }

  /** A text that begins a sentence. */
  static String sentence(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
