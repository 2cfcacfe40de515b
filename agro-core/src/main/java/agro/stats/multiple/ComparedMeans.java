package agro.stats.multiple;

import agro.report.InputProblem;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;

/**
 * Estimated means with the variance of the difference of each two of them: all that comparisons
 * need, whether the means come from plots, blocks with gaps or a generalised linear model.
 */
public final class ComparedMeans {

  private static final double SYMMETRY = 1e-9;

  private final List<String> labels;
  private final double[] means;
  private final double[][] differenceVariances;
  private final double degreesOfFreedom;

  private ComparedMeans(
      List<String> labels, double[] means, double[][] differenceVariances, double df) {
    this.labels = labels;
    this.means = means.clone();
    this.differenceVariances = differenceVariances;
    this.degreesOfFreedom = df;
  }

  /**
   * Means of independent plots with one pooled variance.
   *
   * @param labels names of the treatments, each once
   * @param means one mean for each
   * @param replicates number of plots behind each mean
   * @param pooledVariance mean square of the error
   * @param degreesOfFreedom degrees of freedom of the error, possibly infinite
   * @return the means
   * @throws InputProblem if lengths differ, labels repeat, or a number is missing or impossible
   */
  public static ComparedMeans ofReplicates(
      List<String> labels,
      double[] means,
      int[] replicates,
      double pooledVariance,
      double degreesOfFreedom) {
    var names = checked(labels, means, replicates.length);
    if (!(pooledVariance > 0) || Double.isInfinite(pooledVariance)) {
      throw InputProblem.of("A pooled variance of " + Checks.plain(pooledVariance))
          .expected("a positive number")
          .because("without scatter among plots of one treatment no difference can be judged")
          .mend("check that every treatment has plots of its own and values were not copied");
    }
    double[][] covariance = new double[means.length][means.length];
    for (int each = 0; each < means.length; each++) {
      if (replicates[each] < 1) {
        throw InputProblem.of(
                "Treatment " + names.get(each) + " with " + replicates[each] + " plots")
            .expected("at least one plot")
            .because("a mean of no plots does not exist")
            .mend("leave the treatment out");
      }
      covariance[each][each] = pooledVariance / replicates[each];
    }
    return ofCovariance(names, means, covariance, degreesOfFreedom);
  }

