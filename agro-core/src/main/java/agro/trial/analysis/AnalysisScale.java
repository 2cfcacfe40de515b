package agro.trial.analysis;

import agro.report.InputProblem;
import agro.trial.PlotValue;
import java.util.ArrayList;
import java.util.stream.Collectors;

/** Values of plots on their own scale and on that of the analysis. */
final class AnalysisScale {

  private static final int NAMED = 6;

  private AnalysisScale() {}

  /** Values of the plots, shares in per cent. */
  static double[] values(AnalysisSubject subject) {
    return subject.values().values().stream().mapToDouble(AnalysisScale::value).toArray();
  }

  private static double value(PlotValue value) {
    return value.outOf().isPresent() ? 100 * value.share() : value.mean();
  }

  /** The same on the scale of the analysis; all plots that cannot be transformed are named. */
  static double[] analysed(AnalysisSubject subject) {
    var transformation = subject.transformation();
    var refused = new ArrayList<String>();
    String reason = "";
    for (var value : subject.values().values()) {
      var refusal = transformation.refusal(value(value), value.outOf());
      if (refusal.isPresent()) {
        reason = refusal.get();
        refused.add(value.plot().label());
      }
    }
    if (!refused.isEmpty()) {
      throw InputProblem.of(
              refused.stream().limit(NAMED).collect(Collectors.joining(", "))
                  + (refused.size() > NAMED ? " and " + (refused.size() - NAMED) + " more" : "")
                  + " cannot be taken to the scale "
                  + transformation.words())
          .expected("values that this scale has")
          .because(reason)
          .mend(transformation.cure());
    }
    return subject.values().values().stream()
        .mapToDouble(value -> transformation.apply(value(value), value.outOf()))
        .toArray();
  }
}
