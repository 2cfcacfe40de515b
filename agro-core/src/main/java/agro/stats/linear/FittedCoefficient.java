package agro.stats.linear;

import java.util.OptionalDouble;

/**
 * A coefficient of a linear model.
 *
 * @param name column of the design
 * @param estimate its estimate
 * @param standardError nothing where the residuals have no degrees of freedom
 * @param estimable false for a column whose coefficient the observations cannot tell; its estimate
 *     is then one of many
 */
public record FittedCoefficient(
    String name, double estimate, OptionalDouble standardError, boolean estimable) {

  @Override
  public String toString() {
    if (!estimable) {
      return name + " not estimable";
    }
    return name
        + " "
        + estimate
        + (standardError.isPresent()
            ? " (standard error " + standardError.getAsDouble() + ")"
            : "");
  }
}
