package agro.dose;

import java.util.Objects;
import java.util.Optional;

/**
 * The time from the last application to harvest.
 *
 * @param entry days, or the last growth stage
 * @param scope over what it is counted
 * @param condition when it holds; nothing where it holds always
 */
public record PreHarvestLimit(
    LabelEntry<PreHarvest> entry, LimitScope scope, Optional<UseCondition> condition)
    implements LabelLimit {

  /** Refuses nulls. */
  public PreHarvestLimit {
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(condition, "condition");
  }

  /**
   * The shortest time from the last application to harvest.
   *
   * @param days zero or more
   * @return the limit, always, per crop
   */
  public static PreHarvestLimit ofDays(int days) {
    return new PreHarvestLimit(
        LabelEntry.stated(new PreHarvest.Days(days)), LimitScope.CROP, Optional.empty());
  }

  /**
   * The growth stage of the last application, where the label states no days.
   *
   * @param stage the words of the label
   * @return the limit, always, per crop
   */
  public static PreHarvestLimit untilStage(String stage) {
    return new PreHarvestLimit(
        LabelEntry.stated(new PreHarvest.UntilStage(stage)), LimitScope.CROP, Optional.empty());
  }

  /**
   * The label says in words that there is no pre-harvest interval.
   *
   * @return the entry
   */
  public static PreHarvestLimit none() {
    return new PreHarvestLimit(LabelEntry.none(), LimitScope.CROP, Optional.empty());
  }

  /**
   * Nobody has recorded what the label says of a pre-harvest interval.
   *
   * @return the entry
   */
  public static PreHarvestLimit notRecorded() {
    return new PreHarvestLimit(LabelEntry.notRecorded(), LimitScope.CROP, Optional.empty());
  }

  /**
   * The same limit over another scope.
   *
   * @param other over what it is counted
   * @return the limit
   */
  public PreHarvestLimit per(LimitScope other) {
    return new PreHarvestLimit(entry, other, condition);
  }

  /**
   * The same limit under a condition.
   *
   * @param words the circumstance that the label names
   * @return the limit
   */
  public PreHarvestLimit when(String words) {
    return new PreHarvestLimit(entry, scope, Optional.of(new UseCondition(words)));
  }

  @Override
  public String words() {
    return "pre-harvest interval";
  }
}
