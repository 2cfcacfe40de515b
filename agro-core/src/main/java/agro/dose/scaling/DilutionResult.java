package agro.dose.scaling;

import agro.units.Quantity;
import agro.working.Working;
import java.util.Objects;

/**
 * A dilution that has been worked out.
 *
 * @param stock strength of the stock
 * @param stockAmount amount of stock to take
 * @param strength strength of the whole
 * @param total amount of the whole
 * @param diluent what is added to the stock, zero or more
 * @param working the steps
 * @param <C> kind of the strengths
 * @param <A> kind of the amounts
 */
public record DilutionResult<C extends Quantity<C>, A extends Quantity<A>>(
    C stock, A stockAmount, C strength, A total, A diluent, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public DilutionResult {
    Objects.requireNonNull(stock, "stock");
    Objects.requireNonNull(stockAmount, "stockAmount");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(total, "total");
    Objects.requireNonNull(diluent, "diluent");
    Objects.requireNonNull(working, "working");
  }

  /**
   * How many times the stock is diluted.
   *
   * @return whole divided by stock, 1 or more
   */
  public double dilutionFactor() {
    return total.ratioTo(stockAmount);
  }
}
