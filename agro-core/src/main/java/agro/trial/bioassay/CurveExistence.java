package agro.trial.bioassay;

import java.util.NavigableMap;

/**
 * Whether the likelihood of a rising line has a greatest value: some animal has to respond at a
 * lower dose than one that survives. Silvapulle 1981, Journal of the Royal Statistical Society B
 * 43:310-313 (from memory).
 */
final class CurveExistence {

  private final DoseResponse choices;
  private final BioassayData data;

  CurveExistence(DoseResponse choices, BioassayData data) {
    this.choices = choices;
    this.data = data;
  }

  /** Null when there is nothing against a curve; sorted doses. */
  WithoutCurve check(double[] x, double[] exposed, double[] responded) {
    int last = x.length - 1;
    if (last < 0 || !(x[last] > x[0])) {
      return oneDose();
    }
    double lowestHit = Double.POSITIVE_INFINITY;
    double highestHit = Double.NEGATIVE_INFINITY;
    double lowestSurvivor = Double.POSITIVE_INFINITY;
    double highestSurvivor = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= last; i++) {
      if (responded[i] > 0) {
        lowestHit = Math.min(lowestHit, x[i]);
        highestHit = Math.max(highestHit, x[i]);
      }
      if (responded[i] < exposed[i]) {
        lowestSurvivor = Math.min(lowestSurvivor, x[i]);
        highestSurvivor = Math.max(highestSurvivor, x[i]);
      }
    }
    if (highestSurvivor == Double.NEGATIVE_INFINITY) {
      return extreme(true);
    }
    if (highestHit == Double.NEGATIVE_INFINITY) {
      return extreme(false);
    }
    if (lowestSurvivor >= highestHit) {
      return notRising("the lowest dose with survivors is not below the highest one that killed");
    }
    return lowestHit >= highestSurvivor ? separated(lowestHit, highestSurvivor) : null;
  }

  private WithoutCurve oneDose() {
    var byDose = byDose();
    if (byDose.isEmpty()) {
      return new WithoutCurve(
          data,
          NoCurveReason.ONE_DOSE,
          "controls and no dose",
          "in the controls " + data.controlCount().orElseThrow() + " responded",
          everywhere());
    }
    double dose = byDose.firstKey();
    var count = byDose.firstEntry().getValue();
    var limits = count.limits(choices.confidence());
    boolean below = limits.low() > 0.5;
    boolean above = limits.high() < 0.5;
    var known =
        below || above
            ? WithoutCurve.outermost(data, dose, count, choices.confidence(), below)
                .replace(below ? "at the lowest dose" : "at the highest dose", "at the one dose")
            : "at the one dose, "
                + data.axis().print(dose)
                + ", "
                + count
                + " responded; whether that is more or less than one half stays open";
    return new WithoutCurve(
        data,
        NoCurveReason.ONE_DOSE,
        "one dose only, " + data.axis().print(dose),
        known,
        below ? below(dose) : above ? above(dose) : everywhere());
  }

  private WithoutCurve extreme(boolean all) {
    var byDose = byDose();
    if (!all && byDose.values().stream().anyMatch(each -> each.responded() > 0)) {
      return new WithoutCurve(
          data,
          NoCurveReason.NONE_RESPONDED,
          "no dose killed a larger share than the controls",
          sharesInWords(),
          above(byDose.lastKey()));
    }
    double dose = all ? byDose.firstKey() : byDose.lastKey();
    var count = byDose.get(dose);
    var known =
        "the dose for one half lies "
            + (all ? "below the lowest" : "above the highest")
            + " dose if response rises with dose; "
            + WithoutCurve.outermost(data, dose, count, choices.confidence(), all);
    return new WithoutCurve(
        data,
        all ? NoCurveReason.ALL_RESPONDED : NoCurveReason.NONE_RESPONDED,
        all ? "all animals responded at every dose" : "no animal responded at any dose",
        known,
        all ? below(dose) : above(dose));
  }

  private WithoutCurve separated(double lowestHit, double highestSurvivor) {
    double from = choices.scale().dose(Math.min(highestSurvivor, lowestHit));
    double to = choices.scale().dose(Math.max(highestSurvivor, lowestHit));
    var axis = data.axis();
    if (lowestHit > highestSurvivor) {
      return new WithoutCurve(
          data,
          NoCurveReason.SEPARATED,
          "no dose killed only a part of its animals",
          "up to "
              + axis.print(from)
              + " none responded and from "
              + axis.print(to)
              + " on all, so the dose for one half lies between the two",
          DoseLimits.between(from, to));
    }
    var byDose = byDose();
    double dose = nearest(byDose, from);
    var below = byDose.lowerKey(dose);
    var above = byDose.higherKey(dose);
    return new WithoutCurve(
        data,
        NoCurveReason.SEPARATED,
        "only one dose, " + axis.print(dose) + ", killed a part of its animals",
        "at "
            + axis.print(dose)
            + " "
            + byDose.get(dose)
            + " responded; the dose for one half lies between the neighbouring doses",
        new DoseLimits(
            below == null
                ? LimitShape.NO_LOWER_LIMIT
                : above == null ? LimitShape.NO_UPPER_LIMIT : LimitShape.BOUNDED,
            below == null ? none() : below,
            above == null ? Double.POSITIVE_INFINITY : above));
  }

  private static double nearest(NavigableMap<Double, ShareCount> byDose, double dose) {
    double best = byDose.firstKey();
    for (double each : byDose.keySet()) {
      best = Math.abs(each - dose) < Math.abs(best - dose) ? each : best;
    }
    return best;
  }

  WithoutCurve notRising(String found) {
    return new WithoutCurve(data, NoCurveReason.NOT_RISING, found, sharesInWords(), everywhere());
  }

  WithoutCurve notSettled(String found) {
    return new WithoutCurve(data, NoCurveReason.NOT_SETTLED, found, sharesInWords(), everywhere());
  }

  private String sharesInWords() {
    var words = new StringBuilder();
    byDose()
        .forEach(
            (dose, count) ->
                words
                    .append(words.isEmpty() ? "" : "; ")
                    .append(data.axis().inUnit(dose))
                    .append(": ")
                    .append(count));
    return words.toString();
  }

  private NavigableMap<Double, ShareCount> byDose() {
    return PointTable.byDose(data, choices.scale() == DoseScale.PLAIN);
  }

  private double none() {
    return choices.scale().isLogarithm() ? 0 : Double.NEGATIVE_INFINITY;
  }

  private DoseLimits below(double dose) {
    return new DoseLimits(LimitShape.NO_LOWER_LIMIT, none(), dose);
  }

  private static DoseLimits above(double dose) {
    return new DoseLimits(LimitShape.NO_UPPER_LIMIT, dose, Double.POSITIVE_INFINITY);
  }

  private DoseLimits everywhere() {
    return new DoseLimits(LimitShape.EVERYWHERE, none(), Double.POSITIVE_INFINITY);
  }
}
