package agro.generation;

import agro.development.DegreeDayModel;
import agro.report.InputProblem;
import agro.report.Progress;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Equally likely courses of one flight to come: each member is one middle of the flight on the
 * degree-day scale with one weather. The dates of a {@link GenerationForecast} are read one by one
 * from such outcomes; what hangs on the course of a whole generation, such as how much of it is
 * reached by a treatment, is worked out within each member.
 *
 * <p>Members are spread evenly over both, the middles in order and the weathers along an additive
 * sequence of the golden ratio, so that nothing is drawn at random.
 */
public final class FlightMembers {

  /** Members that are made unless another number is asked for. */
  public static final int USUAL = 1212;

  private static final double GOLDEN = 0.6180339887498949;

  private final GenerationForecast forecast;
  private final int generation;
  private final FlightOutcomes outcomes;
  private final WeatherAhead weather;
  private final double[][] middles;
  private final int[] weathers;
  private final double scale;

  private FlightMembers(
      GenerationForecast forecast, int generation, int count, FlightOutcomes outcomes) {
    this.forecast = forecast;
    this.generation = generation;
    this.outcomes = outcomes;
    weather = new WeatherAhead(forecast.season());
    middles = outcomes.targets(generation, 0);
    weathers = new int[count];
    for (var i = 0; i < count; i++) {
      var place = (i + 0.5) * GOLDEN;
      weathers[i] = (int) ((place - Math.floor(place)) * WeatherAhead.OUTCOMES);
    }
    scale = forecast.fit().shape().scaleDegreeDaysC(generation);
  }

  /**
   * The courses of a flight.
   *
   * @param forecast the forecast
   * @param generation number of the flight, which has to be among those to come
   * @param count number of members, at least 1
   * @param progress hears of the steps and may cancel
   * @return the members
   * @throws InputProblem when the forecast has left the flight out
   */
  public static FlightMembers of(
      GenerationForecast forecast, int generation, int count, Progress progress) {
    if (count < 1) {
      throw new IllegalArgumentException("at least one member is made, but got " + count);
    }
    if (forecast.flight(generation, FlightShare.HALF).isEmpty()) {
      var there =
          forecast.rows().stream().map(row -> row.generation()).distinct().sorted().toList();
      throw InputProblem.of("flight " + generation + " is not among the flights to come: " + there)
          .expected("a flight of the forecast")
          .because("a flight that is over or will hardly come has no course ahead")
          .mend("choose one of these; the report of the forecast says why others are left out");
    }
    var procedure =
        new ForecastProcedure(forecast.fit(), forecast.season(), java.util.List.of(), progress);
    return new FlightMembers(forecast, generation, count, procedure.outcomes(count));
  }

  /**
   * Number of members, all of equal chance.
   *
   * @return at least 1
   */
  public int size() {
    return weathers.length;
  }

  /**
   * First day of the season, from whose start days are counted.
   *
   * @return the day
   */
  public LocalDate firstDay() {
    return forecast.season().firstDay();
  }

  /**
   * Days of the season.
   *
   * @return days from the start of the first day to the end of the last one
   */
  public int days() {
    return (int) ChronoUnit.DAYS.between(firstDay(), forecast.season().lastDay()) + 1;
  }

  /**
   * Share of the flight that has flown.
   *
   * @param member a member, from 0
   * @param days days since the start of the season's first day, 0 to {@link #days}
   * @return 0 to 1
   */
  public double flownBy(int member, double days) {
    var sum = weather.sumAfter(days, weather.outcome(weathers[member]));
    return forecast.fit().shape().curve().cumulative((sum - middles[member][0]) / scale);
  }

  /**
   * Degree-days on the scale of the flights.
   *
   * @param member a member, from 0
   * @param days days since the start of the season's first day, 0 to {@link #days}
   * @return sum since then in °C·d
   */
  public double sumAfter(int member, double days) {
    return weather.sumAfter(days, weather.outcome(weathers[member]));
  }

  /** Degree-days of the members on another scale, in the same weathers. */
  public static final class Clock {
    private final WeatherAhead weather;
    private final int[] weathers;

    private Clock(WeatherAhead weather, int[] weathers) {
      this.weather = weather;
      this.weathers = weathers;
    }

    /**
     * Degree-days on this scale.
     *
     * @param member a member, from 0
     * @param days days since the start of the season's first day
     * @return sum since then in °C·d
     */
    public double sumAfter(int member, double days) {
      return weather.sumAfter(days, weather.outcome(weathers[member]));
    }
  }

  /**
   * A scale of degree-days in the weathers of the members.
   *
   * @param model thresholds and method
   * @return sums by member
   */
  public Clock clock(DegreeDayModel model) {
    return model.equals(forecast.season().model())
        ? new Clock(weather, weathers)
        : new Clock(new WeatherAhead(forecast.season(), model), weathers);
  }

  /**
   * Why a stage of the generation does not come in a member.
   *
   * @param member a member, from 0
   * @param days when half of the stage would have begun, in days since the start of the season's
   *     first day; infinite when warmth does not suffice
   * @return the cause, or nothing when it comes
   */
  public Optional<SeasonEnd> end(int member, double days) {
    return outcomes.end(generation, middles[member], weathers[member], days);
  }
}
