package agro.dose.tank;

import agro.units.Area;
import agro.units.Volume;
import java.util.List;
import java.util.Objects;

/**
 * Spray that is left after the field, and what it holds.
 *
 * @param dead the part that stays in the sprayer
 * @param surplus the part that was made up and is not needed
 * @param holds product in both parts together
 * @param area area that both parts together would cover
 */
public record Leftover(Volume dead, Volume surplus, List<PartnerAmount> holds, Area area) {

  /** Copies the list. */
  public Leftover {
    Objects.requireNonNull(dead, "dead");
    Objects.requireNonNull(surplus, "surplus");
    Objects.requireNonNull(area, "area");
    holds = List.copyOf(holds);
  }

  /**
   * Both parts together.
   *
   * @return the volume left
   */
  public Volume volume() {
    return dead.plus(surplus);
  }
}
