package agro.generation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Crosses the outcomes of the season under way with those of the weather ahead: every place of a
 * flight on the scale with every weather. The error of the known temperatures widens the places
 * first.
 */
final class FlightOutcomes {

  private static final int ERRORS = 15;
  private static final double[] SCORE = scores(ERRORS);
  private static final double LOW = 0.1;

  private final SeasonUnderWay season;
  private final WeatherAhead weather;
  private final KnownSpread known;
  private final SeasonPosterior posterior;
  private final FlightShape shape;
  private final OutcomeLimits limits;
  private final int count;

  FlightOutcomes(
      SeasonUnderWay season,
      WeatherAhead weather,
      KnownSpread known,
      SeasonPosterior posterior,
      FlightShape shape,
      int count) {
    this.season = season;
    this.weather = weather;
    this.known = known;
    this.posterior = posterior;
    this.shape = shape;
    this.count = count;
    limits = new OutcomeLimits(season, weather);
  }

  /** A date with the causes for which it may not come. */
  record Dates(DateDistribution dates, NotThisSeason notThisSeason) {}

  /** Dates of a share of a flight, or of a stage that follows it. */
  Dates dates(int generation, FlightShare share, Optional<StageScale> stage) {
    var offset = shape.offsetDegreeDaysC(generation, share.share());
    var parents =
        generation == 1
            ? Double.NaN
            : shape.offsetDegreeDaysC(generation - 1, share.share()) - offset;
    var targets = targets(generation, offset);
    var days = new double[targets.length * WeatherAhead.OUTCOMES];
    var never = new EnumMap<SeasonEnd, Integer>(SeasonEnd.class);
    for (var i = 0; i < targets.length; i++) {
      for (var w = 0; w < WeatherAhead.OUTCOMES; w++) {
        var ahead = weather.outcome(w);
        var flight = weather.daysUntil(targets[i][0], ahead);
        var day = stage.isPresent() ? stage.get().daysAfter(flight, targets[i][0], w) : flight;
        var end = limits.end(day, w, parentDay(targets[i], parents, ahead));
        if (end.isPresent()) {
          never.merge(end.get(), 1, Integer::sum);
          day = Double.POSITIVE_INFINITY;
        }
        days[i * WeatherAhead.OUTCOMES + w] = day;
      }
    }
    return new Dates(
        DateDistribution.ofOutcomes(season.firstDay(), days), causes(never, days.length));
  }

  /** Why a stage of which half comes at a date does not come; nothing when it does. */
  Optional<SeasonEnd> end(int generation, double[] middle, int weatherOutcome, double days) {
    var parents = generation == 1 ? Double.NaN : 0;
    return limits.end(
        days, weatherOutcome, parentDay(middle, parents, weather.outcome(weatherOutcome)));
  }

  /** When the same share of the parents flew; negative infinity where that does not matter. */
  private double parentDay(double[] target, double parents, double[] ahead) {
    return Double.isNaN(parents) || !limits.askForParents()
        ? Double.NEGATIVE_INFINITY
        : weather.daysUntil(target[0] - target[1] + parents, ahead);
  }

  private static NotThisSeason causes(Map<SeasonEnd, Integer> never, int outcomes) {
    var chances = new EnumMap<SeasonEnd, Double>(SeasonEnd.class);
    never.forEach((end, count) -> chances.put(end, (double) count / outcomes));
    return new NotThisSeason(chances);
  }

  /** Equally likely sums at which a share of a flight is over, each with the interval. */
  double[][] targets(int generation, double offset) {
    var outcomes = posterior.outcomes(generation, count);
    for (var outcome : outcomes) {
      outcome[0] += offset;
    }
    if (known.errorC() == 0) {
      return outcomes;
    }
    var wide = new double[outcomes.length * ERRORS][];
    for (var i = 0; i < outcomes.length; i++) {
      var error = errorAt(outcomes[i][0]);
      for (var e = 0; e < ERRORS; e++) {
        wide[i * ERRORS + e] = new double[] {outcomes[i][0] + error * SCORE[e], outcomes[i][1]};
      }
    }
    Arrays.sort(wide, Comparator.comparingDouble(pair -> pair[0]));
    var thinned = new double[count][];
    Arrays.setAll(thinned, i -> wide[i * ERRORS + ERRORS / 2]);
    return thinned;
  }

  /** Error of the known sum on the day on which a sum is reached, or to the seam beyond it. */
  double errorAt(double degreeDaysC) {
    return degreeDaysC >= weather.knownDegreeDaysC()
        ? known.errorC()
        : known.errorC(weather.daysUntil(degreeDaysC, weather.outcome(0)));
  }

  /** Middles of equally likely parts of a standard normal distribution. */
  static double[] scores(int parts) {
    var normal = new NormalDistribution();
    var scores = new double[parts];
    Arrays.setAll(scores, i -> normal.inverseCumulativeProbability((i + 0.5) / parts));
    return scores;
  }

  /** Share of a flight that had flown at the beginning of the day of issue. */
  FlownShare flown(int generation) {
    var until = (double) season.asOf().toEpochDay() - season.firstDay().toEpochDay();
    var scale = shape.scaleDegreeDaysC(generation);
    var targets = targets(generation, 0);
    var shares = new double[targets.length * WeatherAhead.OUTCOMES];
    for (var w = 0; w < WeatherAhead.OUTCOMES; w++) {
      var sum = weather.sumAfter(until, weather.outcome(w));
      for (var i = 0; i < targets.length; i++) {
        shares[i * WeatherAhead.OUTCOMES + w] =
            shape.curve().cumulative((sum - targets[i][0]) / scale);
      }
    }
    Arrays.sort(shares);
    return new FlownShare(
        generation,
        shares[(int) (LOW * shares.length)],
        shares[shares.length / 2],
        shares[(int) ((1 - LOW) * shares.length)]);
  }
}
