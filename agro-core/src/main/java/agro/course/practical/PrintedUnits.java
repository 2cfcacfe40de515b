package agro.course.practical;

import agro.dose.sprayer.SprayUnits;
import agro.units.QuantityStyle;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;

/** Units of a calibration for a reader's style. */
final class PrintedUnits {

  private PrintedUnits() {}

  static SprayUnits of(QuantityStyle style) {
    return switch (style.system()) {
      case METRIC ->
          SprayUnits.METRIC.withVolume(VolumePerArea.unit(VolumeUnit.LITRE, style.land()));
      case US -> SprayUnits.US.withVolume(VolumePerArea.unit(VolumeUnit.US_GALLON, style.land()));
      case IMPERIAL ->
          SprayUnits.IMPERIAL.withVolume(
              VolumePerArea.unit(VolumeUnit.IMPERIAL_GALLON, style.land()));
    };
  }
}