  /**
   * Means with their covariance matrix, such as adjusted means of an unbalanced trial.
   *
   * @param labels names of the treatments, each once
   * @param means one mean for each
   * @param covariance variances and covariances of the means
   * @param degreesOfFreedom degrees of freedom of the error, possibly infinite
   * @return the means
   * @throws InputProblem if lengths differ, labels repeat, or a number is missing or impossible
   */
  public static ComparedMeans ofCovariance(
      List<String> labels, double[] means, double[][] covariance, double degreesOfFreedom) {
    checked(labels, means, covariance.length);
    checkSymmetry(labels, covariance);
    int size = means.length;
    double[][] variances = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        double variance = covariance[i][i] + covariance[j][j] - 2 * covariance[i][j];
        variances[i][j] = variance;
        variances[j][i] = variance;
      }
    }
    return ofDifferences(labels, means, variances, degreesOfFreedom);
  }

  /**
   * Means with the variance of the difference of each two.
   *
   * @param labels names of the treatments, each once
   * @param means one mean for each
   * @param differenceVariances square of the standard error of each difference; the diagonal is not
   *     looked at
   * @param degreesOfFreedom degrees of freedom of the error, possibly infinite
   * @return the means
   * @throws InputProblem if lengths differ, labels repeat, or a number is missing or impossible
   */
  public static ComparedMeans ofDifferences(
      List<String> labels,
      double[] means,
      double[][] differenceVariances,
      double degreesOfFreedom) {
    var names = checked(labels, means, differenceVariances.length);
    checkSymmetry(names, differenceVariances);
    Checks.degreesOfFreedom(degreesOfFreedom);
    int size = means.length;
    double[][] variances = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        double variance = i == j ? 0 : differenceVariances[i][j];
        if (i != j && (!(variance > 0) || Double.isInfinite(variance))) {
          throw InputProblem.of(
                  "A variance of " + Checks.plain(variance) + " for " + pair(names, i, j))
              .expected("a positive number")
              .because("a difference without an error of its own cannot be judged")
              .mend("check for a treatment without plots and for values that do not scatter");
        }
        variances[i][j] = variance;
      }
    }
    return new ComparedMeans(names, means, variances, degreesOfFreedom);
  }

  private static List<String> checked(List<String> labels, double[] means, int others) {
    if (labels.size() != means.length || means.length != others) {
      throw InputProblem.of(
              labels.size() + " labels, " + means.length + " means and " + others + " errors")
          .expected("as many of each")
          .because("each mean has one name and one error")
          .mend("give them in the same order");
    }
    if (means.length < 2) {
      throw InputProblem.of("A comparison of " + means.length + " means")
          .expected("at least two")
          .because("a difference needs two")
          .mend("check whether treatments were read as one, for example by a wrong column");
    }
    var seen = new HashSet<String>();
    for (int each = 0; each < means.length; each++) {
      var label = Objects.requireNonNull(labels.get(each), "label");
      if (!seen.add(label)) {
        throw InputProblem.of("The label " + label + " twice")
            .expected("each treatment once")
            .because("letters and pairs could not be told apart")
            .mend("rename one of them");
      }
      if (Double.isNaN(means[each]) || Double.isInfinite(means[each])) {
        throw InputProblem.of("The mean of " + label + " is not a finite number")
            .expected("a number")
            .because("a difference from it cannot be computed")
            .mend("leave the treatment out, or look for a plot without a value");
      }
    }
    return List.copyOf(labels);
  }

  private static void checkSymmetry(List<String> labels, double[][] matrix) {
    for (int i = 0; i < matrix.length; i++) {
      if (matrix[i].length != matrix.length) {
        throw InputProblem.of("A row of " + matrix[i].length + " errors for " + labels.get(i))
            .expected(matrix.length + " errors, one for each mean")
            .because("each two means have one common error")
            .mend("give a square matrix in the order of the labels");
      }
      for (int j = 0; j < i; j++) {
        double scale = Math.abs(matrix[i][j]) + Math.abs(matrix[j][i]);
        if (!(Math.abs(matrix[i][j] - matrix[j][i]) <= SYMMETRY * scale)) {
          throw InputProblem.of(
                  "Errors of "
                      + matrix[i][j]
                      + " and "
                      + matrix[j][i]
                      + " for "
                      + pair(labels, i, j))
              .expected("the same number on both sides of the diagonal")
              .because("the error of a difference does not depend on its direction")
              .mend("fill the matrix in the order of the labels");
        }
      }
    }
  }

  private static String pair(List<String> labels, int i, int j) {
    return labels.get(i) + " and " + labels.get(j);
  }

  /**
   * Names of the treatments in the order given.
   *
   * @return an immutable list
   */
  public List<String> labels() {
    return labels;
  }

  /**
   * Number of means.
   *
   * @return at least 2
   */
  public int size() {
    return means.length;
  }

  /**
   * One mean.
   *
   * @param index its place, from 0
   * @return the mean
   */
  public double mean(int index) {
    return means[index];
  }

  /**
   * All means in the order of the labels.
   *
   * @return a new array
   */
  public double[] means() {
    return means.clone();
  }

  /**
   * Variance of the difference of two means.
   *
   * @param first place of the one
   * @param second place of the other
   * @return the square of the standard error of the difference; 0 for a mean with itself
   */
  public double differenceVariance(int first, int second) {
    return differenceVariances[first][second];
  }

  /**
   * Degrees of freedom of the error.
   *
   * @return a positive number, possibly infinite
   */
  public double degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /** Place of a label, or a problem that names the labels there are. */
  int indexOf(String label) {
    int index = labels.indexOf(label);
    if (index < 0) {
      throw InputProblem.of("A treatment named " + label)
          .expected("one of " + String.join(", ", labels))
          .because("there is no mean of that name")
          .mend("write the name as in the data, with the same capitals");
    }
    return index;
  }

  @Override
  public String toString() {
    var text = new StringBuilder();
    for (int each = 0; each < means.length; each++) {
      text.append(labels.get(each)).append(' ').append(means[each]).append("; ");
    }
    return text.append("df = ").append(Checks.plain(degreesOfFreedom)).toString();
  }
}
