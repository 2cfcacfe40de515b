package agro.programme.interval;

import agro.dose.BufferLimit;
import agro.dose.LabelEntry;
import agro.units.Length;
import java.util.List;

/** Distances to water, people and whatever else the label names. */
final class DistanceRule {

  private DistanceRule() {}

  static void check(PlannedProduct planned, List<RuleFinding> findings) {
    planned
        .applicable(BufferLimit.class, limit -> true, LimitRule.BUFFER, findings)
        .forEach(limit -> findings.add(limit.judged(one(planned, limit))));
  }

  private static RuleFinding one(PlannedProduct planned, ApplicableLimit<BufferLimit> applicable) {
    var limit = applicable.limit();
    Length width = ((LabelEntry.Stated<Length>) limit.entry()).value();
    var kept = planned.field().distances().get(limit.toward());
    if (kept == null) {
      return finding(
          Permission.NOT_RECORDED,
          applicable,
          "Keep " + width + "; the distance of " + planned.field().name() + " is not recorded.");
    }
    boolean close = kept.compareTo(width) < 0;
    return finding(
        close ? Permission.REFUSED : Permission.ALLOWED,
        applicable,
        close
            ? "The field lies "
                + kept
                + " away. A strip of "
                + new Length(width.metres() - kept.metres())
                + " has to stay untreated."
            : "The field lies " + kept + " away.");
  }

  private static RuleFinding finding(
      Permission permission, ApplicableLimit<BufferLimit> applicable, String sentence) {
    return RuleFinding.of(
        permission, LimitRule.BUFFER, applicable.record(), applicable.words(), sentence);
  }
}
