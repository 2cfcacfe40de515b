package agro.stats.glm;

import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/** Columns of one term: products of dummies of its factors and of its covariates. */
final class TermColumns {

  private final ModelTerm term;
  private final List<Factor> factors;

  /** First level with a column of its own: 0, or 1 where the factor is coded as differences. */
  private final int[] firstLevel;

  private final int from;
  private final int width;

  private TermColumns(ModelTerm term, int[] firstLevel, int from) {
    this.term = term;
    this.factors = term.allFactors();
    this.firstLevel = firstLevel;
    this.from = from;
    int product = 1;
    for (int f = 0; f < firstLevel.length; f++) {
      product *= factors.get(f).levelCount() - firstLevel[f];
    }
    this.width = product;
  }

  static TermColumns of(ModelTerm term, List<ModelTerm> all, boolean intercept, int from) {
    var factors = term.allFactors();
    int[] firstLevel = new int[factors.size()];
    for (int f = 0; f < firstLevel.length; f++) {
      var margin = new HashSet<>(term.variables());
      margin.remove(factors.get(f).name());
      boolean constant = intercept || constantBefore(term, all);
      firstLevel[f] = isInModel(margin, all, constant) ? 1 : 0;
    }
    return new TermColumns(term, firstLevel, from);
  }

  private static boolean isInModel(Set<String> margin, List<ModelTerm> all, boolean intercept) {
    return margin.isEmpty()
        ? intercept
        : all.stream().anyMatch(each -> each.variables().equals(margin));
  }

  /** Whether an earlier term spans the constant already, when there is no intercept. */
  private static boolean constantBefore(ModelTerm term, List<ModelTerm> all) {
    return all.subList(0, all.indexOf(term)).stream().anyMatch(each -> each.covariates().isEmpty());
  }

  ModelTerm term() {
    return term;
  }

  int width() {
    return width;
  }

  List<String> names() {
    var names = new ArrayList<String>();
    for (int c = 0; c < width; c++) {
      var parts = new ArrayList<String>();
      int rest = c;
      for (int f = 0; f < firstLevel.length; f++) {
        int count = factors.get(f).levelCount() - firstLevel[f];
        var factor = factors.get(f);
        parts.add(factor.name() + "[" + factor.levels().get(rest % count + firstLevel[f]) + "]");
        rest /= count;
      }
      for (Covariate covariate : term.covariates()) {
        parts.add(covariate.name());
      }
      names.add(String.join(":", parts));
    }
    return names;
  }

  /** Fills the row of an observation. */
  void fill(double[] x, int rowStart, int observation) {
    add(x, rowStart, 1, factor -> factor.code(observation), each -> each.value(observation));
  }

  /** Adds the row of any levels and values, with a weight. */
  void add(
      double[] x,
      int rowStart,
      double weight,
      ToIntFunction<Factor> level,
      ToDoubleFunction<Covariate> value) {
    int place = 0;
    int stride = 1;
    for (int f = 0; f < firstLevel.length; f++) {
      int code = level.applyAsInt(factors.get(f)) - firstLevel[f];
      if (code < 0) {
        return;
      }
      place += code * stride;
      stride *= factors.get(f).levelCount() - firstLevel[f];
    }
    double product = weight;
    for (Covariate covariate : term.covariates()) {
      product *= value.applyAsDouble(covariate);
    }
    x[rowStart + from + place] += product;
  }
}
