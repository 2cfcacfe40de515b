package agro.weather.curve;

/**
 * Half a sine from a lowest to a highest temperature, and its mirror image back: T = M + W sin x
 * for x from −π/2 to π/2, with mean M = (Tx + Tn) / 2 and amplitude W = (Tx − Tn) / 2. For Tn &lt;
 * c &lt; Tx and θ = asin((c − M) / W),
 *
 * <p>A(c) = [(M − c)(π/2 − θ) + W cos θ] / π and F(c) = 1/2 − θ/π;
 *
 * <p>A(c) = 0, F(c) = 0 for c ≥ Tx, and A(c) = M − c, F(c) = 1 for c ≤ Tn.
 *
 * <p>F is computed as (2/π) asin √[(Tx − c) / (Tx − Tn)], or its complement from Tn, which is equal
 * and loses no digits where the curve is flat and the arc sine steep.
 */
public final class SineCurve {

  private SineCurve() {}

  /**
   * Mean height of the curve above a threshold, A(c).
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
    double mean = 0.5 * (minCelsius + maxCelsius);
    if (celsius <= minCelsius) {
      return mean - celsius;
    }
    double amplitude = 0.5 * (maxCelsius - minCelsius);
    double sine = sineOfCrossing(mean, amplitude, celsius);
    double hourAngle = 0.5 * Math.PI - Math.asin(sine);
    double cosine = Math.sqrt((1 - sine) * (1 + sine));
    return Math.max(0, ((mean - celsius) * hourAngle + amplitude * cosine) / Math.PI);
  }

  /**
   * Share of the time that the curve spends above a threshold, F(c).
   *
   * @param minCelsius lowest temperature in °C
   * @param maxCelsius highest temperature in °C, not below the lowest
   * @param celsius the threshold c in °C; the whole curve counts as above its own minimum
   * @return 0 to 1
   */
  public static double shareAbove(double minCelsius, double maxCelsius, double celsius) {
    if (celsius >= maxCelsius) {
      return 0;
    }
    if (celsius <= minCelsius) {
      return 1;
    }
    double fromTop = (maxCelsius - celsius) / (maxCelsius - minCelsius);
    double fromBottom = (celsius - minCelsius) / (maxCelsius - minCelsius);
    return fromTop < fromBottom
        ? 2 / Math.PI * Math.asin(Math.sqrt(fromTop))
        : 1 - 2 / Math.PI * Math.asin(Math.sqrt(fromBottom));
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
    return 0.5 * (minCelsius + maxCelsius)
        - 0.5 * (maxCelsius - minCelsius) * Math.cos(Math.PI * share);
  }

  /** A threshold a hair inside the extremes may round to just beyond ±1, where asin is NaN. */
  private static double sineOfCrossing(double mean, double amplitude, double celsius) {
    return Math.max(-1, Math.min(1, (celsius - mean) / amplitude));
  }
}
