package agro.sampling.injury;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Unit;
import java.util.Currency;

/**
 * Money for an area of ground: what a treatment costs, or what a crop is worth.
 *
 * @param perHectare amount for a hectare, finite and zero or more
 * @param currency the currency
 */
public record MoneyPerArea(double perHectare, Currency currency) {

  private static final double SQUARE_METRES_PER_HECTARE = 10_000;

  /**
   * Checks the amount.
   *
   * @throws agro.report.InputProblem when it is below zero or not finite
   */
  public MoneyPerArea {
    perHectare = CurrencyCodes.zeroOrMore(perHectare, currency, "money per hectare");
  }

  /**
   * Money for an area in a stated unit.
   *
   * @param amount amount for one unit of area
   * @param currency three-letter code of ISO 4217
   * @param unit the unit of area
   * @return the amount
   * @throws agro.report.InputProblem when the amount is below zero or the code unknown
   */
  public static MoneyPerArea of(double amount, String currency, Unit<Area> unit) {
    return new MoneyPerArea(
        amount * SQUARE_METRES_PER_HECTARE / unit.toBase(1), CurrencyCodes.of(currency));
  }

  /**
   * Money for a hectare.
   *
   * @param amount amount for one hectare
   * @param currency three-letter code of ISO 4217
   * @return the amount
   * @throws agro.report.InputProblem when the amount is below zero or the code unknown
   */
  public static MoneyPerArea perHectare(double amount, String currency) {
    return of(amount, currency, AreaUnit.HECTARE);
  }

  /**
   * The amount for an area of another size.
   *
   * @param unit the unit of area
   * @return amount for one unit of area
   */
  public double in(Unit<Area> unit) {
    return perHectare * unit.toBase(1) / SQUARE_METRES_PER_HECTARE;
  }

  /**
   * The sum of two amounts.
   *
   * @param other amount in the same currency
   * @return the sum
   * @throws agro.report.InputProblem when the currencies differ
   */
  public MoneyPerArea plus(MoneyPerArea other) {
    CurrencyCodes.requireSame(currency, other.currency, "a sum");
    return new MoneyPerArea(perHectare + other.perHectare, currency);
  }

  /**
   * The amount times a number.
   *
   * @param factor zero or more
   * @return the product
   */
  public MoneyPerArea times(double factor) {
    return new MoneyPerArea(perHectare * factor, currency);
  }

  @Override
  public String toString() {
    return CurrencyCodes.amount(perHectare) + " " + currency.getCurrencyCode() + "/ha";
  }
}
