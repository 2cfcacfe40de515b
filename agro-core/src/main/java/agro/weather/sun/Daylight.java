package agro.weather.sun;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Objects;

/**
 * The light part of one day in local solar time, in which the sun stands highest at 12.
 *
 * @param day the day
 * @param state whether the sun rises and sets
 * @param sunriseHour hour of solar time at which the light begins; 0 when the sun stays up, 12 when
 *     it stays down
 * @param sunsetHour hour of solar time at which the light ends; 24 when the sun stays up, 12 when
 *     it stays down
 */
public record Daylight(LocalDate day, State state, double sunriseHour, double sunsetHour) {

  private static final double MINUTES = 60;
  private static final double DEGREES_PER_HOUR = 15;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final double HALF_TURN = 180;

  /** Whether the sun rises and sets. */
  public enum State {
    /** An ordinary day. */
    RISES_AND_SETS,
    /** Polar day. */
    SUN_STAYS_UP,
    /** Polar night. */
    SUN_STAYS_DOWN
  }

  /** Checks the order. */
  public Daylight {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(state, "state");
    if (!(sunriseHour >= 0 && sunriseHour <= sunsetHour && sunsetHour <= 24)) {
      throw new IllegalArgumentException(
          "a day from " + sunriseHour + " to " + sunsetHour + " h is not within 0 to 24 in order");
    }
  }

  /**
   * Length of the day.
   *
   * @return hours, 0 to 24
   */
  public double hours() {
    return sunsetHour - sunriseHour;
  }

  /**
   * Beginning of the light on a clock.
   *
   * @param longitudeDegrees degrees east of Greenwich, west negative, -180 to 180
   * @param clock offset of the clock from UTC
   * @return hour of the clock; below 0 or above 24 when it falls on the day before or after
   * @throws InputProblem for a longitude that is not on the globe
   */
  public double sunriseOnClock(double longitudeDegrees, ZoneOffset clock) {
    return onClock(sunriseHour, longitudeDegrees, clock);
  }

  /**
   * End of the light on a clock.
   *
   * @param longitudeDegrees degrees east of Greenwich, west negative, -180 to 180
   * @param clock offset of the clock from UTC
   * @return hour of the clock; below 0 or above 24 when it falls on the day before or after
   * @throws InputProblem for a longitude that is not on the globe
   */
  public double sunsetOnClock(double longitudeDegrees, ZoneOffset clock) {
    return onClock(sunsetHour, longitudeDegrees, clock);
  }

  private double onClock(double solarHour, double longitudeDegrees, ZoneOffset clock) {
    if (!(Math.abs(longitudeDegrees) <= HALF_TURN)) {
      throw InputProblem.of("a longitude of " + longitudeDegrees + "°")
          .expected("degrees from -180 to 180, west negative")
          .because("the clock differs from the sun by 4 minutes for each degree")
          .mend("look whether the number is in degrees and whether it runs east");
    }
    return solarHour
        - EquationOfTime.minutes(day.getDayOfYear()) / MINUTES
        - longitudeDegrees / DEGREES_PER_HOUR
        + clock.getTotalSeconds() / SECONDS_PER_HOUR;
  }

  @Override
  public String toString() {
    return switch (state) {
      case SUN_STAYS_UP -> day + ": the sun does not set";
      case SUN_STAYS_DOWN -> day + ": the sun does not rise";
      case RISES_AND_SETS ->
          day
              + ": "
              + Numbers.fixed(hours(), 2)
              + " h, from "
              + Numbers.fixed(sunriseHour, 2)
              + " to "
              + Numbers.fixed(sunsetHour, 2)
              + " h solar time";
    };
  }
}
