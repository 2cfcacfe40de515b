package agro.weather.sun;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * Distance from the equator.
 *
 * @param degrees degrees, north positive, south negative, -90 to 90
 */
public record Latitude(double degrees) {

  private static final double POLE = 90;

  /**
   * Checks the range.
   *
   * @throws InputProblem beyond a pole, and for NaN
   */
  public Latitude {
    if (!(Math.abs(degrees) <= POLE)) {
      throw InputProblem.of("a latitude of " + degrees + "°")
          .expected("degrees from -90 to 90, south negative")
          .because("there is no place beyond a pole, and day length hangs on the latitude")
          .mend("look whether latitude and longitude are swapped, or degrees and minutes run on");
    }
  }

  /**
   * A latitude north of the equator.
   *
   * @param degrees degrees north, 0 to 90
   * @return the latitude
   * @throws InputProblem outside that range
   */
  public static Latitude north(double degrees) {
    return new Latitude(requireUnsigned(degrees));
  }

  /**
   * A latitude south of the equator.
   *
   * @param degrees degrees south, 0 to 90
   * @return the latitude
   * @throws InputProblem outside that range
   */
  public static Latitude south(double degrees) {
    return new Latitude(-requireUnsigned(degrees));
  }

  private static double requireUnsigned(double degrees) {
    if (degrees < 0) {
      throw InputProblem.of("a latitude of " + degrees + "° on a named side of the equator")
          .expected("degrees from 0 to 90")
          .because("a negative number and the name of the side would both say south")
          .mend("give the number without its sign, or new Latitude with its sign");
    }
    return degrees;
  }

  /**
   * The latitude in radians.
   *
   * @return -π/2 to π/2
   */
  public double radians() {
    return Math.toRadians(degrees);
  }

  @Override
  public String toString() {
    return Numbers.plain(Math.abs(degrees)) + "° " + (degrees < 0 ? "S" : "N");
  }
}
