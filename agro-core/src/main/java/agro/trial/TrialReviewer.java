package agro.trial;

import agro.trial.TrialFinding.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts together what is recognised and found in a trial. */
final class TrialReviewer {

  private TrialReviewer() {}

  static TrialReview review(FieldTrial trial) {
    Map<String, TrialDesign> designs = new LinkedHashMap<>();
    var findings = new ArrayList<TrialFinding>();
    for (var environment : trial.environments()) {
      var plots =
          trial.plots().stream().filter(plot -> plot.environment().equals(environment)).toList();
      var recognised = DesignRecognition.recognise(plots, trial.factors());
      designs.put(environment, recognised.design());
      findings.addAll(recognised.findings());
      var design = trial.declaredDesign().orElse(recognised.design());
      findings.addAll(LayoutChecks.of(trial, plots, design));
      trial
          .declaredDesign()
          .ifPresent(
              declared ->
                  findings.addAll(DesignComparison.compare(declared, recognised.design(), plots)));
    }
    findings.addAll(NameChecks.of(trial));
    findings.addAll(ValueChecks.of(trial));
    findings.sort(Comparator.comparing(TrialFinding::severity, worstFirst()));
    return new TrialReview(trial.name(), designs, List.copyOf(findings));
  }

  private static Comparator<Severity> worstFirst() {
    return Comparator.reverseOrder();
  }
}
