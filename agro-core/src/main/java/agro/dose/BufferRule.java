package agro.dose;

import agro.units.Length;
import java.util.List;

/** Unsprayed strips. */
final class BufferRule {

  private BufferRule() {}

  static void check(LimitCheck check, List<DoseFinding> findings) {
    for (var limit : check.applicable(BufferLimit.class, "buffer", Severity.WARNING, findings)) {
      findings.add(one(check.plan(), limit));
    }
  }

  private static DoseFinding one(PlannedUse plan, BufferLimit limit) {
    Length width = ((LabelEntry.Stated<Length>) limit.entry()).value();
    var kept = plan.distances().get(limit.toward());
    if (kept == null) {
      return new DoseFinding(
          Severity.WARNING,
          limit.words(),
          "Keep " + width + " to " + limit.toward() + ". The plan does not state a distance.");
    }
    boolean close = kept.compareTo(width) < 0;
    return new DoseFinding(
        close ? Severity.ERROR : Severity.NOTE,
        limit.words(),
        kept + " is kept, and the label asks for " + width + ".");
  }
}
