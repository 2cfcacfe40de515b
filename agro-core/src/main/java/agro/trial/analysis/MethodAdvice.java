package agro.trial.analysis;

import agro.stats.multiple.ComparisonMethod;
import java.util.List;
import java.util.Optional;

/** Says where a method of comparison does not keep what its reader expects. */
final class MethodAdvice {

  private MethodAdvice() {}

  static Optional<String> of(
      AnalysisSubject subject, AnalysisChoices choices, List<EffectRow> effects) {
    if (choices.method().filter(m -> m == ComparisonMethod.FISHER_LSD).isEmpty()) {
      return Optional.empty();
    }
    boolean found =
        effects.stream()
            .filter(row -> row.role() == EffectRow.Role.TREATMENT)
            .flatMap(row -> row.test().stream())
            .anyMatch(test -> test.pValue() <= subject.level());
    return Optional.of(
        found
            ? "Fisher's least significant difference keeps the level for each single pair only; with"
                + " many treatments some pairs differ by chance."
            : "No test of treatments is significant; Fisher's least significant difference is"
                + " customary only after one that is.");
  }
}
