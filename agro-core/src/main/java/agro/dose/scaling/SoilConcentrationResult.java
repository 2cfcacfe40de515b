package agro.dose.scaling;

import agro.units.MassPerMass;
import agro.units.QuantityRange;
import agro.working.Working;
import java.util.Objects;

/**
 * A concentration in the soil.
 *
 * @param concentration active ingredient per mass of dry soil, low and high
 * @param working the steps
 */
public record SoilConcentrationResult(QuantityRange<MassPerMass> concentration, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public SoilConcentrationResult {
    Objects.requireNonNull(concentration, "concentration");
    Objects.requireNonNull(working, "working");
  }
}
