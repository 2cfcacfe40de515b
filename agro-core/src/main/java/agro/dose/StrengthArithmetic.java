package agro.dose;

import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.QuantityRange;
import agro.units.Volume;
import agro.units.VolumeUnit;
import java.util.Optional;

/** Steps that the kinds of strength share, and what they refuse. */
final class StrengthArithmetic {

  private StrengthArithmetic() {}

  /** A liquid or solid product as a mass. */
  static QuantityRange<Mass> massOf(ProductAmount product, Optional<Density> density, Object of) {
    if (product instanceof ProductAmount.Solid solid) {
      return solid.range();
    }
    if (product instanceof ProductAmount.Liquid liquid) {
      var stated = density.orElseThrow(() -> noDensity(product.toString(), of));
      var range = liquid.range();
      return new QuantityRange<>(range.low().times(stated), range.high().times(stated));
    }
    throw livingProduct(product.toString(), of);
  }

  /** A liquid or solid product as a volume. */
  static QuantityRange<Volume> volumeOf(
      ProductAmount product, Optional<Density> density, Object of) {
    if (product instanceof ProductAmount.Liquid liquid) {
      return liquid.range();
    }
    if (product instanceof ProductAmount.Solid solid) {
      var stated = density.orElseThrow(() -> noDensity(product.toString(), of));
      var range = solid.range();
      return new QuantityRange<>(range.low().dividedBy(stated), range.high().dividedBy(stated));
    }
    throw livingProduct(product.toString(), of);
  }

  /** A volume of product in the state that is asked for. */
  static ProductAmount fromVolume(
      QuantityRange<Volume> volume, ProductState state, Optional<Density> density, Object of) {
    if (state == ProductState.LIQUID) {
      return new ProductAmount.Liquid(volume, VolumeUnit.MILLILITRE);
    }
    var stated = density.orElseThrow(() -> noDensity("A product that is weighed", of));
    var mass = new QuantityRange<>(volume.low().times(stated), volume.high().times(stated));
    return new ProductAmount.Solid(mass, MassUnit.GRAM);
  }

  /** A mass of product in the state that is asked for. */
  static ProductAmount fromMass(
      QuantityRange<Mass> mass, ProductState state, Optional<Density> density, Object of) {
    if (state == ProductState.SOLID) {
      return new ProductAmount.Solid(mass, MassUnit.GRAM);
    }
    var stated = density.orElseThrow(() -> noDensity("A product that is measured by volume", of));
    var range = new QuantityRange<>(mass.low().dividedBy(stated), mass.high().dividedBy(stated));
    return new ProductAmount.Liquid(range, VolumeUnit.MILLILITRE);
  }

  static void requireBasis(ActiveAmount active, ActiveBasis basis, Object of) {
    if (active.basis() != basis) {
      throw InputProblem.of(
              active
                  + " is stated as "
                  + active.basis().words()
                  + ", but the strength "
                  + of
                  + " as "
                  + basis.words())
          .expected("dose and strength on one basis")
          .because("360 g/L acid equivalent are 480 g/L of salt in a common case: 1.33 times apart")
          .mend(
              "take the strength that the label states as "
                  + active.basis().words()
                  + ", or convert with a SaltRatio from the label");
    }
  }

  static InputProblem noDensity(String product, Object strength) {
    return InputProblem.of(product + " was put together with a strength of " + strength)
        .expected("the density of the product, as its label or safety data sheet states it")
        .because(
            "one is by volume and the other by mass; a density taken as 1 kg/L puts the dose out by"
                + " 8 % for a product of 1.09 kg/L, and by much more for a powder")
        .mend("add it with withDensity, for example withDensity(Density.parse(\"1.09 kg/L\"))");
  }

  static InputProblem livingProduct(String product, Object strength) {
    return InputProblem.of(product + " was put together with a strength of " + strength)
        .expected("a strength in living units")
        .because("nobody can weigh a living unit, so that it is no mass of active ingredient")
        .mend("state the strength as a count, for example \"2 x 10^9 CFU/g\"");
  }
}
