package agro.generation;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.report.InputProblem;
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
import java.util.Objects;
import java.util.stream.IntStream;
import org.hipparchus.random.RandomDataGenerator;

/**
 * Invented seasons of trap visits with a known truth: three flights 270 °C·d apart above 7.4 °C,
 * one trap visited every three to five days, negative binomial counts of size 3 for a visit of four
 * nights. Weather, starts and catch sizes differ between seasons. What is found in them is a
 * demonstration and proves nothing of any field.
 *
 * @param world how the flights come about
 * @param seasons number of seasons, 1 or more
 */
public record InventedFlights(FlightWorld world, int seasons) {

  /** The true interval between flights, on average over seasons. */
  public static final ThermalTime INTERVAL = new ThermalTime(270);

  /** The degree-day model of the truth: single sine above 7.4 °C. */
  public static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(7.4)), UpperCutoff.NONE);

  private static final Reference SOURCE = Reference.invented("flights of an invented pest");
  private static final int FIRST_YEAR = 2011;
  private static final int FLIGHTS = 3;
  private static final double FIRST_SCALE = 28;
  private static final double ADDED_SCALE = 18;
  private static final double SIZE_PER_NIGHT = 0.75;
  private static final double INTERVAL_VARIATION = 0.04;
  private static final double ACTIVITY_CORRELATION = 0.6;
  private static final double ACTIVITY_SD = 0.6;

  /** Checks the number. */
  public InventedFlights {
    Objects.requireNonNull(world, "world");
    if (seasons < 1) {
      throw InputProblem.of(seasons + " invented seasons")
          .expected("one season or more")
          .because("a fit needs counts")
          .mend("ask for four");
    }
  }

  /**
   * Four seasons of a world.
   *
   * @param world how the flights come about
   * @return the generator
   */
  public static InventedFlights of(FlightWorld world) {
    return new InventedFlights(world, 4);
  }

  /**
   * The range in which the interval of these seasons is sought: 0.7 to 1.4 times a requirement that
   * is 4 % too long, as if from a paper.
   *
   * @return the range
   */
  public static IntervalRange range() {
    return IntervalRange.about(INTERVAL.times(1.04), List.of(SOURCE));
  }

  /**
   * Draws the seasons.
   *
   * @param seed seed of the random numbers; equal seeds give equal seasons
   * @return running years with their temperatures
   */
  public List<ObservedSeason> draw(long seed) {
    return drawWithTruth(seed).stream().map(Drawn::season).toList();
  }

  /** One season with what it was drawn from. */
  record Drawn(ObservedSeason season, InventedNights.Truth truth) {

    /** Day, with its fraction, on which half of a flight has flown. */
    double middleDays(int flight) {
      return season.scale().daysUntil(truth.start() + (flight - 1) * truth.interval());
    }
  }

  List<Drawn> drawWithTruth(long seed) {
    var random = new RandomDataGenerator(seed);
    var drawn = new ArrayList<Drawn>();
    for (var s = 0; s < seasons; s++) {
      var weather = weather(FIRST_YEAR + s, random);
      drawn.add(season(FIRST_YEAR + s, weather, random));
    }
    return drawn;
  }

  /** Weather of other years at the same field, of random numbers of its own. */
  static List<DailyTemperatures> otherYears(long seed, int years) {
    var random = new RandomDataGenerator(-1 - seed);
    return IntStream.range(0, years)
        .mapToObj(year -> weather(FIRST_YEAR - years + year, random))
        .toList();
  }

  private static DailyTemperatures weather(int year, RandomDataGenerator random) {
    var days = new ArrayList<DailyExtremes>();
    var warmth = random.nextNormal(0, 0.6);
    var spell = 0.0;
    var last = LocalDate.of(year, 10, 31);
    for (var day = LocalDate.of(year, 2, 1); !day.isAfter(last); day = day.plusDays(1)) {
      spell = 0.7 * spell + random.nextNormal(0, 1.6);
      var wave = -Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
      var mean = 9.5 + 8.5 * wave + warmth + spell;
      var half = 5 + random.nextUniform(-1.5, 1.5);
      days.add(new DailyExtremes(day, mean - half, mean + half));
    }
    return DailyTemperatures.of("Invented field", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  private Drawn season(int year, DailyTemperatures weather, RandomDataGenerator random) {
    var scale = ThermalTimeScale.of(MODEL, weather, weather.firstDay());
    var truth = truth(random);
    var flight = new InventedNights(world, weather, scale.sumsC(), truth, random);
    var visits = new ArrayList<TrapVisit>();
    var from = LocalDate.of(year, 3, 1);
    var renewed = from;
    var activity = random.nextNormal(0, ACTIVITY_SD);
    while (from.plusDays(5).isBefore(weather.lastDay())) {
      var date = from.plusDays(random.nextInt(3, 5));
      var nights = date.toEpochDay() - from.toEpochDay();
      var mean = CatchModel.STRAYS_PER_NIGHT * nights;
      for (var night = from; night.isBefore(date); night = night.plusDays(1)) {
        mean += flight.catchOn(night, renewed);
      }
      if (world.activityCorrelated()) {
        mean *= Math.exp(activity - ACTIVITY_SD * ACTIVITY_SD / 2);
      }
      activity =
          ACTIVITY_CORRELATION * activity
              + random.nextNormal(
                  0, ACTIVITY_SD * Math.sqrt(1 - ACTIVITY_CORRELATION * ACTIVITY_CORRELATION));
      var renew = InventedNights.LURE_WEEKS * 7 <= date.toEpochDay() - renewed.toEpochDay();
      var count = draw(mean, SIZE_PER_NIGHT * nights, random);
      visits.add(new TrapVisit("A", from, date, count, TrapState.WORKING, nights, renew));
      renewed = renew ? date : renewed;
      from = date;
    }
    return new Drawn(ObservedSeason.of(new TrapSeason(year, visits), scale, weather), truth);
  }

  private InventedNights.Truth truth(RandomDataGenerator random) {
    var sizes = new ArrayList<Double>();
    var common = random.nextNormal(Math.log(120), 0.4);
    for (var g = 0; g < FLIGHTS; g++) {
      sizes.add(Math.exp(common + random.nextNormal(0, 0.4)));
    }
    var variation = random.nextNormal(0, INTERVAL_VARIATION);
    return new InventedNights.Truth(
        random.nextNormal(130, 15),
        INTERVAL.degreeDaysC() * (world.intervalVaries() ? 1 + variation : 1),
        new FlightShape(FlightCurve.NORMAL, FIRST_SCALE, ADDED_SCALE),
        sizes);
  }

  private static int draw(double mean, double size, RandomDataGenerator random) {
    var rate = random.nextGamma(size, mean / size);
    return rate > 0 ? random.nextPoisson(rate) : 0;
  }
}
