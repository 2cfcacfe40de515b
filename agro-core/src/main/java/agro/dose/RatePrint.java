package agro.dose;

import agro.units.CountPerArea;
import agro.units.MassPerArea;
import agro.units.MassPerLength;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.Quantity;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.units.VolumePerArea;
import agro.units.VolumePerLength;
import agro.units.VolumePerMass;
import agro.units.VolumePerVolume;
import java.util.function.DoubleFunction;

/** Rates in print. */
final class RatePrint {

  private RatePrint() {}

  /** As the label writes it, for example "250 to 300 mL/ac" or "100 g ai/ha". */
  static String asWritten(Object amount, String below) {
    return amount + "/" + below;
  }

  static String product(ProductRate rate, QuantityStyle style) {
    var amount = rate.amount();
    if (rate instanceof ProductPerArea area) {
      return perArea(area.perHectare(), style);
    }
    if (rate instanceof ProductPerTreatedArea area) {
      return perArea(area.perHectare(), style) + " treated area";
    }
    if (rate instanceof ProductPerSprayVolume spray) {
      return perVolume(amount, spray.per().inBaseUnit(), spray.below(), style);
    }
    if (rate instanceof ProductPerRowLength row) {
      return perLength(amount, row.per().inBaseUnit(), row.below(), style);
    }
    if (rate instanceof ProductPerSeedMass seed) {
      return perMass(amount, seed.per().inBaseUnit(), seed.below(), style) + " seed";
    }
    return amount.print(style) + "/" + rate.below();
  }

  static String active(ActiveRate rate, QuantityStyle style) {
    var amount = ProductAmount.solid(rate.amount().range());
    var basis = " " + rate.amount().basis().symbol();
    if (rate instanceof ActivePerArea area) {
      return withBasis(perArea(amount.times(10_000 / area.per().inBaseUnit()), style), basis);
    }
    if (rate instanceof ActivePerSprayVolume spray) {
      var printed = perVolume(amount, spray.per().inBaseUnit(), spray.below(), style);
      return withBasis(printed, basis);
    }
    return rate.amount().print(style) + "/" + rate.below();
  }

  private static String withBasis(String printed, String basis) {
    int line = printed.indexOf('/');
    return printed.substring(0, line) + basis + printed.substring(line);
  }

  private static String perArea(ProductAmount hectare, QuantityStyle style) {
    if (hectare instanceof ProductAmount.Liquid) {
      return styled(hectare, VolumePerArea::new, style);
    }
    if (hectare instanceof ProductAmount.Solid) {
      return styled(hectare, MassPerArea::new, style);
    }
    var counted = (ProductAmount.Living) hectare;
    return styled(hectare, n -> new CountPerArea(n, counted.range().low().counted()), style);
  }

  private static String perVolume(
      ProductAmount amount, double litres, String below, QuantityStyle style) {
    if (amount instanceof ProductAmount.Liquid) {
      return styled(amount.times(1000 / litres), VolumePerVolume::new, style) + " spray";
    }
    if (amount instanceof ProductAmount.Solid) {
      return styled(amount.times(1000 / litres), MassPerVolume::new, style) + " spray";
    }
    return amount.print(style) + "/" + below;
  }

  private static String perLength(
      ProductAmount amount, double metres, String below, QuantityStyle style) {
    if (amount instanceof ProductAmount.Liquid) {
      return styled(amount.times(1000 / metres), VolumePerLength::new, style) + " row";
    }
    if (amount instanceof ProductAmount.Solid) {
      return styled(amount.times(1000 / metres), MassPerLength::new, style) + " row";
    }
    return amount.print(style) + "/" + below;
  }

  private static String perMass(
      ProductAmount amount, double kilograms, String below, QuantityStyle style) {
    if (amount instanceof ProductAmount.Liquid) {
      return styled(amount.times(1000 / kilograms), VolumePerMass::new, style);
    }
    if (amount instanceof ProductAmount.Solid) {
      return styled(amount.times(1000 / kilograms), MassPerMass::new, style);
    }
    return amount.print(style) + "/" + below.replace(" seed", "");
  }

  private static <Q extends Quantity<Q>> String styled(
      ProductAmount amount, DoubleFunction<Q> of, QuantityStyle style) {
    return style.printRange(
        new QuantityRange<>(of.apply(amount.lowNumber()), of.apply(amount.highNumber())));
  }
}
