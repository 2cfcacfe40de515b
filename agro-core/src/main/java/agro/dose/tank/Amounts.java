package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.units.Count;
import agro.units.Mass;
import agro.units.QuantityRange;
import agro.units.Volume;

/** Amounts of a product from numbers in the base unit of its kind. */
final class Amounts {

  private Amounts() {}

  /** An amount that is measured as another one. */
  static ProductAmount like(ProductAmount other, double low, double high) {
    if (other instanceof ProductAmount.Liquid liquid) {
      return new ProductAmount.Liquid(
          new QuantityRange<>(new Volume(low), new Volume(high)), liquid.unit());
    }
    if (other instanceof ProductAmount.Solid solid) {
      return new ProductAmount.Solid(
          new QuantityRange<>(new Mass(low), new Mass(high)), solid.unit());
    }
    var living = (ProductAmount.Living) other;
    var counted = living.range().low().counted();
    return new ProductAmount.Living(
        new QuantityRange<>(new Count(low, counted), new Count(high, counted)), living.unit());
  }
}
