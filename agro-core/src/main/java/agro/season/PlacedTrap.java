package agro.season;

import java.util.Objects;

/**
 * A trap, as the table of traps describes it.
 *
 * @param name name of the trap, as the visits write it
 * @param place name of the place where it stands
 * @param pest name of the pest that it is for
 */
public record PlacedTrap(String name, String place, String pest) {

  /** Refuses nulls. */
  public PlacedTrap {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(pest, "pest");
  }
}
