package agro.dose;

import java.util.Objects;
import java.util.Optional;

/**
 * The highest or the lowest dose per ground area, of product or of active ingredient.
 *
 * @param bound highest or lowest
 * @param entry the dose
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record DoseLimit(
    DoseBound bound,
    LabelEntry<DosePerArea> entry,
    LimitScope scope,
    Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls. */
  public DoseLimit {
    Objects.requireNonNull(bound, "bound");
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
  }

  /**
   * The highest dose that the label allows in one application.
   *
   * @param dose the dose
   * @return the limit, always, per application
   */
  public static DoseLimit maximum(DosePerArea dose) {
    return new DoseLimit(
        DoseBound.MAXIMUM, LabelEntry.stated(dose), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The lowest dose that the label asks for in one application.
   *
   * @param dose the dose
   * @return the limit, always, per application
   */
  public static DoseLimit minimum(DosePerArea dose) {
    return new DoseLimit(
        DoseBound.MINIMUM, LabelEntry.stated(dose), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The label says in words that there is no limit of the dose.
   *
   * @param bound highest or lowest dose
   * @return the entry
   */
  public static DoseLimit none(DoseBound bound) {
    return new DoseLimit(bound, LabelEntry.none(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a limit of the dose.
   *
   * @param bound highest or lowest dose
   * @return the entry
   */
  public static DoseLimit notRecorded(DoseBound bound) {
    return new DoseLimit(bound, LabelEntry.notRecorded(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public DoseLimit per(LimitScope other) {
    return new DoseLimit(bound, entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public DoseLimit when(String words) {
    return new DoseLimit(bound, entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return bound.words() + " dose " + scope.words();
  }
}
