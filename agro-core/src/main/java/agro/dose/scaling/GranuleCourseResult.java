package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * What one outlet should give over a course.
 *
 * @param target granules to collect
 * @param findings how a catch compares; none without a catch
 * @param working the steps
 */
public record GranuleCourseResult(
    ProductAmount.Solid target, List<DoseFinding> findings, Working working)
    implements ScalingResult {

  /** Copies the list. */
  public GranuleCourseResult {
    Objects.requireNonNull(target, "target");
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
