package agro.stats.glm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Separation in ordinal models: bounds of classes that run away from their observations. */
final class OrdinalSeparation {

  private OrdinalSeparation() {}

  /** Each score below the top may push its upper bound up, each above the bottom its lower down. */
  private static double[] rows(OrdinalSearch search, int[] limits, boolean[] counted) {
    int k = search.cuts + search.columns;
    int n = search.scores.size();
    double[] x = new double[2 * n * k];
    double[] row = new double[k];
    for (int i = 0; i < n; i++) {
      int code = search.scores.code(i);
      for (int side = 0; side < 2; side++) {
        int cut = code - side;
        search.boundRow(row, i, cut);
        System.arraycopy(row, 0, x, (2 * i + side) * k, k);
        counted[2 * i + side] = cut >= 0 && cut < search.cuts && search.scores.frequency(i) > 0;
        limits[2 * i + side] = side == 0 ? 1 : -1;
      }
    }
    return x;
  }

  static SeparationCone coneOf(OrdinalSearch search) {
    int n = 2 * search.scores.size();
    int[] limits = new int[n];
    boolean[] counted = new boolean[n];
    if (!isSuspicious(search)) {
      return SeparationCone.none(n);
    }
    double[] x = rows(search, limits, counted);
    return SeparationCone.of(x, search.cuts + search.columns, limits, counted);
  }

  /** A maximum with no parameter far out and no flat direction needs no linear programming. */
  private static boolean isSuspicious(OrdinalSearch search) {
    if (!search.converged() || !search.factor().isRegular()) {
      return true;
    }
    for (int i = 0; i < search.scores.size(); i++) {
      int code = search.scores.code(i);
      double eta = search.predictor(search.parameters(), i);
      double up = search.high(search.parameters(), code) - eta;
      double down = search.low(search.parameters(), code) - eta;
      boolean upper = !Double.isInfinite(up) && search.link.complement(up) < 1e-5;
      boolean lower = !Double.isInfinite(down) && search.link.mean(down) < 1e-5;
      if (upper || lower) {
        return true;
      }
    }
    return false;
  }

  static RowSpace determined(OrdinalSearch search, SeparationCone cone) {
    int n = 2 * search.scores.size();
    int k = search.cuts + search.columns;
    int[] limits = new int[n];
    boolean[] counted = new boolean[n];
    double[] x = rows(search, limits, counted);
    int at = 0;
    for (int i = 0; i < n; i++) {
      if (counted[i] && !cone.separates(i)) {
        System.arraycopy(x, i * k, x, at * k, k);
        at++;
      }
    }
    return RowSpace.of(Arrays.copyOf(x, at * k), at, k);
  }

  static List<String> remarks(OrdinalFit fit) {
    var remarks = new ArrayList<String>();
    if (!fit.scores().unused().isEmpty()) {
      remarks.add(
          "No observation has the class "
              + String.join(", ", fit.scores().unused())
              + ": it was left out of the scale.");
    }
    if (fit.isSeparated()) {
      String names =
          fit.coefficients().stream()
              .filter(each -> !each.isFinite() && each.state() != EstimateState.NOT_ESTIMABLE)
              .map(each -> each.name() + " " + each.state().words())
              .collect(Collectors.joining("; "));
      remarks.add(
          "Some levels have scores at one end of the scale only, or scores that do not overlap with"
              + " those of other levels: "
              + (names.isEmpty() ? "a cut point has no finite estimate" : names)
              + ". Likelihood and tests by its ratio stand; no standard error is given.");
    }
    if (!fit.converged()) {
      remarks.add(
          "The search did not converge in "
              + fit.iterations()
              + " iterations: do not use these figures.");
    }
    return List.copyOf(remarks);
  }
}
