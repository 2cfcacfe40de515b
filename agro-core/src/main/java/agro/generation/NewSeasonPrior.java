package agro.generation;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.util.FastMath;

/**
 * What past seasons say of a new one: Student's t for its start and its interval with the scatter
 * between seasons, a log-normal for its catch sizes. It is the predictive distribution of a new
 * season, not the sampling distribution of a mean.
 */
final class NewSeasonPrior {

  /** Scatter of the interval between seasons, assumed where one season gives none. */
  static final double ASSUMED_INTERVAL_VARIATION = 0.05;

  /** Scatter of the start between seasons in °C·d, assumed where one season gives none. */
  static final double ASSUMED_START_SD = 30;

  /** Two seasons that agree by luck do not make the next one certain. */
  private static final double LEAST_INTERVAL_VARIATION = 0.01;

  private static final double LEAST_START_SD = 5;
  private static final double LEAST_LOG_CATCH_SD = 0.7;
  private static final double NEARLY_NORMAL = 1e6;
  private static final int LEAST_PAIRS = 3;
  private static final double SEASONS_WITHOUT_CORRELATION = 3;

  final Location interval;
  final OptionalDouble startKnown;
  final Location start;
  final double[] logCatchMean;
  final double[] logCatchSd;

  /** Correlation of start and interval over the past seasons, shrunk; 0 where they do not tell. */
  final double correlation;

  /** Share of the interval's predictive variance that is scatter between seasons. */
  final double seasonShare;

  /** A location-scale t distribution. */
  record Location(double mean, double scale, double degreesOfFreedom) {
    double logDensity(double x) {
      var z = (x - mean) / scale;
      return degreesOfFreedom >= NEARLY_NORMAL
          ? -0.5 * z * z
          : -0.5 * (degreesOfFreedom + 1) * FastMath.log1p(z * z / degreesOfFreedom);
    }

    double quantile(double probability) {
      return mean
          + scale * new TDistribution(degreesOfFreedom).inverseCumulativeProbability(probability);
    }
  }

  NewSeasonPrior(
      FlightTimingFit fit,
      OptionalDouble startKnown,
      int generations,
      ReadReport.Collector report) {
    this.startKnown = startKnown;
    interval = interval(fit, report);
    seasonShare =
        fit.interval().isPresent()
            ? fit.interval().get().seasons() / (fit.interval().get().seasons() + 1.0)
            : 0;
    start = start(fit, report);
    correlation = startKnown.isPresent() ? 0 : correlation(fit, report);
    logCatchMean = new double[generations];
    logCatchSd = new double[generations];
    for (var g = 0; g < generations; g++) {
      catches(fit, g);
    }
  }

  private NewSeasonPrior(NewSeasonPrior other, double correlation) {
    interval = other.interval;
    startKnown = other.startKnown;
    start = other.start;
    logCatchMean = other.logCatchMean;
    logCatchSd = other.logCatchSd;
    seasonShare = other.seasonShare;
    this.correlation = correlation;
  }

  /** The same with another correlation of start and interval. */
  NewSeasonPrior withCorrelation(double other) {
    return new NewSeasonPrior(this, other);
  }

  private static Location interval(FlightTimingFit fit, ReadReport.Collector report) {
    if (fit.interval().isEmpty()) {
      var expected = fit.timing().range().expected().degreeDaysC();
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "the interval is "
              + fit.verdict().words()
              + "; the published "
              + Numbers.fixed(expected, 0)
              + " °C·d stand in for it with a coefficient of variation of 12 % (common practice, no"
              + " source)");
      return new Location(expected, IntervalRange.PUBLISHED_VARIATION * expected, NEARLY_NORMAL);
    }
    var estimate = fit.interval().get();
    var mean = estimate.mean().degreeDaysC();
    if (estimate.seasons() == 1) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "one season tells nothing of the scatter between seasons; 5 % is assumed for the interval"
              + " (common practice, no source)");
      return new Location(mean, ASSUMED_INTERVAL_VARIATION * mean, NEARLY_NORMAL);
    }
    return new Location(
        mean,
        FastMath.max(LEAST_INTERVAL_VARIATION * mean, estimate.standardDeviationC())
            * FastMath.sqrt(1 + 1.0 / estimate.seasons()),
        estimate.seasons() - 1.0);
  }

  private static Location start(FlightTimingFit fit, ReadReport.Collector report) {
    var starts =
        fit.seasons().stream().mapToDouble(season -> season.start().degreeDaysC()).toArray();
    if (starts.length == 0) {
      return null;
    }
    var mean = Arrays.stream(starts).average().orElseThrow();
    if (starts.length == 1) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "one season tells nothing of the scatter of the start; 30 °C·d are assumed (common"
              + " practice, no source)");
      return new Location(mean, ASSUMED_START_SD, NEARLY_NORMAL);
    }
    var sum = Arrays.stream(starts).map(x -> (x - mean) * (x - mean)).sum();
    var sd = FastMath.sqrt(sum / (starts.length - 1));
    return new Location(
        mean,
        FastMath.max(LEAST_START_SD, sd) * FastMath.sqrt(1 + 1.0 / starts.length),
        starts.length - 1.0);
  }

  /**
   * Correlation of start and interval, season by season, as if three more seasons without any had
   * been seen. Fewer than three seasons tell nothing.
   */
  private static double correlation(FlightTimingFit fit, ReadReport.Collector report) {
    var pairs =
        fit.seasons().stream()
            .filter(season -> season.interval().isPresent())
            .map(
                season ->
                    new double[] {
                      season.start().degreeDaysC(), season.interval().get().degreeDaysC()
                    })
            .toList();
    if (fit.interval().isEmpty() || pairs.size() < LEAST_PAIRS) {
      return 0;
    }
    var starts = pairs.stream().mapToDouble(pair -> pair[0]).toArray();
    var intervals = pairs.stream().mapToDouble(pair -> pair[1]).toArray();
    var estimate = new PearsonsCorrelation().correlation(starts, intervals);
    if (Double.isNaN(estimate)) {
      return 0;
    }
    var informed = pairs.size() - 2.0;
    var shrunk = estimate * informed / (informed + SEASONS_WITHOUT_CORRELATION);
    report.add(
        Deed.NOTED,
        SourceLocation.NONE,
        "start and interval of a new season are drawn with a correlation of "
            + Numbers.fixed(shrunk, 2)
            + ": "
            + Numbers.fixed(estimate, 2)
            + " over "
            + pairs.size()
            + " seasons, shrunk as if three more had shown none");
    return shrunk;
  }

  private void catches(FlightTimingFit fit, int g) {
    var logs =
        fit.seasons().stream()
            .filter(season -> g < season.catchSizes().size())
            .mapToDouble(season -> season.catchSizes().get(g))
            .filter(size -> size > 0)
            .map(FastMath::log)
            .toArray();
    if (logs.length == 0) {
      logCatchMean[g] = g > 0 ? logCatchMean[g - 1] : FastMath.log(20);
      logCatchSd[g] = 2;
      return;
    }
    var mean = Arrays.stream(logs).average().orElseThrow();
    var sum = Arrays.stream(logs).map(x -> (x - mean) * (x - mean)).sum();
    var sd = logs.length > 1 ? FastMath.sqrt(sum / (logs.length - 1)) : 1;
    logCatchMean[g] = mean;
    logCatchSd[g] = FastMath.max(LEAST_LOG_CATCH_SD, sd * FastMath.sqrt(1 + 1.0 / logs.length));
  }
}
