package agro.generation;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomDataGenerator;

/**
 * Invented seasons for which the fitted model is the generator: weather from a wave through the
 * year with lagged noise, counts negative binomial about the model's own mean.
 */
final class InventedSeasons {

  static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(7)), UpperCutoff.NONE);

  static final Reference SOURCE = Reference.invented("a pest of a test");

  /** First year; the others follow. */
  static final int FIRST_YEAR = 2011;

  private final RandomDataGenerator random;
  private final Truth truth;

  /**
   * What the counts come from.
   *
   * @param interval mean interval K
   * @param intervalSd scatter of K between seasons
   * @param shape form and spread of the flights
   * @param generations number of flights
   * @param moths adults that one trap takes of a flight
   * @param size size of the negative binomial per night; infinite for Poisson counts
   */
  record Truth(
      double interval,
      double intervalSd,
      FlightShape shape,
      int generations,
      double moths,
      double size) {

    static Truth usual() {
      return new Truth(400, 0, new FlightShape(FlightCurve.NORMAL, 35, 25), 3, 150, 1.5);
    }

    Truth withGenerations(int number) {
      return new Truth(interval, intervalSd, shape, number, moths, size);
    }

    Truth withSize(double other) {
      return new Truth(interval, intervalSd, shape, generations, moths, other);
    }

    Truth withMoths(double number) {
      return new Truth(interval, intervalSd, shape, generations, number, size);
    }

    Truth with(FlightShape other) {
      return new Truth(interval, intervalSd, other, generations, moths, size);
    }

    Truth withIntervalSd(double sd) {
      return new Truth(interval, sd, shape, generations, moths, size);
    }
  }

  InventedSeasons(long seed, Truth truth) {
    random = new RandomDataGenerator(seed);
    this.truth = truth;
  }

  static LocalDate firstDay(int year) {
    return LocalDate.of(year, 3, 1);
  }

  static LocalDate lastDay(int year) {
    return LocalDate.of(year, 10, 31);
  }

  /** The range about the usual truth. */
  static IntervalRange range() {
    return IntervalRange.about(new ThermalTime(420), List.of(SOURCE));
  }

  /** Running years of weather and counts. */
  List<ObservedSeason> seasons(int number) {
    var seasons = new ArrayList<ObservedSeason>();
    for (var s = 0; s < number; s++) {
      var year = FIRST_YEAR + s;
      seasons.add(season(year, weather(year)));
    }
    return seasons;
  }

  /** The weather of one season, March to October. */
  DailyTemperatures weather(int year) {
    var days = new ArrayList<DailyExtremes>();
    var warmth = random.nextNormal(0, 0.6);
    var spell = 0.0;
    for (var day = firstDay(year); !day.isAfter(lastDay(year)); day = day.plusDays(1)) {
      spell = 0.7 * spell + random.nextNormal(0, 1.6);
      var wave = -Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
      var mean = 9.5 + 8.5 * wave + warmth + spell;
      days.add(new DailyExtremes(day, mean - 5, mean + 5));
    }
    return DailyTemperatures.of("Test field", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  /** Counts in one trap from April on, visited every three to five days. */
  ObservedSeason season(int year, DailyTemperatures weather) {
    var scale = ThermalTimeScale.of(MODEL, weather, firstDay(year));
    var start = random.nextNormal(130, 12);
    var interval = random.nextNormal(truth.interval(), Math.max(1e-9, truth.intervalSd()));
    var visits = new ArrayList<TrapVisit>();
    var from = LocalDate.of(year, 3, 20);
    while (from.plusDays(5).isBefore(weather.lastDay())) {
      var date = from.plusDays(random.nextInt(3, 5));
      visits.add(TrapVisit.working("A", from, date, count(from, date, scale, start, interval)));
      from = date;
    }
    return ObservedSeason.of(new TrapSeason(year, visits), scale, weather);
  }

  private int count(
      LocalDate from, LocalDate date, ThermalTimeScale scale, double start, double interval) {
    var a = scale.degreeDaysCAtStartOf(from);
    var b = scale.degreeDaysCAtStartOf(date);
    var nights = date.toEpochDay() - from.toEpochDay();
    var mean = CatchModel.STRAYS_PER_NIGHT * nights;
    for (var g = 0; g < truth.generations(); g++) {
      var s = truth.shape().scaleDegreeDaysC(g + 1);
      var median = start + g * interval;
      var curve = truth.shape().curve();
      mean +=
          truth.moths() * (curve.cumulative((b - median) / s) - curve.cumulative((a - median) / s));
    }
    return draw(mean, truth.size() * nights);
  }

  private int draw(double mean, double size) {
    var rate = Double.isInfinite(size) ? mean : random.nextGamma(size, mean / size);
    return rate > 0 ? random.nextPoisson(rate) : 0;
  }
}
