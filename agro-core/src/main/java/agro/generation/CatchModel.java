package agro.generation;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Mean catch of every visit and its derivatives.
 *
 * <p>\[ m_v = \sum_g N_{sg} \sum_a p_{sa} \sum_k w_{vk} F\left(\frac{x_k - \mu_s - d_{sa} - (g-1)
 * K}{\sigma_g}\right) + \epsilon n_v \]
 *
 * <p>with nodes x and weights w of the visit (its two ends and the traps open, unless conditions
 * say more), n open trap-nights, catch size N (adults that one trap open all through the flight
 * would take), arrivals a with shares p and delays d behind the first one, and strays at a fixed
 * small rate, so that one lost moth between two flights cannot steer the fit.
 *
 * <p>Parameters stand in one array: medians of the first flight by season, interval K, logarithm of
 * the first flight's scale, logarithm of the added scale, logarithms of the catch sizes by season
 * and generation, and for every arrival after the first by season the logarithm of its delay behind
 * the one before and the logarithm of its share over that of the first.
 */
final class CatchModel {

  /** Strays per open trap-night. */
  static final double STRAYS_PER_NIGHT = 0.01;

  /** A share of the season's catch below which flights hold nothing but strays. */
  private static final double NEARLY_EMPTY = 0.05;

  /** Place of start, interval and the two scales among the parameters of one season. */
  private static final int START = 0;

  private static final int INTERVAL = 1;
  private static final int FIRST_SCALE = 2;
  private static final int ADDED_SCALE = 3;
  private static final int CATCHES = 4;

  final List<CatchData> seasons;
  final int generations;
  final int arrivals;
  final FlightCurve curve;

  CatchModel(List<CatchData> seasons, int generations, FlightCurve curve) {
    this(seasons, generations, 1, curve);
  }

  CatchModel(List<CatchData> seasons, int generations, int arrivals, FlightCurve curve) {
    this.seasons = List.copyOf(seasons);
    this.generations = generations;
    this.arrivals = arrivals;
    this.curve = curve;
  }

  int parameters() {
    return 3 + seasons.size() * (columns() - 3);
  }

  /** Parameters that matter to one season. */
  int columns() {
    return CATCHES + generations + 2 * (arrivals - 1);
  }

  /** Places of the parameters that matter to one season among all of them. */
  int[] columnsOf(int season) {
    var columns = new int[columns()];
    columns[START] = season;
    columns[INTERVAL] = intervalIndex();
    columns[FIRST_SCALE] = firstScaleIndex();
    columns[ADDED_SCALE] = addedScaleIndex();
    for (var g = 0; g < generations; g++) {
      columns[CATCHES + g] = catchIndex(season, g);
    }
    for (var a = 1; a < arrivals; a++) {
      columns[delayColumn(a)] = delayIndex(season, a);
      columns[delayColumn(a) + 1] = shareIndex(season, a);
    }
    return columns;
  }

