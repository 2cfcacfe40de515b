package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Columns of a linear model: an intercept and, for each term, products of coded factors and
 * covariates. A factor of a term is coded by contrasts where the term without it is in the model
 * too, otherwise by one column for each level. What the observations cannot tell is found and
 * named.
 */
public final class DesignMatrix {

  private static final double ESTIMABLE = 1e-8;

  private final List<ModelTerm> terms;
  private final List<TermBlock> blocks;
  private final List<String> names;
  private final int[] termOfColumn;
  private final double[][] columns;
  private final PivotedFactors factors;
  private final double[][] nullDirections;

  /** Square roots of the weights of the observations, by which rows are multiplied. */
  private final double[] roots;

  private DesignMatrix(List<ModelTerm> terms, List<TermBlock> blocks, double[] roots) {
    int rows = roots.length;
    this.roots = roots;
    this.terms = List.copyOf(terms);
    this.blocks = blocks;
    var labels = new ArrayList<String>();
    labels.add("intercept");
    blocks.forEach(block -> labels.addAll(block.names()));
    this.names = List.copyOf(labels);
    this.termOfColumn = new int[names.size()];
    this.columns = new double[names.size()][rows];
    termOfColumn[0] = -1;
    System.arraycopy(roots, 0, columns[0], 0, rows);
    int at = 1;
    for (int t = 0; t < blocks.size(); t++) {
      at = fill(blocks.get(t), t, at, rows);
    }
    this.factors = PivotedFactors.of(columns, rows);
    this.nullDirections = factors.nullDirections();
  }

  private int fill(TermBlock block, int term, int from, int rows) {
    int width = block.names().size();
    for (int i = 0; i < rows; i++) {
      double[] row = block.row(i);
      for (int c = 0; c < width; c++) {
        columns[from + c][i] = roots[i] * row[c];
      }
    }
    java.util.Arrays.fill(termOfColumn, from, from + width, term);
    return from + width;
  }

  /**
   * Builds the columns of terms after an intercept.
   *
   * @param terms terms in the order in which they are tested
   * @param coding coding of the factors
   * @return the design
   * @throws InputProblem if there is no term, numbers of observations differ, a term comes twice, a
   *     name means two variables, or a factor has one level
   */
  public static DesignMatrix of(List<ModelTerm> terms, ContrastCoding coding) {
    check(terms);
    double[] equal = new double[terms.get(0).size()];
    java.util.Arrays.fill(equal, 1);
    return weighted(terms, coding, equal);
  }

  /** The design with rows multiplied by the square roots of weights. */
  static DesignMatrix weighted(List<ModelTerm> terms, ContrastCoding coding, double[] roots) {
    check(terms);
    var blocks = new ArrayList<TermBlock>();
    for (ModelTerm term : terms) {
      blocks.add(block(term, terms, coding));
    }
    return new DesignMatrix(terms, blocks, roots);
  }

  private static TermBlock block(ModelTerm term, List<ModelTerm> terms, ContrastCoding coding) {
    if (term.isNested()) {
      var nested = new CellBlock(term, coding);
      if (nested.names().isEmpty()) {
        throw InputProblem.of("term " + term.name() + " has one level in every cell")
            .expected("at least two levels in some cell of the outer factors")
            .because("there is nothing that varies within the cells")
            .mend("leave the term out");
      }
      return nested;
    }
    var byContrasts = new ArrayList<Boolean>();
    for (Factor factor : term.factors()) {
      byContrasts.add(marginIsThere(term, factor, terms));
    }
    boolean alone =
        term.factors().size() > 1 && term.covariates().isEmpty() && !byContrasts.contains(true);
    return alone ? new CellBlock(term, coding) : new CrossedBlock(term, byContrasts, coding);
  }

  private static boolean marginIsThere(ModelTerm term, Factor factor, List<ModelTerm> terms) {
    var rest = new HashSet<>(term.variables());
    rest.remove(factor.name());
    return rest.isEmpty()
        || terms.stream().anyMatch(other -> !other.isNested() && other.variables().equals(rest));
  }

  private static void check(List<ModelTerm> terms) {
    if (terms.isEmpty()) {
      throw InputProblem.of("a model without terms")
          .expected("at least one term")
          .because("there is nothing to compare")
          .mend("name the factors of the model");
    }
    Map<String, Object> known = new HashMap<>();
    for (int t = 0; t < terms.size(); t++) {
      ModelTerm term = terms.get(t);
      if (terms.indexOf(term) < t) {
        throw InputProblem.of("term " + term.name() + " stands twice in the model")
            .expected("each term once")
            .because("its effects would be confounded with themselves")
            .mend("remove one");
      }
      for (Factor factor : term.allFactors()) {
        checkVariable(known, factor.name(), factor, factor.size(), terms.get(0).size());
        checkLevels(factor, term);
      }
      for (Covariate covariate : term.covariates()) {
        checkVariable(known, covariate.name(), covariate, covariate.size(), terms.get(0).size());
      }
    }
  }

