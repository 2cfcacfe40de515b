package agro.stats.mixed;

import agro.report.InputProblem;
import agro.stats.UpperTail;
import agro.stats.linear.ContrastEstimate;
import agro.stats.linear.DesignMatrix;
import agro.stats.linear.Factor;
import agro.stats.linear.MeanWeights;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/** A fitted mixed model: variances, tests of fixed terms, means, and predicted random effects. */
public final class MixedModelFit {

  private static final double ONE_DIRECTION = 1e-10;
  private static final double SAME_DF = 1e-8;

  private final DesignMatrix design;
  private final int[] kept;
  private final List<RandomTerm> random;
  private final Optional<WithinSubject> within;
  private final LikelihoodKind kind;
  private final LikelihoodPoint point;
  private final int[] free;
  private final double[][] parameterCovariance;

  MixedModelFit(
      DesignMatrix design,
      int[] kept,
      List<RandomTerm> random,
      Optional<WithinSubject> within,
      LikelihoodKind kind,
      LikelihoodPoint point) {
    this.design = design;
    this.kept = kept;
    this.random = random;
    this.within = within;
    this.kind = kind;
    this.point = point;
    double[] parameters = point.parameters();
    free =
        IntStream.range(0, parameters.length)
            .filter(k -> parameters[k] > 0)
            .filter(k -> k <= random.size() || parameters[k] < CovarianceModel.LARGEST_CORRELATION)
            .toArray();
    var slope = point.slope();
    parameterCovariance =
        DenseMatrix.invert(LikelihoodSearch.part(slope.observed, free))
            .or(() -> DenseMatrix.invert(LikelihoodSearch.part(slope.expected, free)))
            .orElseThrow()
            .inverse();
  }

  /**
   * Logarithm of the likelihood that was maximised, constants included. The restricted one leaves
   * out half the logarithm of |X'X|, which depends on the coding of the factors alone.
   *
   * @return comparable between models with the same fixed terms; by full likelihood, between all
   */
  public double logLikelihood() {
    return point.logLikelihood();
  }

  /**
   * What was maximised.
   *
   * @return restricted or full likelihood
   */
  public LikelihoodKind kind() {
    return kind;
  }

  /**
   * Variances of the random terms in their order, the residual variance last.
   *
   * @return at least one
   */
  public List<VarianceComponent> variances() {
    var components = new ArrayList<VarianceComponent>();
    double[] parameters = point.parameters();
    for (int k = 0; k <= random.size(); k++) {
      boolean residual = k == random.size();
      components.add(
          new VarianceComponent(
              residual ? "residual" : random.get(k).name(),
              residual ? design.rows() : random.get(k).levels().size(),
              parameters[k],
              parameterError(k)));
    }
    return List.copyOf(components);
  }

  /**
   * The variance of one random term.
   *
   * @param name name of the term, or "residual"
   * @return its variance
   * @throws IllegalArgumentException if there is no such term
   */
  public VarianceComponent variance(String name) {
    return variances().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no variance of " + name + "; there are " + variances()));
  }

