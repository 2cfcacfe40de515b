package agro.development;

import agro.source.Bibliography;
import agro.source.Reference;

/**
 * How the temperature is taken to run between the daily extremes. With lowest temperature Tn and
 * highest temperature Tx, mean M = (Tx + Tn) / 2 and amplitude W = (Tx − Tn) / 2.
 */
public enum DegreeDayMethod {
  /**
   * One sine from the minimum to the maximum and back: T = M + W sin x for x from −π/2 to π/2. For
   * Tn &lt; c &lt; Tx and θ = asin((c − M) / W),
   *
   * <p>A(c) = [(M − c)(π/2 − θ) + W cos θ] / π and F(c) = 1/2 − θ/π;
   *
   * <p>A(c) = 0, F(c) = 0 for c ≥ Tx, and A(c) = M − c, F(c) = 1 for c ≤ Tn.
   */
  SINGLE_SINE("single sine", Bibliography.BASKERVILLE_EMIN_1969) {
    @Override
    public double areaAbove(double minCelsius, double maxCelsius, double celsius) {
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

    @Override
    public double shareAbove(double minCelsius, double maxCelsius, double celsius) {
      if (celsius >= maxCelsius) {
        return 0;
      }
      if (celsius <= minCelsius) {
        return 1;
      }
      double mean = 0.5 * (minCelsius + maxCelsius);
      double amplitude = 0.5 * (maxCelsius - minCelsius);
      return 0.5 - Math.asin(sineOfCrossing(mean, amplitude, celsius)) / Math.PI;
    }

    /** A threshold a hair inside the extremes may round to just beyond ±1, where asin is NaN. */
    private double sineOfCrossing(double mean, double amplitude, double celsius) {
      return Math.max(-1, Math.min(1, (celsius - mean) / amplitude));
    }
  };

  private final String words;
  private final Reference source;

  DegreeDayMethod(String words, Reference source) {
    this.words = words;
    this.source = source;
  }

  /**
   * The area of the day's temperature curve above a threshold, A(c).
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @param celsius the threshold c in °C
   * @return °C·d, never negative
   */
  public abstract double areaAbove(double minCelsius, double maxCelsius, double celsius);

  /**
   * The share of the day that the temperature curve spends above a threshold, F(c).
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @param celsius the threshold c in °C; the whole day counts as above its own minimum
   * @return 0 to 1
   */
  public abstract double shareAbove(double minCelsius, double maxCelsius, double celsius);

  /**
   * The name of the method.
   *
   * @return for example {@code "single sine"}
   */
  public String words() {
    return words;
  }

  /**
   * Where the method is published.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }
}
