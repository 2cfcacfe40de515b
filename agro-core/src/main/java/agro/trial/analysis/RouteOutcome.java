package agro.trial.analysis;

import agro.source.Reference;
import agro.stats.linear.ContrastEstimate;
import java.util.LinkedHashSet;
import java.util.List;

/** What a route found. */
record RouteOutcome(
    List<String> reasons,
    List<CheckedAssumption> checks,
    List<PlotResidual> plots,
    List<EffectRow> effects,
    List<TreatmentMeans> means,
    List<ContrastEstimate> contrasts,
    TrialPrecision precision,
    List<String> advice,
    List<Reference> sources) {

  AnalysedTrial result(AnalysisSubject subject, List<String> allReasons) {
    return new AnalysedTrial(
        subject,
        allReasons,
        checks,
        plots,
        effects,
        means,
        contrasts,
        precision,
        advice,
        List.copyOf(new LinkedHashSet<>(sources)));
  }
}