  private OptionalDouble parameterError(int parameter) {
    for (int j = 0; j < free.length; j++) {
      if (free[j] == parameter) {
        return OptionalDouble.of(Math.sqrt(parameterCovariance[j][j]));
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * Correlation of two observations of a subject that lie the shortest interval apart.
   *
   * @return 0 to 1; nothing for a model without a correlation in time
   */
  public OptionalDouble correlation() {
    return within.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(point.parameters()[random.size() + 1]);
  }

  /**
   * Standard error of the correlation in time.
   *
   * @return nothing without such a correlation, or with one at its bound
   */
  public OptionalDouble correlationStandardError() {
    return parameterError(random.size() + 1);
  }

  /**
   * Estimate of a combination of fixed coefficients.
   *
   * @param name what it means
   * @param function a factor for each column of the design
   * @return estimate with standard error and Satterthwaite's degrees of freedom
   * @throws InputProblem if the data cannot tell the combination
   */
  ContrastEstimate estimate(String name, double[] function) {
    if (!design.isEstimable(function)) {
      throw InputProblem.of("The data do not tell " + name)
          .expected("observations in all cells that it averages")
          .because("a mean over an empty cell is a guess")
          .mend("ask for means of fewer factors, or leave the level out");
    }
    double[] reduced = reduced(function);
    double estimate = DenseMatrix.dot(reduced, point.coefficients());
    double variance = variance(reduced);
    return new ContrastEstimate(
        name,
        estimate,
        Math.sqrt(variance),
        degreesOfFreedom(reduced, variance),
        estimate * estimate / variance * point.parameters()[random.size()]);
  }

  private double[] reduced(double[] function) {
    return IntStream.of(kept).mapToDouble(j -> function[j]).toArray();
  }

  private double variance(double[] function) {
    return DenseMatrix.dot(function, DenseMatrix.times(point.coefficientCovariance(), function));
  }

  private double degreesOfFreedom(double[] function, double variance) {
    double[] all = point.varianceSlopes(function);
    double[] slopes = IntStream.of(free).mapToDouble(k -> all[k]).toArray();
    double spread = DenseMatrix.dot(slopes, DenseMatrix.times(parameterCovariance, slopes));
    return 2 * variance * variance / spread;
  }

  /**
   * F tests of the fixed terms, each adjusted for all others with effects that sum to zero (type
   * III), with Satterthwaite's degrees of freedom after Fai and Cornelius. In balanced designs they
   * are those of the analysis of variance with strata.
   *
   * @return in the order of the terms; a term of which the data tell nothing is left out
   */
  public List<FixedEffectTest> tests() {
    var tests = new ArrayList<FixedEffectTest>();
    for (int term = 0; term < design.terms().size(); term++) {
      int wanted = term;
      int[] own =
          IntStream.range(0, kept.length)
              .filter(j -> design.termOfColumn(kept[j]) == wanted)
              .toArray();
      if (own.length > 0) {
        tests.add(test(design.terms().get(term).name(), own));
      }
    }
    return List.copyOf(tests);
  }

  /**
   * The F test of one fixed term.
   *
   * @param term a term of the model
   * @return its test
   * @throws IllegalArgumentException if the model has no such term or the data tell nothing of it
   */
  public FixedEffectTest test(ModelTerm term) {
    return tests().stream()
        .filter(each -> each.name().equals(term.name()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no test of " + term.name()));
  }

  private FixedEffectTest test(String name, int[] own) {
    double[][] block = LikelihoodSearch.part(point.coefficientCovariance(), own);
    var parts = new EigenDecompositionSymmetric(new Array2DRowRealMatrix(block));
    double[] coefficients = point.coefficients();
    double largest = parts.getEigenvalue(0);
    double f = 0;
    double[] df = new double[own.length];
    for (int m = 0; m < own.length; m++) {
      double[] function = new double[kept.length];
      for (int j = 0; j < own.length; j++) {
        function[own[j]] = parts.getEigenvector(m).getEntry(j);
      }
      double variance = Math.max(parts.getEigenvalue(m), ONE_DIRECTION * largest);
      double along = DenseMatrix.dot(function, coefficients);
      f += along * along / variance / own.length;
      df[m] = degreesOfFreedom(function, variance);
    }
    double df2 = joint(df);
    return new FixedEffectTest(name, f, own.length, df2, UpperTail.f(f, own.length, df2));
  }

  /** Degrees of freedom of F from those of the t of its independent directions. */
  private static double joint(double[] df) {
    double smallest = IntStream.range(0, df.length).mapToDouble(i -> df[i]).min().orElseThrow();
    double largest = IntStream.range(0, df.length).mapToDouble(i -> df[i]).max().orElseThrow();
    if (largest - smallest <= SAME_DF * largest) {
      return smallest;
    }
    if (smallest <= 2) {
      return 2;
    }
    double sum = 0;
    for (double each : df) {
      sum += each / (each - 2);
    }
    return 2 * sum / (sum - df.length);
  }

  /**
   * Means of the levels of factors, other factors averaged with equal weights.
   *
   * @param factors factors of the fixed terms
   * @return the means with the variance of each difference
   * @throws InputProblem if the model does not know a factor
   */
  public MixedMeans means(Factor... factors) {
    return means(MeanWeights.EQUAL, factors);
  }

  /**
   * Means of the levels of factors.
   *
   * @param weights how other factors are averaged
   * @param factors factors of the fixed terms
   * @return the means with the variance of each difference
   * @throws InputProblem if the model does not know a factor
   */
  public MixedMeans means(MeanWeights weights, Factor... factors) {
    return MixedMeans.of(this, design, List.of(factors), weights);
  }

  /**
   * Predicted effects of the levels of a random term.
   *
   * @param name name of the term
   * @return one for each level, in the order of their first rows
   * @throws IllegalArgumentException if there is no such random term
   */
  public List<RandomEffect> randomEffects(String name) {
    for (int k = 0; k < random.size(); k++) {
      if (random.get(k).name().equals(name)) {
        return effects(random.get(k), point.parameters()[k]);
      }
    }
    throw new IllegalArgumentException(
        "no random term " + name + "; there are " + random.stream().map(RandomTerm::name).toList());
  }

  private List<RandomEffect> effects(RandomTerm term, double variance) {
    double[] sums = term.sums(point.projected());
    double[] known = term.diagonal(point.projection());
    return IntStream.range(0, sums.length)
        .mapToObj(
            i ->
                new RandomEffect(
                    term.levels().get(i),
                    variance * sums[i],
                    Math.sqrt(Math.max(0, variance - variance * variance * known[i]))))
        .toList();
  }

  @Override
  public String toString() {
    return "variances " + variances() + "; fixed terms " + tests();
  }
}
