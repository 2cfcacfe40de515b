package agro.trial.load;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.Currency;
import java.util.Objects;

/**
 * What one unit of a grade of produce brings.
 *
 * @param grade name of the grade
 * @param amount money for one unit, 0 for what cannot be sold
 * @param currency the currency
 * @param per the unit that is paid for
 */
public record GradePrice(String grade, double amount, Currency currency, Per per) {

  /** What is paid for. */
  public enum Per {
    /** A kilogram. */
    KILOGRAM("kg"),
    /** A piece, such as a head or a bunch. */
    PIECE("piece");

    private final String words;

    Per(String words) {
      this.words = words;
    }

    /**
     * The unit in words.
     *
     * @return a short word
     */
    public String words() {
      return words;
    }
  }

  /**
   * Checks the amount.
   *
   * @throws InputProblem when it is below zero or not finite
   */
  public GradePrice {
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(currency, "currency");
    Objects.requireNonNull(per, "per");
    if (!(amount >= 0 && Double.isFinite(amount))) {
      throw InputProblem.of("a price of " + amount + " for the grade " + grade)
          .expected("a finite amount of 0 or more")
          .because("what costs money to be rid of is a cost and no price")
          .mend("give 0, and add the cost to that of the treatment");
    }
  }

  /**
   * A price for a kilogram.
   *
   * @param grade name of the grade
   * @param amount money for a kilogram
   * @param currency code of ISO 4217
   * @return the price
   * @throws InputProblem when the amount is below zero or the code unknown
   */
  public static GradePrice perKilogram(String grade, double amount, String currency) {
    return new GradePrice(grade, amount, currencyOf(currency), Per.KILOGRAM);
  }

  /**
   * A price for a piece.
   *
   * @param grade name of the grade
   * @param amount money for a piece
   * @param currency code of ISO 4217
   * @return the price
   * @throws InputProblem when the amount is below zero or the code unknown
   */
  public static GradePrice perPiece(String grade, double amount, String currency) {
    return new GradePrice(grade, amount, currencyOf(currency), Per.PIECE);
  }

  private static Currency currencyOf(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw InputProblem.of("the currency \"" + code + "\"")
          .expected("a code of three capital letters after ISO 4217, such as EUR or KES")
          .because("amounts in two currencies must not be mixed up")
          .mend("write the code of the currency of the prices");
    }
  }

  @Override
  public String toString() {
    return grade
        + ": "
        + Numbers.plain(amount)
        + " "
        + currency.getCurrencyCode()
        + "/"
        + per.words();
  }
}
