package agro.stats.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Columns of a term whose factors are crossed: products of the columns of its factors. */
final class CrossedBlock implements TermBlock {

  private final ModelTerm term;
  private final List<double[][]> codes;
  private final List<String> names;

  CrossedBlock(ModelTerm term, List<Boolean> byContrasts, ContrastCoding coding) {
    this.term = term;
    this.codes = new ArrayList<>();
    List<String> joined = List.of("");
    for (int f = 0; f < term.factors().size(); f++) {
      Factor factor = term.factors().get(f);
      boolean contrasts = byContrasts.get(f);
      double[][] code =
          contrasts ? coding.codes(factor.levelCount()) : identity(factor.levelCount());
      codes.add(code);
      var longer = new ArrayList<String>();
      for (String before : joined) {
        for (int c = 0; c < code[0].length; c++) {
          int level = contrasts ? coding.labelledBy(c) : c;
          String label = factor.name() + "[" + factor.levels().get(level) + "]";
          longer.add(before.isEmpty() ? label : before + ":" + label);
        }
      }
      joined = longer;
    }
    var suffix = new StringBuilder();
    for (Covariate covariate : term.covariates()) {
      suffix.append(':').append(covariate.name());
    }
    this.names =
        joined.stream().map(name -> name.isEmpty() ? suffix.substring(1) : name + suffix).toList();
  }

  private static double[][] identity(int size) {
    double[][] identity = new double[size][size];
    for (int k = 0; k < size; k++) {
      identity[k][k] = 1;
    }
    return identity;
  }

  @Override
  public List<String> names() {
    return names;
  }

  @Override
  public int cells() {
    int cells = 1;
    for (Factor factor : term.factors()) {
      cells *= factor.levelCount();
    }
    return cells;
  }

  @Override
  public double[] row(int observation) {
    double slope = 1;
    for (Covariate covariate : term.covariates()) {
      slope *= covariate.value(observation);
    }
    double[] product = {slope};
    for (int f = 0; f < codes.size(); f++) {
      product = times(product, codes.get(f)[term.factors().get(f).code(observation)]);
    }
    return product;
  }

  @Override
  public double[] meanRow(Map<Factor, Integer> held, MeanWeights weights) {
    double slope = 1;
    for (Covariate covariate : term.covariates()) {
      slope *= covariate.mean();
    }
    double[] product = weights == MeanWeights.EQUAL ? equalMean(held) : observedMean(held);
    for (int c = 0; c < product.length; c++) {
      product[c] *= slope;
    }
    return product;
  }

  private double[] equalMean(Map<Factor, Integer> held) {
    double[] product = {1};
    for (int f = 0; f < codes.size(); f++) {
      Integer level = held.get(term.factors().get(f));
      product = times(product, level == null ? columnMeans(codes.get(f)) : codes.get(f)[level]);
    }
    return product;
  }

  /** Mean over all observations, each moved to the held levels. */
  private double[] observedMean(Map<Factor, Integer> held) {
    boolean allHeld = held.keySet().containsAll(term.factors());
    int n = allHeld ? 1 : term.size();
    double[] sum = new double[names.size()];
    for (int i = 0; i < n; i++) {
      double[] product = {1};
      for (int f = 0; f < codes.size(); f++) {
        Factor factor = term.factors().get(f);
        Integer level = held.get(factor);
        product = times(product, codes.get(f)[level == null ? factor.code(i) : level]);
      }
      for (int c = 0; c < sum.length; c++) {
        sum[c] += product[c] / n;
      }
    }
    return sum;
  }

  private static double[] columnMeans(double[][] code) {
    double[] means = new double[code[0].length];
    for (double[] row : code) {
      for (int c = 0; c < means.length; c++) {
        means[c] += row[c] / code.length;
      }
    }
    // exact zero for contrasts, so that rounding never looks like an effect
    for (int c = 0; c < means.length; c++) {
      means[c] = Math.abs(means[c]) < 1e-15 ? 0 : means[c];
    }
    return means;
  }

  private static double[] times(double[] left, double[] right) {
    double[] product = new double[left.length * right.length];
    int at = 0;
    for (double a : left) {
      for (double b : right) {
        product[at++] = a * b;
      }
    }
    return product;
  }

  @Override
  public String toString() {
    return term.name() + " " + Arrays.toString(names.toArray());
  }
}
