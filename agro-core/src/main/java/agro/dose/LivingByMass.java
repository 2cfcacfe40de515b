package agro.dose;

import agro.units.CountPerMass;
import agro.units.Density;
import agro.units.Mass;
import agro.units.QuantityRange;
import java.util.Objects;
import java.util.Optional;

/**
 * Living units by mass of product, as the label states them or as a test found them.
 *
 * @param content living units by mass, above zero
 * @param density density of the product, where it is stated
 */
public record LivingByMass(CountPerMass content, Optional<Density> density)
    implements LivingStrength {

  /** Refuses nulls and a strength that no product has. */
  public LivingByMass {
    Objects.requireNonNull(density, "density");
    StrengthReader.requireLiving(content.perGram());
  }

  /**
   * A strength without a density.
   *
   * @param content living units by mass
   */
  public LivingByMass(CountPerMass content) {
    this(content, Optional.empty());
  }

  @Override
  public LivingByMass withDensity(Density stated) {
    return new LivingByMass(content, Optional.of(stated));
  }

  @Override
  public LivingByMass alive(Viability viability) {
    return new LivingByMass(content.times(viability.share()), density);
  }

  @Override
  public ProductAmount.Living livingIn(ProductAmount product) {
    var mass = StrengthArithmetic.massOf(product, density, this);
    return new ProductAmount.Living(
        new QuantityRange<>(content.times(mass.low()), content.times(mass.high())),
        content.counted());
  }

  @Override
  public ProductAmount productForLiving(ProductAmount.Living living, ProductState state) {
    StrengthReader.requireSameCount(living, content.counted());
    double perBase = content.times(new Mass(1)).number();
    var mass =
        new QuantityRange<>(
            new Mass(living.lowNumber() / perBase), new Mass(living.highNumber() / perBase));
    return StrengthArithmetic.fromMass(mass, state, density, this);
  }

  @Override
  public String toString() {
    return content + density.map(d -> " at " + d).orElse("");
  }
}
