package agro.dose;

import agro.units.Numbers;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/**
 * The time from the end of an application until the field may be entered without protective
 * equipment. A day of the label is 24 hours.
 *
 * @param entry the time
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record ReEntryLimit(
    LabelEntry<Duration> entry, LimitScope scope, Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls and a time below zero. */
  public ReEntryLimit {
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
    if (entry instanceof LabelEntry.Stated<Duration> stated) {
      LimitNumbers.require(stated.value().toSeconds(), 0, "seconds of re-entry interval");
    }
  }

  /**
   * The re-entry interval in hours.
   *
   * @param hours zero or more
   * @return the limit, always, per application
   */
  public static ReEntryLimit ofHours(int hours) {
    return new ReEntryLimit(
        LabelEntry.stated(Duration.ofHours(hours)), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The label says in words that there is no re-entry interval.
   *
   * @return the entry
   */
  public static ReEntryLimit none() {
    return new ReEntryLimit(LabelEntry.none(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a re-entry interval.
   *
   * @return the entry
   */
  public static ReEntryLimit notRecorded() {
    return new ReEntryLimit(LabelEntry.notRecorded(), LimitScope.APPLICATION, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public ReEntryLimit per(LimitScope other) {
    return new ReEntryLimit(entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public ReEntryLimit when(String words) {
    return new ReEntryLimit(entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return "re-entry interval";
  }

  @Override
  public String value() {
    return entry instanceof LabelEntry.Stated<Duration> time
        ? Numbers.plain(time.value().toMinutes() / 60.0) + " h"
        : entry.toString();
  }
}
