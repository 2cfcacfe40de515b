package agro.dose.sprayer;

/**
 * The one relation between flow q (L/min), speed v (m/s), swath w (m) and volume per area a (L/ha):
 * a = (10 000 / 60) q / (v w). All other units come in at the boundary.
 */
final class CalibrationEquation {

  /** 10 000 m² per hectare over 60 seconds per minute. */
  private static final double SQUARE_METRES_PER_HECTARE = 10_000;

  private static final double SECONDS_PER_MINUTE = 60;

  private CalibrationEquation() {}

  static double litresPerHectare(
      double litresPerMinute, double metresPerSecond, double swathMetres) {
    return litresPerMinute
        * SQUARE_METRES_PER_HECTARE
        / (SECONDS_PER_MINUTE * metresPerSecond * swathMetres);
  }

  static double litresPerMinute(
      double litresPerHectare, double metresPerSecond, double swathMetres) {
    return litresPerHectare
        * SECONDS_PER_MINUTE
        * metresPerSecond
        * swathMetres
        / SQUARE_METRES_PER_HECTARE;
  }

  static double metresPerSecond(
      double litresPerHectare, double litresPerMinute, double swathMetres) {
    return litresPerMinute
        * SQUARE_METRES_PER_HECTARE
        / (SECONDS_PER_MINUTE * litresPerHectare * swathMetres);
  }

  static double swathMetres(
      double litresPerHectare, double litresPerMinute, double metresPerSecond) {
    return litresPerMinute
        * SQUARE_METRES_PER_HECTARE
        / (SECONDS_PER_MINUTE * litresPerHectare * metresPerSecond);
  }
}
