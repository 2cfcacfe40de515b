package agro.dose.scaling;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.SprayVolume;
import java.util.Objects;

/**
 * One product of a tank mix as it goes into the jar.
 *
 * @param name name of the product
 * @param strength product per volume of spray
 */
public record JarPartner(String name, ProductPerSprayVolume strength) {

  /** Refuses a product without a name. */
  public JarPartner {
    name = ScalingChecks.named(name, "product");
    Objects.requireNonNull(strength, "strength");
  }

  /**
   * A product with a rate per area.
   *
   * @param name name of the product
   * @param rate product per area of field
   * @param spray spray volume of the sprayer
   * @return the partner with the strength of that spray
   */
  public static JarPartner of(String name, ProductPerArea rate, SprayVolume spray) {
    return new JarPartner(name, rate.inSpray(spray));
  }
}
