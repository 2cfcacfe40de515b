package agro.dose;

import agro.report.InputProblem;
import agro.units.Density;
import agro.units.MassPerVolume;
import agro.units.QuantityRange;
import agro.units.Volume;
import java.util.Objects;
import java.util.Optional;

/**
 * Active ingredient by volume of product: g/L, lb/gal.
 *
 * @param content active ingredient by volume, above zero
 * @param basis what is stated: active ingredient, acid equivalent or salt
 * @param density density of the product, where it is stated
 */
public record ContentByVolume(MassPerVolume content, ActiveBasis basis, Optional<Density> density)
    implements ActiveStrength {

  /** Refuses nulls and a strength that no product has. */
  public ContentByVolume {
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(density, "density");
    StrengthReader.requireContent(content.gramsPerLitre(), "g/L");
  }

  /**
   * A strength as active ingredient, without a density.
   *
   * @param content active ingredient by volume
   */
  public ContentByVolume(MassPerVolume content) {
    this(content, ActiveBasis.ACTIVE_INGREDIENT, Optional.empty());
  }

  /**
   * The same content stated as something else; nothing is converted.
   *
   * @param other what is stated
   * @return the strength
   */
  public ContentByVolume as(ActiveBasis other) {
    return new ContentByVolume(content, other, density);
  }

  @Override
  public ContentByVolume withDensity(Density stated) {
    return new ContentByVolume(content, basis, Optional.of(stated));
  }

  /**
   * The same strength by mass: g/kg = g/L ÷ density in kg/L.
   *
   * @return content by mass
   * @throws InputProblem if no density is stated
   */
  public ContentByMass byMass() {
    var stated = density.orElseThrow(() -> StrengthArithmetic.noDensity("content by mass", this));
    return new ContentByMass(content.dividedBy(stated), basis, density);
  }

  @Override
  public ActiveAmount activeIn(ProductAmount product) {
    var volume = StrengthArithmetic.volumeOf(product, density, this);
    return ActiveAmount.of(
        new QuantityRange<>(content.times(volume.low()), content.times(volume.high())), basis);
  }

  @Override
  public ProductAmount productFor(ActiveAmount active, ProductState state) {
    StrengthArithmetic.requireBasis(active, basis, this);
    var range = active.range();
    double gramsPerLitre = content.gramsPerLitre();
    var volume =
        new QuantityRange<>(
            new Volume(range.low().kilograms() * 1000 / gramsPerLitre),
            new Volume(range.high().kilograms() * 1000 / gramsPerLitre));
    return StrengthArithmetic.fromVolume(volume, state, density, this);
  }

  @Override
  public String toString() {
    return content + " " + basis.symbol() + density.map(d -> " at " + d).orElse("");
  }
}
