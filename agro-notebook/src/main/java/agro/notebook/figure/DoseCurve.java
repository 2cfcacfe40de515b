package agro.notebook.figure;

import agro.trial.bioassay.CurvePoint;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.DoseResponseFit;
import agro.trial.bioassay.LethalDose;
import agro.trial.bioassay.NaturalMortality;
import agro.trial.bioassay.ShareCount;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One series of a dose-response figure: its curve on the scale of what was counted, and its counts.
 *
 * @param name name of the series, empty when there is one
 * @param fit the fit
 * @param doses the lethal doses that are drawn
 */
record DoseCurve(String name, DoseResponseFit fit, List<LethalDose> doses) {

  DoseCurve {
    doses = List.copyOf(doses);
  }

  static DoseCurve of(String name, DoseResponseFit fit, double[] percents) {
    return new DoseCurve(name, fit, fit.lethalDoses(percents));
  }

  boolean isOnLogarithm() {
    return fit.choices().scale().isLogarithm();
  }

  /** Place of a dose on the axis of the figure, a common logarithm or the dose itself. */
  double place(double dose) {
    return isOnLogarithm() ? Math.log10(dose) : dose;
  }

  double dose(double place) {
    return isOnLogarithm() ? Math.pow(10, place) : place;
  }

  /** All animals of each dose together; the control has the dose 0. */
  NavigableMap<Double, ShareCount> counts() {
    var counts = new TreeMap<Double, ShareCount>();
    for (var group : fit.data().groups()) {
      counts.merge(
          group.dose() + 0.0,
          new ShareCount(group.responded(), group.exposed()),
          (one, other) ->
              new ShareCount(one.responded() + other.responded(), one.exposed() + other.exposed()));
    }
    return counts;
  }

  /** The groups of each dose, where a dose has more than one. */
  NavigableMap<Double, List<DoseGroup>> singleGroups() {
    return fit.data().groups().stream()
        .collect(
            Collectors.collectingAndThen(
                Collectors.groupingBy(
                    group -> group.dose() + 0.0, TreeMap::new, Collectors.toList()),
                groups -> {
                  groups.values().removeIf(each -> each.size() < 2);
                  return groups;
                }));
  }

  /** Whether the curve was fitted to corrected numbers and has to be brought back. */
  private boolean isCorrected() {
    return fit.choices().natural().way() == NaturalMortality.Way.ABBOTT;
  }

  private double counted(double share) {
    double c = fit.naturalMortality();
    return isCorrected() ? c + (1 - c) * share : share;
  }

  /** The curve as shares of what was counted. */
  CurvePoint at(double dose) {
    var point = fit.pointAt(dose);
    return new CurvePoint(
        dose, counted(point.share()), counted(point.low()), counted(point.high()));
  }

  /** Share of what was counted at a lethal dose. */
  double level(LethalDose dose) {
    double c = fit.naturalMortality();
    return c + (1 - c - fit.immuneShare()) * dose.percent() / 100;
  }

  double lowestDose() {
    return dosed().firstKey();
  }

  double highestDose() {
    return dosed().lastKey();
  }

  private NavigableMap<Double, ShareCount> dosed() {
    var counts = counts();
    if (isOnLogarithm()) {
      counts.remove(0.0);
    }
    return counts;
  }
}
