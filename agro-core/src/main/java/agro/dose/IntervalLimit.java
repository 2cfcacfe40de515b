package agro.dose;

import java.util.Objects;
import java.util.Optional;

/**
 * The shortest time between two applications.
 *
 * @param entry whole days from one application to the next
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record IntervalLimit(
    LabelEntry<Integer> entry, LimitScope scope, Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls and less than one day. */
  public IntervalLimit {
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
    if (entry instanceof LabelEntry.Stated<Integer> stated) {
      LimitNumbers.require(stated.value(), 1, "days between applications");
    }
  }

  /**
   * The shortest interval between applications to one crop.
   *
   * @param days one or more
   * @return the limit, always, per crop
   */
  public static IntervalLimit ofDays(int days) {
    return new IntervalLimit(LabelEntry.stated(days), LimitScope.CROP, Optional.empty());
  }

  /**
   * The label says in words that there is no interval between applications.
   *
   * @return the entry
   */
  public static IntervalLimit none() {
    return new IntervalLimit(LabelEntry.none(), LimitScope.CROP, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a interval between applications.
   *
   * @return the entry
   */
  public static IntervalLimit notRecorded() {
    return new IntervalLimit(LabelEntry.notRecorded(), LimitScope.CROP, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public IntervalLimit per(LimitScope other) {
    return new IntervalLimit(entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public IntervalLimit when(String words) {
    return new IntervalLimit(entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return "interval between applications " + scope.words();
  }

  @Override
  public String value() {
    return entry instanceof LabelEntry.Stated<Integer> days
        ? days.value() == 1 ? "1 day" : days.value() + " days"
        : entry.toString();
  }
}
