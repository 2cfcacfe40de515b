package agro.programme;

import agro.dose.DoseLimit;
import java.util.Objects;

/**
 * A maximum dose of one active ingredient, added up over all products that hold it.
 *
 * @param active name of the ingredient
 * @param limit the maximum as active ingredient per area, with its scope
 */
public record ActiveCap(String active, DoseLimit limit) {

  /** Refuses nulls. */
  public ActiveCap {
    active = active.strip();
    Objects.requireNonNull(limit, "limit");
  }
}
