package agro.stats.glm;

import agro.source.Reference;
import java.util.ArrayList;
import java.util.List;

/** Works that generalised linear models rest on. */
final class GeneralisedLinearSources {

  static final Reference MCCULLAGH_NELDER_1989 =
      Reference.fromMemory(
          "McCullagh, P. & Nelder, J. A.",
          1989,
          "Generalized Linear Models, second edition",
          "Chapman and Hall, London");

  static final Reference LAWLESS_1987 =
      Reference.fromMemory(
          "Lawless, J. F.",
          1987,
          "Negative binomial and mixed Poisson regression",
          "Canadian Journal of Statistics 15:209-225");

  static final Reference ALBERT_ANDERSON_1984 =
      Reference.fromMemory(
          "Albert, A. & Anderson, J. A.",
          1984,
          "On the existence of maximum likelihood estimates in logistic regression models",
          "Biometrika 71:1-10");

  static final Reference FIRTH_1993 =
      Reference.fromMemory(
          "Firth, D.",
          1993,
          "Bias reduction of maximum likelihood estimates",
          "Biometrika 80:27-38");

  static final Reference MCCULLAGH_1980 =
      Reference.fromMemory(
          "McCullagh, P.",
          1980,
          "Regression models for ordinal data",
          "Journal of the Royal Statistical Society B 42:109-142");

  private GeneralisedLinearSources() {}

  static List<Reference> of(GeneralisedLinearFit fit) {
    var sources = new ArrayList<Reference>();
    sources.add(MCCULLAGH_NELDER_1989);
    if (fit.model().family() == ErrorFamily.NEGATIVE_BINOMIAL) {
      sources.add(LAWLESS_1987);
    }
    if (fit.isSeparated()) {
      sources.add(ALBERT_ANDERSON_1984);
    }
    if (fit.model().method() == EstimationMethod.PENALISED_LIKELIHOOD) {
      sources.add(FIRTH_1993);
    }
    return List.copyOf(sources);
  }
}
