package agro.course;

import agro.source.Reference;
import agro.source.Standing;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.Unit;
import agro.working.Caution;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The words of a course in one language: those of a topic first, then those that all share. Numbers
 * are written as the language writes them.
 */
public final class CourseWords {

  /** Digits of a computed number in print. */
  private static final int DIGITS = 5;

  private static final int FEWEST_DIGITS = 3;

  /** What is English in the symbols of units. */
  private static final List<String> UNIT_WORDS =
      List.of("short ton", "short cwt", "tbsp", "tsp", "(metric)");

  private static final Map<String, Wording> BUNDLES = new ConcurrentHashMap<>();

  private final Wording own;
  private final Wording shared;

  private CourseWords(Wording own, Wording shared) {
    this.own = own;
    this.shared = shared;
  }

  /**
   * The words that all topics share.
   *
   * @param language the language
   * @return the words
   */
  public static CourseWords of(TextLanguage language) {
    var shared = bundle(CourseWords.class, "course", language);
    return new CourseWords(shared, shared);
  }

  /**
   * These words with those of a bundle beside a class before them.
   *
   * @param owner class in whose package the bundle lies
   * @param name name of the bundle without language and ending
   * @return the words of the topic
   */
  public CourseWords in(Class<?> owner, String name) {
    return new CourseWords(bundle(owner, name, language()), shared);
  }

  private static Wording bundle(Class<?> owner, String name, TextLanguage language) {
    var key = owner.getPackageName() + "/" + name + "/" + language.code();
    return BUNDLES.computeIfAbsent(key, missing -> Wording.of(owner, name, language));
  }

  /**
   * The language.
   *
   * @return the language
   */
  public TextLanguage language() {
    return shared.language();
  }

  /**
   * One text with values in place of its names in braces.
   *
   * @param key name of the text, looked for in the topic and then in what all share
   * @param namesAndValues name and value in turn
   * @return the text
   * @throws java.util.MissingResourceException if there is no such text
   * @throws IllegalArgumentException if a name of the text has no value, or a value no name
   */
  public String say(String key, Object... namesAndValues) {
    return (own.has(key) ? own : shared).say(key, namesAndValues);
  }

  /**
   * A number as it was drawn, with all its digits.
   *
   * @param number any number
   * @return up to ten significant digits, no trailing zeros
   */
  public String exact(double number) {
    return shared.quantity(Numbers.plain(number));
  }

  /**
   * A computed number, rounded for print alone.
   *
   * @param number any number
   * @return up to five significant digits, no trailing zeros
   */
  public String number(double number) {
    return shared.quantity(Numbers.significant(number, DIGITS));
  }

  /**
   * An answer with no more digits than its tolerance can tell apart.
   *
   * @param number the right number
   * @param tolerance how far an answer may lie from it, 0 or more
   * @return the fewest digits, at least three, that stay within a fifth of the tolerance; five at
   *     most
   */
  public String answer(double number, AnswerTolerance tolerance) {
    for (int digits = FEWEST_DIGITS; digits < DIGITS; digits++) {
      var printed = Numbers.significant(number, digits);
      if (Math.abs(Double.parseDouble(printed) - number) <= tolerance.amount() / 5) {
        return shared.quantity(printed);
      }
    }
    return number(number);
  }

  /**
   * A right answer as it is asked for: with fixed decimals where its tolerance comes from them,
   * else with as many digits as its tolerance deserves.
   *
   * @param number any number
   * @param tolerance its tolerance
   * @return the number
   */
  public String asked(double number, AnswerTolerance tolerance) {
    if (tolerance.reason() != AnswerTolerance.Reason.DECIMALS) {
      return answer(number, tolerance);
    }
    // One unit of the last decimal is at most twice the tolerance.
    int decimals = 0;
    while (Math.pow(10, -decimals) > 2 * tolerance.amount() * (1 + 1e-9)) {
      decimals++;
    }
    return number(number, decimals);
  }

  /**
   * A number with fixed decimals.
   *
   * @param number any number
   * @param decimals decimals, 0 or more
   * @return the number
   */
  public String number(double number, int decimals) {
    return shared.quantity(Numbers.fixed(number, decimals));
  }

  /**
   * A computed amount in a unit.
   *
   * @param <Q> its kind
   * @param quantity the amount
   * @param unit unit in which it is printed
   * @return number with up to five significant digits, and unit
   */
  public <Q extends Quantity<Q>> String show(Q quantity, Unit<Q> unit) {
    return number(quantity.in(unit)) + " " + symbol(unit);
  }

  /**
   * A drawn amount in a unit, with all its digits.
   *
   * @param <Q> its kind
   * @param quantity the amount
   * @param unit unit in which it was drawn
   * @return number and unit
   */
  public <Q extends Quantity<Q>> String exact(Q quantity, Unit<Q> unit) {
    return exact(quantity.in(unit)) + " " + symbol(unit);
  }

  /**
   * The symbol of a unit in this language. Most symbols are the same in all languages; the few that
   * are words or short for words are translated.
   *
   * @param unit any unit
   * @return for example {@code "tbsp (US)"}
   */
  public String symbol(Unit<?> unit) {
    var symbol = unit.symbol();
    for (var word : UNIT_WORDS) {
      symbol = symbol.replace(word, shared.text("unit." + word.replaceAll("[^a-z]+", "")));
    }
    return symbol;
  }

  /**
   * A sum of money.
   *
   * @param amount the sum
   * @param currency sign or code
   * @return with two decimals
   */
  public String money(double amount, String currency) {
    return number(amount, 2) + " " + currency;
  }

  /**
   * A day with its month, without the year.
   *
   * @param day the day
   * @return for example {@code "3 July"}
   */
  public String day(LocalDate day) {
    return shared.say(
        "date.day",
        "day",
        day.getDayOfMonth(),
        "month",
        shared.say("month." + day.getMonthValue()));
  }

  /**
   * Cautions in this language.
   *
   * @param cautions the cautions
   * @return one sentence each
   */
  public List<String> cautions(List<Caution> cautions) {
    return cautions.stream().map(caution -> shared.say("caution." + caution.name())).toList();
  }

  /**
   * Where a fact comes from.
   *
   * @param source the source
   * @return authors and year, or the title where there are none, with the standing in this
   *     language; a habit of the trade says that it has no source
   */
  public String source(Reference source) {
    if (source.standing() == Standing.COMMON_PRACTICE) {
      return shared.say("source.common.practice");
    }
    var name = source.authors().isBlank() ? source.title() : source.authors();
    return name
        + (source.year() > 0 ? " " + source.year() : "")
        + " ("
        + shared.say("source.standing." + source.standing().name())
        + ")";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CourseWords words && own == words.own && shared == words.shared;
  }

  @Override
  public int hashCode() {
    return Objects.hash(own, shared);
  }
}
