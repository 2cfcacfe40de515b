package agro.generation.skill;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.generation.FlightTiming;
import agro.generation.IntervalRange;
import agro.generation.ObservedSeason;
import agro.generation.SeasonUnderWay;
import agro.generation.TrapSeason;
import agro.generation.TrapVisit;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.climate.PastYears;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.RandomDataGenerator;

/**
 * A district of one seed: years of weather, the last of them with traps. The flights follow either
 * the warmth, as the fitted model takes them to, or the calendar, whatever the warmth.
 */
final class InventedDistrict implements SeasonArchive {

  /** What the flights follow. */
  enum Driver {
    WARMTH,
    CALENDAR
  }

  static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(7)), UpperCutoff.NONE);

  private static final Reference SOURCE = Reference.invented("a pest of a test");
  private static final int FIRST_WEATHER = 2005;
  private static final int FIRST_TRAPS = 2017;
  private static final double INTERVAL = 400;
  private static final double[] CALENDAR_MIDDLES = {68, 125, 170};

  private final RandomDataGenerator random;
  private FlightTiming timing =
      FlightTiming.searching(IntervalRange.about(new ThermalTime(420), List.of(SOURCE)));
  private final DailyTemperatures weather;
  private final List<TrapSeason> traps = new ArrayList<>();
  private final List<ObservedSeason> seasons = new ArrayList<>();
  private final List<double[]> middles = new ArrayList<>();

  InventedDistrict(long seed, Driver driver, int trapSeasons) {
    random = new RandomDataGenerator(seed);
    weather = weather(trapSeasons);
    for (var s = 0; s < trapSeasons; s++) {
      var year = FIRST_TRAPS + s;
      var scale = scale(year, weather.upTo(lastDay(year)));
      traps.add(caught(year, scale, driver));
    }
    refresh();
  }

  private void refresh() {
    for (var season : traps) {
      seasons.add(
          new ObservedSeason(season, scale(season.year(), weather.upTo(lastDay(season.year())))));
    }
  }

  private DailyTemperatures weather(int trapSeasons) {
    var lastYear = FIRST_TRAPS + trapSeasons - 1;
    var first = LocalDate.of(FIRST_WEATHER, 1, 1);
    var builder = DailyTemperatures.builder(first, LocalDate.of(lastYear, 12, 31));
    var warmth = 0.0;
    var spell = 0.0;
    for (var day = first; day.getYear() <= lastYear; day = day.plusDays(1)) {
      warmth = day.getDayOfYear() == 1 ? random.nextNormal(0, 0.7) : warmth;
      spell = 0.7 * spell + random.nextNormal(0, 1.6);
      var wave = -Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
      var mean = 9.5 + 8.5 * wave + warmth + spell;
      builder.put(day, mean - 5, mean + 5, DayOrigin.OBSERVED);
    }
    return builder.build("Test field", Medium.shelterAir());
  }

  private ThermalTimeScale scale(int year, DailyTemperatures known) {
    return ThermalTimeScale.of(
        MODEL, known.between(firstDay(year), known.lastDay()), firstDay(year));
  }

  /** One trap, visited every three to five days; days of each flight's middle are noted. */
  private TrapSeason caught(int year, ThermalTimeScale scale, Driver driver) {
    var start = random.nextNormal(130, 12);
    var interval = random.nextNormal(INTERVAL, 10);
    var middle = new double[3];
    for (var g = 0; g < middle.length; g++) {
      middle[g] =
          driver == Driver.WARMTH
              ? scale.daysUntil(start + g * interval)
              : CALENDAR_MIDDLES[g] + random.nextNormal(0, 3);
    }
    middles.add(middle);
    var visits = new ArrayList<TrapVisit>();
    var from = firstDay(year).plusDays(15);
    while (from.plusDays(5).isBefore(lastDay(year))) {
      var date = from.plusDays(random.nextInt(3, 5));
      var mean = 0.01 * (date.toEpochDay() - from.toEpochDay());
      for (var g = 0; g < middle.length; g++) {
        mean +=
            driver == Driver.WARMTH
                ? share(scale, from, date, start + g * interval, g)
                : share(from, date, middle[g]);
      }
      visits.add(TrapVisit.working("A", from, date, draw(mean)));
      from = date;
    }
    return new TrapSeason(year, visits);
  }

  private static double share(
      ThermalTimeScale scale, LocalDate from, LocalDate date, double middle, int g) {
    var flight = new NormalDistribution(middle, Math.sqrt(35 * 35 + g * 25 * 25));
    return 150
        * flight.probability(scale.degreeDaysCAtStartOf(from), scale.degreeDaysCAtStartOf(date));
  }

  private double share(LocalDate from, LocalDate date, double middle) {
    var start = firstDay(date.getYear()).toEpochDay();
    return 150
        * new NormalDistribution(middle, 7)
            .probability(
                (double) (from.toEpochDay() - start), (double) (date.toEpochDay() - start));
  }

  private int draw(double mean) {
    var rate = random.nextGamma(6, mean / 6);
    return rate > 0 ? random.nextPoisson(rate) : 0;
  }

  /** True day, with its fraction, of the middle of a flight. */
  double middleDays(int year, int flight) {
    return middles.get(year - FIRST_TRAPS)[flight - 1];
  }

  @Override
  public String pest() {
    return "test pest";
  }

  @Override
  public String place() {
    return weather.place();
  }

  /** The same archive, fitted with other choices. */
  InventedDistrict withTiming(FlightTiming other) {
    timing = other;
    return this;
  }

  @Override
  public FlightTiming timing() {
    return timing;
  }

  @Override
  public List<ObservedSeason> seasons() {
    return List.copyOf(seasons);
  }

  @Override
  public LocalDate firstDay(int year) {
    return LocalDate.of(year, 3, 1);
  }

  @Override
  public LocalDate lastDay(int year) {
    return LocalDate.of(year, 10, 31);
  }

  @Override
  public Known known(int year, LocalDate issueDate, HindcastScheme scheme) {
    var past =
        seasons.stream()
            .filter(season -> season.year() != year)
            .filter(season -> scheme == HindcastScheme.LEAVE_ONE_OUT || season.year() < year)
            .toList();
    var own = traps.get(year - FIRST_TRAPS).upTo(issueDate);
    var history =
        scheme == HindcastScheme.ONLY_EARLIER
            ? weather.upTo(issueDate)
            : without(weather, issueDate.plusDays(1), firstDay(year + 1).minusDays(1));
    return new Known(
        past,
        new SeasonUnderWay(
            pest(),
            MODEL,
            own,
            firstDay(year),
            lastDay(year),
            issueDate,
            weather.between(firstDay(year), issueDate),
            PastYears.of(history).members(issueDate.plusDays(1), lastDay(year))));
  }

  private static DailyTemperatures without(DailyTemperatures days, LocalDate from, LocalDate to) {
    var builder = DailyTemperatures.builder(days.firstDay(), days.lastDay());
    days.copyInto(builder, days.firstDay());
    for (var day = from; !day.isAfter(to) && days.covers(day); day = day.plusDays(1)) {
      builder.put(day, Double.NaN, Double.NaN, DayOrigin.MISSING);
    }
    return builder.build(days.place(), days.medium());
  }
}
