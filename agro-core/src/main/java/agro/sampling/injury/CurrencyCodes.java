package agro.sampling.injury;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.Currency;

/** Codes of currencies, and the rule that amounts in two of them do not meet. */
final class CurrencyCodes {

  private static final double LARGE = 1000;

  private CurrencyCodes() {}

  /** The currency of a three-letter code of ISO 4217. */
  static Currency of(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw InputProblem.of("the currency \"" + code + "\"")
          .expected("a code of three capital letters after ISO 4217, such as EUR or KES")
          .because("amounts in two currencies must not be mixed up")
          .mend("write the code of the currency in which cost and price are stated");
    }
  }

  static void requireSame(Currency one, Currency other, String what) {
    if (!one.equals(other)) {
      throw InputProblem.of("amounts in " + one + " and in " + other)
          .expected("one currency for " + what)
          .because("nothing here knows at which rate the one buys the other")
          .mend("convert one of them at a rate of your own and state both in one currency");
    }
  }

  static double zeroOrMore(double amount, Currency currency, String what) {
    if (!(amount >= 0 && Double.isFinite(amount))) {
      throw InputProblem.of(what + " of " + amount + " " + currency)
          .expected("a finite amount of 0 or more")
          .because("a cost or a value below nothing turns the decision upside down")
          .mend("look for a minus sign, or state a gain as what it is");
    }
    return amount + 0.0;
  }

  /** An amount to six digits, and large ones to the hundredth, since nobody pays less. */
  static String amount(double money) {
    return money >= LARGE
        ? Numbers.plain(Math.rint(100 * money) / 100)
        : Numbers.significant(money, 6);
  }
}
