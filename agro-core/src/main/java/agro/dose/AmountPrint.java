package agro.dose;

import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.units.Unit;

/** Amounts and ranges in print. */
final class AmountPrint {

  private static final int SHOWN_DIGITS = 5;
  private static final int COUNT_DIGITS = 7;

  private AmountPrint() {}

  /** Both ends in the unit that is written, for example "250 to 300 mL". */
  static <Q extends Quantity<Q>> String range(QuantityRange<Q> range, Unit<Q> unit) {
    return numbers(range.low().in(unit), range.high().in(unit)) + " " + unit.symbol();
  }

  /** Both ends in the units of a reader. */
  static <Q extends Quantity<Q>> String styled(QuantityRange<Q> range, QuantityStyle style) {
    return style.printRange(range);
  }

  /** An amount that was computed, in the unit that is written, with the digits that are read. */
  static String shown(ProductAmount amount) {
    if (amount instanceof ProductAmount.Liquid liquid) {
      return shown(liquid.range(), liquid.unit());
    }
    if (amount instanceof ProductAmount.Solid solid) {
      return shown(solid.range(), solid.unit());
    }
    var living = (ProductAmount.Living) amount;
    return shown(living.range(), living.unit());
  }

  /** A rate that was computed, with the digits that are read. */
  static String shown(ProductRate rate) {
    return RatePrint.asWritten(shown(rate.amount()), rate.below());
  }

  /** A number that was computed, with the digits that are read. */
  static String shown(double number) {
    return Numbers.significant(number, COUNT_DIGITS);
  }

  private static <Q extends Quantity<Q>> String shown(QuantityRange<Q> range, Unit<Q> unit) {
    var low = Numbers.significant(range.low().in(unit), SHOWN_DIGITS);
    var high = Numbers.significant(range.high().in(unit), SHOWN_DIGITS);
    return (low.equals(high) ? low : low + " to " + high) + " " + unit.symbol();
  }

  /** One or two numbers with "to" between them. */
  static String numbers(double low, double high) {
    var first = Numbers.plain(low);
    var second = Numbers.plain(high);
    return first.equals(second) ? first : first + " to " + second;
  }

  /** A count with its noun in the plural where needed. */
  static String counted(double number, String singular, String plural) {
    return number == 1 ? singular : Numbers.plain(number) + " " + plural;
  }
}
