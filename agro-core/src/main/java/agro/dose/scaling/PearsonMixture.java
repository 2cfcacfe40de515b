package agro.dose.scaling;

import agro.units.Quantity;
import agro.working.Working;
import java.util.Objects;

/**
 * A mixture of two stocks.
 *
 * @param strength strength of the mixture
 * @param strongParts parts of the strong stock, in the base unit of the strength
 * @param weakParts parts of the weak stock, in the same unit
 * @param strong amount of the strong stock
 * @param weak amount of the weak stock
 * @param working the steps
 * @param <C> kind of the strength
 * @param <A> kind of the amounts
 */
public record PearsonMixture<C extends Quantity<C>, A extends Quantity<A>>(
    C strength, double strongParts, double weakParts, A strong, A weak, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public PearsonMixture {
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(strong, "strong");
    Objects.requireNonNull(weak, "weak");
    Objects.requireNonNull(working, "working");
  }

  /**
   * Parts of the weak stock to one part of the strong one.
   *
   * @return the ratio; not finite if nothing of the strong stock is needed
   */
  public double weakToStrong() {
    return weakParts / strongParts;
  }
}
