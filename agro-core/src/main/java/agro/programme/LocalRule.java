package agro.programme;

import agro.dose.LabelLimits;
import java.util.Objects;
import java.util.Optional;

/**
 * A limit set by law, buyer or adviser beside the label. Where both speak, the stricter one holds:
 * the longer interval, the lower number, the lower dose.
 *
 * @param name what the rule is called on the page
 * @param product product for which it holds; nothing for every product
 * @param crop crop for which it holds; nothing for every crop
 * @param district district in which it holds; nothing for everywhere
 * @param limits its limits
 */
public record LocalRule(
    String name,
    Optional<String> product,
    Optional<String> crop,
    Optional<String> district,
    LabelLimits limits) {

  /** Refuses nulls. */
  public LocalRule {
    name = name.strip();
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(crop, "crop");
    Objects.requireNonNull(district, "district");
    Objects.requireNonNull(limits, "limits");
  }

  /**
   * A rule for every product, crop and district.
   *
   * @param name what the rule is called
   * @param limits its limits
   * @return the rule
   */
  public static LocalRule everywhere(String name, LabelLimits limits) {
    return new LocalRule(name, Optional.empty(), Optional.empty(), Optional.empty(), limits);
  }

  /**
   * Whether the rule speaks of a use.
   *
   * @param usedProduct the product
   * @param usedCrop the crop
   * @param usedDistrict the district
   * @return true if it does
   */
  public boolean holdsFor(String usedProduct, String usedCrop, String usedDistrict) {
    return product.map(usedProduct::equals).orElse(true)
        && crop.map(usedCrop::equals).orElse(true)
        && district.map(usedDistrict::equals).orElse(true);
  }
}
