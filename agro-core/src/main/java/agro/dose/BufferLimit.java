package agro.dose;

import agro.units.Length;
import java.util.Objects;
import java.util.Optional;

/**
 * The strip that stays unsprayed, for example along water.
 *
 * @param toward what the strip protects
 * @param entry width of the strip
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record BufferLimit(
    String toward, LabelEntry<Length> entry, LimitScope scope, Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls. */
  public BufferLimit {
    Objects.requireNonNull(toward, "toward");
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
  }

  /**
   * The width of an unsprayed strip.
   *
   * @param toward what it protects, for example {@code "surface water"}
   * @param width width of the strip
   * @return the limit, always, per application
   */
  public static BufferLimit of(String toward, Length width) {
    return new BufferLimit(
        toward, LabelEntry.stated(width), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The label says in words that there is no buffer.
   *
   * @param toward what it would protect
   * @return the entry
   */
  public static BufferLimit none(String toward) {
    return new BufferLimit(toward, LabelEntry.none(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a buffer.
   *
   * @param toward what it would protect
   * @return the entry
   */
  public static BufferLimit notRecorded(String toward) {
    return new BufferLimit(
        toward, LabelEntry.notRecorded(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public BufferLimit per(LimitScope other) {
    return new BufferLimit(toward, entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public BufferLimit when(String words) {
    return new BufferLimit(toward, entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return "buffer to " + toward;
  }
}
