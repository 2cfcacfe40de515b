package agro.stats.linear;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Finds the effects that a design cannot tell and says why. */
final class Estimability {

  private static final int MOST_CELLS = 6;
  private static final double TAKES_PART = 1e-8;

  private Estimability() {}

  static List<LostEffect> lostEffects(DesignMatrix design) {
    var lost = new ArrayList<LostEffect>();
    int[] found = degreesOfFreedom(design);
    for (int t = 0; t < design.terms().size(); t++) {
      int expected = expected(design, t);
      if (found[t] < expected) {
        var term = design.terms().get(t);
        var empty = emptyCells(term);
        lost.add(
            new LostEffect(
                term.name(),
                expected,
                expected - found[t],
                empty,
                empty.isEmpty() ? partners(design, t) : List.of()));
      }
    }
    return List.copyOf(lost);
  }

  /** Degrees of freedom of each term after those before it. */
  static int[] degreesOfFreedom(DesignMatrix design) {
    int[] found = new int[design.terms().size()];
    for (int k = 0; k < design.rank(); k++) {
      int term = design.termOfColumn(design.factors().columnAt(k));
      if (term >= 0) {
        found[term]++;
      }
    }
    return found;
  }

  /** Cells of the term less what its margins in the model take, the intercept among them. */
  static int expected(DesignMatrix design, int place) {
    var term = design.terms().get(place);
    int df = design.block(place).cells();
    if (term.covariates().isEmpty()) {
      df--;
    }
    for (int other = 0; other < design.terms().size(); other++) {
      var margin = design.terms().get(other);
      boolean sameSlopes =
          new HashSet<>(margin.covariates()).equals(new HashSet<>(term.covariates()));
      if (term.contains(margin) && sameSlopes && isMargin(term, margin)) {
        df -= expected(design, other);
      }
    }
    return df;
  }

  private static boolean isMargin(ModelTerm term, ModelTerm margin) {
    return !term.isNested() || term.within().containsAll(margin.allFactors());
  }

  private static List<String> emptyCells(ModelTerm term) {
    if (term.isNested() || term.factors().size() < 2) {
      return List.of();
    }
    var seen = new HashSet<Long>();
    for (int i = 0; i < term.size(); i++) {
      long cell = 0;
      for (Factor factor : term.factors()) {
        cell = cell * factor.levelCount() + factor.code(i);
      }
      seen.add(cell);
    }
    long all = 1;
    for (Factor factor : term.factors()) {
      all *= factor.levelCount();
    }
    var empty = new ArrayList<String>();
    for (long cell = 0; cell < all && empty.size() <= MOST_CELLS; cell++) {
      if (!seen.contains(cell)) {
        empty.add(empty.size() < MOST_CELLS ? name(term, cell) : "and others");
      }
    }
    return empty;
  }

  private static String name(ModelTerm term, long cell) {
    var parts = new ArrayList<String>();
    long rest = cell;
    for (int f = term.factors().size() - 1; f >= 0; f--) {
      Factor factor = term.factors().get(f);
      parts.add(0, factor.name() + " " + factor.levels().get((int) (rest % factor.levelCount())));
      rest /= factor.levelCount();
    }
    return String.join(", ", parts);
  }

  /** Terms with a part in the same dependencies as lost columns of this one. */
  private static List<String> partners(DesignMatrix design, int place) {
    Set<Integer> terms = new TreeSet<>();
    double[][] directions = design.nullDirections();
    for (int d = 0; d < directions.length; d++) {
      int lost = design.factors().columnAt(design.rank() + d);
      if (design.termOfColumn(lost) != place) {
        continue;
      }
      for (int j = 0; j < directions[d].length; j++) {
        if (Math.abs(directions[d][j]) > TAKES_PART) {
          terms.add(design.termOfColumn(j));
        }
      }
    }
    terms.remove(place);
    if (terms.size() > 1) {
      terms.remove(-1);
    }
    var names = new LinkedHashSet<String>();
    for (int term : terms) {
      names.add(term < 0 ? "the general mean" : design.terms().get(term).name());
    }
    return List.copyOf(names);
  }
}
