package agro.generation;

import agro.development.DegreeDayModel;
import agro.weather.DailyTemperatures;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.util.FastMath;

/**
 * Degree-days of the season under way: known days, then the spread of the past years.
 *
 * <p>The sum of degree-days from the seam to a later day has, over the m past years, a mean and a
 * standard deviation. The sum of a year to come is foretold by Student's t on m - 1 degrees of
 * freedom with the factor sqrt(1 + 1/m), which allows for the mean and the spread being estimated
 * from few years. Each outcome of the weather keeps its place among the years from day to day, so
 * that the date of any sum has exactly this distribution.
 */
final class WeatherAhead {

  /** Equally likely outcomes of the weather. */
  static final int OUTCOMES = 101;

  private static final int SEAM_DAYS = 7;

  private final double[] known;
  private final double[][] members;
  private final double[] mean;
  private final double[] deviation;
  private final double[][] outcomes;
  private final int[] byWarmth;

  WeatherAhead(SeasonUnderWay season) {
    this(season, season.model());
  }

  /** The same weather on another scale, such as that of a stage with thresholds of its own. */
  WeatherAhead(SeasonUnderWay season, DegreeDayModel model) {
    known =
        SeasonUnderWay.sums(
            model, season.known().between(season.firstDay(), season.known().lastDay()));
    var ahead = season.known().lastDay().plusDays(1);
    var length = (int) ChronoUnit.DAYS.between(ahead, season.lastDay()) + 1;
    members = new double[season.members().size()][];
    for (var m = 0; m < members.length; m++) {
      DailyTemperatures run = season.members().get(m).between(ahead, season.lastDay());
      members[m] = SeasonUnderWay.sums(model, run);
    }
    mean = new double[length + 1];
    deviation = new double[length + 1];
    for (var d = 0; d <= length; d++) {
      summarise(d);
    }
    byWarmth =
        IntStream.range(0, members.length)
            .boxed()
            .sorted(Comparator.comparingDouble(m -> members[m][length]))
            .mapToInt(Integer::intValue)
            .toArray();
    outcomes = new double[OUTCOMES][];
    for (var i = 0; i < OUTCOMES; i++) {
      outcomes[i] = outcome((i + 0.5) / OUTCOMES);
    }
  }

  private void summarise(int day) {
    var sum = 0.0;
    for (var member : members) {
      sum += member[day];
    }
    mean[day] = sum / members.length;
    var squares = 0.0;
    for (var member : members) {
      squares += (member[day] - mean[day]) * (member[day] - mean[day]);
    }
    deviation[day] = FastMath.sqrt(squares / (members.length - 1));
  }

  /** Sums of degree-days from the seam for one quantile of the weather; a sum never falls. */
  double[] outcome(double probability) {
    var m = members.length;
    var t = new TDistribution(m - 1.0).inverseCumulativeProbability(probability);
    var stretch = t * FastMath.sqrt(1 + 1.0 / m);
    var sums = new double[mean.length];
    for (var d = 1; d < sums.length; d++) {
      sums[d] = FastMath.max(sums[d - 1], mean[d] + stretch * deviation[d]);
    }
    return sums;
  }

  double[] outcome(int index) {
    return outcomes[index];
  }

  double knownDegreeDaysC() {
    return known[known.length - 1];
  }

  int knownDays() {
    return known.length - 1;
  }

  /**
   * Days since the start of the season's first day at which a sum is reached.
   *
   * @param degreeDaysC sum since the season's first day
   * @param ahead sums from the seam on
   * @return days with fraction, 0 for a sum of zero or less, infinity when it is not reached
   */
  double daysUntil(double degreeDaysC, double[] ahead) {
    var atSeam = knownDegreeDaysC();
    return degreeDaysC <= atSeam
        ? crossing(known, degreeDaysC)
        : knownDays() + crossing(ahead, degreeDaysC - atSeam);
  }

  /** Sum since the season's first day after some days, the inverse of {@link #daysUntil}. */
  double sumAfter(double days, double[] ahead) {
    return days <= knownDays()
        ? between(known, days)
        : knownDegreeDaysC() + between(ahead, days - knownDays());
  }

  private static double between(double[] sums, double days) {
    var whole = (int) FastMath.min(days, sums.length - 2.0);
    return sums[whole] + (days - whole) * (sums[whole + 1] - sums[whole]);
  }

  /**
   * The past year, by its place in the list, that stands for an outcome: years in order of their
   * warmth up to the end of the season, outcomes likewise.
   */
  int memberOf(int outcome) {
    return byWarmth[(int) ((outcome + 0.5) / OUTCOMES * byWarmth.length)];
  }

  private static double crossing(double[] sums, double target) {
    if (target <= 0) {
      return 0;
    }
    var low = 0;
    var high = sums.length - 1;
    if (sums[high] < target) {
      return Double.POSITIVE_INFINITY;
    }
    while (high - low > 1) {
      var middle = (low + high) >>> 1;
      if (sums[middle] < target) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low + (target - sums[low]) / (sums[high] - sums[low]);
  }

  /** Mean degree-days a day just before the seam and, over the past years, just after it. */
  double[] stepAtSeam() {
    var before = Math.min(SEAM_DAYS, knownDays());
    var after = Math.min(SEAM_DAYS, mean.length - 1);
    return new double[] {
      (known[known.length - 1] - known[known.length - 1 - before]) / before, mean[after] / after
    };
  }
}
