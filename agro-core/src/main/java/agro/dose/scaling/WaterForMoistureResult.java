package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.units.Mass;
import agro.units.QuantityRange;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Water for a moisture.
 *
 * @param water water to add for the drier and the wetter end, never below zero
 * @param dryMatter dry matter of the heap
 * @param findings a warning where the heap is wetter than asked
 * @param working the steps
 */
public record WaterForMoistureResult(
    QuantityRange<Mass> water, Mass dryMatter, List<DoseFinding> findings, Working working)
    implements ScalingResult {

  /** Copies the list. */
  public WaterForMoistureResult {
    Objects.requireNonNull(water, "water");
    Objects.requireNonNull(dryMatter, "dryMatter");
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
