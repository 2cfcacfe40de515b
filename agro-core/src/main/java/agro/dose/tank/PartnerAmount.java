package agro.dose.tank;

import agro.dose.ProductAmount;
import java.util.Objects;

/**
 * An amount of one product of a mix.
 *
 * @param product name of the product
 * @param amount low and high amount
 */
public record PartnerAmount(String product, ProductAmount amount) {

  /** Refuses nulls. */
  public PartnerAmount {
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(amount, "amount");
  }

  @Override
  public String toString() {
    return product + ": " + amount;
  }
}
