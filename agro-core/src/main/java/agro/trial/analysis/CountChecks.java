package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import agro.stats.assumption.ShapiroWilk;
import agro.stats.glm.GeneralisedLinearFit;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Checks of a generalised linear model of a trial. */
final class CountChecks {

  private static final double DOUBTFUL = 0.05;
  private static final long SEED = 1;

  private final GeneralisedLinearFit fit;
  private final AnalysisSubject subject;

  CountChecks(GeneralisedLinearFit fit, AnalysisSubject subject) {
    this.fit = fit;
    this.subject = subject;
  }

  List<CheckedAssumption> all() {
    var checks = new ArrayList<CheckedAssumption>();
    checks.add(scatter());
    checks.add(residuals());
    return checks;
  }

  private CheckedAssumption scatter() {
    var name = "scatter about the means (Pearson's chi-squared over its degrees of freedom)";
    int df = fit.residualDegreesOfFreedom();
    if (df <= 0) {
      return new CheckedAssumption(
          name,
          "not made: no degrees of freedom are left",
          OptionalDouble.empty(),
          "Nothing is known about this.");
    }
    double square = fit.pearsonChiSquared();
    boolean estimated = fit.model().family().dispersionIsEstimated();
    double chance = UpperTail.chiSquared(square, df);
    var sentence =
        TestSentence.of("chi-squared", square, chance, df)
            + "; "
            + Numbers.fixed(square / df, 2)
            + " times what the family expects";
    if (estimated) {
      return new CheckedAssumption(
          name,
          sentence,
          OptionalDouble.of(chance),
          "The tests and limits take this factor into account.");
    }
    return new CheckedAssumption(
        name,
        sentence,
        OptionalDouble.of(chance),
        chance <= DOUBTFUL
            ? "Plots scatter more than the family says, so that tests are too bold; "
                + instead()
                + " takes that into account."
            : "Plots scatter no more than the family says.");
  }

  private String instead() {
    return switch (subject.route()) {
      case BINOMIAL -> "the quasi-binomial route";
      case POISSON -> "the quasi-Poisson or negative binomial route";
      default -> "the quasi-Poisson route";
    };
  }

  private CheckedAssumption residuals() {
    var name = "randomised quantile residuals (Shapiro-Wilk)";
    try {
      var test = ShapiroWilk.test(fit.quantileResiduals(SEED));
      return new CheckedAssumption(
          name,
          test.sentence(),
          OptionalDouble.of(test.pValue()),
          test.pValue() <= DOUBTFUL
              ? "The values lie farther from the family's distribution than chance explains easily."
              : "The values say nothing against the family's distribution.");
    } catch (InputProblem problem) {
      return new CheckedAssumption(
          name,
          "not made: " + problem.read(),
          OptionalDouble.empty(),
          "Nothing is known about this.");
    }
  }
}
