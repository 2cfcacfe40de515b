package agro.dose;

import java.util.Optional;

/**
 * One limit of a label with its scope and its condition. It is stated, denied by the label, or not
 * recorded.
 */
public sealed interface LabelLimit
    permits DoseLimit,
        SprayStrengthLimit,
        ApplicationLimit,
        IntervalLimit,
        PreHarvestLimit,
        ReEntryLimit,
        BufferLimit {

  /**
   * What is known of the limit.
   *
   * @return stated, none, or not recorded
   */
  LabelEntry<?> entry();

  /**
   * Over what the limit is counted.
   *
   * @return the scope
   */
  LimitScope scope();

  /**
   * When the limit holds.
   *
   * @return the condition; nothing where it holds always
   */
  Optional<UseCondition> condition();

  /**
   * What is limited.
   *
   * @return for example {@code "maximum dose per season"}
   */
  String words();

  /**
   * What the label says, with its unit.
   *
   * @return for example {@code "10 days"}, {@code "the label says none"} or {@code "not recorded"}
   */
  default String value() {
    return entry().toString();
  }
}
