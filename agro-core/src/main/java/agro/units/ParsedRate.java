package agro.units;

import java.util.Objects;
import java.util.Optional;

/**
 * An amount per something, for example "2 pt/100 gal (US)" or "5 g/plant".
 *
 * @param text the text as it was written
 * @param amount what stands above the line
 * @param per what stands below the line
 */
public record ParsedRate(String text, ParsedAmount amount, RateDenominator per)
    implements ParsedQuantity {

  /** Refuses nulls. */
  public ParsedRate {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  @Override
  public NumberRange numbers() {
    return amount.numbers();
  }

  @Override
  public Optional<QuantityKind> kind() {
    return per instanceof RateDenominator.PerUnit perUnit
        ? Optional.ofNullable(RatioKinds.of(amount.unit().kind(), perUnit.unit().kind()))
        : Optional.empty();
  }

  @Override
  public String remark() {
    return amount.remark();
  }

  @Override
  public String toString() {
    return amount + "/" + per;
  }
}
