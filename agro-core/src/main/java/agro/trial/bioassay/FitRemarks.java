package agro.trial.bioassay;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What a reader should know about the data and the fit of one curve. */
final class FitRemarks {

  private static final double SMALL = 1;

  private final DoseResponseFit fit;
  private final List<String> remarks = new ArrayList<>();

  private FitRemarks(DoseResponseFit fit) {
    this.fit = fit;
  }

  static List<String> of(DoseResponseFit fit) {
    var all = new FitRemarks(fit);
    ControlCheck.told(fit.data()).ifPresent(all.remarks::add);
    all.natural();
    all.immunity();
    all.falls();
    all.scatter();
    all.groupings();
    return List.copyOf(all.remarks);
  }

  private void natural() {
    var count = fit.data().controlCount();
    var way = fit.groups().way;
    if (fit.isNaturalMortalityAtZero()) {
      remarks.add(
          "Natural mortality came out at 0, the least that can be; it counts as known there and has"
              + " no standard error.");
    }
    if (way == NaturalMortality.Way.IN_MODEL && count.isEmpty()) {
      remarks.add("Natural mortality rests on the low doses alone, for there was no control.");
    }
    if (way == NaturalMortality.Way.ABBOTT) {
      remarks.add(
          "Abbott's correction takes the share of the controls for known; its error is not in the"
              + " limits, which are too narrow.");
      long below =
          fit.data().groups().stream()
              .filter(each -> !each.isControl() && each.share() < fit.groups().known)
              .count();
      if (below > 0) {
        remarks.add(
            below
                + (below == 1 ? " group" : " groups")
                + " responded less than the controls; the line took 0 for the negative corrected"
                + " number.");
      }
    }
    if (way == NaturalMortality.Way.NONE
        && count.isPresent()
        && fit.choices().scale().isLogarithm()) {
      remarks.add(
          "The controls stand outside the line, for a dose of 0 has no logarithm: "
              + count.get()
              + " responded.");
    }
  }

  private void immunity() {
    if (fit.choices().immunity() && fit.immuneShare() == 0) {
      remarks.add("The immune share came out at 0, the least that can be.");
    }
  }

  private void falls() {
    var falling = new ArrayList<String>();
    double before = Double.NaN;
    ShareCount last = null;
    for (var entry : PointTable.byDose(fit.data(), false).entrySet()) {
      if (last != null && entry.getValue().share() < last.share()) {
        falling.add(
            fit.data().axis().print(before) + " to " + fit.data().axis().print(entry.getKey()));
      }
      before = entry.getKey();
      last = entry.getValue();
    }
    if (!falling.isEmpty()) {
      remarks.add("Response falls with rising dose from " + String.join(", from ", falling) + ".");
    }
  }

  private void scatter() {
    if (fit.degreesOfFreedom() == 0) {
      remarks.add("No degree of freedom is left: whether the curve fits cannot be judged.");
      return;
    }
    if (fit.isHeterogeneityApplied() && fit.heterogeneityFactor() < 1) {
      remarks.add(
          "The factor of heterogeneity is below 1 ("
              + Numbers.fixed(fit.heterogeneityFactor(), 3)
              + ") and narrows the limits, as the chosen rule asks.");
    }
    long few =
        fit.fittedGroups().stream()
            .filter(FittedGroup::isInFit)
            .filter(
                each -> Math.min(each.expected(), each.group().exposed() - each.expected()) < SMALL)
            .count();
    if (few > 0) {
      remarks.add(
          "In "
              + few
              + (few == 1 ? " group" : " groups")
              + " fewer than one animal was expected to respond or to survive; the P of X² is rough"
              + " there.");
    }
  }

  private void groupings() {
    int series = fit.data().series().size();
    int days = fit.data().days().size();
    if (series > 1) {
      remarks.add(series + " series were put together in one curve; compare them first.");
    }
    if (days > 1) {
      remarks.add(
          days + " days were put together; what differs between them shows as heterogeneity.");
    }
    if (fit.data().axis() instanceof DoseAxis.ExposureTime) {
      remarks.add(
          "Times are doses here only if each time had animals of its own; counts of the same animals"
              + " again and again are not independent and these limits would be too narrow.");
    }
  }
}