  private static void checkVariable(
      Map<String, Object> known, String name, Object variable, int size, int rows) {
    Object before = known.putIfAbsent(name, variable);
    if (before != null && !before.equals(variable)) {
      throw InputProblem.of("two different variables are named " + name)
          .expected("one name for one variable")
          .because("terms are told apart by the names of their variables")
          .mend("rename one");
    }
    if (size != rows) {
      throw InputProblem.of(name + " has " + size + " observations, another variable " + rows)
          .expected("the same observations in all variables")
          .because("rows of a design belong together")
          .mend("give each variable a value for each observation");
    }
  }

  private static void checkLevels(Factor factor, ModelTerm term) {
    boolean inner = term.isNested() && term.factors().contains(factor);
    if (factor.levelCount() < 2 && !inner) {
      throw InputProblem.of(
              "factor " + factor.name() + " has the one level \"" + factor.levels().get(0) + "\"")
          .expected("at least two levels")
          .because("a single level is compared with nothing")
          .mend("leave the factor out, or add the observations of the other levels");
    }
  }

  /**
   * Number of observations.
   *
   * @return at least 1
   */
  public int rows() {
    return factors.rows();
  }

  /**
   * Number of columns, the intercept first.
   *
   * @return at least 2
   */
  public int columns() {
    return names.size();
  }

  /**
   * Number of columns that do not depend on others.
   *
   * @return at most the number of columns
   */
  public int rank() {
    return factors.rank();
  }

  /**
   * Terms of the model in their order.
   *
   * @return at least one
   */
  public List<ModelTerm> terms() {
    return terms;
  }

  /**
   * Names of the columns, such as "N[1]:P[0]".
   *
   * @return as many as columns
   */
  public List<String> columnNames() {
    return names;
  }

  /**
   * One number of the matrix, before any weights.
   *
   * @param row observation from 0
   * @param column column from 0
   * @return its value
   */
  public double value(int row, int column) {
    return columns[column][row] / roots[row];
  }

  /**
   * Place of the term that a column belongs to.
   *
   * @param column column from 0
   * @return place in {@link #terms()}; -1 for the intercept
   */
  public int termOfColumn(int column) {
    return termOfColumn[column];
  }

  /**
   * Whether a linear function of the coefficients can be told from the observations: whether it has
   * the same value for all coefficients that give the same fitted values.
   *
   * @param function factor of each coefficient
   * @return false also for a function with a factor that is not a number
   */
  public boolean isEstimable(double[] function) {
    double size = 0;
    for (double each : function) {
      if (Double.isNaN(each)) {
        return false;
      }
      size = Math.max(size, Math.abs(each));
    }
    for (double[] direction : nullDirections) {
      double product = 0;
      double scale = 0;
      for (int j = 0; j < direction.length; j++) {
        product += function[j] * direction[j];
        scale = Math.max(scale, Math.abs(direction[j]));
      }
      if (Math.abs(product) > ESTIMABLE * size * scale) {
        return false;
      }
    }
    return true;
  }

  /**
   * The linear function of the coefficients that gives a mean over the cells of all factors, with
   * some factors held at a level and covariates at their means.
   *
   * @param held place of the level by factor
   * @param weights how the other factors are averaged
   * @return a number for each column; not a number where a nested factor has no such cell
   */
  public double[] meanFunction(Map<Factor, Integer> held, MeanWeights weights) {
    double[] function = new double[names.size()];
    function[0] = 1;
    int at = 1;
    for (TermBlock block : blocks) {
      double[] mean = block.meanRow(held, weights);
      System.arraycopy(mean, 0, function, at, mean.length);
      at += mean.length;
    }
    return function;
  }

  /**
   * Effects that the observations cannot tell, by term in the order of the model.
   *
   * @return nothing for a design with observations in all cells and no confounding
   */
  public List<LostEffect> lostEffects() {
    return Estimability.lostEffects(this);
  }

  PivotedFactors factors() {
    return factors;
  }

  double[] column(int index) {
    return columns[index];
  }

  double[][] nullDirections() {
    return nullDirections;
  }

  TermBlock block(int term) {
    return blocks.get(term);
  }
}
