package agro.stats.glm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The directions of the coefficients along which the likelihood never falls, found by linear
 * programming. Where there is one, some coefficients have no finite estimate. Albert and Anderson
 * 1984, Biometrika 71:1-10; Konis 2007, Linear programming algorithms for detecting separated data
 * in binary logistic regression models, Oxford (both from memory).
 */
final class SeparationCone {

  private static final double SMALL = 1e-7;

  /** More different rows at a limit than this are not searched: the tables would grow too large. */
  private static final int MOST_ROWS = 3000;

  /** Directions that leave the means of all rows that are not at a limit as they are. */
  private final double[][] basis;

  /** Changes of the linear predictors of rows at a limit, towards that limit, along the basis. */
  private final List<double[]> towards;

  private final boolean[] separated;

  private SeparationCone(double[][] basis, List<double[]> towards, boolean[] separated) {
    this.basis = basis;
    this.towards = towards;
    this.separated = separated;
  }

  /** Limit that a row of a response may run to: 1 up, -1 down, 0 none. */
  static int limitOf(ScoringProblem problem, int row) {
    boolean proportion = problem.scatter == BinomialScatter.INSTANCE;
    if (problem.weight[row] == 0 || problem.scatter == GammaScatter.INSTANCE) {
      return 0;
    }
    if (problem.y[row] == 0) {
      return problem.link == LinkFunction.IDENTITY ? 0 : -1;
    }
    return proportion && problem.link.isForProportions() && problem.y[row] == problem.total[row]
        ? 1
        : 0;
  }

  /** A cone without directions. */
  static SeparationCone none(int rows) {
    return new SeparationCone(new double[0][], List.of(), new boolean[rows]);
  }

  /** Looks for separation in a design of full column rank. */
  static SeparationCone of(ScoringProblem problem) {
    int[] limits = new int[problem.rows];
    boolean[] counted = new boolean[problem.rows];
    for (int i = 0; i < problem.rows; i++) {
      limits[i] = limitOf(problem, i);
      counted[i] = problem.weight[i] > 0;
    }
    return of(problem.x, problem.columns, limits, counted);
  }

