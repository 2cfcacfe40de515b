package agro.dose;

import agro.units.Density;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * From active ingredient to product: rate of product = rate of active ingredient ÷ content. Content
 * by volume serves a liquid and content by mass a solid; from one to the other takes the density of
 * the label.
 *
 * @param rate active ingredient per area
 * @param strength content of the product
 * @param state whether the product is measured or weighed
 */
public record StrengthConversion(ActivePerArea rate, ActiveStrength strength, ProductState state) {

  /** Refuses nulls. */
  public StrengthConversion {
    Objects.requireNonNull(rate, "rate");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(state, "state");
  }

  /**
   * Does the conversion.
   *
   * @return the rate of product, a range where the rate is one, with the steps
   * @throws agro.report.InputProblem if a density is missing or the basis differs
   */
  public ProductForActive evaluate() {
    var product = rate.product(strength, state);
    var working = Working.of("Product for " + rate);
    var content = contentText();
    if (needsDensity()) {
      var density = density();
      content = converted(density);
      working =
          working.step(
              "Content as the product is measured",
              strength instanceof ContentByMass ? "g/L = g/kg × kg/L" : "g/kg = g/L ÷ kg/L",
              contentText()
                  + (strength instanceof ContentByMass ? " × " : " ÷ ")
                  + Numbers.plain(density.kilogramsPerLitre())
                  + " kg/L",
              content);
    }
    working =
        working.step(
            "Rate of product",
            "product = active ingredient ÷ content",
            rate + " ÷ " + content,
            AmountPrint.shown(product),
            DoseSources.PRODUCT_REQUIRED);
    return new ProductForActive(this, product, working.withCautions(Caution.all()));
  }

  private boolean needsDensity() {
    return (strength instanceof ContentByVolume) != (state == ProductState.LIQUID);
  }

  private Density density() {
    return strength.density().orElseThrow();
  }

  private String contentText() {
    return strength instanceof ContentByVolume byVolume
        ? Numbers.plain(byVolume.content().gramsPerLitre()) + " g/L"
        : Numbers.plain(((ContentByMass) strength).content().gramsPerKilogram()) + " g/kg";
  }

  private String converted(Density density) {
    return strength instanceof ContentByVolume byVolume
        ? Numbers.plain(byVolume.content().dividedBy(density).gramsPerKilogram()) + " g/kg"
        : Numbers.plain(((ContentByMass) strength).content().times(density).gramsPerLitre())
            + " g/L";
  }
}
