package agro.dose;

import agro.units.NumberRange;
import agro.working.Working;
import java.math.RoundingMode;
import java.util.List;

/** The highest and the lowest dose, in one application and added up over others. */
final class DoseRules {

  /** Doses that differ by less than this share are the same but for rounding. */
  private static final double ROUNDING = 1e-9;

  private DoseRules() {}

  static Working check(LimitCheck check, List<DoseFinding> findings, Working start) {
    var working = start;
    var entered = check.limits().of(DoseLimit.class);
    var single =
        entered.stream()
            .filter(limit -> limit.bound() == DoseBound.MAXIMUM)
            .filter(limit -> limit.scope() == LimitScope.APPLICATION)
            .toList();
    var summed =
        entered.stream()
            .filter(limit -> limit.bound() == DoseBound.MAXIMUM)
            .filter(limit -> limit.scope() != LimitScope.APPLICATION)
            .toList();
    var least = entered.stream().filter(limit -> limit.bound() == DoseBound.MINIMUM).toList();
    var one = "maximum dose per application";
    for (var limit : check.applicable(single, one, Severity.WARNING, findings)) {
      working = maximum(check, limit, findings, working);
    }
    var season = "maximum dose per season";
    for (var limit : check.applicable(summed, season, Severity.WARNING, findings)) {
      working = maximum(check, limit, findings, working);
    }
    var lowest = "minimum dose per application";
    for (var limit : check.applicable(least, lowest, Severity.NOTE, findings)) {
      working = minimum(check, limit, findings, working);
    }
    return working;
  }

  private static DosePerArea value(DoseLimit limit) {
    return ((LabelEntry.Stated<DosePerArea>) limit.entry()).value();
  }

  private static Working maximum(
      LimitCheck check, DoseLimit limit, List<DoseFinding> findings, Working working) {
    var plan = check.plan();
    var most = value(limit);
    var bound = DoseMeasure.of(most, most, plan.strength()).numbers().orElseThrow().high();
    var planned = DoseMeasure.of(plan.dose(), most, plan.strength());
    if (planned.numbers().isEmpty()) {
      findings.add(notComparable(limit, planned.reason()));
      return working;
    }
    var uses = UsesInScope.of(plan, limit.scope());
    if (!uses.reason().isEmpty()) {
      findings.add(notComparable(limit, uses.reason()));
      return working;
    }
    double earlier = 0;
    double earlierLow = 0;
    for (var use : uses.uses()) {
      var measure = DoseMeasure.of(use.dose(), most, plan.strength());
      if (measure.numbers().isEmpty()) {
        var reason = "of the application on " + use.day() + ", " + measure.reason();
        findings.add(notComparable(limit, reason));
        return working;
      }
      earlierLow += measure.numbers().get().low();
      earlier += measure.numbers().get().high();
    }
    var now = planned.numbers().get();
    var sum = new NumberRange(now.low() + earlierLow, now.high() + earlier);
    findings.add(judged(limit, most, bound, now, earlier, sum));
    var before = earlier > 0 ? DoseMeasure.print(new NumberRange(earlierLow, earlier), most) : "";
    return working.step(
        RateConversion.capital(limit.words()),
        earlier > 0 ? "earlier + planned ≤ maximum" : "planned ≤ maximum",
        (earlier > 0 ? before + " + " : "")
            + DoseMeasure.print(now, most)
            + " ≤ "
            + DoseMeasure.print(new NumberRange(bound, bound), most),
        exceeds(sum.high(), bound) ? "not kept" : "kept");
  }

  private static DoseFinding judged(
      DoseLimit limit,
      DosePerArea most,
      double bound,
      NumberRange now,
      double earlier,
      NumberRange sum) {
    boolean over = exceeds(sum.high(), bound);
    var up = over ? RoundingMode.UP : RoundingMode.HALF_EVEN;
    var down = over ? RoundingMode.DOWN : RoundingMode.HALF_EVEN;
    var planned = DoseMeasure.print(now, most, up);
    var words =
        earlier > 0 ? planned + " brings the sum to " + DoseMeasure.print(sum, most, up) : planned;
    var allowed = DoseMeasure.print(new NumberRange(bound, bound), most, down);
    if (!over) {
      return new DoseFinding(
          Severity.NOTE, limit.words(), words + ", within the maximum of " + allowed + ".");
    }
    var which = exceeds(sum.low(), bound) ? "" : "the high end of ";
    double left = Math.max(0, bound - earlier);
    return new DoseFinding(
        Severity.ERROR,
        limit.words(),
        RateConversion.capital(which + words)
            + ", over the maximum of "
            + allowed
            + (left > 0
                ? ". At most "
                    + DoseMeasure.print(new NumberRange(left, left), most, RoundingMode.DOWN)
                    + " is left for this application."
                : ". Nothing is left for this application."));
  }

  private static Working minimum(
      LimitCheck check, DoseLimit limit, List<DoseFinding> findings, Working working) {
    var least = value(limit);
    var bound = DoseMeasure.of(least, least, check.plan().strength()).numbers().orElseThrow().low();
    var planned = DoseMeasure.of(check.plan().dose(), least, check.plan().strength());
    if (planned.numbers().isEmpty()) {
      findings.add(notComparable(limit, planned.reason()));
      return working;
    }
    var now = planned.numbers().get();
    boolean below = exceeds(bound, now.low());
    var asked = DoseMeasure.print(new NumberRange(bound, bound), least);
    findings.add(
        new DoseFinding(
            below ? Severity.WARNING : Severity.NOTE,
            limit.words(),
            DoseMeasure.print(now, least)
                + (below
                    ? ", below the minimum of "
                        + asked
                        + ". Whether less is allowed depends on the country; too little may not"
                        + " work and selects resistant pests."
                    : ", not below the minimum of " + asked + ".")));
    return working.step(
        RateConversion.capital(limit.words()),
        "planned ≥ minimum",
        DoseMeasure.print(now, least) + " ≥ " + asked,
        below ? "not kept" : "kept");
  }

  static boolean exceeds(double number, double bound) {
    return number > bound * (1 + ROUNDING);
  }

  private static DoseFinding notComparable(DoseLimit limit, String reason) {
    return new DoseFinding(
        Severity.WARNING,
        limit.words(),
        "The label states "
            + value(limit)
            + ". Not checked: "
            + reason
            + ". State it, and the check can be made.");
  }
}
