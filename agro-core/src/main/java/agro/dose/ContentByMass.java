package agro.dose;

import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.QuantityRange;
import java.util.Objects;
import java.util.Optional;

/**
 * Active ingredient by mass of product: % w/w, g/kg.
 *
 * @param content active ingredient by mass, above zero
 * @param basis what is stated: active ingredient, acid equivalent or salt
 * @param density density of the product, where it is stated
 */
public record ContentByMass(MassPerMass content, ActiveBasis basis, Optional<Density> density)
    implements ActiveStrength {

  /** Refuses nulls and a strength that no product has. */
  public ContentByMass {
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(density, "density");
    StrengthReader.requireContent(content.gramsPerKilogram(), "g/kg");
  }

  /**
   * A strength as active ingredient, without a density.
   *
   * @param content active ingredient by mass
   */
  public ContentByMass(MassPerMass content) {
    this(content, ActiveBasis.ACTIVE_INGREDIENT, Optional.empty());
  }

  /**
   * The same content stated as something else; nothing is converted.
   *
   * @param other what is stated
   * @return the strength
   */
  public ContentByMass as(ActiveBasis other) {
    return new ContentByMass(content, other, density);
  }

  @Override
  public ContentByMass withDensity(Density stated) {
    return new ContentByMass(content, basis, Optional.of(stated));
  }

  /**
   * The same strength by volume: g/L = g/kg × density in kg/L.
   *
   * @return content by volume
   * @throws InputProblem if no density is stated
   */
  public ContentByVolume byVolume() {
    var stated = density.orElseThrow(() -> StrengthArithmetic.noDensity("content by volume", this));
    return new ContentByVolume(content.times(stated), basis, density);
  }

  @Override
  public ActiveAmount activeIn(ProductAmount product) {
    var mass = StrengthArithmetic.massOf(product, density, this);
    return ActiveAmount.of(
        new QuantityRange<>(content.times(mass.low()), content.times(mass.high())), basis);
  }

  @Override
  public ProductAmount productFor(ActiveAmount active, ProductState state) {
    StrengthArithmetic.requireBasis(active, basis, this);
    var range = active.range();
    double gramsPerKilogram = content.gramsPerKilogram();
    var mass =
        new QuantityRange<>(
            new Mass(range.low().kilograms() * 1000 / gramsPerKilogram),
            new Mass(range.high().kilograms() * 1000 / gramsPerKilogram));
    return StrengthArithmetic.fromMass(mass, state, density, this);
  }

  @Override
  public String toString() {
    return content + " " + basis.symbol() + density.map(d -> " at " + d).orElse("");
  }
}
