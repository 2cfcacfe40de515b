package agro.generation;

import agro.units.ThermalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.RandomDataGenerator;

/** What a fit tells of each season and of each visit. */
final class FitDetails {

  /** Randomised residuals are drawn with a fixed seed, so that a fit prints the same each time. */
  private static final long RESIDUAL_SEED = 20_110_301;

  /** Keeps quantile residuals finite. */
  private static final double LEAST_CHANCE = 1e-12;

  private static final double SEEN = 0.01;

  private final FlightTiming timing;
  private final List<ObservedSeason> observed;
  private final List<CatchData> data;
  private final CatchFit fit;

  FitDetails(FlightTiming timing, List<ObservedSeason> observed, CatchFit fit) {
    this.timing = timing;
    this.observed = observed;
    this.fit = fit;
    data = fit.model().seasons;
  }

  /** Form and spread of the flights, arrivals taken together. */
  FlightShape shape() {
    var shape = fit.model().shape(fit.parameters);
    var between = 0.0;
    for (var s = 0; s < data.size(); s++) {
      var shares = fit.model().arrivalShares(s, fit.parameters);
      var delays = fit.model().delays(s, fit.parameters);
      var mean = 0.0;
      var square = 0.0;
      for (var a = 0; a < shares.length; a++) {
        mean += shares[a] * delays[a];
        square += shares[a] * delays[a] * delays[a];
      }
      between += (square - mean * mean) / data.size();
    }
    return between == 0
        ? shape
        : new FlightShape(
            shape.curve(),
            Math.sqrt(shape.firstDegreeDaysC() * shape.firstDegreeDaysC() + between),
            shape.addedDegreeDaysC());
  }

  List<SeasonTiming> seasons(SeasonwiseIntervals seasonwise, List<Optional<Double>> intervals) {
    var shape = shape();
    var correlations = new ResidualCorrelation(fit);
    var timings = new ArrayList<SeasonTiming>();
    for (var s = 0; s < data.size(); s++) {
      var start = seasonwise.start(s);
      var season = observed.get(s);
      var days = season.scale().daysUntil(Math.max(0, start));
      timings.add(
          new SeasonTiming(
              season.year(),
              new ThermalTime(start),
              Double.isFinite(days)
                  ? Optional.of(season.scale().firstDay().plusDays((long) days))
                  : Optional.empty(),
              intervals.get(s).map(ThermalTime::new),
              catchSizes(s),
              BiofixSearch.find(timing.biofixRule(), season, start, shape),
              data.get(s).visits(),
              data.get(s).totalCatch(),
              correlations.of(s),
              season.site(),
              beforeTraps(s),
              arrivals(s)));
    }
    return timings;
  }

  private List<Double> catchSizes(int season) {
    var sizes = new ArrayList<Double>();
    for (var g = 0; g < fit.model().generations; g++) {
      sizes.add(
          fit.model().visibleShare(season, g, fit.parameters) > SEEN
              ? Math.exp(fit.parameters[fit.model().catchIndex(season, g)])
              : Double.NaN);
    }
    return sizes;
  }

  private double beforeTraps(int season) {
    var model = fit.model();
    var shares = model.arrivalShares(season, fit.parameters);
    var delays = model.delays(season, fit.parameters);
    var scale = model.shape(fit.parameters).scaleDegreeDaysC(1);
    var set = data.get(season).firstDegreeDaysC();
    var before = 0.0;
    for (var a = 0; a < shares.length; a++) {
      before +=
          shares[a] * model.curve.cumulative((set - fit.parameters[season] - delays[a]) / scale);
    }
    return before;
  }

  private List<FlightArrival> arrivals(int season) {
    var shares = fit.model().arrivalShares(season, fit.parameters);
    var delays = fit.model().delays(season, fit.parameters);
    var arrivals = new ArrayList<FlightArrival>();
    for (var a = 0; a < shares.length; a++) {
      arrivals.add(new FlightArrival(shares[a], delays[a]));
    }
    return arrivals;
  }

  List<VisitFit> visits() {
    var random = new RandomDataGenerator(RESIDUAL_SEED);
    var fits = new ArrayList<VisitFit>();
    for (var s = 0; s < data.size(); s++) {
      var season = data.get(s);
      var means = fit.means(s);
      var residuals = fit.residuals(s);
      for (var v = 0; v < season.visits(); v++) {
        fits.add(
            new VisitFit(
                season.year,
                season.fromDegreeDaysC[v],
                season.toDegreeDaysC[v],
                season.nightsOpen[v],
                season.count[v],
                season.full[v],
                means[v],
                residuals[v],
                quantileResidual(season, v, means[v], random.nextUniform(0, 1)),
                season.site));
      }
    }
    return fits;
  }

  /**
   * The normal quantile of a point drawn evenly between the chances of fewer animals and of as many
   * or fewer; of a full trap, between the chance of fewer and one.
   */
  private double quantileResidual(CatchData season, int visit, double mean, double uniform) {
    var size = fit.size * season.nightsOpen[visit];
    var count = season.count[visit];
    var fewer = 1 - NegativeBinomial.chanceOfAtLeast(count, mean, size);
    var orEqual =
        season.full[visit] ? 1 : 1 - NegativeBinomial.chanceOfAtLeast(count + 1, mean, size);
    var chance = fewer + uniform * (orEqual - fewer);
    return new NormalDistribution()
        .inverseCumulativeProbability(Math.max(LEAST_CHANCE, Math.min(1 - LEAST_CHANCE, chance)));
  }

  static double meanCorrelation(List<SeasonTiming> seasons) {
    return seasons.stream()
        .mapToDouble(SeasonTiming::residualCorrelation)
        .filter(Double::isFinite)
        .average()
        .orElse(0);
  }
}
