package agro.dose;

import agro.report.InputProblem;
import agro.units.NumberRange;
import agro.units.Numbers;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A dose as one number range in the measure of a limit, or the reason why it cannot be told so.
 *
 * @param numbers low and high in the base unit of the limit; nothing if it cannot be told
 * @param reason why not, as a clause; empty if it can
 */
record DoseMeasure(Optional<NumberRange> numbers, String reason) {

  private static final int WRITTEN_DIGITS = 6;

  /** Digits of a number that comes from a conversion, such as that of acres. */
  private static final int COMPUTED_DIGITS = 4;

  private static final double EXACT = 1e-9;

  /** The dose per hectare in the measure of a limit. */
  static DoseMeasure of(DosePerArea dose, DosePerArea limit, Optional<Strength> strength) {
    try {
      return limit instanceof ProductPerArea product
          ? asProduct(dose, product.perHectare(), strength)
          : asActive(dose, ((ActivePerArea) limit).amount().basis(), strength);
    } catch (InputProblem problem) {
      return unknown(problem.expected() + " is missing");
    }
  }

  private static DoseMeasure asProduct(
      DosePerArea dose, ProductAmount limit, Optional<Strength> strength) {
    var amount =
        dose instanceof ProductPerArea product
            ? likened(product.perHectare(), limit, strength)
            : fromActive((ActivePerArea) dose, limit, strength);
    if (amount.isEmpty() || !amount.get().isLike(limit)) {
      return unknown(
          "the strength of the product is not stated, or " + dose + " is not measured as " + limit);
    }
    return known(amount.get());
  }

  private static Optional<ProductAmount> likened(
      ProductAmount dose, ProductAmount limit, Optional<Strength> strength) {
    if (dose.isLike(limit) || !(strength.orElse(null) instanceof LivingStrength living)) {
      return Optional.of(dose);
    }
    if (limit instanceof ProductAmount.Living) {
      return Optional.of(living.livingIn(dose));
    }
    return dose instanceof ProductAmount.Living count
        ? Optional.of(living.productForLiving(count, state(limit)))
        : Optional.of(dose);
  }

  private static Optional<ProductAmount> fromActive(
      ActivePerArea dose, ProductAmount limit, Optional<Strength> strength) {
    return strength.orElse(null) instanceof ActiveStrength active
        ? Optional.of(active.productFor(dose.perHectare(), state(limit)))
        : Optional.empty();
  }

  private static ProductState state(ProductAmount limit) {
    return limit instanceof ProductAmount.Liquid ? ProductState.LIQUID : ProductState.SOLID;
  }

  private static DoseMeasure asActive(
      DosePerArea dose, ActiveBasis basis, Optional<Strength> strength) {
    ActiveAmount amount;
    if (dose instanceof ActivePerArea active) {
      amount = active.perHectare();
    } else if (strength.orElse(null) instanceof ActiveStrength content) {
      amount = content.activeIn(((ProductPerArea) dose).perHectare());
    } else {
      return unknown("the strength of the product is not stated");
    }
    if (amount.basis() != basis) {
      return unknown(
          "one is stated as " + amount.basis().words() + " and the other as " + basis.words());
    }
    var range = amount.range();
    return new DoseMeasure(
        Optional.of(new NumberRange(range.low().kilograms(), range.high().kilograms())), "");
  }

  private static DoseMeasure known(ProductAmount amount) {
    return new DoseMeasure(
        Optional.of(new NumberRange(amount.lowNumber(), amount.highNumber())), "");
  }

  private static DoseMeasure unknown(String reason) {
    return new DoseMeasure(Optional.empty(), reason);
  }

  /** Numbers in the measure of a limit as a dose, for print. */
  static String print(NumberRange numbers, DosePerArea limit) {
    return print(numbers, limit, RoundingMode.HALF_EVEN);
  }

  /**
   * Numbers in the measure of a limit. What is allowed is rounded down and what is over it is
   * rounded up, so that print never turns the one into the other.
   */
  static String print(NumberRange numbers, DosePerArea limit, RoundingMode rounding) {
    if (limit instanceof ActivePerArea active) {
      return scaled(numbers, active.perHectare().unit().fromBase(1), rounding)
          + " "
          + active.amount().unit().symbol()
          + " "
          + active.amount().basis().symbol()
          + "/ha";
    }
    var amount = ((ProductPerArea) limit).amount();
    if (amount instanceof ProductAmount.Liquid liquid) {
      return scaled(numbers, liquid.unit().fromBase(1), rounding)
          + " "
          + liquid.unit().symbol()
          + "/ha";
    }
    if (amount instanceof ProductAmount.Solid solid) {
      return scaled(numbers, solid.unit().fromBase(1), rounding)
          + " "
          + solid.unit().symbol()
          + "/ha";
    }
    return scaled(numbers, 1, rounding)
        + " "
        + ((ProductAmount.Living) amount).unit().symbol()
        + "/ha";
  }

  private static String scaled(NumberRange numbers, double factor, RoundingMode rounding) {
    var low = number(numbers.low() * factor, rounding);
    var high = number(numbers.high() * factor, rounding);
    return low.equals(high) ? low : low + " to " + high;
  }

  /** A number that somebody wrote keeps its digits; one that was computed is shortened. */
  private static String number(double value, RoundingMode rounding) {
    double rounded = new BigDecimal(value).round(new MathContext(WRITTEN_DIGITS)).doubleValue();
    boolean written = Math.abs(rounded - value) <= EXACT * Math.abs(value);
    double shown =
        written
            ? rounded
            : new BigDecimal(value).round(new MathContext(COMPUTED_DIGITS, rounding)).doubleValue();
    return Numbers.significant(shown, WRITTEN_DIGITS);
  }
}
