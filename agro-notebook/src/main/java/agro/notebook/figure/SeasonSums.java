package agro.notebook.figure;

import agro.development.DegreeDayModel;
import agro.generation.ObservedSeason;
import agro.generation.SeasonUnderWay;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;

/**
 * Degree-days of a season by the number of days since its start: element i is the sum at the start
 * of day i.
 */
final class SeasonSums {

  private final SeasonUnderWay season;
  private final List<ObservedSeason> past;
  private final DailyTemperatures knownDays;
  private final double[] known;
  private final double[][] members;

  SeasonSums(SeasonUnderWay season, List<ObservedSeason> past) {
    this.season = season;
    this.past = List.copyOf(past);
    knownDays = season.known().between(season.firstDay(), season.known().lastDay());
    known = sums(season.model(), knownDays);
    var ahead = season.known().lastDay().plusDays(1);
    members = new double[season.members().size()][];
    for (var m = 0; m < members.length; m++) {
      members[m] = sums(season.model(), season.members().get(m).between(ahead, season.lastDay()));
    }
  }

  private static double[] sums(DegreeDayModel model, DailyTemperatures days) {
    var daily = model.degreeDaysC(days.minimaCelsius(), days.maximaCelsius());
    var sums = new double[daily.length + 1];
    for (var i = 0; i < daily.length; i++) {
      sums[i + 1] = sums[i] + daily[i];
    }
    return sums;
  }

  SeasonUnderWay season() {
    return season;
  }

  List<ObservedSeason> past() {
    return past;
  }

  /** Days of the season. */
  int seasonDays() {
    return (int) ChronoUnit.DAYS.between(season.firstDay(), season.lastDay()) + 1;
  }

  /** Days with known temperatures. */
  int knownDays() {
    return known.length - 1;
  }

  double knownTotal() {
    return known[known.length - 1];
  }

  /** Sum at the start of a day, or NaN beyond the known days. */
  double known(int day) {
    return day < known.length ? known[day] : Double.NaN;
  }

  DayOrigin origin(int day) {
    return knownDays.origin(knownDays.day(day));
  }

  /** Quantile of the past years' sums at the start of a day, or NaN before the seam. */
  double ahead(int day, double probability) {
    var since = day - knownDays();
    if (since < 0) {
      return Double.NaN;
    }
    var sums = Arrays.stream(members).mapToDouble(member -> member[since]).sorted().toArray();
    return knownTotal() + quantile(sums, probability);
  }

  double aheadAtEnd(double probability) {
    return ahead(seasonDays(), probability);
  }

  /** Sum of a past season after as many days, or NaN beyond its temperatures. */
  double pastSum(ObservedSeason each, int day) {
    return day <= each.scale().days() ? each.scale().degreeDaysCAfter(day) : Double.NaN;
  }

  /** Quantile between order statistics, on a straight line (Hyndman and Fan 1996, type 7). */
  private static double quantile(double[] sorted, double probability) {
    var place = probability * (sorted.length - 1);
    var below = (int) place;
    var above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
