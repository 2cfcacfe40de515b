package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The matrix of a linear predictor, built once and used for many fits. Factors are coded as
 * differences from their first level; where a margin of a term is not in the model, the factor that
 * would be marginal gets a column for each level.
 */
public final class PredictorDesign {

  private final List<ModelTerm> terms;
  private final boolean intercept;
  private final List<String> names;
  private final List<TermColumns> blocks;
  private final double[] x;
  private final int rows;
  private final RowSpace space;

  private PredictorDesign(
      List<ModelTerm> terms,
      boolean intercept,
      List<String> names,
      List<TermColumns> blocks,
      double[] x,
      int rows) {
    this.terms = terms;
    this.intercept = intercept;
    this.names = List.copyOf(names);
    this.blocks = List.copyOf(blocks);
    this.x = x;
    this.rows = rows;
    this.space = RowSpace.of(x, rows, names.size());
  }

  /**
   * A design with an intercept.
   *
   * @param terms terms in the order in which they are to be tested
   * @return the design
   * @throws InputProblem if the terms are of different numbers of observations or one stands twice
   */
  public static PredictorDesign of(List<ModelTerm> terms) {
    return build(terms, true, terms.isEmpty() ? 0 : terms.get(0).size());
  }

  /**
   * A design with an intercept.
   *
   * @param terms terms in the order in which they are to be tested
   * @return the design
   */
  public static PredictorDesign of(ModelTerm... terms) {
    return of(List.of(terms));
  }

  /**
   * A design without an intercept: the first factor has a column for each level.
   *
   * @param terms at least one term
   * @return the design
   */
  public static PredictorDesign withoutIntercept(ModelTerm... terms) {
    return build(List.of(terms), false, terms.length == 0 ? 0 : terms[0].size());
  }

  /**
   * The design of one common mean.
   *
   * @param observations number of observations
   * @return the design
   */
  public static PredictorDesign commonMean(int observations) {
    return build(List.of(), true, observations);
  }

  private static PredictorDesign build(List<ModelTerm> terms, boolean intercept, int size) {
    if (size < 1 || (terms.isEmpty() && !intercept)) {
      throw InputProblem.of("a design without terms or observations")
          .expected("at least one term")
          .because("a predictor is made of terms")
          .mend("name a term, or take the design of a common mean");
    }
    Set<ModelTerm> seen = new HashSet<>();
    for (ModelTerm term : terms) {
      if (term.size() != size || !seen.add(term)) {
        throw InputProblem.of("term " + term + " with " + term.size() + " observations, of " + size)
            .expected("each term once, all of the same observations")
            .because("rows are matched by their place")
            .mend("make all factors and covariates from the same table");
      }
    }
    Variables.check(terms);
    var names = new ArrayList<String>();
    if (intercept) {
      names.add("(intercept)");
    }
    var blocks = new ArrayList<TermColumns>();
    for (ModelTerm term : terms) {
      var block = TermColumns.of(term, terms, intercept, names.size());
      blocks.add(block);
      names.addAll(block.names());
    }
    int k = names.size();
    double[] x = new double[size * k];
    for (int i = 0; i < size; i++) {
      if (intercept) {
        x[i * k] = 1;
      }
      for (TermColumns block : blocks) {
        block.fill(x, i * k, i);
      }
    }
    return new PredictorDesign(List.copyOf(terms), intercept, names, blocks, x, size);
  }

  /** The design with the first so many terms. */
  PredictorDesign first(int count) {
    return build(terms.subList(0, count), intercept || count == 0, rows);
  }

  /** A design of other terms, with an intercept if this one has it or there are no terms. */
  PredictorDesign withTerms(List<ModelTerm> others) {
    return build(others, intercept || others.isEmpty(), rows);
  }

  /**
   * Terms in their order.
   *
   * @return none for a common mean
   */
  public List<ModelTerm> terms() {
    return terms;
  }

  /**
   * Names of the coefficients.
   *
   * @return a name for each column, such as "spray[B]" or "sex[M]:dose"
   */
  public List<String> names() {
    return names;
  }

  /**
   * Number of observations.
   *
   * @return number of observations
   */
  public int observations() {
    return rows;
  }

  /**
   * Number of coefficients that the observations tell apart.
   *
   * @return at most the number of names
   */
  public int rank() {
    return space.rank();
  }

  /**
   * Whether there is an intercept.
   *
   * @return true if there is an intercept
   */
  public boolean hasIntercept() {
    return intercept;
  }

  /** All factors of the design, each once, in order of appearance. */
  List<Factor> factors() {
    var factors = new ArrayList<Factor>();
    for (ModelTerm term : terms) {
      for (Factor factor : term.allFactors()) {
        if (!factors.contains(factor)) {
          factors.add(factor);
        }
      }
    }
    return factors;
  }

  List<TermColumns> blocks() {
    return blocks;
  }

  RowSpace space() {
    return space;
  }

  double[] x() {
    return x;
  }
}
