package agro.weather.sun;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Working;
import java.time.LocalDate;
import java.util.Objects;

/**
 * Day length at a latitude. With latitude L, declination δ and the centre of the sun p degrees
 * below the horizon at the beginning and the end of the day,
 *
 * <p>D = 24 − (24/π) acos{ [sin p + sin L sin δ] / (cos L cos δ) } hours,
 *
 * <p>where the quotient is held between -1 and 1: beyond them the sun does not set (24 h) or does
 * not rise (0 h). South of the equator the formula is the same with L negative.
 *
 * @param latitude where
 * @param declination formula for the declination of the sun
 * @param degreesBelowHorizon how far the centre of the sun is below the horizon when the day begins
 *     and ends, -90 to 90; negative for a hill that hides it
 * @see DeclinationFormula
 */
public record DayLength(
    Latitude latitude, DeclinationFormula declination, double degreesBelowHorizon) {

  private static final double HOURS = 24;
  private static final double NOON = 12;
  private static final double RIGHT_ANGLE = 90;

  /**
   * Checks the height of the sun.
   *
   * @throws InputProblem for a height beyond straight up or straight down
   */
  public DayLength {
    Objects.requireNonNull(latitude, "latitude");
    Objects.requireNonNull(declination, "declination");
    if (!(Math.abs(degreesBelowHorizon) <= RIGHT_ANGLE)) {
      throw InputProblem.of("a day that begins with the sun " + degreesBelowHorizon + "° low")
          .expected("degrees below the horizon from -90 to 90")
          .because("the sun cannot be lower than straight down")
          .mend("give degrees, for example 6 for civil twilight, or a SunHeight");
    }
  }

  /**
   * Day length as almanacs count it: from the moment at which the upper edge of the sun is seen on
   * the horizon, by the formula of {@link DeclinationFormula#FORSYTHE_1995}.
   *
   * @param latitude where
   * @return the rule
   */
  public static DayLength at(Latitude latitude) {
    return new DayLength(
        latitude,
        DeclinationFormula.FORSYTHE_1995,
        SunHeight.UPPER_EDGE_SEEN.degreesBelowHorizon());
  }

  /**
   * The same place by another formula for the declination.
   *
   * @param formula the formula
   * @return a new rule
   */
  public DayLength with(DeclinationFormula formula) {
    return new DayLength(latitude, formula, degreesBelowHorizon);
  }

  /**
   * The same place with a day that begins and ends at another height of the sun.
   *
   * @param height where the sun has to stand
   * @return a new rule
   */
  public DayLength with(SunHeight height) {
    return new DayLength(latitude, declination, height.degreesBelowHorizon());
  }

  /**
   * Hours from the beginning of the day to its end.
   *
   * @param dayOfYear 1 for 1 January to 366
   * @return 0 in polar night to 24 in polar day
   * @throws IllegalArgumentException for a day that no year has
   */
  public double hours(int dayOfYear) {
    return HOURS * (1 - Math.acos(clamped(quotient(dayOfYear))) / Math.PI);
  }

  /**
   * Hours from the beginning of the day to its end.
   *
   * @param day a day of the calendar
   * @return 0 in polar night to 24 in polar day
   */
  public double hours(LocalDate day) {
    return hours(day.getDayOfYear());
  }

  /**
   * The daylight of a day.
   *
   * @param day a day of the calendar
   * @return its length, beginning and end in solar time, and whether the sun rises and sets at all
   */
  public Daylight daylight(LocalDate day) {
    double quotient = quotient(day.getDayOfYear());
    var state =
        quotient >= 1
            ? Daylight.State.SUN_STAYS_UP
            : quotient <= -1 ? Daylight.State.SUN_STAYS_DOWN : Daylight.State.RISES_AND_SETS;
    double half = 0.5 * hours(day.getDayOfYear());
    return new Daylight(day, state, NOON - half, NOON + half);
  }

  /**
   * The steps to the length of a day, rounded for print.
   *
   * @param day a day of the calendar
   * @return declination, quotient and day length with their sources
   */
  public Working working(LocalDate day) {
    int number = day.getDayOfYear();
    double quotient = quotient(number);
    var degrees = Numbers.fixed(declination.degrees(number), 4);
    return Working.of("Day length at " + latitude + " on " + day)
        .step(
            "declination of the sun on day " + number + " of the year, by " + declination.words(),
            "",
            "",
            degrees + "°",
            declination.source())
        .step(
            "cosine of half the night",
            "q = [sin p + sin L sin δ] / (cos L cos δ)",
            "[sin "
                + Numbers.plain(degreesBelowHorizon)
                + "° + sin "
                + Numbers.plain(latitude.degrees())
                + "° × sin "
                + degrees
                + "°] / (cos "
                + Numbers.plain(latitude.degrees())
                + "° × cos "
                + degrees
                + "°)",
            Numbers.fixed(quotient, 5) + polarWords(quotient))
        .step(
            "day length",
            "D = 24 − (24/π) acos q",
            "",
            Numbers.fixed(hours(number), 4) + " h",
            declination == DeclinationFormula.FORSYTHE_1995
                ? declination.source()
                : DeclinationFormula.FORSYTHE_1995.source());
  }

  private static String polarWords(double quotient) {
    if (quotient >= 1) {
      return ", held at 1: the sun does not set";
    }
    return quotient <= -1 ? ", held at −1: the sun does not rise" : "";
  }

  private double quotient(int dayOfYear) {
    double delta = declination.radians(dayOfYear);
    double phi = latitude.radians();
    double above = Math.sin(Math.toRadians(degreesBelowHorizon)) + Math.sin(phi) * Math.sin(delta);
    return above / (Math.cos(phi) * Math.cos(delta));
  }

  private static double clamped(double quotient) {
    return Math.max(-1, Math.min(1, quotient));
  }

  @Override
  public String toString() {
    return "day length at "
        + latitude
        + ", sun "
        + Numbers.plain(degreesBelowHorizon)
        + "° below the horizon at its ends, declination by "
        + declination.words();
  }
}
