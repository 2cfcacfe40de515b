package agro.generation;

import agro.units.ThermalTime;
import java.util.Objects;

/**
 * The interval that explains all seasons at once with its 90 % profile likelihood interval. It says
 * what held within these seasons and understates the uncertainty for a new one.
 *
 * @param estimate the estimate
 * @param low lower limit, not below the search range
 * @param high upper limit, not above the search range
 * @param atBoundary whether the estimate lies on the edge of the search range, which means that the
 *     range, not the data, set it
 */
public record PooledInterval(
    ThermalTime estimate, ThermalTime low, ThermalTime high, boolean atBoundary) {

  /** Refuses nulls. */
  public PooledInterval {
    Objects.requireNonNull(estimate, "estimate");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
  }
}
