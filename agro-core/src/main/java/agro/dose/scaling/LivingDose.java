package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.LivingByMass;
import agro.dose.LivingByVolume;
import agro.dose.LivingStrength;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductRate;
import agro.dose.Viability;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Living units that a dose really brings: strength of the label × tested viability × product. The
 * product that would make up for dead units is not worked out, since it may be above the highest
 * dose of the label.
 *
 * @param label living units that the label states
 * @param tested share found alive in a test of this pack
 * @param rate rate of the product, per area, per seed, per manure or any other
 */
public record LivingDose(LivingStrength label, Viability tested, ProductRate rate) {

  /** Refuses nulls. */
  public LivingDose {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(tested, "tested");
    Objects.requireNonNull(rate, "rate");
  }

  /**
   * Works out the living units, printed in metric units.
   *
   * @return living units by label and by test, and the steps
   */
  public LivingDoseResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out the living units.
   *
   * @param style units of print
   * @return living units by label and by test, and the steps
   */
  public LivingDoseResult evaluate(QuantityStyle style) {
    var product = rate instanceof ProductPerArea field ? field.perHectare() : rate.amount();
    var per = rate instanceof ProductPerArea ? "ha" : rate.below();
    var alive = label.alive(tested);
    var stated = label.livingIn(product);
    var living = alive.livingIn(product);
    var share = Numbers.significant(100 * tested.share(), 4) + " %";
    var working =
        Working.of("Living units of a dose")
            .step(
                "strength that is alive",
                "strength of the label × viability",
                strengthText(label) + " × " + share,
                strengthText(alive),
                ScalingSources.UNITS_ALONE)
            .step(
                "living units per " + per,
                "living strength × product",
                strengthText(alive) + " × " + product.print(style),
                countText(living))
            .step(
                "by the label alone",
                "strength of the label × product",
                strengthText(label) + " × " + product.print(style),
                countText(stated))
            .withCautions(Caution.all());
    return new LivingDoseResult(alive, living, stated, per, findings(share), working);
  }

  private static String countText(ProductAmount.Living living) {
    return PowerOfTen.range(living.lowNumber(), living.highNumber()) + " " + living.unit().symbol();
  }

  private static String strengthText(LivingStrength strength) {
    if (strength instanceof LivingByMass byMass) {
      var content = byMass.content();
      return PowerOfTen.print(content.perGram()) + " " + content.counted().symbol() + "/g";
    }
    var content = ((LivingByVolume) strength).content();
    return PowerOfTen.print(content.perMillilitre()) + " " + content.counted().symbol() + "/mL";
  }

  private List<DoseFinding> findings(String share) {
    var findings = new ArrayList<DoseFinding>();
    if (tested.share() < 1) {
      findings.add(
          Findings.warning(
              "viability",
              "the dose brings "
                  + share
                  + " of the living units of the label; more product than"
                  + " the label allows is no cure, a fresh pack is"));
    }
    return findings;
  }
}
