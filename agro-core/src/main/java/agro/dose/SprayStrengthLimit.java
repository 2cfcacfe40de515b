package agro.dose;

import java.util.Objects;
import java.util.Optional;

/**
 * The highest strength of the finished spray.
 *
 * @param entry product per volume of spray
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record SprayStrengthLimit(
    LabelEntry<ProductPerSprayVolume> entry, LimitScope scope, Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls. */
  public SprayStrengthLimit {
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
  }

  /**
   * The highest strength that the label allows.
   *
   * @param strength the strength
   * @return the limit, always, per application
   */
  public static SprayStrengthLimit maximum(ProductPerSprayVolume strength) {
    return new SprayStrengthLimit(
        LabelEntry.stated(strength), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The label says in words that there is no limit of the strength of the spray.
   *
   * @return the entry
   */
  public static SprayStrengthLimit none() {
    return new SprayStrengthLimit(LabelEntry.none(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a limit of the strength of the spray.
   *
   * @return the entry
   */
  public static SprayStrengthLimit notRecorded() {
    return new SprayStrengthLimit(
        LabelEntry.notRecorded(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public SprayStrengthLimit per(LimitScope other) {
    return new SprayStrengthLimit(entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public SprayStrengthLimit when(String words) {
    return new SprayStrengthLimit(entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return "maximum strength of the spray";
  }
}
