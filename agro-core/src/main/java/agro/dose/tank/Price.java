package agro.dose.tank;

import agro.report.InputProblem;
import java.math.BigDecimal;

/**
 * A sum of money in a local currency, exact to the last coin.
 *
 * @param amount zero or more
 * @param currency code or name of the currency as it is printed; not looked up anywhere
 */
public record Price(BigDecimal amount, String currency) {

  /** Refuses a price below zero and one without a currency. */
  public Price {
    currency = currency.strip();
    if (amount.signum() < 0) {
      throw InputProblem.of("a price of " + amount.toPlainString() + " " + currency)
          .expected("zero or more")
          .because("the cheapest packs would be found by being paid for taking them")
          .mend("copy the price of one pack");
    }
    if (currency.isEmpty()) {
      throw InputProblem.of("a price of " + amount.toPlainString() + " without a currency")
          .expected("the code or the name of the currency")
          .because("prices in two currencies cannot be compared")
          .mend("write the currency, for example the three letters of its code");
    }
  }

  /**
   * A price.
   *
   * @param amount a decimal number, for example {@code "12.50"}
   * @param currency code or name of the currency
   * @return the price
   * @throws InputProblem if the amount is no decimal number
   */
  public static Price of(String amount, String currency) {
    try {
      return new Price(new BigDecimal(amount.strip()), currency);
    } catch (NumberFormatException problem) {
      throw InputProblem.of("the price \"" + amount + "\"")
          .expected("a number with a decimal point and no grouping, such as 1250.50")
          .because("a comma means thousands in one country and decimals in another")
          .mend("write the digits with at most one point");
    }
  }

  /**
   * The price of several.
   *
   * @param packs how many
   * @return the product
   */
  Price times(long packs) {
    return new Price(amount.multiply(BigDecimal.valueOf(packs)), currency);
  }

  /**
   * The sum.
   *
   * @param other a price in the same currency
   * @return the sum
   */
  Price plus(Price other) {
    requireSame(other);
    return new Price(amount.add(other.amount), currency);
  }

  void requireSame(Price other) {
    if (!currency.equals(other.currency)) {
      throw InputProblem.of("prices in " + currency + " and in " + other.currency)
          .expected("all packs of one product in one currency")
          .because(
              "the cheapest packs cannot be found across currencies without a rate of exchange")
          .mend("turn the prices into one currency first");
    }
  }

  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency;
  }
}
