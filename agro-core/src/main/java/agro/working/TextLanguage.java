package agro.working;

import java.util.Locale;

/** Language of what is printed. Words lie in resource bundles that are complete in each. */
public enum TextLanguage {
  /** English. */
  ENGLISH("en", Locale.ENGLISH),
  /** German. */
  GERMAN("de", Locale.GERMAN);

  private final String code;
  private final Locale locale;

  TextLanguage(String code, Locale locale) {
    this.code = code;
    this.locale = locale;
  }

  /**
   * The code of the language, as web pages and names of files write it.
   *
   * @return two lower-case letters
   */
  public String code() {
    return code;
  }

  /**
   * How numbers are written. The settings of the machine never matter.
   *
   * @return the locale
   */
  public Locale locale() {
    return locale;
  }
}
