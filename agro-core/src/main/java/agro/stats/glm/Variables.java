package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Checks of the variables of a design. */
final class Variables {

  private Variables() {}

  static void check(List<ModelTerm> terms) {
    Map<String, Object> known = new HashMap<>();
    for (ModelTerm term : terms) {
      for (Factor factor : term.allFactors()) {
        checkName(known, factor.name(), factor);
        if (factor.levelCount() < 2) {
          throw InputProblem.of(
                  "factor " + factor.name() + " with the one level " + factor.levels())
              .expected("at least two levels")
              .because("there is nothing to compare it with")
              .mend("leave the factor out, or check whether labels were read from another column");
        }
      }
      for (Covariate covariate : term.covariates()) {
        checkName(known, covariate.name(), covariate);
      }
    }
  }

  private static void checkName(Map<String, Object> known, String name, Object variable) {
    var before = known.putIfAbsent(name, variable);
    if (before != null && !before.equals(variable)) {
      throw InputProblem.of("two different variables named " + name)
          .expected("a name of its own for each variable")
          .because("coefficients and terms are told apart by name")
          .mend("rename one of them");
    }
  }
}
