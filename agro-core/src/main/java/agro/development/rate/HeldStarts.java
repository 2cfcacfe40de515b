package agro.development.rate;

import agro.stats.LevenbergMarquardt;
import java.util.ArrayList;
import java.util.List;

/**
 * Starts for a search with a fixed parameter that is no coordinate of the model's usual search. The
 * parameter is drawn to its value step by step in the usual coordinates, where the model is well
 * conditioned.
 */
final class HeldStarts {

  private static final double[] FIRMNESS = {1, 30, 1000, 30_000};

  private HeldStarts() {}

  static List<double[]> of(RateFitting fitting, List<RatePoint> points) {
    var starts = new ArrayList<double[]>();
    for (var fixed : fitting.fixed().entrySet()) {
      var released = fitting.released(fixed.getKey());
      boolean usual = !(released.equation() instanceof OwnCoordinates);
      if (usual && fitting.equation() instanceof OwnCoordinates) {
        starts.add(start(released, points, fixed.getKey(), fixed.getValue()));
      }
    }
    return starts;
  }

  private static double[] start(
      RateFitting released, List<RatePoint> points, int place, double value) {
    var search = new RateSearch(released, points);
    var constants = released.constants();
    var best = search.best(released.seed(), List.of());
    double size = Math.sqrt(best.sumOfSquares() + 1e-30) / Math.max(Math.abs(value), 1e-12);
    var held =
        new HeldResiduals(
            search.points, q -> search.equation.toParameters(q, constants)[place], size);
    held.value = value;
    var downhill =
        LevenbergMarquardt.within(search.points.observations() + 1, search.low, search.high);
    double[] q = best.parameters();
    for (double firmness : FIRMNESS) {
      held.weight = firmness * size;
      q = downhill.minimise(held, q).parameters();
    }
    double[] p = search.equation.toParameters(q, constants);
    p[place] = value;
    return p;
  }
}