  private int delayColumn(int arrival) {
    return CATCHES + generations + 2 * (arrival - 1);
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

  /** Logarithm of the delay of an arrival, 1 for the second, behind the one before. */
  int delayIndex(int season, int arrival) {
    return seasons.size() * (1 + generations) + 3 + 2 * (season * (arrivals - 1) + arrival - 1);
  }

  /** Logarithm of the share of an arrival over that of the first. */
  int shareIndex(int season, int arrival) {
    return delayIndex(season, arrival) + 1;
  }

  FlightShape shape(double[] parameters) {
    return new FlightShape(
        curve,
        FastMath.exp(parameters[firstScaleIndex()]),
        FastMath.exp(parameters[addedScaleIndex()]));
  }

  /** Delays of the arrivals behind the first, the first included with 0. */
  double[] delays(int season, double[] parameters) {
    var delays = new double[arrivals];
    for (var a = 1; a < arrivals; a++) {
      delays[a] = delays[a - 1] + FastMath.exp(parameters[delayIndex(season, a)]);
    }
    return delays;
  }

  /** Shares of the arrivals, adding up to one. */
  double[] arrivalShares(int season, double[] parameters) {
    var shares = new double[arrivals];
    var sum = 0.0;
    for (var a = 0; a < arrivals; a++) {
      shares[a] = a == 0 ? 1 : FastMath.exp(parameters[shareIndex(season, a)]);
      sum += shares[a];
    }
    for (var a = 0; a < arrivals; a++) {
      shares[a] /= sum;
    }
    return shares;
  }

  /**
   * Mean catches of one season.
   *
   * @param season index of the season
   * @param parameters all parameters
   * @param mean receives the means, one a visit
   * @param slopes receives the derivatives as rows of visits and columns as in {@link #columnsOf},
   *     or null
   */
  void means(int season, double[] parameters, double[] mean, double[][] slopes) {
    var data = seasons.get(season);
    for (var v = 0; v < data.visits(); v++) {
      mean[v] = STRAYS_PER_NIGHT * data.nightsOpen[v];
      if (slopes != null) {
        Arrays.fill(slopes[v], 0);
      }
    }
    var delays = delays(season, parameters);
    var shares = arrivalShares(season, parameters);
    var nodes = new Nodes(data.nodeDegreeDaysC.length, slopes != null);
    var shape = shape(parameters);
    for (var g = 0; g < generations; g++) {
      for (var a = 0; a < arrivals; a++) {
        addFlight(new Flight(season, g, a, shape, delays, shares), parameters, nodes, mean, slopes);
      }
    }
  }

  /** One flight of one arrival. */
  private static final class Flight {
    final int season;
    final int g;
    final int arrival;
    final FlightShape shape;
    final double[] delays;
    final double[] shares;

    Flight(int season, int g, int arrival, FlightShape shape, double[] delays, double[] shares) {
      this.season = season;
      this.g = g;
      this.arrival = arrival;
      this.shape = shape;
      this.delays = delays;
      this.shares = shares;
    }
  }

  /** Values of the curve at the nodes of a season. */
  private final class Nodes {
    final double[] cumulative;
    final double[] density;
    final double[] moment;

    Nodes(int nodes, boolean slopes) {
      cumulative = new double[nodes];
      density = new double[slopes ? nodes : 0];
      moment = new double[slopes ? nodes : 0];
    }

    void fill(double[] degreeDays, double median, double scale) {
      for (var k = 0; k < cumulative.length; k++) {
        var z = (degreeDays[k] - median) / scale;
        cumulative[k] = curve.cumulative(z);
        if (density.length > 0) {
          density[k] = curve.density(z);
          moment[k] = z * density[k];
        }
      }
    }
  }

  private void addFlight(
      Flight flight, double[] parameters, Nodes nodes, double[] mean, double[][] slopes) {
    var data = seasons.get(flight.season);
    var g = flight.g;
    var scale = flight.shape.scaleDegreeDaysC(g + 1);
    var median =
        parameters[flight.season] + flight.delays[flight.arrival] + g * parameters[intervalIndex()];
    nodes.fill(data.nodeDegreeDaysC, median, scale);
    var size =
        FastMath.exp(parameters[catchIndex(flight.season, g)]) * flight.shares[flight.arrival];
    var first = flight.shape.firstDegreeDaysC();
    var added = flight.shape.addedDegreeDaysC();
    for (var v = 0; v < mean.length; v++) {
      var expected = size * data.at(v, nodes.cumulative);
      mean[v] += expected;
      if (slopes != null) {
        var toMedian = -size / scale * data.at(v, nodes.density);
        var toScale = -size / scale * data.at(v, nodes.moment);
        slopes[v][START] += toMedian;
        slopes[v][INTERVAL] += g * toMedian;
        slopes[v][FIRST_SCALE] += toScale * first * first / scale;
        slopes[v][ADDED_SCALE] += toScale * g * added * added / scale;
        slopes[v][CATCHES + g] += expected;
        addArrival(flight, slopes[v], expected, toMedian);
      }
    }
  }

  /** A later delay moves all arrivals behind it; a larger share takes from all others. */
  private void addArrival(Flight flight, double[] slopes, double expected, double toMedian) {
    for (var a = 1; a < arrivals; a++) {
      var column = delayColumn(a);
      if (flight.arrival >= a) {
        slopes[column] += toMedian * (flight.delays[a] - flight.delays[a - 1]);
      }
      slopes[column + 1] += expected * ((flight.arrival == a ? 1 : 0) - flight.shares[a]);
    }
  }

  /** Height of the flight curve, all flights together, in adults per open trap and °C·d. */
  double catchPerDegreeDay(int season, double degreeDaysC, double[] parameters) {
    var shape = shape(parameters);
    var delays = delays(season, parameters);
    var shares = arrivalShares(season, parameters);
    var sum = 0.0;
    for (var g = 0; g < generations; g++) {
      var scale = shape.scaleDegreeDaysC(g + 1);
      for (var a = 0; a < arrivals; a++) {
        var median = parameters[season] + delays[a] + g * parameters[intervalIndex()];
        sum +=
            FastMath.exp(parameters[catchIndex(season, g)])
                * shares[a]
                * curve.density((degreeDaysC - median) / scale)
                / scale;
      }
    }
    return sum;
  }

  /** Median of a flight, or of its arrivals by their shares. */
  double middle(int season, int g, double[] parameters) {
    var middle = parameters[season] + g * parameters[intervalIndex()];
    var delays = delays(season, parameters);
    var shares = arrivalShares(season, parameters);
    for (var a = 1; a < arrivals; a++) {
      middle += shares[a] * delays[a];
    }
    return middle;
  }

  /** Share of a flight that the traps of a season could see, weighted by the traps open. */
  double visibleShare(int season, int g, double[] parameters) {
    var scale = shape(parameters).scaleDegreeDaysC(g + 1);
    var delays = delays(season, parameters);
    var shares = arrivalShares(season, parameters);
    var sum = 0.0;
    for (var a = 0; a < arrivals; a++) {
      var median = parameters[season] + delays[a] + g * parameters[intervalIndex()];
      sum += shares[a] * Arrays.stream(seasons.get(season).shares(curve, median, scale)).sum();
    }
    return sum;
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
