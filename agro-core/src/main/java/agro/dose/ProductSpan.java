package agro.dose;

import agro.units.QuantityRange;

/** The range from one amount of product to another. */
final class ProductSpan {

  private ProductSpan() {}

  /** From the low end of one to the high end of another of the same kind. */
  static ProductAmount from(ProductAmount low, ProductAmount high) {
    if (low instanceof ProductAmount.Liquid a && high instanceof ProductAmount.Liquid b) {
      return new ProductAmount.Liquid(
          new QuantityRange<>(a.range().low(), b.range().high()), a.unit());
    }
    if (low instanceof ProductAmount.Solid a && high instanceof ProductAmount.Solid b) {
      return new ProductAmount.Solid(
          new QuantityRange<>(a.range().low(), b.range().high()), a.unit());
    }
    if (low instanceof ProductAmount.Living a && high instanceof ProductAmount.Living b) {
      return new ProductAmount.Living(
          new QuantityRange<>(a.range().low(), b.range().high()), a.unit());
    }
    throw AmountReader.unlike(low, high);
  }
}
