package agro.generation;

import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Mean catch of every visit and its derivatives.
 *
 * <p>\[ m_v = c_v \sum_g N_{sg} \left[F\left(\frac{b_v - \mu_s - (g-1) K}{\sigma_g}\right) -
 * F\left(\frac{a_v - \mu_s - (g-1) K}{\sigma_g}\right)\right] + \epsilon n_v \]
 *
 * <p>with degree-days a and b at the ends of the visit's interval, c traps open on average, n open
 * trap-nights, catch size N (adults that one trap open all through the flight would take), and
 * strays at a fixed small rate, so that one lost moth between two flights cannot steer the fit.
 *
 * <p>Parameters stand in one array: medians of the first flight by season, interval K, logarithm of
 * the first flight's scale, logarithm of the added scale, logarithms of the catch sizes by season
 * and generation.
 */
final class CatchModel {

  /** Strays per open trap-night. */
  static final double STRAYS_PER_NIGHT = 0.01;

  /** A share of the season's catch below which flights hold nothing but strays. */
  private static final double NEARLY_EMPTY = 0.05;

  final List<CatchData> seasons;
  final int generations;
  final FlightCurve curve;

  CatchModel(List<CatchData> seasons, int generations, FlightCurve curve) {
    this.seasons = List.copyOf(seasons);
    this.generations = generations;
    this.curve = curve;
  }

  int parameters() {
    return seasons.size() * (1 + generations) + 3;
  }

  int visits() {
    return seasons.stream().mapToInt(CatchData::visits).sum();
  }

  int intervalIndex() {
    return seasons.size();
  }

  int firstScaleIndex() {
    return seasons.size() + 1;
  }

  int addedScaleIndex() {
    return seasons.size() + 2;
  }

  int catchIndex(int season, int generation) {
    return seasons.size() + 3 + season * generations + generation;
  }

  FlightShape shape(double[] parameters) {
    return new FlightShape(
        curve,
        FastMath.exp(parameters[firstScaleIndex()]),
        FastMath.exp(parameters[addedScaleIndex()]));
  }

  /**
   * Mean catches of one season.
   *
   * @param season index of the season
   * @param parameters all parameters
   * @param mean receives the means, one a visit
   * @param slopes receives the derivatives as rows of visits and columns of parameters, or null;
   *     columns of other seasons are left alone
   */
  void means(int season, double[] parameters, double[] mean, double[][] slopes) {
    var data = seasons.get(season);
    for (var v = 0; v < data.visits(); v++) {
      mean[v] = STRAYS_PER_NIGHT * data.nightsOpen[v];
      if (slopes != null) {
        slopes[v][season] = 0;
        for (var p = intervalIndex(); p <= addedScaleIndex(); p++) {
          slopes[v][p] = 0;
        }
      }
    }
    var shape = shape(parameters);
    for (var g = 0; g < generations; g++) {
      addFlight(season, g, shape, parameters, mean, slopes);
    }
  }

  private void addFlight(
      int season, int g, FlightShape shape, double[] parameters, double[] mean, double[][] slopes) {
    var data = seasons.get(season);
    var scale = shape.scaleDegreeDaysC(g + 1);
    var median = parameters[season] + g * parameters[intervalIndex()];
    var size = FastMath.exp(parameters[catchIndex(season, g)]);
    var first = shape.firstDegreeDaysC();
    var added = shape.addedDegreeDaysC();
    for (var v = 0; v < data.visits(); v++) {
      var za = (data.fromDegreeDaysC[v] - median) / scale;
      var zb = (data.toDegreeDaysC[v] - median) / scale;
      var expected = size * data.trapsOpen[v] * (curve.cumulative(zb) - curve.cumulative(za));
      mean[v] += expected;
      if (slopes != null) {
        var fa = curve.density(za);
        var fb = curve.density(zb);
        var perScale = -size * data.trapsOpen[v] / scale;
        var toMedian = perScale * (fb - fa);
        var toScale = perScale * (zb * fb - za * fa);
        slopes[v][season] += toMedian;
        slopes[v][intervalIndex()] += g * toMedian;
        slopes[v][firstScaleIndex()] += toScale * first * first / scale;
        slopes[v][addedScaleIndex()] += toScale * g * added * added / scale;
        slopes[v][catchIndex(season, g)] = expected;
      }
    }
  }

  /** Height of the flight curve, all flights together, in adults per open trap and °C·d. */
  double catchPerDegreeDay(int season, double degreeDaysC, double[] parameters) {
    var shape = shape(parameters);
    var sum = 0.0;
    for (var g = 0; g < generations; g++) {
      var scale = shape.scaleDegreeDaysC(g + 1);
      var median = parameters[season] + g * parameters[intervalIndex()];
      sum +=
          FastMath.exp(parameters[catchIndex(season, g)])
              * curve.density((degreeDaysC - median) / scale)
              / scale;
    }
    return sum;
  }

  /** Share of a flight that the traps of a season could see, weighted by the traps open. */
  double visibleShare(int season, int g, double[] parameters) {
    var data = seasons.get(season);
    var scale = shape(parameters).scaleDegreeDaysC(g + 1);
    var median = parameters[season] + g * parameters[intervalIndex()];
    var share = 0.0;
    for (var v = 0; v < data.visits(); v++) {
      share +=
          data.trapsOpen[v]
              * (curve.cumulative((data.toDegreeDaysC[v] - median) / scale)
                  - curve.cumulative((data.fromDegreeDaysC[v] - median) / scale));
    }
    return share;
  }

  /**
   * Whether every second flight is all but empty in every season, as when an interval is sought
   * that is half the true one.
   */
  boolean everySecondFlightIsEmpty(double[] parameters) {
    return generations > 2 && (holds(parameters, 0) || holds(parameters, 1));
  }

  private boolean holds(double[] parameters, int parity) {
    for (var s = 0; s < seasons.size(); s++) {
      var empty = 0.0;
      var rest = 0.0;
      for (var g = 0; g < generations; g++) {
        var seen = FastMath.exp(parameters[catchIndex(s, g)]) * visibleShare(s, g, parameters);
        empty += g % 2 == parity ? seen : 0;
        rest += g % 2 == parity ? 0 : seen;
      }
      if (empty > NEARLY_EMPTY * rest) {
        return false;
      }
    }
    return true;
  }
}
