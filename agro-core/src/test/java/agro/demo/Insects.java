package agro.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** One season of one pest, individual by individual. */
final class Insects {
  private static final int INDIVIDUALS = 1500;
  private static final int DUSK_HOUR = 21;
  private static final double USUAL_ACTIVITY = 0.45;

  private final Pest pest;
  private final HourlyScale scale;
  private final double[] activity;
  private final Draws draws;
  private final double requirementFactor;
  private final double start;

  private Insects(Pest pest, SiteWeather air, HourlyScale scale, Draws draws) {
    this.pest = pest;
    this.scale = scale;
    this.draws = draws;
    activity = new double[scale.hours() / 24];
    for (int night = 0; night < activity.length; night++) {
      activity[night] = activity(air, scale.start().plusDays(night));
    }
    requirementFactor = 1 + Pest.SEASON_CV * draws.gaussian();
    start = pest.life.start() + Pest.START_SD * draws.gaussian();
  }

  /** The true flights of a season that runs from its first to its last day. */
  static TrueSeason season(Pest pest, SiteWeather air, LocalDate first, LocalDate last, long seed) {
    var draws = Draws.of(seed, pest.title + " " + first.getYear());
    var scale = air.scale(pest.lowerCelsius, first, last);
    var flights = new Insects(pest, air, scale, draws).flights();
    return new TrueSeason(first.getYear(), pest.title, flights);
  }

  /**
   * How willing adults are to fly: not below 9 °C, little in wind, fully on a mild calm evening.
   */
  private static double activity(SiteWeather air, LocalDate day) {
    double evening = air.evening(day);
    if (evening < 9) {
      return 0;
    }
    double warmth = 1 / (1 + StrictMath.exp(-(evening - 11.5) / 1.5));
    double gust = air.wind(day) / 5.5;
    return warmth * StrictMath.exp(-gust * gust);
  }

  private List<TrueFlight> flights() {
    var flights = new ArrayList<TrueFlight>();
    var adults = overwintered();
    for (int generation = 1; !adults.isEmpty(); generation++) {
      flights.add(new TrueFlight(generation, scale, nightlyShares(adults)));
      adults = offspring(adults);
      if (adults.stream().noneMatch(adult -> adult.emergesBefore(scale.hours()))) {
        break;
      }
    }
    return flights;
  }

  private List<Adult> overwintered() {
    var adults = new ArrayList<Adult>();
    for (int i = 0; i < INDIVIDUALS; i++) {
      adults.add(adult(start + pest.life.startSpread() * draws.gaussian()));
    }
    return adults;
  }

  private List<Adult> offspring(List<Adult> parents) {
    var adults = new ArrayList<Adult>();
    for (int tries = 0; tries < 4 * INDIVIDUALS && adults.size() < INDIVIDUALS; tries++) {
      var parent = parents.get(draws.whole(0, parents.size() - 1));
      double firstEgg = scale.hourOf(scale.at(parent.emergence) + pest.life.firstEgg());
      if (parent.emergesBefore(scale.hours()) && firstEgg < parent.death) {
        double egg = draws.uniform(firstEgg, parent.death);
        double own = 1 + Pest.INDIVIDUAL_CV * draws.gaussian();
        adults.add(adult(scale.at(egg) + pest.life.eggToAdult() * requirementFactor * own));
      }
    }
    return adults;
  }

  /** An adult lives 5 to 15 days, longer where it is cool. */
  private Adult adult(double emergenceDegreeDays) {
    double hour = scale.hourOf(Math.max(0, emergenceDegreeDays));
    double luck = draws.uniform();
    if (Double.isInfinite(hour)) {
      return new Adult(hour, hour);
    }
    double pace = (scale.at(hour + 240) - scale.at(hour)) / 10;
    double spell = StrictMath.pow(luck, 0.4 + 0.16 * Math.min(pace, 10));
    return new Adult(hour, hour + 24 * (5 + 10 * spell));
  }

  private double[] nightlyShares(List<Adult> adults) {
    var nightly = new double[activity.length];
    double whole = 0;
    for (var adult : adults) {
      if (!adult.emergesBefore(scale.hours())) {
        whole += 10 * USUAL_ACTIVITY;
        continue;
      }
      int night = (int) StrictMath.ceil((adult.emergence - DUSK_HOUR) / 24);
      for (; night * 24.0 + DUSK_HOUR < adult.death; night++) {
        if (night >= nightly.length) {
          whole += USUAL_ACTIVITY;
        } else if (night >= 0) {
          nightly[night] += activity[night];
          whole += activity[night];
        }
      }
    }
    for (int night = 0; night < nightly.length; night++) {
      nightly[night] /= whole;
    }
    return nightly;
  }

  /** An adult from the hour of its emergence to the hour of its death. */
  private record Adult(double emergence, double death) {
    boolean emergesBefore(double hour) {
      return emergence < hour;
    }
  }
}
