package agro.stats.mixed;

import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;

/** A random term as groups of observations: one for each combination of levels that occurs. */
final class RandomTerm {

  private final String name;
  private final int[] codes;
  private final List<String> levels;

  private RandomTerm(String name, int[] codes, List<String> levels) {
    this.name = name;
    this.codes = codes;
    this.levels = levels;
  }

  static RandomTerm of(ModelTerm term, int rows) {
    if (!term.covariates().isEmpty()) {
      throw InputProblem.of("Random term " + term.name() + " contains a covariate")
          .expected("factors")
          .because("random slopes are not fitted here")
          .mend("take the slope as fixed, or its product with a factor");
    }
    if (term.size() != rows) {
      throw InputProblem.of(
              "Random term "
                  + term.name()
                  + " has "
                  + term.size()
                  + " observations, the model "
                  + rows)
          .expected("the same observations in all variables")
          .because("rows belong together")
          .mend("give each factor a label for each observation");
    }
    var places = new LinkedHashMap<String, Integer>();
    int[] codes = new int[rows];
    for (int i = 0; i < rows; i++) {
      var label = new StringBuilder();
      for (Factor factor : term.allFactors()) {
        label.append(label.isEmpty() ? "" : ":").append(factor.label(i));
      }
      codes[i] = places.computeIfAbsent(label.toString(), each -> places.size());
    }
    if (places.size() < 2) {
      throw InputProblem.of("Random term " + term.name() + " has one level")
          .expected("at least two levels")
          .because("a variance between levels needs several of them")
          .mend("leave the term out");
    }
    if (places.size() == rows) {
      throw InputProblem.of("Random term " + term.name() + " has one observation in each level")
          .expected("levels with several observations")
          .because("its variance is that of the residuals")
          .mend("leave the term out: the residual stands for it");
    }
    return new RandomTerm(term.name(), codes, List.copyOf(places.keySet()));
  }

  String name() {
    return name;
  }

  List<String> levels() {
    return levels;
  }

  BlockOperator operator() {
    return BlockOperator.sameLevel(codes, levels.size());
  }

  boolean groupsLike(RandomTerm other) {
    // Codes are given in the order of first rows, so equal groups have equal codes.
    return Arrays.equals(codes, other.codes);
  }

  /** Sums of a vector over the observations of each level. */
  double[] sums(double[] vector) {
    double[] sums = new double[levels.size()];
    for (int i = 0; i < codes.length; i++) {
      sums[codes[i]] += vector[i];
    }
    return sums;
  }

  /** Diagonal of Z' M Z. */
  double[] diagonal(double[][] matrix) {
    double[] diagonal = new double[levels.size()];
    for (int i = 0; i < codes.length; i++) {
      for (int j = 0; j < codes.length; j++) {
        diagonal[codes[i]] += codes[i] == codes[j] ? matrix[i][j] : 0;
      }
    }
    return diagonal;
  }
}
