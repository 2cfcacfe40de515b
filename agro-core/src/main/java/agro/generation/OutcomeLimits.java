package agro.generation;

import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;

/**
 * What ends the season in each outcome of the weather, in days since the start of its first day. A
 * cold day is that of the past year which stands for the outcome, unless there was one already.
 */
final class OutcomeLimits {

  private final double dayLength;
  private final double[] cold = new double[WeatherAhead.OUTCOMES];
  private final double lastUseful;

  OutcomeLimits(SeasonUnderWay season, WeatherAhead weather) {
    var limits = season.limits();
    var first = season.firstDay();
    dayLength =
        limits
            .dayLength()
            .flatMap(cut -> cut.firstShortDay(first, season.lastDay()))
            .map(day -> end(first, day))
            .orElse(Double.POSITIVE_INFINITY);
    lastUseful =
        limits.lastUsefulDay().map(day -> end(first, day)).orElse(Double.POSITIVE_INFINITY);
    Arrays.fill(cold, Double.POSITIVE_INFINITY);
    limits.cold().ifPresent(end -> findCold(season, weather, end));
  }

  /** The end of a day. */
  private static double end(LocalDate first, LocalDate day) {
    return ChronoUnit.DAYS.between(first, day) + 1.0;
  }

  private void findCold(SeasonUnderWay season, WeatherAhead weather, ColdEnd end) {
    var known = firstCold(season.firstDay(), season.known(), end);
    var ahead =
        season.members().stream()
            .mapToDouble(member -> firstCold(season.firstDay(), member, end))
            .toArray();
    for (var w = 0; w < cold.length; w++) {
      cold[w] = Math.min(known, ahead[weather.memberOf(w)]);
    }
  }

  /** Beginning of the first cold day of a run; infinity when there is none. */
  private static double firstCold(LocalDate first, DailyTemperatures days, ColdEnd end) {
    for (var i = 0; i < days.size(); i++) {
      var day = days.day(i);
      if (!day.isBefore(end.from())
          && !day.isBefore(first)
          && days.minCelsius(day) <= end.minimum().celsius()) {
        return ChronoUnit.DAYS.between(first, day);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  boolean askForParents() {
    return Double.isFinite(dayLength);
  }

  /**
   * Why a date does not come; nothing when it does.
   *
   * @param days the date, infinite when warmth does not suffice
   * @param weather the outcome of the weather
   * @param parents date of the same share of the parents' flight
   */
  Optional<SeasonEnd> end(double days, int weather, double parents) {
    if (Double.isInfinite(days)) {
      return Optional.of(SeasonEnd.WARMTH);
    }
    if (parents >= dayLength) {
      return Optional.of(SeasonEnd.DAY_LENGTH);
    }
    if (days >= cold[weather]) {
      return Optional.of(SeasonEnd.COLD);
    }
    return days >= lastUseful ? Optional.of(SeasonEnd.LAST_USEFUL_DAY) : Optional.empty();
  }
}
