package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.units.Density;

/** Marks, fillings and errors of a measured amount. */
final class VesselArithmetic {

  /** Shares of a mark below this are rounding of binary fractions. */
  private static final double ROUNDING = 1e-9;

  private VesselArithmetic() {}

  /** A vessel's size in the base unit of the product: litres, or kilograms through bulk density. */
  private record Marks(double capacity, double mark, boolean graduated) {}

  static VesselReading liquid(ProductAmount.Liquid target, MeasuringVessel vessel) {
    if (vessel instanceof MeasuringVessel.Graduated marked) {
      return read(target, vessel, marked.capacity().litres(), marked.mark().litres());
    }
    if (vessel instanceof MeasuringVessel.Level level) {
      return level(target, vessel, level.content().litres());
    }
    if (vessel instanceof MeasuringVessel.Sachet sachet) {
      return sachet(target, sachet);
    }
    throw VesselRefusals.liquidOnScale(target, vessel);
  }

  static VesselReading solid(ProductAmount.Solid target, MeasuringVessel vessel) {
    if (vessel instanceof MeasuringVessel.Scale scale) {
      return read(target, vessel, scale.capacity().kilograms(), scale.resolution().kilograms());
    }
    if (vessel instanceof MeasuringVessel.Sachet sachet) {
      return sachet(target, sachet);
    }
    throw VesselRefusals.powderByVolume(target, vessel);
  }

  static VesselReading powder(
      ProductAmount.Solid target, MeasuringVessel vessel, Density bulkDensity) {
    double kilograms = bulkDensity.kilogramsPerLitre();
    if (vessel instanceof MeasuringVessel.Graduated marked) {
      return read(
          target,
          vessel,
          marked.capacity().litres() * kilograms,
          marked.mark().litres() * kilograms);
    }
    if (vessel instanceof MeasuringVessel.Level level) {
      return level(target, vessel, level.content().litres() * kilograms);
    }
    return solid(target, vessel);
  }

  private static VesselReading sachet(ProductAmount target, MeasuringVessel.Sachet sachet) {
    if (!sachet.content().isLike(target)) {
      throw VesselRefusals.otherSachet(target, sachet);
    }
    return level(target, sachet, sachet.content().highNumber());
  }

  private static VesselReading read(
      ProductAmount target, MeasuringVessel vessel, double capacity, double mark) {
    return reading(target, vessel, new Marks(capacity, mark, true));
  }

  private static VesselReading level(ProductAmount target, MeasuringVessel vessel, double size) {
    return reading(target, vessel, new Marks(size, size, false));
  }

  private static VesselReading reading(ProductAmount target, MeasuringVessel vessel, Marks marks) {
    double lowest = Math.ceil(target.lowNumber() / marks.mark() - ROUNDING);
    double highest = Math.floor(target.highNumber() / marks.mark() + ROUNDING);
    boolean inside = lowest <= highest && highest > 0;
    double low = marks.mark() * (inside ? lowest : Math.rint(target.lowNumber() / marks.mark()));
    double high = marks.mark() * (inside ? highest : Math.rint(target.highNumber() / marks.mark()));
    double rounding = inside ? 0 : worst(low, high, target);
    long fillings = (long) Math.ceil(high / marks.capacity() - ROUNDING);
    double smallest = target.lowNumber() > 0 ? target.lowNumber() : target.highNumber();
    double between = marks.graduated() ? Math.max(1, fillings) * marks.mark() / 2 / smallest : 0;
    return new VesselReading(
        vessel, target, Amounts.like(target, low, high), fillings, rounding, between);
  }

  private static double worst(double low, double high, ProductAmount target) {
    double atLow = target.lowNumber() > 0 ? low / target.lowNumber() - 1 : 0;
    double atHigh = high / target.highNumber() - 1;
    return Math.abs(atLow) > Math.abs(atHigh) ? atLow : atHigh;
  }
}
