package agro.trial.efficacy;

import agro.units.Numbers;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The last day on which a treatment was at or above a level of efficacy.
 *
 * @param end how the level was left
 * @param daysAfter days after the treatment; nothing when the level was never seen
 * @param sentence the finding, with what was interpolated
 */
public record LastDayAbove(End end, OptionalDouble daysAfter, String sentence) {

  /** How a level was left. */
  public enum End {
    /** Efficacy fell below it between two dates. */
    FELL_BELOW,
    /** Still at or above it on the last date; nothing is known beyond. */
    STILL_ABOVE,
    /** Below it on every date. */
    NEVER_ABOVE
  }

  /** Refuses null. */
  public LastDayAbove {
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(daysAfter, "daysAfter");
    Objects.requireNonNull(sentence, "sentence");
  }

  static LastDayAbove of(String treatment, double level, List<EfficacyCourse.CoursePoint> all) {
    var points = all.stream().filter(point -> point.percent().isPresent()).toList();
    int last = -1;
    boolean dipped = false;
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).percent().getAsDouble() >= level) {
        dipped |= last >= 0 && last < i - 1;
        last = i;
      }
    }
    var words = treatment + " at " + Numbers.plain(level) + " % or above: ";
    var gaps = points.size() < all.size() ? " Dates without a value are passed over." : "";
    if (last < 0) {
      return new LastDayAbove(
          End.NEVER_ABOVE, OptionalDouble.empty(), words + "on no date." + gaps);
    }
    var from = points.get(last);
    var remark = (dipped ? " In between it was below." : "") + gaps;
    if (last == points.size() - 1) {
      return new LastDayAbove(
          End.STILL_ABOVE,
          OptionalDouble.of((double) from.daysAfter()),
          words + "to the last date at least, day " + from.daysAfter() + "." + remark);
    }
    var to = points.get(last + 1);
    double start = from.percent().getAsDouble();
    double share = (start - level) / (start - to.percent().getAsDouble());
    double day = from.daysAfter() + share * (to.daysAfter() - from.daysAfter());
    return new LastDayAbove(
        End.FELL_BELOW,
        OptionalDouble.of(day),
        words
            + "until day "
            + Numbers.fixed(day, 1)
            + ", on the straight line between day "
            + from.daysAfter()
            + " and day "
            + to.daysAfter()
            + "."
            + remark);
  }
}
