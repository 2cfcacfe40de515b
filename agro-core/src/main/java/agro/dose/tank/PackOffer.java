package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import java.util.Objects;
import java.util.Optional;

/**
 * A pack as it is sold.
 *
 * @param content what one pack holds, one amount above zero
 * @param price price of one pack; nothing where it is not known
 */
public record PackOffer(ProductAmount content, Optional<Price> price) {

  /** Refuses an empty pack and a pack of uncertain size. */
  public PackOffer {
    Objects.requireNonNull(price, "price");
    if (!content.isSingle() || !(content.highNumber() > 0)) {
      throw InputProblem.of("a pack that holds " + content)
          .expected("one amount above zero")
          .because("packs are bought whole, so their size decides how many are needed")
          .mend("copy the content from the pack");
    }
  }

  /**
   * A pack with its price.
   *
   * @param content for example {@code "250 mL"}
   * @param price price of one pack
   * @return the pack
   * @throws agro.units.UnreadableQuantity if the content is not clear
   */
  public static PackOffer of(String content, Price price) {
    return new PackOffer(ProductAmount.parse(content), Optional.of(price));
  }

  /**
   * A pack whose price is not known.
   *
   * @param content for example {@code "250 mL"}
   * @return the pack
   * @throws agro.units.UnreadableQuantity if the content is not clear
   */
  public static PackOffer of(String content) {
    return new PackOffer(ProductAmount.parse(content), Optional.empty());
  }

  @Override
  public String toString() {
    return content + price.map(p -> " at " + p).orElse("");
  }
}
