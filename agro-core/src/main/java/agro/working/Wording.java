package agro.working;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.MissingResourceException;
import java.util.Objects;
import java.util.PropertyResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The words of one language from a resource bundle. Numbers are written by the language alone,
 * never by the settings of the machine, so that every release of Java prints the same.
 */
public final class Wording {

  private static final Pattern POINT = Pattern.compile("(?<=[0-9])\\.(?=[0-9])");

  private final String name;
  private final TextLanguage language;
  private final PropertyResourceBundle words;

  private Wording(String name, TextLanguage language, PropertyResourceBundle words) {
    this.name = name;
    this.language = language;
    this.words = words;
  }

  /**
   * The words of a bundle beside a class: the file {@code NAME_CODE.properties} in UTF-8.
   *
   * @param owner class in whose package the bundle lies
   * @param name name of the bundle without language and ending
   * @param language the language
   * @return the words
   * @throws NullPointerException if there is no such bundle
   */
  public static Wording of(Class<?> owner, String name, TextLanguage language) {
    var file = name + "_" + language.code() + ".properties";
    try (var stream = Objects.requireNonNull(owner.getResourceAsStream(file), file)) {
      var reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
      return new Wording(name, language, new PropertyResourceBundle(reader));
    } catch (IOException e) {
      throw new UncheckedIOException("the words of " + file + " could not be read", e);
    }
  }

  /**
   * The language.
   *
   * @return the language
   */
  public TextLanguage language() {
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
   * Whether there is such a text.
   *
   * @param key name of the text
   * @return whether {@link #say} knows it
   */
  public boolean has(String key) {
    return words.handleGetObject(key) != null;
  }

  /**
   * One text as it stands in the bundle.
   *
   * @param key name of the text
   * @return the text with the names in braces
   * @throws MissingResourceException if there is no such text
   */
  public String text(String key) {
    return words.getString(key);
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
      throw new IllegalArgumentException(
          "the text " + key + " of " + name + " has no place for every value");
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
   * A quantity that was printed with a decimal point, with the decimal sign of the language.
   *
   * @param printed for example {@code "0.75 L"}
   * @return for example {@code "0,75 L"}
   */
  public String quantity(String printed) {
    return language == TextLanguage.ENGLISH ? printed : POINT.matcher(printed).replaceAll(",");
  }
}
