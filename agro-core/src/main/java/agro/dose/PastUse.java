package agro.dose;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * An application that was made before the planned one, with what it counts towards.
 *
 * @param day day of the application
 * @param dose dose per ground area that was given
 * @param countsIn scopes of limits in which it counts with the planned application
 */
public record PastUse(LocalDate day, DosePerArea dose, Set<LimitScope> countsIn) {

  /** Copies the set. */
  public PastUse {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(dose, "dose");
    countsIn = Set.copyOf(countsIn);
  }

  /**
   * An application of the same product to the same crop in the same season, against another
   * generation of the pest.
   *
   * @param day day of the application
   * @param dose dose per ground area
   * @return the application; it counts per crop, per season, in twelve months, in its group and for
   *     its active ingredient
   */
  public static PastUse sameCrop(LocalDate day, DosePerArea dose) {
    var scopes = EnumSet.allOf(LimitScope.class);
    scopes.remove(LimitScope.APPLICATION);
    scopes.remove(LimitScope.GENERATION);
    return new PastUse(day, dose, scopes);
  }

  /**
   * An application of the same product to the same crop against the same generation of the pest.
   *
   * @param day day of the application
   * @param dose dose per ground area
   * @return the application; it counts in every scope but its own application
   */
  public static PastUse sameGeneration(LocalDate day, DosePerArea dose) {
    var scopes = EnumSet.allOf(LimitScope.class);
    scopes.remove(LimitScope.APPLICATION);
    return new PastUse(day, dose, scopes);
  }

  /**
   * An application of the same product to the crop before this one, on the same field.
   *
   * @param day day of the application
   * @param dose dose per ground area
   * @return the application; it counts in twelve months only
   */
  public static PastUse earlierCrop(LocalDate day, DosePerArea dose) {
    return new PastUse(day, dose, Set.of(LimitScope.TWELVE_MONTHS));
  }

  /**
   * An application of another product with the same active ingredient to the same crop.
   *
   * @param day day of the application
   * @param dose dose of active ingredient per ground area
   * @return the application; it counts for the active ingredient and its group
   */
  public static PastUse sameActiveIngredient(LocalDate day, ActivePerArea dose) {
    return new PastUse(day, dose, Set.of(LimitScope.ACTIVE_INGREDIENT, LimitScope.GROUP));
  }

  /**
   * An application of a product of the same mode-of-action group to the same crop.
   *
   * @param day day of the application
   * @param dose dose per ground area
   * @return the application; it counts for the group only
   */
  public static PastUse sameGroup(LocalDate day, DosePerArea dose) {
    return new PastUse(day, dose, Set.of(LimitScope.GROUP));
  }

  @Override
  public String toString() {
    return day + ", " + dose + ", counts " + new TreeSet<>(countsIn);
  }
}
