package agro.stats.glm;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.linear.Factor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A fitted model of ordinal scores. */
public final class OrdinalFit {

  private final OrdinalModel model;
  private final OrdinalScores scores;
  private final PredictorDesign design;

  /** Columns of the design that were fitted: those of full rank without the intercept. */
  private final int[] columns;

  private final OrdinalSearch search;
  private final SeparationCone cone;

  /** Rows of the cone that do not run to a limit, and what they determine. */
  private final RowSpace determined;

  private final double[] covariance;

  private OrdinalFit(
      OrdinalModel model,
      OrdinalScores scores,
      PredictorDesign design,
      int[] columns,
      OrdinalSearch search) {
    this.model = model;
    this.scores = scores;
    this.design = design;
    this.columns = columns;
    this.search = search;
    this.cone = OrdinalSeparation.coneOf(search);
    this.determined = OrdinalSeparation.determined(search, cone);
    this.covariance = search.factor().isRegular() ? search.factor().inverse() : new double[0];
  }

  static OrdinalFit of(OrdinalModel model, OrdinalScores scores, PredictorDesign design) {
    int[] columns = Arrays.stream(design.space().pivots()).filter(each -> each > 0).toArray();
    int k = design.names().size();
    double[] x = new double[scores.size() * columns.length];
    for (int i = 0; i < scores.size(); i++) {
      for (int j = 0; j < columns.length; j++) {
        x[i * columns.length + j] = design.x()[i * k + columns[j]];
      }
    }
    var search = OrdinalSearch.run(scores, x, columns.length, model.link());
    return new OrdinalFit(model, scores, design, columns, search);
  }

  /**
   * What was fitted.
   *
   * @return what was fitted
   */
  public OrdinalModel model() {
    return model;
  }

  /**
   * The scores.
   *
   * @return the scores
   */
  public OrdinalScores scores() {
    return scores;
  }

  /**
   * The matrix of the linear predictor.
   *
   * @return the matrix of the linear predictor
   */
  public PredictorDesign design() {
    return design;
  }

  OrdinalSearch search() {
    return search;
  }

  /**
   * Cut points, named by the classes on both sides.
   *
   * @return cut points, named by the classes on both sides
   */
  public List<CoefficientEstimate> cutPoints() {
    var list = new ArrayList<CoefficientEstimate>();
    var classes = scores.classes();
    for (int j = 0; j < search.cuts; j++) {
      list.add(estimate(classes.get(j) + "|" + classes.get(j + 1), unit(j)));
    }
    return List.copyOf(list);
  }

  /**
   * Coefficients of the design without its intercept; positive means higher scores.
   *
   * @return coefficients of the design without its intercept; positive means higher scores
   */
  public List<CoefficientEstimate> coefficients() {
    var list = new ArrayList<CoefficientEstimate>();
    for (int j = 1; j < design.names().size(); j++) {
      int at = Arrays.binarySearch(columns, j);
      list.add(
          at < 0
              ? CoefficientEstimate.without(design.names().get(j), EstimateState.NOT_ESTIMABLE)
              : estimate(design.names().get(j), unit(search.cuts + at)));
    }
    return List.copyOf(list);
  }

