package agro.sampling.injury;

import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.Unit;
import java.util.Currency;

/**
 * Money for a mass of produce: its price.
 *
 * @param perTonne amount for a tonne, finite and zero or more
 * @param currency the currency
 */
public record MoneyPerMass(double perTonne, Currency currency) {

  private static final double KILOGRAMS_PER_TONNE = 1_000;

  /**
   * Checks the amount.
   *
   * @throws agro.report.InputProblem when it is below zero or not finite
   */
  public MoneyPerMass {
    perTonne = CurrencyCodes.zeroOrMore(perTonne, currency, "money per tonne");
  }

  /**
   * Money for a mass in a stated unit.
   *
   * @param amount amount for one unit of mass
   * @param currency three-letter code of ISO 4217
   * @param unit the unit of mass
   * @return the price
   * @throws agro.report.InputProblem when the amount is below zero or the code unknown
   */
  public static MoneyPerMass of(double amount, String currency, Unit<Mass> unit) {
    return new MoneyPerMass(
        amount * KILOGRAMS_PER_TONNE / unit.toBase(1), CurrencyCodes.of(currency));
  }

  /**
   * Money for a tonne.
   *
   * @param amount amount for one tonne
   * @param currency three-letter code of ISO 4217
   * @return the price
   * @throws agro.report.InputProblem when the amount is below zero or the code unknown
   */
  public static MoneyPerMass perTonne(double amount, String currency) {
    return new MoneyPerMass(amount, CurrencyCodes.of(currency));
  }

  /**
   * What so much produce for each area is worth.
   *
   * @param produce mass of produce per area
   * @return the money
   */
  public MoneyPerArea times(MassPerArea produce) {
    return new MoneyPerArea(perTonne * produce.in(MassPerAreaUnit.TONNE_PER_HECTARE), currency);
  }

  @Override
  public String toString() {
    return CurrencyCodes.amount(perTonne) + " " + currency.getCurrencyCode() + "/t";
  }
}
