package agro.programme;

import agro.dose.DosePerArea;
import agro.report.InputProblem;
import java.util.Objects;
import java.util.Optional;

/**
 * One product of an application; a mixture has several.
 *
 * @param product what it is called in the label records
 * @param dose dose on the treated area; nothing if not recorded
 * @param lot number of the lot; empty if not recorded
 */
public record SprayedProduct(String product, Optional<DosePerArea> dose, String lot) {

  /** Refuses a product without a name. */
  public SprayedProduct {
    product = product.strip();
    lot = lot.strip();
    Objects.requireNonNull(dose, "dose");
    if (product.isEmpty()) {
      throw InputProblem.of("an application of a product without a name")
          .expected("the name of the product as the label records write it")
          .because("its limits are found by that name")
          .mend("name the product");
    }
  }

  /**
   * A product with its dose.
   *
   * @param product the product
   * @param dose dose on the treated area
   * @return the product
   */
  public static SprayedProduct of(String product, DosePerArea dose) {
    return new SprayedProduct(product, Optional.of(dose), "");
  }

  @Override
  public String toString() {
    return product + dose.map(amount -> " at " + amount).orElse("");
  }
}
