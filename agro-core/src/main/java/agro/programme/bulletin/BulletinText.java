package agro.programme.bulletin;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.MissingResourceException;
import java.util.Objects;
import java.util.PropertyResourceBundle;
import java.util.Set;
import java.util.TreeSet;

/**
 * The words of one language. Dates and numbers are written by the language alone, never by the
 * settings of the machine, and names of months come from the bundle, so that every release of Java
 * prints the same.
 */
public final class BulletinText {

  private static final double TENTHS = 10;

  private final BulletinLanguage language;
  private final PropertyResourceBundle words;

  private BulletinText(BulletinLanguage language, PropertyResourceBundle words) {
    this.language = language;
    this.words = words;
  }

  /**
   * The words of a language.
   *
   * @param language the language
   * @return the words
   */
  public static BulletinText of(BulletinLanguage language) {
    var name = "bulletin_" + language.code() + ".properties";
    try (var stream = Objects.requireNonNull(BulletinText.class.getResourceAsStream(name), name)) {
      var reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
      return new BulletinText(language, new PropertyResourceBundle(reader));
    } catch (IOException e) {
      throw new UncheckedIOException("the words of " + name + " could not be read", e);
    }
  }

  /**
   * The language.
   *
   * @return the language
   */
  public BulletinLanguage language() {
    return language;
  }

  /**
   * The names of all texts.
   *
   * @return the keys in order
   */
  public Set<String> keys() {
    return new TreeSet<>(words.keySet());
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
    var pattern = words.getString(key);
    var said = new StringBuilder();
    int used = 0;
    int at = 0;
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', at)) {
      int close = pattern.indexOf('}', open);
      said.append(pattern, at, open);
      said.append(value(key, pattern.substring(open + 1, close), namesAndValues));
      used++;
      at = close + 1;
    }
    if (used < namesAndValues.length / 2) {
      throw new IllegalArgumentException("the text " + key + " has no place for every value");
    }
    return said.append(pattern.substring(at)).toString();
  }

  private static Object value(String key, String name, Object... namesAndValues) {
    for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
      if (namesAndValues[i].equals(name)) {
        return namesAndValues[i + 1];
      }
    }
    throw new IllegalArgumentException("the text " + key + " asks for a value of " + name);
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
    return String.format(language.locale(), "%." + decimals + "f", value);
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
    return language == BulletinLanguage.ENGLISH
        ? printed
        : printed.replaceAll("(?<=[0-9])\\.(?=[0-9])", ",");
  }
}
