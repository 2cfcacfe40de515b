package agro.stats.glm;

import agro.stats.TestSentence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Plain sentences on what a reader of a fit has to know. */
final class FitRemarks {

  private static final double SUSPICIOUS = 0.05;

  private FitRemarks() {}

  static List<String> of(GeneralisedLinearFit fit) {
    var remarks = new ArrayList<String>();
    if (fit.isSeparated()) {
      remarks.addAll(SeparationText.of(fit));
    }
    if (fit.isAtEdge()) {
      remarks.add(
          "The link "
              + fit.model().link()
              + " leads a fitted mean to the edge of its range, where the likelihood has no level"
              + " top: standard errors do not exist. Take the link "
              + fit.model().family().usualLink()
              + ".");
    } else if (!fit.converged()) {
      remarks.add(
          "The search did not converge in "
              + fit.iterations()
              + " iterations: do not use these figures. A simpler model, another link or a penalised"
              + " likelihood may have a maximum.");
    }
    String lost = named(fit, EstimateState.NOT_ESTIMABLE);
    if (!lost.isEmpty()) {
      remarks.add(
          "No observations tell "
              + lost
              + " from the other coefficients, as with cells without observations; means that need"
              + " them are not estimable.");
    }
    if (fit.shape().map(ShapeEstimate::isUnbounded).orElse(false)) {
      remarks.add(
          "The counts scatter no more than a Poisson: the shape is unbounded and the Poisson fit is"
              + " shown.");
    }
    addScatter(fit, remarks);
    return List.copyOf(remarks);
  }

  static String named(GeneralisedLinearFit fit, EstimateState state) {
    return fit.coefficients().stream()
        .filter(each -> each.state() == state)
        .map(CoefficientEstimate::name)
        .collect(Collectors.joining(", "));
  }

  private static void addScatter(GeneralisedLinearFit fit, List<String> remarks) {
    var family = fit.model().family();
    int df = fit.residualDegreesOfFreedom();
    if (df == 0) {
      remarks.add(
          "There are as many coefficients as observations: nothing is left to show whether the"
              + " model fits.");
      return;
    }
    if (family != ErrorFamily.BINOMIAL && family != ErrorFamily.POISSON) {
      return;
    }
    if (family == ErrorFamily.BINOMIAL && !fit.response().isGrouped()) {
      remarks.add(
          "Each observation is a single yes or no, so deviance and Pearson's X2 do not test the"
              + " fit.");
      return;
    }
    double p = Tails.chiSquared(fit.pearsonChiSquared(), df);
    if (p < SUSPICIOUS) {
      boolean counts = family == ErrorFamily.POISSON;
      remarks.add(
          "The scatter is "
              + Figures.of(fit.pearsonChiSquared() / df)
              + " times that of the family (X2 = "
              + Figures.of(fit.pearsonChiSquared())
              + "; df = "
              + df
              + "; "
              + TestSentence.chance(p)
              + "): standard errors are too small unless "
              + (counts ? "a quasi-Poisson or negative binomial" : "the quasi-binomial")
              + " family is taken or the model is mended.");
    }
  }
}
