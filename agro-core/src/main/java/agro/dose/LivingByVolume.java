package agro.dose;

import agro.units.CountPerVolume;
import agro.units.Density;
import agro.units.QuantityRange;
import agro.units.Volume;
import java.util.Objects;
import java.util.Optional;

/**
 * Living units by volume of product, as the label states them or as a test found them.
 *
 * @param content living units by volume, above zero
 * @param density density of the product, where it is stated
 */
public record LivingByVolume(CountPerVolume content, Optional<Density> density)
    implements LivingStrength {

  /** Refuses nulls and a strength that no product has. */
  public LivingByVolume {
    Objects.requireNonNull(density, "density");
    StrengthReader.requireLiving(content.perMillilitre());
  }

  /**
   * A strength without a density.
   *
   * @param content living units by volume
   */
  public LivingByVolume(CountPerVolume content) {
    this(content, Optional.empty());
  }

  @Override
  public LivingByVolume withDensity(Density stated) {
    return new LivingByVolume(content, Optional.of(stated));
  }

  @Override
  public LivingByVolume alive(Viability viability) {
    return new LivingByVolume(content.times(viability.share()), density);
  }

  @Override
  public ProductAmount.Living livingIn(ProductAmount product) {
    var volume = StrengthArithmetic.volumeOf(product, density, this);
    return new ProductAmount.Living(
        new QuantityRange<>(content.times(volume.low()), content.times(volume.high())),
        content.counted());
  }

  @Override
  public ProductAmount productForLiving(ProductAmount.Living living, ProductState state) {
    StrengthReader.requireSameCount(living, content.counted());
    double perBase = content.times(new Volume(1)).number();
    var volume =
        new QuantityRange<>(
            new Volume(living.lowNumber() / perBase), new Volume(living.highNumber() / perBase));
    return StrengthArithmetic.fromVolume(volume, state, density, this);
  }

  @Override
  public String toString() {
    return content + density.map(d -> " at " + d).orElse("");
  }
}
