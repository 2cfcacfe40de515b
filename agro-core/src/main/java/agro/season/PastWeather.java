package agro.season;

import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import agro.weather.climate.PastYears;
import agro.weather.climate.StationOffset;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The weather that a place may still have, from the past years of its neighbour station or, without
 * one, of its own log. The offset of the station is not known exactly; each past year carries its
 * own error of the offset, so that the error is in the spread of the dates.
 */
final class PastWeather {

  /** No days are left in the season. */
  static final Found NOTHING_AHEAD =
      new Found(List.of(), new ReadReport("past years", 0, List.of()));

  private final DailyTemperatures history;
  private final Optional<StationOffset> offset;
  private final double trendCelsiusPerDecade;

  PastWeather(
      DailyTemperatures history, Optional<StationOffset> offset, double trendCelsiusPerDecade) {
    this.history = history;
    this.trendCelsiusPerDecade = trendCelsiusPerDecade;
    this.offset = offset;
  }

  /**
   * Runs of days of the past years, on the scale of the place.
   *
   * @param members one unbroken run a past year
   * @param report years that were left out
   */
  record Found(List<DailyTemperatures> members, ReadReport report) {}

  /**
   * Past years for the days of a season that are still to come.
   *
   * @param from first day ahead
   * @param to last day of the season
   * @param seed seed of the order in which the errors of the offset are dealt out
   */
  Found between(LocalDate from, LocalDate to, long seed) {
    var runs = PastYears.of(history).shiftedByTrend(trendCelsiusPerDecade).runs(from, to);
    if (offset.isEmpty()) {
      return new Found(runs.members(), runs.report());
    }
    var shift = offset.get();
    var random = RandomSource.XO_SHI_RO_256_PP.create(seed);
    var minima = normalScores(runs.members().size(), random);
    var maxima = normalScores(runs.members().size(), random);
    var members = new ArrayList<DailyTemperatures>();
    for (int i = 0; i < minima.length; i++) {
      members.add(
          shift.apply(
              runs.members().get(i),
              minima[i] * shift.errorMinCelsius(),
              maxima[i] * shift.errorMaxCelsius()));
    }
    return new Found(members, runs.report());
  }

  /** Evenly spread normal quantiles in random order: few years, and no luck in their draw. */
  private static double[] normalScores(int count, UniformRandomProvider random) {
    var scores = new double[count];
    var normal = new NormalDistribution();
    for (int i = 0; i < count; i++) {
      scores[i] = normal.inverseCumulativeProbability((i + 0.5) / count);
    }
    for (int i = count - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      double other = scores[j];
      scores[j] = scores[i];
      scores[i] = other;
    }
    return scores;
  }
}
