package agro.trial.efficacy;

import java.util.stream.Stream;

/** Limits where animals live, die and settle one by one. */
final class IndividualLimits {

  private static final String CLUMPS = "too narrow where pests stand in clumps";

  private IndividualLimits() {}

  static EfficacyLimits of(FourCounts all, boolean mortality, double level) {
    double ta = FourCounts.sum(all.treated(), PlotCounts::after);
    double ca = FourCounts.sum(all.control(), PlotCounts::after);
    if (mortality) {
      double nT = FourCounts.sum(all.treated(), FourCounts::beforeOf);
      double nC = FourCounts.sum(all.control(), FourCounts::beforeOf);
      return EfficacyLimits.ofRatio(
          EfficacyInterval.INDIVIDUALS,
          CountLimits.shares(ta, nT, ca, nC, level),
          "by scores; too narrow where cages differ more than by chance");
    }
    if (!(whole(all, false) && (!all.before() || whole(all, true)))) {
      return EfficacyLimits.none(
          EfficacyInterval.INDIVIDUALS,
          "the counts are no whole numbers, so it is unknown how many animals were seen");
    }
    double unitsT = FourCounts.sum(all.treated(), PlotCounts::unitsAfter);
    double unitsC = FourCounts.sum(all.control(), PlotCounts::unitsAfter);
    if (!all.before()) {
      return EfficacyLimits.ofRatio(
          EfficacyInterval.INDIVIDUALS,
          CountLimits.poisson(ta, unitsT, ca, unitsC, level),
          "exact for two counts; " + CLUMPS);
    }
    double factor =
        FourCounts.sum(all.treated(), PlotCounts::unitsBefore)
            / unitsT
            * (unitsC / FourCounts.sum(all.control(), PlotCounts::unitsBefore));
    double tb = FourCounts.sum(all.treated(), FourCounts::beforeOf);
    double cb = FourCounts.sum(all.control(), FourCounts::beforeOf);
    return EfficacyLimits.ofRatio(
        EfficacyInterval.INDIVIDUALS,
        CountLimits.poisson(tb, ta, cb, ca, factor, level),
        (ta == 0 ? "half a count added to each of the four; " : "") + CLUMPS);
  }

  /** Standard error of the efficacy as a share, where animals die one by one. */
  static double mortalityError(FourCounts all) {
    return CountLimits.binomialError(
        FourCounts.sum(all.treated(), PlotCounts::after),
        FourCounts.sum(all.treated(), FourCounts::beforeOf),
        FourCounts.sum(all.control(), PlotCounts::after),
        FourCounts.sum(all.control(), FourCounts::beforeOf));
  }

  private static boolean whole(FourCounts all, boolean before) {
    return Stream.concat(all.treated().stream(), all.control().stream())
        .mapToDouble(plot -> before ? FourCounts.beforeOf(plot) : plot.after())
        .allMatch(count -> count == Math.rint(count));
  }
}
