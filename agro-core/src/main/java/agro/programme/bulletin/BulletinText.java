package agro.programme.bulletin;

import agro.working.TextLanguage;
import agro.working.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.util.MissingResourceException;
import java.util.Set;

/**
 * The words of one language. Dates and numbers are written by the language alone, never by the
 * settings of the machine, and names of months come from the bundle, so that every release of Java
 * prints the same.
 */
public final class BulletinText {

  private static final double TENTHS = 10;

  private final Wording words;

  private BulletinText(Wording words) {
    this.words = words;
  }

  /**
   * The words of a language.
   *
   * @param language the language
   * @return the words
   */
  public static BulletinText of(TextLanguage language) {
    return new BulletinText(Wording.of(BulletinText.class, "bulletin", language));
  }

  /**
   * The language.
   *
   * @return the language
   */
  public TextLanguage language() {
    return words.language();
  }

  /**
   * The names of all texts.
   *
   * @return the keys in order
   */
  public Set<String> keys() {
    return words.keys();
  }

  /**
   * One text with values in place of its names in braces.
   *
   * @param key name of the text
   * @param namesAndValues name and value in turn; a value is put in as it is and never read again
   * @return the text
   * @throws MissingResourceException if there is no such text
   * @throws IllegalArgumentException if a name of the text has no value, or a value no name
   */
  public String say(String key, Object... namesAndValues) {
    return words.say(key, namesAndValues);
  }

  /**
   * A day with its month, without the year.
   *
   * @param day the day
   * @return for example {@code "3 Jul"}
   */
  public String day(LocalDate day) {
    return say("date.day", "day", day.getDayOfMonth(), "month", month(day));
  }

  /**
   * A day with its year.
   *
   * @param day the day
   * @return for example {@code "3 Jul 2026"}
   */
  public String fullDay(LocalDate day) {
    return say(
        "date.full",
        "weekday",
        say("weekday." + day.getDayOfWeek().getValue()),
        "day",
        day.getDayOfMonth(),
        "month",
        month(day),
        "year",
        day.getYear());
  }

  private String month(LocalDate day) {
    return say("month." + day.getMonthValue());
  }

  /**
   * A number.
   *
   * @param value the number
   * @param decimals digits behind the decimal sign
   * @return the number with the decimal sign of the language and without groups
   */
  public String number(double value, int decimals) {
    return words.number(value, decimals);
  }

  /**
   * A chance in tenths, as a person tells it.
   *
   * @param chance 0 to 1
   * @return for example {@code "8 in 10"}; the ends say that a rest remains
   */
  public String chance(double chance) {
    long tenths = Math.round(TENTHS * chance);
    if (tenths == 0) {
      return say("chance.least");
    }
    return tenths == (long) TENTHS ? say("chance.most") : say("chance.tenths", "tenths", tenths);
  }

  /**
   * A share in per cent.
   *
   * @param share 0 to 1
   * @return the per cent without decimals
   */
  public String percent(double share) {
    return say("percent", "number", Math.round(100 * share));
  }

  /**
   * A time in hours.
   *
   * @param time the time
   * @return hours with at most one decimal
   */
  public String hours(Duration time) {
    double hours = time.toMinutes() / 60.0;
    return say("hours", "number", number(hours, hours == Math.rint(hours) ? 0 : 1));
  }

  /**
   * A quantity that was printed with a decimal point, with the decimal sign of the language.
   *
   * @param printed for example {@code "0.75 L"}
   * @return for example {@code "0,75 L"}
   */
  public String quantity(String printed) {
    return words.quantity(printed);
  }
}
