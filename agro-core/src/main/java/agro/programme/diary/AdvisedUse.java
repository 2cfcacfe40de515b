package agro.programme.diary;

import agro.dose.DosePerArea;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A use that was advised.
 *
 * @param day day of the advice
 * @param field the field
 * @param product the product
 * @param dose the dose advised; nothing if none was
 * @param from first day for which it was advised; nothing if none was stated
 * @param to last day for which it was advised; nothing if none was stated
 * @param adviser role or initials of who advised it
 * @param reason why, with the count that it rests on
 */
public record AdvisedUse(
    LocalDate day,
    String field,
    String product,
    Optional<DosePerArea> dose,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    String adviser,
    String reason)
    implements DiaryRecord {

  /** Refuses nulls. */
  public AdvisedUse {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(adviser, "adviser");
    Objects.requireNonNull(reason, "reason");
  }
}
