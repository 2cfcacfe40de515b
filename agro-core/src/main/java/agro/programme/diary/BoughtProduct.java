package agro.programme.diary;

import agro.dose.ProductAmount;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A product that was bought.
 *
 * @param day day on which it was bought
 * @param product the product
 * @param lot number of the lot; may be empty
 * @param amount how much; nothing if not recorded
 * @param note anything
 */
public record BoughtProduct(
    LocalDate day, String product, String lot, Optional<ProductAmount> amount, String note)
    implements DiaryRecord {

  /** Refuses nulls. */
  public BoughtProduct {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(lot, "lot");
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(note, "note");
  }
}
