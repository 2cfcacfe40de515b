package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The groups of one curve as the search takes them: dosed groups sorted, controls apart, numbers
 * corrected where Abbott's way is chosen. Sorting makes results independent of the order of groups
 * to the last digit.
 */
final class FitGroups {

  final double[] x;
  final double[] exposed;
  final double[] responded;
  final List<DoseGroup> controls = new ArrayList<>(0);
  final NaturalMortality.Way way;

  /** Natural mortality that counts as known. */
  final double known;

  private FitGroups(DoseResponse choices, BioassayData data, NaturalMortality natural) {
    way = natural.way();
    var scale = choices.scale();
    boolean zeroIsDose = scale == DoseScale.PLAIN && way == NaturalMortality.Way.NONE;
    var dosed = new ArrayList<DoseGroup>(data.groups().size());
    for (var group : data.groups()) {
      if (group.isControl() && !zeroIsDose) {
        controls.add(group);
      } else {
        dosed.add(group);
      }
    }
    known =
        switch (way) {
          case ABBOTT -> abbott();
          case FIXED -> natural.fixedShare();
          default -> 0;
        };
    int size = dosed.size();
    x = new double[size];
    exposed = new double[size];
    responded = new double[size];
    for (int i = 0; i < size; i++) {
      insert(i, dosed.get(i), scale);
    }
  }

  static FitGroups of(DoseResponse choices, BioassayData data) {
    for (var group : data.groups()) {
      if (group.dose() < 0 && choices.scale().isLogarithm()) {
        throw InputProblem.of("a dose of " + Numbers.plain(group.dose()) + " on a log scale")
            .expected("doses above 0, and 0 for controls")
            .because("only numbers above 0 have a logarithm")
            .mend(
                "correct the dose; if the numbers are logarithms already, choose the scale PLAIN");
      }
    }
    return new FitGroups(choices, data, choices.natural().settled(data));
  }

  private double abbott() {
    if (controls.isEmpty()) {
      throw InputProblem.of("Abbott's correction without a control")
          .expected("at least one group of dose 0")
          .because("the correction rests on the share that responds without the dose")
          .mend("add the control, or state a known share with NaturalMortality.fixed");
    }
    return controlShare();
  }

  /** Share of all controls together; NaN without controls. */
  double controlShare() {
    double all = 0;
    double hit = 0;
    for (var control : controls) {
      all += control.exposed();
      hit += control.responded();
    }
    return hit / all;
  }

  /** Share to put in for the curve's natural mortality; Abbott's way has taken it out before. */
  double fixedInCurve() {
    return way == NaturalMortality.Way.FIXED ? known : 0;
  }

  double corrected(DoseGroup group) {
    return way == NaturalMortality.Way.ABBOTT && !group.isControl()
        ? Math.max(0, (group.responded() - known * group.exposed()) / (1 - known))
        : group.responded();
  }

  private void insert(int count, DoseGroup group, DoseScale scale) {
    double place = scale.of(group.dose());
    double n = group.exposed();
    double r = corrected(group);
    int i = count;
    while (i > 0 && comesAfter(i - 1, place, n, r)) {
      x[i] = x[i - 1];
      exposed[i] = exposed[i - 1];
      responded[i] = responded[i - 1];
      i--;
    }
    x[i] = place;
    exposed[i] = n;
    responded[i] = r;
  }

  private boolean comesAfter(int i, double place, double n, double r) {
    if (x[i] != place) {
      return x[i] > place;
    }
    return exposed[i] != n ? exposed[i] > n : responded[i] > r;
  }

  /** Least distance between two different doses, for telling a step from a line. */
  double leastGap() {
    double gap = Double.POSITIVE_INFINITY;
    for (int i = 1; i < x.length; i++) {
      if (x[i] > x[i - 1]) {
        gap = Math.min(gap, x[i] - x[i - 1]);
      }
    }
    return gap;
  }
}
