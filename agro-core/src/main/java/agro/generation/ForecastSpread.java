package agro.generation;

import java.util.Optional;
import org.hipparchus.util.FastMath;

/** Crosses normal outcomes of parameters and season with t outcomes of the weather. */
final class ForecastSpread {

  private static final int OUTCOMES = 15;
  private static final double[] SCORE = FlightOutcomes.scores(OUTCOMES);

  private final WeatherAhead weather;
  private final FlightOutcomes flights;
  private final SeasonPosterior posterior;
  private final double seasonShare;
  private final boolean startKnown;

  ForecastSpread(
      WeatherAhead weather,
      FlightOutcomes flights,
      SeasonPosterior posterior,
      double seasonShare,
      boolean startKnown) {
    this.weather = weather;
    this.flights = flights;
    this.posterior = posterior;
    this.seasonShare = seasonShare;
    this.startKnown = startKnown;
  }

  /** The split for a flight's share; nothing when a date does not come in some corner. */
  Optional<SpreadSplit> of(int generation, double offset, Optional<StageScale> stage) {
    var moments = posterior.moments(generation);
    var ofSeason = FastMath.min(moments.variance(), seasonVariance(generation));
    var seasonSd = FastMath.sqrt(ofSeason);
    var parameterSd = FastMath.sqrt(FastMath.max(0, moments.variance() - ofSeason));
    var middle = moments.mean() + offset;
    var knownSd = flights.errorAt(middle);
    var days = new double[knownSd > 0 ? OUTCOMES : 1][OUTCOMES][OUTCOMES][OUTCOMES];
    for (var w = 0; w < OUTCOMES; w++) {
      var probability = (w + 0.5) / OUTCOMES;
      var ahead = weather.outcome(probability);
      var own = stage.map(scale -> scale.outcome(probability)).orElse(ahead);
      for (var k = 0; k < days.length; k++) {
        var error = days.length == 1 ? 0 : knownSd * SCORE[k];
        for (var p = 0; p < OUTCOMES; p++) {
          for (var s = 0; s < OUTCOMES; s++) {
            var sum = middle + error + parameterSd * SCORE[p] + seasonSd * SCORE[s];
            var flight = weather.daysUntil(sum, ahead);
            days[k][w][p][s] = stage.isPresent() ? stage.get().daysAfter(flight, sum, own) : flight;
            if (Double.isInfinite(days[k][w][p][s])) {
              return Optional.empty();
            }
          }
        }
      }
    }
    return Optional.of(FullCrossing.split(days));
  }

  private double seasonVariance(int generation) {
    var later = generation - 1.0;
    var interval = posterior.intervalVariance() * later * later * seasonShare;
    return startKnown
        ? interval
        : FastMath.max(
            0,
            interval
                + seasonShare * (posterior.startVariance() + 2 * later * posterior.covariance()));
  }
}
