package agro.dose;

import java.util.Objects;
import java.util.Optional;

/**
 * The highest number of applications.
 *
 * @param entry the number
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record ApplicationLimit(
    LabelEntry<Integer> entry, LimitScope scope, Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls and less than one application. */
  public ApplicationLimit {
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
    if (entry instanceof LabelEntry.Stated<Integer> stated) {
      LimitNumbers.require(stated.value(), 1, "applications");
    }
  }

  /**
   * The highest number of applications to one crop.
   *
   * @param applications one or more
   * @return the limit, always, per crop
   */
  public static ApplicationLimit maximum(int applications) {
    return new ApplicationLimit(LabelEntry.stated(applications), LimitScope.CROP, Optional.empty());
  }

  /**
   * The label says in words that there is no limit of the number of applications.
   *
   * @return the entry
   */
  public static ApplicationLimit none() {
    return new ApplicationLimit(LabelEntry.none(), LimitScope.CROP, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a limit of the number of applications.
   *
   * @return the entry
   */
  public static ApplicationLimit notRecorded() {
    return new ApplicationLimit(LabelEntry.notRecorded(), LimitScope.CROP, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public ApplicationLimit per(LimitScope other) {
    return new ApplicationLimit(entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public ApplicationLimit when(String words) {
    return new ApplicationLimit(entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return "number of applications " + scope.words();
  }
}
