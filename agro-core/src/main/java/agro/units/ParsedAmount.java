package agro.units;

import java.util.Objects;
import java.util.Optional;

/**
 * A number or range with one unit, for example "250-300 mL".
 *
 * @param text the text as it was written
 * @param numbers number or range in the unit that was written
 * @param unit the unit
 * @param of what it is an amount of, in lower case, for example {@code "ai"} or {@code "product"};
 *     empty if the text does not say
 * @param remark what a reader should know about how the text was read, or empty
 */
public record ParsedAmount(String text, NumberRange numbers, Unit<?> unit, String of, String remark)
    implements ParsedQuantity {

  /** Refuses nulls. */
  public ParsedAmount {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(numbers, "numbers");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(of, "of");
    Objects.requireNonNull(remark, "remark");
  }

  @Override
  public Optional<QuantityKind> kind() {
    return Optional.of(unit.kind());
  }

  @Override
  public String toString() {
    return numbers + " " + unit.symbol() + (of.isEmpty() ? "" : " " + of);
  }
}
