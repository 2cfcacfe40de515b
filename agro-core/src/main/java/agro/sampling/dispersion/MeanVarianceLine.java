package agro.sampling.dispersion;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.sampling.CountSample;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The fields that a line over fields can use. */
final class MeanVarianceLine {

  static final int FEWEST_FIELDS = 3;

  private MeanVarianceLine() {}

  /** Usable fields; those that are left out are reported. */
  static List<CountSample> usable(
      List<CountSample> samples,
      String what,
      Predicate<CountSample> usable,
      String why,
      ReadReport.Collector report) {
    if (!samples.isEmpty()) {
      CountSample.requireOneUnit(samples, what);
    }
    var kept = new ArrayList<CountSample>();
    for (var each : samples) {
      if (usable.test(each)) {
        kept.add(each);
      } else {
        report.add(Deed.DROPPED, SourceLocation.NONE, each.label() + " is left out: " + why);
      }
    }
    boolean equalMeans = kept.stream().mapToDouble(CountSample::mean).distinct().count() < 2;
    if (kept.size() < FEWEST_FIELDS || equalMeans) {
      throw InputProblem.of(kept.size() + " usable fields for " + what)
          .expected("at least " + FEWEST_FIELDS + " fields with different means")
          .because("a line with its errors needs points that lie apart")
          .mend("add fields with few and with many animals (" + why + " is left out)");
    }
    return kept;
  }
}
