package agro.course.marking;

import agro.units.Area;
import agro.units.Count;
import agro.units.CountPerArea;
import agro.units.CountPerMass;
import agro.units.CountPerVolume;
import agro.units.Density;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerLength;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.ParsedQuantity;
import agro.units.Pressure;
import agro.units.Quantity;
import agro.units.QuantityKind;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerLength;
import agro.units.VolumePerMass;
import agro.units.VolumePerVolume;
import agro.units.WorkTime;

/** Takes a parsed quantity over into a kind that is known at run time only. */
final class BaseNumbers {

  private BaseNumbers() {}

  /** The quantity of a kind that was read. */
  static Quantity<?> of(ParsedQuantity parsed, QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> Length.from(parsed).low();
      case AREA -> Area.from(parsed).low();
      case VOLUME -> Volume.from(parsed).low();
      case MASS -> Mass.from(parsed).low();
      case WORK_TIME -> WorkTime.from(parsed).low();
      case PRESSURE -> Pressure.from(parsed).low();
      case SPEED -> Speed.from(parsed).low();
      case FLOW_RATE -> FlowRate.from(parsed).low();
      case DENSITY -> Density.from(parsed).low();
      case COUNT -> Count.from(parsed).low();
      default -> ofRatio(parsed, kind);
    };
  }

  private static Quantity<?> ofRatio(ParsedQuantity parsed, QuantityKind kind) {
    return switch (kind) {
      case VOLUME_PER_AREA -> VolumePerArea.from(parsed).low();
      case MASS_PER_AREA -> MassPerArea.from(parsed).low();
      case MASS_PER_MASS -> MassPerMass.from(parsed).low();
      case MASS_PER_VOLUME -> MassPerVolume.from(parsed).low();
      case VOLUME_PER_VOLUME -> VolumePerVolume.from(parsed).low();
      case VOLUME_PER_MASS -> VolumePerMass.from(parsed).low();
      case MASS_PER_LENGTH -> MassPerLength.from(parsed).low();
      case VOLUME_PER_LENGTH -> VolumePerLength.from(parsed).low();
      case COUNT_PER_MASS -> CountPerMass.from(parsed).low();
      case COUNT_PER_VOLUME -> CountPerVolume.from(parsed).low();
      case COUNT_PER_AREA -> CountPerArea.from(parsed).low();
      default -> throw new IllegalArgumentException("no ratio is known for " + kind);
    };
  }
}
