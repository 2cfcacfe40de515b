package agro.dose.scaling;

import agro.units.Mass;
import agro.working.Working;
import java.util.Objects;

/**
 * What is weighed for a stock solution.
 *
 * @param weighed mass of the solid
 * @param dissolved mass of its content
 * @param working the steps
 */
public record StockWeighing(Mass weighed, Mass dissolved, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public StockWeighing {
    Objects.requireNonNull(weighed, "weighed");
    Objects.requireNonNull(dissolved, "dissolved");
    Objects.requireNonNull(working, "working");
  }
}
