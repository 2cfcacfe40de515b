package agro.dose.scaling;

import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.working.Working;
import java.util.Objects;

/**
 * Pumps and spray volume.
 *
 * @param pumps pumps for a unit of land, not rounded
 * @param spray spray volume
 * @param perHectare pumps per hectare, not rounded
 * @param working the steps
 */
public record PumpedSprayResult(
    PumpsPerArea pumps, SprayVolume spray, double perHectare, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public PumpedSprayResult {
    Objects.requireNonNull(pumps, "pumps");
    Objects.requireNonNull(spray, "spray");
    Objects.requireNonNull(working, "working");
  }
}
