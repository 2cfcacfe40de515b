package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.Mass;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * A jar test: the tank mix on a small scale, product in the jar = strength of the spray × jar. What
 * is too little for the syringe or the scale is named, with the jar that would do.
 *
 * @param partners the products in the order in which they are mixed, at least one
 * @param jar volume of the finished mix in the jar, above zero
 * @param leastVolume smallest volume that the syringe measures well, above zero
 * @param leastMass smallest mass that the scale weighs well, above zero
 */
public record JarTest(List<JarPartner> partners, Volume jar, Volume leastVolume, Mass leastMass) {

  /** Refuses a jar without a mix. */
  public JarTest {
    partners = List.copyOf(partners);
    if (partners.isEmpty()) {
      throw InputProblem.of("no product is given for the jar test")
          .expected("the products of the tank mix")
          .because("a jar of water shows nothing")
          .mend("add the products in the order in which they go into the tank");
    }
    var names = new HashSet<String>();
    for (var partner : partners) {
      if (!names.add(partner.name())) {
        throw InputProblem.of("two products of the jar test are called " + partner.name())
            .expected("each product once")
            .because("a product that is entered twice is tested at twice its strength")
            .mend("leave out the second, or give the names apart");
      }
    }
    ScalingChecks.aboveZero(
        jar, "volume of the jar", "amounts are in proportion to it", "take 0.5 or 1 L");
    ScalingChecks.aboveZero(
        leastVolume,
        "smallest volume of the syringe",
        "what is less than it cannot be measured out",
        "read it from the first mark of the syringe");
    ScalingChecks.aboveZero(
        leastMass,
        "smallest mass of the scale",
        "what is less than it cannot be weighed",
        "read it from the plate of the scale");
  }

  /**
   * Scales the mix, printed in metric units.
   *
   * @return amounts in the order of mixing, findings and steps
   */
  public JarTestResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Scales the mix.
   *
   * @param style units of print
   * @return amounts in the order of mixing, findings and steps
   */
  public JarTestResult evaluate(QuantityStyle style) {
    var parts = new ArrayList<JarTestResult.Part>();
    var findings = new ArrayList<DoseFinding>();
    var working = Working.of("Jar test");
    for (var partner : partners) {
      var amount = partner.strength().in(jar);
      parts.add(new JarTestResult.Part(partner.name(), amount));
      working =
          working.step(
              partner.name(),
              "strength × jar",
              partner.strength() + " × " + style.print(jar),
              amount.print(style),
              ScalingSources.UNITS_ALONE);
      double share = shareOfLeast(amount);
      if (share < 1 - 1e-9) {
        findings.add(tooLittle(partner, amount, share, style));
      }
    }
    return new JarTestResult(parts, findings, working.withCautions(Caution.all()));
  }

  /** The low end over what can be measured; living units that are only counted count as enough. */
  private double shareOfLeast(ProductAmount amount) {
    if (amount instanceof ProductAmount.Liquid liquid) {
      return liquid.range().low().ratioTo(leastVolume);
    }
    if (amount instanceof ProductAmount.Solid solid) {
      return solid.range().low().ratioTo(leastMass);
    }
    return 1;
  }

  private DoseFinding tooLittle(
      JarPartner partner, ProductAmount amount, double share, QuantityStyle style) {
    var least =
        amount instanceof ProductAmount.Liquid ? style.print(leastVolume) : style.print(leastMass);
    var words =
        "too little to measure: "
            + partner.name()
            + ", "
            + amount.print(style)
            + " where "
            + least
            + " is the least";
    var cure =
        share > 0
            ? "; take a jar of "
                + style.print(jar.dividedBy(share))
                + " or dilute the product in water first"
            : "; a strength of zero needs no jar test";
    return Findings.warning("measuring", words + cure);
  }
}
