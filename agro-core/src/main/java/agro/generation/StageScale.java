package agro.generation;

import agro.development.DegreeDayModel;
import agro.report.InputProblem;

/**
 * The thermal time from a flight to a stage that follows it. Where the stage has thresholds of its
 * own it is added up above those, from the day of the flight on, in the same weather.
 */
final class StageScale {

  private final WeatherAhead weather;
  private final boolean own;
  private final double after;

  private StageScale(WeatherAhead weather, boolean own, double after) {
    this.weather = weather;
    this.own = own;
    this.after = after;
  }

  static StageScale of(StageOffset stage, SeasonUnderWay season, WeatherAhead ofFlights) {
    var after = stage.afterFlight().degreeDaysC();
    if (stage.thresholds().equals(season.model().thresholds())) {
      return new StageScale(ofFlights, false, after);
    }
    return new StageScale(new WeatherAhead(season, model(stage, season)), true, after);
  }

  /** The model of the flights with the thresholds of the stage. */
  static DegreeDayModel model(StageOffset stage, SeasonUnderWay season) {
    try {
      return season.model().with(stage.thresholds());
    } catch (InputProblem problem) {
      throw InputProblem.of(
              "the stage \""
                  + stage.stage()
                  + "\" is stated "
                  + between(stage.thresholds().toString())
                  + ", the flights "
                  + between(season.model().thresholds().toString())
                  + " with a cutoff")
          .expected("thresholds by which the rule of the flights can add up the stage")
          .because(
              "degree-days above one threshold are not degree-days above another, and the cutoff"
                  + " needs an upper one")
          .mend(
              "state an upper threshold for the stage too, or its requirement above the thresholds"
                  + " of the flights");
    }
  }

  private static String between(String thresholds) {
    return thresholds.startsWith("above") ? thresholds : "from " + thresholds;
  }

  /**
   * Days until the stage.
   *
   * @param flight days until the flight
   * @param target sum of the flight's scale at which the flight comes
   * @param outcome outcome of the weather
   */
  double daysAfter(double flight, double target, int outcome) {
    return daysAfter(flight, target, weather.outcome(outcome));
  }

  /** The same in a weather between the outcomes, on the scale of the stage. */
  double daysAfter(double flight, double target, double[] ahead) {
    if (!own) {
      return weather.daysUntil(target + after, ahead);
    }
    return Double.isInfinite(flight)
        ? flight
        : weather.daysUntil(weather.sumAfter(flight, ahead) + after, ahead);
  }

  /** Sums of the stage's scale from the seam on for one quantile of the weather. */
  double[] outcome(double probability) {
    return weather.outcome(probability);
  }
}
