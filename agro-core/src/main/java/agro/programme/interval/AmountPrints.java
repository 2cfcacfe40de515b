package agro.programme.interval;

import agro.dose.ActivePerArea;
import agro.dose.DosePerArea;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.units.Numbers;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Sums of doses in print. What is left is rounded down and what is over is rounded up. */
final class AmountPrints {

  private static final int SOUND_DIGITS = 12;
  private static final int PRINTED_DIGITS = 6;

  private AmountPrints() {}

  /** A difference without the last bits that its terms cannot know. */
  static double clean(double number) {
    return new BigDecimal(number).setScale(SOUND_DIGITS, RoundingMode.HALF_EVEN).doubleValue();
  }

  static String down(double number, DosePerArea measure) {
    return print(number, measure, RoundingMode.DOWN);
  }

  static String up(double number, DosePerArea measure) {
    return print(number, measure, RoundingMode.UP);
  }

  private static String print(double number, DosePerArea measure, RoundingMode rounding) {
    double shown = inUnit(number, measure);
    double sound =
        new BigDecimal(shown)
            .round(new MathContext(SOUND_DIGITS, RoundingMode.HALF_EVEN))
            .doubleValue();
    double rounded =
        BigDecimal.valueOf(sound).round(new MathContext(PRINTED_DIGITS, rounding)).doubleValue();
    return Numbers.plain(rounded) + " " + unit(measure) + "/ha";
  }

  private static double inUnit(double number, DosePerArea measure) {
    if (measure instanceof ActivePerArea active) {
      return active.perHectare().unit().fromBase(number);
    }
    var amount = ((ProductPerArea) measure).amount();
    if (amount instanceof ProductAmount.Liquid liquid) {
      return liquid.unit().fromBase(number);
    }
    return amount instanceof ProductAmount.Solid solid ? solid.unit().fromBase(number) : number;
  }

  private static String unit(DosePerArea measure) {
    if (measure instanceof ActivePerArea active) {
      return active.amount().unit().symbol() + " " + active.amount().basis().symbol();
    }
    var amount = ((ProductPerArea) measure).amount();
    if (amount instanceof ProductAmount.Liquid liquid) {
      return liquid.unit().symbol();
    }
    return amount instanceof ProductAmount.Solid solid
        ? solid.unit().symbol()
        : ((ProductAmount.Living) amount).unit().symbol();
  }
}
