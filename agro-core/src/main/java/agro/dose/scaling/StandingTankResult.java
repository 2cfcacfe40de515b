package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * What is left in a standing tank.
 *
 * @param lowShare lower share left, 0 to 1
 * @param highShare upper share left, the same where a half-life is stated for the pH of the tank
 * @param findings a warning where the pH lies between two stated ones
 * @param working the steps
 */
public record StandingTankResult(
    double lowShare, double highShare, List<DoseFinding> findings, Working working)
    implements ScalingResult {

  /** Copies the list. */
  public StandingTankResult {
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
