package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.LivingStrength;
import agro.dose.ProductAmount;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Living units of a dose.
 *
 * @param alive strength in units that live
 * @param living units that live
 * @param byLabel units by the label alone
 * @param per what both are for: one hectare for a rate per area, else what stands below the line
 * @param findings a warning where the test found fewer than the label states
 * @param working the steps
 */
public record LivingDoseResult(
    LivingStrength alive,
    ProductAmount.Living living,
    ProductAmount.Living byLabel,
    String per,
    List<DoseFinding> findings,
    Working working)
    implements ScalingResult {

  /** Copies the list. */
  public LivingDoseResult {
    Objects.requireNonNull(alive, "alive");
    Objects.requireNonNull(living, "living");
    Objects.requireNonNull(per, "per");
    Objects.requireNonNull(byLabel, "byLabel");
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
