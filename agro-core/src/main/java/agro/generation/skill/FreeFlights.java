package agro.generation.skill;

import agro.generation.FlightTimingFit;
import agro.generation.ObservedSeason;
import agro.generation.SeasonTiming;
import agro.generation.TrapState;
import agro.generation.TrapVisit;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;

/**
 * The flights of one whole season, each with a middle, a size and a spread of its own. The forecast
 * takes flights to follow each other at one interval; what it is judged by does not, so that a
 * wrong interval cannot hide. Counts are negative binomial with the size of the fit of all seasons;
 * middle, size and spread lean weakly on that fit, so that a flight of few animals stays a flight.
 * Posterior mode by Fisher scoring.
 */
final class FreeFlights {

  private static final double STRAYS_PER_NIGHT = 0.01;

  /** How far a middle may stray from the fit of all seasons, as a share of the interval. */
  private static final double MIDDLE_SD = 0.25;

  private static final double LOG_CATCH_SD = 2;
  private static final double LOG_SCALE_SD = 0.2;
  private static final double USUAL_CATCH = 20;
  private static final double LEAST_CATCH = 0.1;
  private static final int MOST_STEPS = 60;
  private static final double AT_REST = 1e-9;

  private final FlightTimingFit fit;
  private final ObservedSeason season;
  private final List<TrapVisit> visits;
  private final double[] from;
  private final double[] to;
  private final int generations;

  /** For each flight: middle in °C·d, logarithm of catch size, logarithm of scale. */
  private final double[] parameters;

  private final double[] expected;
  private final double[] precision;
  private RealMatrix covariance;

  FreeFlights(FlightTimingFit fit, ObservedSeason season) {
    this.fit = fit;
    this.season = season;
    var scale = season.scale();
    var end = scale.lastDay().plusDays(1);
    visits =
        season.traps().visits().stream()
            .filter(visit -> visit.state() != TrapState.FAILED && visit.nightsOpen() > 0)
            .filter(visit -> !visit.from().isBefore(scale.firstDay()))
            .filter(visit -> !visit.date().isAfter(end))
            .toList();
    from = visits.stream().mapToDouble(v -> scale.degreeDaysCAtStartOf(v.from())).toArray();
    to = visits.stream().mapToDouble(v -> scale.degreeDaysCAtStartOf(v.date())).toArray();
    generations = fit.generations();
    expected = new double[3 * generations];
    precision = new double[3 * generations];
    expectations();
    parameters = expected.clone();
    climb();
  }

  private void expectations() {
    var own = timing();
    var interval =
        (own == null ? fit.workingInterval() : own.interval().orElse(fit.workingInterval()))
            .degreeDaysC();
    var start =
        own == null
            ? fit.seasons().stream()
                .mapToDouble(each -> each.start().degreeDaysC())
                .average()
                .orElse(interval / 2)
            : own.start().degreeDaysC();
    for (var g = 0; g < generations; g++) {
      var size = own == null || g >= own.catchSizes().size() ? Double.NaN : own.catchSizes().get(g);
      expected[3 * g] = start + g * interval;
      expected[3 * g + 1] = FastMath.log(size > 0 ? FastMath.max(LEAST_CATCH, size) : USUAL_CATCH);
      expected[3 * g + 2] = FastMath.log(fit.shape().scaleDegreeDaysC(g + 1));
      precision[3 * g] = square(1 / (MIDDLE_SD * interval));
      precision[3 * g + 1] = square(1 / LOG_CATCH_SD);
      precision[3 * g + 2] = square(1 / LOG_SCALE_SD);
    }
  }

  private SeasonTiming timing() {
    return fit.seasons().stream()
        .filter(each -> each.year() == season.year())
        .findFirst()
        .orElse(null);
  }

  private static double square(double x) {
    return x * x;
  }

  /** Fisher scoring with bounded steps. */
  private void climb() {
    var n = parameters.length;
    for (var step = 0; step < MOST_STEPS; step++) {
      var gradient = new double[n];
      var information = new Array2DRowRealMatrix(n, n);
      for (var i = 0; i < n; i++) {
        gradient[i] = -precision[i] * (parameters[i] - expected[i]);
        information.setEntry(i, i, precision[i]);
      }
      for (var v = 0; v < visits.size(); v++) {
        addVisit(v, gradient, information);
      }
      var solver = new LUDecomposition(information).getSolver();
      covariance = solver.getInverse();
      var change = solver.solve(new ArrayRealVector(gradient, false)).toArray();
      if (move(change) < AT_REST) {
        return;
      }
    }
  }

