package agro.generation;

import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.random.RandomDataGenerator;

/** What an invented trap catches night by night, on average. */
final class InventedNights {

  static final int LURE_WEEKS = 6;

  private static final double LURE_HALF_LIFE_DAYS = 25;
  private static final double COLD_BELOW = 8;
  private static final double CATCH_ON_COLD_NIGHT = 0.02;
  private static final int LONGEST_LIFE = 45;
  private static final double LIFE_SHAPE = 3;
  private static final double LIFE_MEAN_DAYS = 10;

  private final FlightWorld world;
  private final DailyTemperatures weather;
  private final double[] perDay;

  /**
   * The truth of one season.
   *
   * @param start middle of the first flight in °C·d
   * @param interval interval between flights in °C·d
   * @param shape form and spread of the flights
   * @param sizes adults that one trap would take of each flight
   */
  record Truth(double start, double interval, FlightShape shape, List<Double> sizes) {}

  InventedNights(
      FlightWorld world,
      DailyTemperatures weather,
      double[] sums,
      Truth truth,
      RandomDataGenerator random) {
    this.world = world;
    this.weather = weather;
    var late = random.nextUniform(70, 110);
    var share = random.nextUniform(0.33, 0.5);
    if (world == FlightWorld.TWO_ARRIVALS) {
      perDay = new double[sums.length - 1];
      add(perDay, sums, truth, 0, 1 - share);
      add(perDay, sums, truth, late, share);
    } else {
      var emerged = new double[sums.length - 1];
      add(emerged, sums, truth, 0, 1);
      perDay = world == FlightWorld.ADULT_LIFE_AND_LURE_FADE ? spreadOverLife(emerged) : emerged;
    }
  }

  private static void add(double[] perDay, double[] sums, Truth truth, double delay, double share) {
    for (var g = 0; g < truth.sizes.size(); g++) {
      var scale = truth.shape.scaleDegreeDaysC(g + 1);
      var median = truth.start + delay + g * truth.interval;
      var curve = truth.shape.curve();
      for (var day = 0; day < perDay.length; day++) {
        perDay[day] +=
            share
                * truth.sizes.get(g)
                * (curve.cumulative((sums[day + 1] - median) / scale)
                    - curve.cumulative((sums[day] - median) / scale));
      }
    }
  }

  /** Adults fly on every night of their life; all nights together make the catch of a life. */
  private static double[] spreadOverLife(double[] emerged) {
    var life = new GammaDistribution(LIFE_SHAPE, LIFE_MEAN_DAYS / LIFE_SHAPE);
    var flying = new double[emerged.length];
    for (var age = 0; age < LONGEST_LIFE; age++) {
      var alive = (1 - life.cumulativeProbability(age + 0.5)) / LIFE_MEAN_DAYS;
      for (var day = age; day < flying.length; day++) {
        flying[day] += alive * emerged[day - age];
      }
    }
    return flying;
  }

  /** Mean catch of the night that begins on a day, with a lure renewed on another. */
  double catchOn(LocalDate night, LocalDate renewed) {
    var caught = perDay[(int) ChronoUnit.DAYS.between(weather.firstDay(), night)];
    if (world == FlightWorld.ADULT_LIFE_AND_LURE_FADE) {
      return caught
          * LureFade.strength(ChronoUnit.DAYS.between(renewed, night), LURE_HALF_LIFE_DAYS);
    }
    var cold =
        world == FlightWorld.COLD_NIGHTS && weather.minCelsius(night.plusDays(1)) < COLD_BELOW;
    return cold ? CATCH_ON_COLD_NIGHT * caught : caught;
  }
}