  /**
   * Looks for separation.
   *
   * @param x rows of full column rank
   * @param k number of columns
   * @param limits limit that each row may run to: 1 up, -1 down, 0 none
   * @param counted rows that take part
   */
  static SeparationCone of(double[] x, int k, int[] limits, boolean[] counted) {
    double[][] basis = fixing(x, k, limits, counted);
    boolean[] separated = new boolean[limits.length];
    if (basis.length == 0) {
      return new SeparationCone(basis, List.of(), separated);
    }
    Map<List<Double>, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < limits.length; i++) {
      if (limits[i] != 0 && counted[i]) {
        groups.computeIfAbsent(change(x, i * k, limits[i], basis), key -> new ArrayList<>()).add(i);
      }
    }
    var towards = new ArrayList<double[]>();
    for (var each : groups.keySet()) {
      towards.add(each.stream().mapToDouble(Double::doubleValue).toArray());
    }
    boolean[] runs = support(towards, basis.length);
    int g = 0;
    for (var members : groups.values()) {
      for (int i : members) {
        separated[i] = runs[g];
      }
      g++;
    }
    return new SeparationCone(basis, towards, separated);
  }

  /** Directions that leave the rows without a limit as they are. */
  private static double[][] fixing(double[] x, int k, int[] limits, boolean[] counted) {
    int inside = 0;
    double[] fixed = new double[x.length];
    for (int i = 0; i < limits.length; i++) {
      if (limits[i] == 0 && counted[i]) {
        System.arraycopy(x, i * k, fixed, inside * k, k);
        inside++;
      }
    }
    return RowSpace.of(Arrays.copyOf(fixed, inside * k), inside, k).nullBasis();
  }

  private static List<Double> change(double[] x, int from, int limit, double[][] basis) {
    var change = new ArrayList<Double>();
    for (double[] direction : basis) {
      double sum = 0;
      for (int j = 0; j < direction.length; j++) {
        sum += direction[j] * x[from + j];
      }
      double rounded = Math.rint(limit * sum * 1e10) / 1e10;
      change.add(rounded == 0 ? 0.0 : rounded);
    }
    return change;
  }

  /**
   * The greatest set of rows that can run to their limit together. Each round adds rows until no
   * direction moves any of those that are left; directions add up.
   */
  private static boolean[] support(List<double[]> towards, int free) {
    boolean[] support = new boolean[towards.size()];
    if (towards.size() > MOST_ROWS) {
      return support;
    }
    var constraints = constraints(towards, free);
    for (int round = 0; round < free; round++) {
      double[] goal = new double[2 * free];
      for (int i = 0; i < support.length; i++) {
        double[] each = split(towards.get(i), 1, 2 * free);
        for (int v = 0; v < goal.length && !support[i]; v++) {
          goal[v] += each[v];
        }
      }
      double[] best = maximise(goal, constraints);
      boolean more = false;
      for (int i = 0; i < support.length; i++) {
        boolean runs = product(split(towards.get(i), 1, 2 * free), best) > SMALL;
        more |= runs && !support[i];
        support[i] |= runs;
      }
      if (!more) {
        break;
      }
    }
    return support;
  }

  /** No row may move away from its limit; directions are kept in a box. */
  private static List<LinearConstraint> constraints(List<double[]> towards, int free) {
    var constraints = new ArrayList<LinearConstraint>();
    for (double[] each : towards) {
      constraints.add(new LinearConstraint(split(each, -1, 2 * free), Relationship.LEQ, 0));
    }
    for (int v = 0; v < 2 * free; v++) {
      double[] cap = new double[2 * free];
      cap[v] = 1;
      constraints.add(new LinearConstraint(cap, Relationship.LEQ, 1));
    }
    return constraints;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }

  private static double[] split(double[] coefficients, double factor, int variables) {
    double[] both = new double[variables];
    for (int j = 0; j < coefficients.length; j++) {
      both[2 * j] = factor * coefficients[j];
      both[2 * j + 1] = -factor * coefficients[j];
    }
    return both;
  }

  private static double[] maximise(double[] goal, List<LinearConstraint> constraints) {
    return new SimplexSolver()
        .optimize(
            new MaxIter(100_000),
            new LinearObjectiveFunction(goal, 0),
            new LinearConstraintSet(constraints),
            GoalType.MAXIMIZE,
            new NonNegativeConstraint(true),
            PivotSelectionRule.BLAND)
        .getPoint();
  }

  /** Whether any row runs to its limit. */
  boolean isSeparated() {
    for (boolean each : separated) {
      if (each) {
        return true;
      }
    }
    return false;
  }

  /** Whether a row runs to its limit. */
  boolean separates(int row) {
    return separated[row];
  }

  /** Rows that stay. */
  int[] kept() {
    int[] kept = new int[separated.length];
    int count = 0;
    for (int i = 0; i < separated.length; i++) {
      if (!separated[i]) {
        kept[count++] = i;
      }
    }
    return Arrays.copyOf(kept, count);
  }

  /** Where a linear function goes that the rows that stay do not determine. */
  EstimateState direction(double[] function) {
    boolean up = reaches(function, 1);
    boolean down = reaches(function, -1);
    if (up == down) {
      return EstimateState.UNDETERMINED;
    }
    return up ? EstimateState.PLUS_INFINITY : EstimateState.MINUS_INFINITY;
  }

  private boolean reaches(double[] function, double sign) {
    int free = basis.length;
    double[] along = new double[free];
    double size = 0;
    for (int b = 0; b < free; b++) {
      for (int j = 0; j < function.length; j++) {
        along[b] += basis[b][j] * function[j];
      }
      size = Math.max(size, Math.abs(along[b]));
    }
    double[] goal = split(along, sign, 2 * free);
    return product(goal, maximise(goal, constraints(towards, free))) > SMALL * size;
  }
}
