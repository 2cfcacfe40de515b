package agro.weather.quality;

import java.util.Objects;

/**
 * A mark on one value or a run of values that look wrong. It says nothing about the truth: a front
 * can make a step, and a frost a record.
 *
 * @param rule the rule that was broken; it names its source
 * @param element which value is flagged
 * @param first place of the first flagged value in the series, counted from 0
 * @param last place of the last flagged value
 * @param when time or day of the flagged values, in words
 * @param value what was measured by the rule, in {@code unit}
 * @param limit the limit that it passed, in {@code unit}
 * @param unit unit of both, for example {@code "°C"}
 * @param why what is wrong and what may have caused it, as a sentence without a full stop
 */
public record QualityFlag(
    QualityRule rule,
    FlaggedValue element,
    int first,
    int last,
    String when,
    double value,
    double limit,
    String unit,
    String why) {

  /** Refuses nulls and places out of order. */
  public QualityFlag {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(when, "when");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(why, "why");
    if (first < 0 || last < first) {
      throw new IllegalArgumentException("a flag on the places " + first + " to " + last);
    }
  }

  /**
   * Number of flagged places.
   *
   * @return 1 or more
   */
  public int places() {
    return last - first + 1;
  }
}