  /**
   * One coefficient.
   *
   * @param name a name of the design
   * @return its estimate
   * @throws InputProblem if there is no such coefficient
   */
  public CoefficientEstimate coefficient(String name) {
    return coefficients().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("a coefficient named \"" + name + "\"")
                    .expected("one of " + design.names().subList(1, design.names().size()))
                    .because("the design has no other")
                    .mend("name one of them"));
  }

  private double[] unit(int place) {
    double[] unit = new double[search.parameters().length];
    unit[place] = 1;
    return unit;
  }

  CoefficientEstimate estimate(String name, double[] function) {
    if (!determined.determines(function)) {
      return CoefficientEstimate.without(name, cone.direction(function));
    }
    if (covariance.length == 0) {
      return CoefficientEstimate.without(name, EstimateState.UNDETERMINED);
    }
    double value = 0;
    for (int j = 0; j < function.length; j++) {
      value += function[j] == 0 ? 0 : function[j] * search.parameters()[j];
    }
    return CoefficientEstimate.of(
        name, value, Math.sqrt(covariance(function, function)), Double.POSITIVE_INFINITY);
  }

  /** Covariance of two functions of cut points and coefficients. */
  double covariance(double[] one, double[] other) {
    int k = one.length;
    double sum = 0;
    for (int a = 0; a < k; a++) {
      for (int b = 0; b < k && one[a] != 0; b++) {
        sum += one[a] * covariance[a * k + b] * other[b];
      }
    }
    return sum;
  }

  /** A function of the coefficients of the whole design as one of cut points and coefficients. */
  double[] ofParameters(double[] designFunction) {
    double[] function = new double[search.parameters().length];
    for (int j = 0; j < columns.length; j++) {
      function[search.cuts + j] = designFunction[columns[j]];
    }
    return function;
  }

  /**
   * Log-likelihood of the scores as they stand, without a constant for their grouping.
   *
   * @return log-likelihood of the scores as they stand, without a constant for their grouping
   */
  public double logLikelihood() {
    return search.logLikelihood();
  }

  /**
   * Minus twice the log-likelihood.
   *
   * @return minus twice the log-likelihood
   */
  public double deviance() {
    return -2 * search.logLikelihood();
  }

  /**
   * Cut points and coefficients.
   *
   * @return cut points and coefficients
   */
  public int parameters() {
    return search.parameters().length;
  }

  /**
   * Akaike's criterion.
   *
   * @return akaike's criterion
   */
  public double akaike() {
    return deviance() + 2.0 * parameters();
  }

  /**
   * Whether the search ended at a maximum; with separated data none is reached.
   *
   * @return true if the search ended at a maximum; with separated data none is reached
   */
  public boolean converged() {
    return search.converged() || isSeparated();
  }

  /**
   * Number of iterations.
   *
   * @return number of iterations
   */
  public int iterations() {
    return search.iterations();
  }

  /**
   * Whether some coefficients have no finite estimate.
   *
   * @return true if some coefficients have no finite estimate
   */
  public boolean isSeparated() {
    return cone.isSeparated();
  }

  /**
   * Test of this model against one with fewer terms.
   *
   * @param smaller a fit of the same scores by the same model
   * @return the test
   * @throws InputProblem if scores or model differ or the other one is not smaller
   */
  public LikelihoodRatio against(OrdinalFit smaller) {
    int df = parameters() - smaller.parameters();
    if (smaller.scores != scores || !smaller.model.equals(model) || df < 1) {
      throw InputProblem.of("fits of different scores or models, or one that is not smaller")
          .expected("a fit of the same scores with some of the terms")
          .because("only then do their likelihoods compare")
          .mend("fit both to one set of scores");
    }
    return LikelihoodRatio.of(Math.max(0, smaller.deviance() - deviance()), df);
  }

  /**
   * Each term after all that do not contain it, by likelihood ratio.
   *
   * @return a row for each term
   */
  public List<DevianceRow> termTests() {
    return OrdinalTests.terms(this);
  }

  /**
   * Test that one predictor serves all cut points.
   *
   * @return the test, with a row for each coefficient
   * @throws InputProblem with two classes, which have only one cut point, or without coefficients
   */
  public ParallelCuts parallelCuts() {
    return ParallelCuts.of(this);
  }

  /**
   * Expected shares of the classes for each level of factors, at equal weights of the levels of the
   * other factors and at the means of covariates.
   *
   * @param factor a factor of the design
   * @param others further factors, for their combinations
   * @return a row for each level or combination
   */
  public OrdinalMeans means(Factor factor, Factor... others) {
    return OrdinalMeans.of(this, ReferenceGrid.factors(factor, others));
  }

  /**
   * Sentences about what is wrong or odd with this fit; empty if nothing is.
   *
   * @return sentences about what is wrong or odd with this fit; empty if nothing is
   */
  public List<String> remarks() {
    return OrdinalSeparation.remarks(this);
  }

  /**
   * Works that the methods of this fit were taken from.
   *
   * @return works that the methods of this fit were taken from
   */
  public List<Reference> sources() {
    return List.of(GeneralisedLinearSources.MCCULLAGH_1980);
  }

  @Override
  public String toString() {
    var text = new StringBuilder("cumulative link model, link ").append(model.link());
    for (var each : coefficients()) {
      text.append("\n  ").append(each);
    }
    for (var each : cutPoints()) {
      text.append("\n  cut ").append(each);
    }
    text.append("\nminus twice the log-likelihood ").append(Figures.of(deviance()));
    text.append(", AIC ").append(Figures.of(akaike()));
    remarks().forEach(each -> text.append('\n').append(each));
    return text.toString();
  }
}
