package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What each term takes off the deviance, with its test: chi-squared, or F where the dispersion is
 * estimated (from Pearson's X2 of the whole model). The shape of a negative binomial is held at
 * that of the whole model. McCullagh and Nelder 1989, Generalized Linear Models, section 2.3;
 * Venables and Ripley 2002, Modern Applied Statistics with S, sections 7.1 and 7.5 (from memory).
 */
public final class AnalysisOfDeviance {

  private final String title;
  private final List<DevianceRow> rows;
  private final double residualDeviance;
  private final int residualDegreesOfFreedom;

  private AnalysisOfDeviance(String title, List<DevianceRow> rows, GeneralisedLinearFit fit) {
    this.title = title;
    this.rows = List.copyOf(rows);
    this.residualDeviance = fit.deviance();
    this.residualDegreesOfFreedom = fit.residualDegreesOfFreedom();
  }

  /**
   * Each term after those that stand before it.
   *
   * @param fit the whole model
   * @return a row for each term in their order
   * @throws InputProblem for a penalised fit
   */
  public static AnalysisOfDeviance sequential(GeneralisedLinearFit fit) {
    refusePenalised(fit);
    var rows = new ArrayList<DevianceRow>();
    var terms = fit.design().terms();
    boolean intercept = fit.design().hasIntercept();
    var before =
        intercept ? deviance(fit, PredictorDesign.commonMean(fit.response().size())) : null;
    for (int t = 0; t < terms.size(); t++) {
      var design = fit.design().first(t + 1);
      var after =
          t + 1 == terms.size() ? new Left(fit.deviance(), fit.rank()) : deviance(fit, design);
      if (before != null) {
        rows.add(row(fit, terms.get(t).name(), before, after));
      }
      before = after;
    }
    return new AnalysisOfDeviance("each term after those before it", rows, fit);
  }

  /**
   * Each term after all others that do not contain it: interactions after everything else, main
   * effects without the interactions that they are part of.
   *
   * @param fit the whole model
   * @return a row for each term in their order
   * @throws InputProblem for a penalised fit
   */
  public static AnalysisOfDeviance marginal(GeneralisedLinearFit fit) {
    refusePenalised(fit);
    var rows = new ArrayList<DevianceRow>();
    var terms = fit.design().terms();
    for (ModelTerm term : terms) {
      var others =
          terms.stream()
              .filter(each -> !each.equals(term) && !each.contains(term))
              .collect(Collectors.toCollection(ArrayList::new));
      var without = deviance(fit, fit.design().withTerms(others));
      others.add(term);
      var with = deviance(fit, fit.design().withTerms(others));
      rows.add(row(fit, term.name(), without, with));
    }
    return new AnalysisOfDeviance("each term after all that do not contain it", rows, fit);
  }

  private static void refusePenalised(GeneralisedLinearFit fit) {
    if (fit.model().method() == EstimationMethod.PENALISED_LIKELIHOOD) {
      throw InputProblem.of("an analysis of deviance of a penalised fit")
          .expected("a fit by maximum likelihood")
          .because("the penalty changes from model to model, so deviances do not compare")
          .mend(
              "analyse the fit by maximum likelihood, whose deviance stands under separation too,"
                  + " and take estimates and limits from the penalised fit");
    }
  }

  private record Left(double deviance, int rank) {}

  private static Left deviance(GeneralisedLinearFit fit, PredictorDesign design) {
    var model = fit.model();
    var other = fit.shapedModel().fitState(fit.response(), design, new double[0]);
    if (!other.search.converged()) {
      throw InputProblem.of("the fit of " + design.terms() + " did not converge")
          .expected("a maximum of the likelihood for each model")
          .because("deviances compare only at their maximum")
          .mend("take another link than " + model.link());
    }
    return new Left(new FitMeasures(other).deviance(), other.problem.columns);
  }

  private static DevianceRow row(GeneralisedLinearFit fit, String name, Left before, Left after) {
    return DevianceRow.of(
        name,
        after.rank() - before.rank(),
        before.deviance() - after.deviance(),
        after.deviance(),
        fit.dispersion(),
        fit.degreesOfFreedomOfTests());
  }

  /**
   * Rows in the order of the terms.
   *
   * @return rows in the order of the terms
   */
  public List<DevianceRow> rows() {
    return rows;
  }

  /**
   * The row of a term.
   *
   * @param term its name
   * @return the row
   * @throws InputProblem if there is no such term
   */
  public DevianceRow row(String term) {
    return rows.stream()
        .filter(each -> each.term().equals(term))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("term " + term)
                    .expected("one of " + rows.stream().map(DevianceRow::term).toList())
                    .because("the analysis has no other rows")
                    .mend("name one of them"));
  }

  /**
   * Deviance of the whole model.
   *
   * @return deviance of the whole model
   */
  public double residualDeviance() {
    return residualDeviance;
  }

  /**
   * Degrees of freedom of the deviance of the whole model.
   *
   * @return degrees of freedom of the deviance of the whole model
   */
  public int residualDegreesOfFreedom() {
    return residualDegreesOfFreedom;
  }

  @Override
  public String toString() {
    return "Analysis of deviance, "
        + title
        + "\n"
        + rows.stream().map(each -> "  " + each + "\n").collect(Collectors.joining())
        + "  residual deviance "
        + Figures.of(residualDeviance)
        + "; df = "
        + residualDegreesOfFreedom;
  }
}
