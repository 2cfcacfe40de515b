package agro.stats.mixed;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.linear.ContrastCoding;
import agro.stats.linear.DesignMatrix;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A linear mixed model: fixed terms, random terms of factors in any nesting or crossing, and, if
 * wished, a correlation in time within subjects. Computed with dense matrices; meant for up to
 * about a thousand observations.
 */
public final class MixedModel {

  private static final double DEPENDENT = 1e-9;

  private final DesignMatrix design;
  private final List<RandomTerm> random;
  private final Optional<WithinSubject> within;
  private final LikelihoodKind kind;

  private MixedModel(
      DesignMatrix design,
      List<RandomTerm> random,
      Optional<WithinSubject> within,
      LikelihoodKind kind) {
    this.design = design;
    this.random = random;
    this.within = within;
    this.kind = kind;
  }

  /**
   * A model by restricted likelihood.
   *
   * @param fixed fixed terms, an intercept comes before them
   * @param random random terms of factors, such as {@code ModelTerm.of(site)} and {@code
   *     ModelTerm.nested(block, site)}; may be empty
   * @return the model
   * @throws InputProblem if a random term has one level, one observation in each level, or the
   *     groups of another one, or numbers of observations differ
   */
  public static MixedModel of(List<ModelTerm> fixed, List<ModelTerm> random) {
    var design = DesignMatrix.of(fixed, ContrastCoding.SUM_TO_ZERO);
    var terms = new ArrayList<RandomTerm>();
    for (ModelTerm each : random) {
      var term = RandomTerm.of(each, design.rows());
      for (RandomTerm other : terms) {
        if (term.groupsLike(other)) {
          throw InputProblem.of(
                  "Random terms " + other.name() + " and " + term.name() + " group the rows alike")
              .expected("different groups")
              .because("two variances of the same groups cannot be told apart")
              .mend("leave one of them out");
        }
      }
      terms.add(term);
    }
    return new MixedModel(design, List.copyOf(terms), Optional.empty(), LikelihoodKind.RESTRICTED);
  }

  /**
   * The same by another likelihood.
   *
   * @param wanted what is maximised
   * @return a new model
   */
  public MixedModel with(LikelihoodKind wanted) {
    return new MixedModel(design, random, within, wanted);
  }

  /**
   * The same with observations of a subject correlated in time.
   *
   * @param correlation the correlation
   * @return a new model
   * @throws InputProblem if it has another number of observations
   */
  public MixedModel with(WithinSubject correlation) {
    if (correlation.size() != design.rows()) {
      throw InputProblem.of(
              correlation.size() + " times for a model of " + design.rows() + " observations")
          .expected("one time for each observation")
          .because("rows belong together")
          .mend("give each row its subject and time");
    }
    return new MixedModel(design, random, Optional.of(correlation), kind);
  }

  /**
   * Fits the model.
   *
   * @param response one finite value for each observation
   * @return the fit
   * @throws InputProblem if a value is missing, nothing scatters, or the data cannot tell the
   *     variances
   */
  public MixedModelFit fit(double... response) {
    double[] values = response.clone();
    check(values);
    int[] kept = independentColumns();
    double[][] columns = new double[kept.length][design.rows()];
    for (int j = 0; j < kept.length; j++) {
      for (int i = 0; i < design.rows(); i++) {
        columns[j][i] = design.value(i, kept[j]);
      }
    }
    double scale = residualVariance(columns, values);
    var covariance =
        new CovarianceModel(
            values.length, random.stream().map(RandomTerm::operator).toList(), within);
    var point = new LikelihoodSearch(covariance, columns, values, kind, scale).climb();
    return new MixedModelFit(design, kept, random, within, kind, point);
  }

  private void check(double[] values) {
    if (values.length != design.rows()) {
      throw InputProblem.of(values.length + " values for " + design.rows() + " observations")
          .expected("one value for each observation")
          .because("rows belong together")
          .mend("give one value for each row");
    }
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        throw InputProblem.of("Value number " + (i + 1) + " is " + values[i])
            .expected("finite numbers")
            .because("one such value would spoil every sum")
            .mend("leave rows without a value out; the model takes unequal replication");
      }
    }
  }

  /** Columns that do not depend on those before them. */
  private int[] independentColumns() {
    var basis = new ArrayList<double[]>();
    var kept = new ArrayList<Integer>();
    for (int j = 0; j < design.columns(); j++) {
      double[] column = new double[design.rows()];
      for (int i = 0; i < column.length; i++) {
        column[i] = design.value(i, j);
      }
      double length = Math.sqrt(DenseMatrix.dot(column, column));
      subtract(basis, column);
      double left = Math.sqrt(DenseMatrix.dot(column, column));
      if (left > DEPENDENT * length) {
        kept.add(j);
        for (int i = 0; i < column.length; i++) {
          column[i] /= left;
        }
        basis.add(column);
      }
    }
    return kept.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void subtract(List<double[]> basis, double[] column) {
    for (int pass = 0; pass < 2; pass++) {
      for (double[] direction : basis) {
        double along = DenseMatrix.dot(direction, column);
        for (int i = 0; i < column.length; i++) {
          column[i] -= along * direction[i];
        }
      }
    }
  }

  private double residualVariance(double[][] columns, double[] values) {
    int df = values.length - columns.length;
    if (df < 2) {
      throw InputProblem.of(
              values.length + " observations for " + columns.length + " fixed coefficients")
          .expected("at least two observations more")
          .because("variances are estimated from what the fixed terms leave")
          .mend("use more replicates or fewer fixed terms");
    }
    var basis = new ArrayList<double[]>();
    for (double[] column : columns) {
      double[] own = column.clone();
      subtract(basis, own);
      double length = Math.sqrt(DenseMatrix.dot(own, own));
      for (int i = 0; i < own.length; i++) {
        own[i] /= length;
      }
      basis.add(own);
    }
    double[] left = values.clone();
    subtract(basis, left);
    double squares = DenseMatrix.dot(left, left);
    if (squares <= 1e-20 * DenseMatrix.dot(values, values)) {
      throw InputProblem.of("The fixed terms explain every value exactly")
          .expected("values that scatter")
          .because("without scatter there is no variance to estimate")
          .mend("check the data");
    }
    return squares / df;
  }

  /**
   * Works that the method rests on.
   *
   * @return Patterson and Thompson 1971 for the likelihood, Fai and Cornelius 1996 for the tests
   */
  public static List<Reference> sources() {
    return List.of(MixedSources.PATTERSON_THOMPSON_1971, MixedSources.FAI_CORNELIUS_1996);
  }

  @Override
  public String toString() {
    return design.terms() + " with random " + random.stream().map(RandomTerm::name).toList();
  }
}
