package agro.weather.curve;

/**
 * A straight line from a lowest to a highest temperature, and its mirror image back. For Tn &lt; c
 * &lt; Tx,
 *
 * <p>A(c) = (Tx − c)² / [2 (Tx − Tn)] and F(c) = (Tx − c) / (Tx − Tn);
 *
 * <p>A(c) = 0, F(c) = 0 for c ≥ Tx, and A(c) = (Tx + Tn) / 2 − c, F(c) = 1 for c ≤ Tn.
 */
public final class TriangleCurve {

  private TriangleCurve() {}

  /**
   * Mean height of the line above a threshold, A(c).
   *
   * @param minCelsius lowest temperature in °C
   * @param maxCelsius highest temperature in °C, not below the lowest
   * @param celsius the threshold c in °C
   * @return °C, that is °C·d for a day, never negative; NaN for NaN
   */
  public static double areaAbove(double minCelsius, double maxCelsius, double celsius) {
    if (celsius >= maxCelsius) {
      return 0;
    }
    if (celsius <= minCelsius) {
      return 0.5 * (minCelsius + maxCelsius) - celsius;
    }
    double above = maxCelsius - celsius;
    return 0.5 * above * (above / (maxCelsius - minCelsius));
  }

  /**
   * Share of the time that the line spends above a threshold, F(c).
   *
   * @param minCelsius lowest temperature in °C
   * @param maxCelsius highest temperature in °C, not below the lowest
   * @param celsius the threshold c in °C; the whole line counts as above its own minimum
   * @return 0 to 1
   */
  public static double shareAbove(double minCelsius, double maxCelsius, double celsius) {
    if (celsius >= maxCelsius) {
      return 0;
    }
    return celsius <= minCelsius ? 1 : (maxCelsius - celsius) / (maxCelsius - minCelsius);
  }

  /**
   * Temperature on the way from the lowest to the highest.
   *
   * @param minCelsius lowest temperature in °C
   * @param maxCelsius highest temperature in °C
   * @param share share of the way that has gone by, 0 to 1
   * @return °C
   */
  public static double celsiusAt(double minCelsius, double maxCelsius, double share) {
    return minCelsius + (maxCelsius - minCelsius) * share;
  }
}