  /** Takes a step, cut to what the curvature can be trusted for; returns its largest part. */
  private double move(double[] change) {
    var largest = 0.0;
    for (var i = 0; i < change.length; i++) {
      var scale = FastMath.exp(parameters[i - i % 3 + 2]);
      var most = i % 3 == 0 ? 0.5 * scale : i % 3 == 1 ? 1 : 0.25;
      change[i] = FastMath.max(-most, FastMath.min(most, change[i]));
      largest = FastMath.max(largest, FastMath.abs(change[i]) / most);
    }
    for (var i = 0; i < change.length; i++) {
      parameters[i] += change[i];
    }
    return largest;
  }

  private void addVisit(int v, double[] gradient, RealMatrix information) {
    var visit = visits.get(v);
    var open = visit.nightsOpen() / visit.nights();
    var slope = new double[parameters.length];
    var mean = STRAYS_PER_NIGHT * visit.nightsOpen();
    for (var g = 0; g < generations; g++) {
      mean += addFlight(g, v, open, slope);
    }
    var size = fit.poisson() ? Double.POSITIVE_INFINITY : fit.sizePerNight() * visit.nightsOpen();
    var weight = Double.isInfinite(size) ? 1 / mean : size / (mean * (mean + size));
    var miss = visit.count() - mean;
    // A full trap tells that there were at least so many.
    var residual = visit.state() == TrapState.FULL ? FastMath.max(0, miss) : miss;
    for (var i = 0; i < slope.length; i++) {
      gradient[i] += weight * residual * slope[i];
      for (var j = 0; j < slope.length; j++) {
        information.addToEntry(i, j, weight * slope[i] * slope[j]);
      }
    }
  }

  private double addFlight(int g, int v, double open, double[] slope) {
    var curve = fit.shape().curve();
    var scale = FastMath.exp(parameters[3 * g + 2]);
    var zFrom = (from[v] - parameters[3 * g]) / scale;
    var zTo = (to[v] - parameters[3 * g]) / scale;
    var size = open * FastMath.exp(parameters[3 * g + 1]);
    var mean = size * (curve.cumulative(zTo) - curve.cumulative(zFrom));
    slope[3 * g] = size * (curve.density(zFrom) - curve.density(zTo)) / scale;
    slope[3 * g + 1] = mean;
    slope[3 * g + 2] = size * (zFrom * curve.density(zFrom) - zTo * curve.density(zTo));
    return mean;
  }

  int generations() {
    return generations;
  }

  /** Where a share of a flight is over, in °C·d since the season's start. */
  double place(FlightEvent event) {
    var g = event.generation() - 1;
    return parameters[3 * g]
        + FastMath.exp(parameters[3 * g + 2]) * fit.shape().curve().quantile(event.share().share());
  }

  /** Standard error of {@link #place}. */
  double placeError(FlightEvent event) {
    var g = event.generation() - 1;
    var slope =
        FastMath.exp(parameters[3 * g + 2]) * fit.shape().curve().quantile(event.share().share());
    var variance =
        covariance.getEntry(3 * g, 3 * g)
            + 2 * slope * covariance.getEntry(3 * g, 3 * g + 2)
            + slope * slope * covariance.getEntry(3 * g + 2, 3 * g + 2);
    return FastMath.sqrt(FastMath.max(0, variance));
  }

  /** Animals of a flight that the traps should have taken. */
  double animals(int generation) {
    var slope = new double[parameters.length];
    var sum = 0.0;
    for (var v = 0; v < visits.size(); v++) {
      var visit = visits.get(v);
      sum += addFlight(generation - 1, v, visit.nightsOpen() / visit.nights(), slope);
    }
    return sum;
  }

  /** Degree-days at the first and the last night of any trap. */
  double firstSeenC() {
    return Arrays.stream(from).min().orElse(Double.POSITIVE_INFINITY);
  }

  double lastSeenC() {
    return Arrays.stream(to).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /** Whether the middle came to rest between those of its neighbours and near where it began. */
  boolean inOrder(int generation) {
    var g = generation - 1;
    var reach = 2 / FastMath.sqrt(precision[3 * g]);
    var near = FastMath.abs(parameters[3 * g] - expected[3 * g]) < reach;
    var afterBefore = g == 0 || parameters[3 * g] > parameters[3 * g - 3];
    var beforeNext = g == generations - 1 || parameters[3 * g] < parameters[3 * g + 3];
    return near && afterBefore && beforeNext;
  }
}
