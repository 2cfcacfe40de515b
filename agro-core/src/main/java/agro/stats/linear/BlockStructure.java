package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.List;

/**
 * The strata of a design: its units of different sizes, from blocks to the single observation, as
 * orthogonal parts of the space of the observations.
 */
final class BlockStructure {

  private static final String MEND =
      "average sub-samples to unit means first; or fit blocks as terms of a linear model, which"
          + " compares treatments within blocks; or use a mixed model";

  private final List<String> names;
  private final List<int[]> places;
  private final PivotedFactors factors;

  private BlockStructure(List<String> names, List<int[]> places, PivotedFactors factors) {
    this.names = names;
    this.places = places;
    this.factors = factors;
  }

  static BlockStructure of(List<ModelTerm> units) {
    var cells = new ArrayList<Factor>();
    for (ModelTerm unit : units) {
      Factor cell = cell(unit);
      checkEqual(cell, unit);
      for (Factor before : cells) {
        checkOrthogonal(before, cell);
      }
      cells.add(cell);
    }
    int rows = cells.get(0).size();
    var columns = new ArrayList<double[]>();
    var owner = new ArrayList<Integer>();
    double[] one = new double[rows];
    java.util.Arrays.fill(one, 1);
    columns.add(one);
    owner.add(0);
    for (int u = 0; u < cells.size(); u++) {
      for (int level = 0; level < cells.get(u).levelCount(); level++) {
        columns.add(indicator(cells.get(u), level));
        owner.add(u + 1);
      }
    }
    var factors = PivotedFactors.of(columns.toArray(double[][]::new), rows);
    return split(units, owner, factors);
  }

  private static BlockStructure split(
      List<ModelTerm> units, List<Integer> owner, PivotedFactors factors) {
    var names = new ArrayList<String>();
    var places = new ArrayList<int[]>();
    for (int s = 0; s <= units.size(); s++) {
      int stratum = s;
      int[] own =
          java.util.stream.IntStream.range(0, factors.rank())
              .filter(k -> owner.get(factors.columnAt(k)) == stratum)
              .toArray();
      if (own.length == 0) {
        throw InputProblem.of("units " + units.get(s - 1).name() + " form no stratum of their own")
            .expected("units that differ from those stated before them")
            .because("a stratum without degrees of freedom has no error")
            .mend("leave these units out, and state larger units before smaller ones");
      }
      names.add(s == 0 ? "mean" : units.get(s - 1).name());
      places.add(own);
    }
    if (factors.rank() < factors.rows()) {
      names.add("within");
      places.add(java.util.stream.IntStream.range(factors.rank(), factors.rows()).toArray());
    }
    return new BlockStructure(List.copyOf(names), List.copyOf(places), factors);
  }

  private static Factor cell(ModelTerm unit) {
    if (!unit.covariates().isEmpty()) {
      throw InputProblem.of("units " + unit.name() + " with a covariate")
          .expected("factors that name the units")
          .because("a stratum is made of units and not of numbers")
          .mend("give the factor that labels the units");
    }
    Factor cell = unit.allFactors().get(0);
    for (Factor next : unit.allFactors().subList(1, unit.allFactors().size())) {
      cell = cell.combinedWith(next);
    }
    return cell;
  }

  private static double[] indicator(Factor cell, int level) {
    double[] column = new double[cell.size()];
    for (int i = 0; i < column.length; i++) {
      column[i] = cell.code(i) == level ? 1 : 0;
    }
    return column;
  }

  private static void checkEqual(Factor cell, ModelTerm unit) {
    int[] counts = cell.counts();
    for (int level = 1; level < counts.length; level++) {
      if (counts[level] != counts[0]) {
        throw InputProblem.of(
                unit.name()
                    + " "
                    + cell.levels().get(0)
                    + " has "
                    + counts[0]
                    + " observations, "
                    + cell.levels().get(level)
                    + " has "
                    + counts[level])
            .expected("as many observations in each unit")
            .because(
                "strata of unequal units have no common error, so that their F would not follow its"
                    + " distribution")
            .mend(MEND);
      }
    }
  }

  /** Averages over two kinds of units must not depend on which is taken first. */
  private static void checkOrthogonal(Factor one, Factor other) {
    int[][] both = new int[one.levelCount()][other.levelCount()];
    for (int i = 0; i < one.size(); i++) {
      both[one.code(i)][other.code(i)]++;
    }
    for (int i = 0; i < one.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (both[one.code(i)][other.code(j)] != both[one.code(j)][other.code(i)]) {
          throw InputProblem.of(
                  "units " + one.name() + " and " + other.name() + " overlap unevenly")
              .expected("units that are nested in each other or crossed evenly")
              .because("the strata would not be independent")
              .mend(MEND);
        }
      }
    }
  }

  int count() {
    return names.size();
  }

  String name(int stratum) {
    return names.get(stratum);
  }

  int dimension(int stratum) {
    return places.get(stratum).length;
  }

  /** Coordinates of observations, to be cut into strata. */
  double[] rotate(double[] values) {
    return factors.rotate(values);
  }

  double[] part(double[] rotated, int stratum) {
    int[] own = places.get(stratum);
    double[] part = new double[own.length];
    for (int k = 0; k < own.length; k++) {
      part[k] = rotated[own[k]];
    }
    return part;
  }

  static InputProblem split(String term, List<String> strata) {
    return InputProblem.of("effects of " + term + " lie partly in each of the strata " + strata)
        .expected("each effect wholly in one stratum, as in a balanced design")
        .because(
            "missing plots, unequal replication or incomplete blocks spread its information, and a"
                + " test in one stratum alone would use a part of it")
        .mend(MEND);
  }
}
