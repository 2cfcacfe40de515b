package agro.programme.interval;

import agro.dose.ActiveBasis;
import agro.dose.ActivePerArea;
import agro.dose.ActiveStrength;
import agro.dose.DosePerArea;
import agro.dose.ProductPerArea;
import agro.programme.LabelActive;
import agro.programme.SprayedProduct;
import agro.report.InputProblem;
import java.util.List;
import java.util.OptionalDouble;

/** Doses as numbers in the measure of a maximum; of a range the high end, which is safe. */
final class DoseNumbers {

  private DoseNumbers() {}

  /** The number of a maximum, in its base unit per hectare. */
  static double bound(DosePerArea most) {
    return most instanceof ActivePerArea active
        ? active.perHectare().range().high().kilograms()
        : ((ProductPerArea) most).perHectare().highNumber();
  }

  /** Kilograms of one active ingredient per hectare; nothing if it cannot be told. */
  static OptionalDouble active(
      SprayedProduct product, String active, ActiveBasis basis, List<LabelActive> actives) {
    if (product.dose().isEmpty()) {
      return OptionalDouble.empty();
    }
    var dose = product.dose().get();
    if (dose instanceof ActivePerArea direct) {
      boolean clear = actives.size() <= 1 && direct.amount().basis() == basis;
      return clear
          ? OptionalDouble.of(direct.perHectare().range().high().kilograms())
          : OptionalDouble.empty();
    }
    var content =
        actives.stream()
            .filter(each -> each.name().equals(active))
            .flatMap(each -> each.content().stream())
            .findFirst();
    if (!(content.orElse(null) instanceof ActiveStrength strength)) {
      return OptionalDouble.empty();
    }
    try {
      var held = ((ProductPerArea) dose).active(strength).perHectare();
      return held.basis() == basis
          ? OptionalDouble.of(held.range().high().kilograms())
          : OptionalDouble.empty();
    } catch (InputProblem densityMissing) {
      return OptionalDouble.empty();
    }
  }

  /** Product per hectare in the measure of a maximum; nothing if it cannot be told. */
  static OptionalDouble product(
      SprayedProduct product, ProductPerArea most, List<LabelActive> actives) {
    if (product.dose().isEmpty()) {
      return OptionalDouble.empty();
    }
    var dose = product.dose().get();
    if (dose instanceof ProductPerArea direct) {
      return direct.perHectare().isLike(most.perHectare())
          ? OptionalDouble.of(direct.perHectare().highNumber())
          : OptionalDouble.empty();
    }
    // A dose stated as active ingredient is turned round through what one unit of product holds.
    var active = (ActivePerArea) dose;
    if (actives.size() != 1) {
      return OptionalDouble.empty();
    }
    var whole = SprayedProduct.of(product.product(), most);
    var held = active(whole, actives.get(0).name(), active.amount().basis(), actives);
    return held.isPresent() && held.getAsDouble() > 0
        ? OptionalDouble.of(
            active.perHectare().range().high().kilograms()
                / held.getAsDouble()
                * most.perHectare().highNumber())
        : OptionalDouble.empty();
  }
}
