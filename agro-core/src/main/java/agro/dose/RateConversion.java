package agro.dose;

import agro.report.InputProblem;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * Turns a rate of product into another kind, by way of the dose on a hectare of ground: the amount
 * above the line, times how much of what stands below it a hectare holds, divided by how much of
 * the new one it holds. Every such number has to be stated.
 *
 * @param rate rate of the label
 * @param figures what is stated of the field
 * @param target kind that is wanted
 */
public record RateConversion(ProductRate rate, FieldFigures figures, RateKind target) {

  /**
   * Refuses nulls and active ingredient, for which a strength is needed and no figure of a field.
   */
  public RateConversion {
    Objects.requireNonNull(rate, "rate");
    Objects.requireNonNull(figures, "figures");
    if (target.name().startsWith("ACTIVE")) {
      throw InputProblem.of(rate + " was to become " + target.words())
          .expected("a kind of rate of product")
          .because("product becomes active ingredient through its strength and not through a field")
          .mend("use StrengthConversion with the strength of the label");
    }
  }

  /**
   * The conversion of a rate through the figures of a field.
   *
   * @param rate rate of the label
   * @param figures what is stated of the field
   * @param target kind that is wanted
   * @return the new rate with the steps
   * @throws InputProblem if a figure is missing; the message names it
   */
  public static ConvertedRate convert(ProductRate rate, FieldFigures figures, RateKind target) {
    return new RateConversion(rate, figures, target).evaluate();
  }

  /**
   * Does the conversion.
   *
   * @return the new rate, a range where the label states one, with the steps
   * @throws InputProblem if a figure is missing; the message names it
   */
  public ConvertedRate evaluate() {
    var working = Working.of(capital(rate.kind().words()) + " as " + target.words());
    var sourceCount = new PerHectare(this, rate.kind(), canopyOf(rate.kind()));
    working = sourceCount.steps(working);
    double share = sourceCount.number() / RateBelow.number(rate);
    var hectare = rate.amount().times(share);
    working =
        working.step(
            "Product on a hectare",
            "product per ha = amount × number on a hectare ÷ number below the line",
            rate.amount()
                + " × "
                + counted(sourceCount.number(), rate.kind())
                + " ÷ "
                + counted(RateBelow.number(rate), rate.kind()),
            AmountPrint.shown(hectare) + "/ha");
    if (target == RateKind.PRODUCT_PER_AREA) {
      return finished(ProductPerArea.ofHectare(hectare), working);
    }
    var targetCount = new PerHectare(this, target, canopyOf(target));
    working = targetCount.steps(working);
    double written = RateBelow.written(target);
    var amount = hectare.times(written / targetCount.number());
    var result = RateBelow.make(target, amount, rate);
    working =
        working.step(
            capital(target.words()),
            "amount = product per ha × number below the line ÷ number on a hectare",
            AmountPrint.shown(hectare)
                + " × "
                + counted(written, target)
                + " ÷ "
                + counted(targetCount.number(), target),
            AmountPrint.shown(result));
    return finished(result, working);
  }

  private static String counted(double number, RateKind kind) {
    return AmountPrint.shown(number) + " " + RateBelow.unit(kind);
  }

  private ConvertedRate finished(ProductRate result, Working working) {
    return new ConvertedRate(rate, result, working.withCautions(Caution.all()));
  }

  /**
   * Whether the canopy of a kind is the one that the label states: a rate that is no canopy rate
   * becomes one only through the reference canopy of its label.
   */
  private boolean canopyOf(RateKind kind) {
    return kind == target && isCanopy(target) && !isCanopy(rate.kind());
  }

  private static boolean isCanopy(RateKind kind) {
    return kind == RateKind.PRODUCT_PER_TREE_ROW_VOLUME
        || kind == RateKind.PRODUCT_PER_LEAF_WALL_AREA;
  }

  static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
