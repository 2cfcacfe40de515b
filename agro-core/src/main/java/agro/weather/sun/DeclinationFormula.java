package agro.weather.sun;

import agro.source.Bibliography;
import agro.source.Reference;

/** How far north of the equator the sun stands at noon, by the day of the year. */
public enum DeclinationFormula {
  /**
   * A Fourier series. With g = 2π (n − 1) / 365 and n = 1 on 1 January,
   *
   * <p>δ = 0.006918 − 0.399912 cos g + 0.070257 sin g − 0.006758 cos 2g + 0.000907 sin 2g −
   * 0.002697 cos 3g + 0.00148 sin 3g radians.
   *
   * <p>The angle counts from n − 1; n in its place shifts the year by a day.
   */
  SPENCER_1971("Spencer's series", Bibliography.SPENCER_1971) {
    @Override
    double formula(int dayOfYear) {
      double g = 2 * Math.PI * (dayOfYear - 1) / DAYS;
      return 0.006918
          - 0.399912 * Math.cos(g)
          + 0.070257 * Math.sin(g)
          - 0.006758 * Math.cos(2 * g)
          + 0.000907 * Math.sin(2 * g)
          - 0.002697 * Math.cos(3 * g)
          + 0.00148 * Math.sin(3 * g);
    }
  },
  /**
   * The model named CBM in the comparison of day-length models. With J the day of the year, θ =
   * 0.2163108 + 2 atan(0.9671396 tan(0.00860 (J − 186))) and δ = asin(0.39795 cos θ).
   */
  FORSYTHE_1995("the CBM model", Bibliography.FORSYTHE_1995) {
    @Override
    double formula(int dayOfYear) {
      double theta = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.00860 * (dayOfYear - 186)));
      return Math.asin(0.39795 * Math.cos(theta));
    }
  };

  private static final double DAYS = 365;
  private static final int LAST_DAY_OF_A_LEAP_YEAR = 366;

  private final String words;
  private final Reference source;

  DeclinationFormula(String words, Reference source) {
    this.words = words;
    this.source = source;
  }

  abstract double formula(int dayOfYear);

  /**
   * The declination of the sun.
   *
   * @param dayOfYear 1 for 1 January to 366
   * @return radians, north positive, about -0.41 to 0.41
   * @throws IllegalArgumentException for a day that no year has
   */
  public double radians(int dayOfYear) {
    if (dayOfYear < 1 || dayOfYear > LAST_DAY_OF_A_LEAP_YEAR) {
      throw new IllegalArgumentException("a day of the year is 1 to 366, not " + dayOfYear);
    }
    return formula(dayOfYear);
  }

  /**
   * The declination of the sun.
   *
   * @param dayOfYear 1 for 1 January to 366
   * @return degrees, north positive, about -23.5 to 23.5
   * @throws IllegalArgumentException for a day that no year has
   */
  public double degrees(int dayOfYear) {
    return Math.toDegrees(radians(dayOfYear));
  }

  /**
   * The name of the formula.
   *
   * @return a short phrase
   */
  public String words() {
    return words;
  }

  /**
   * Where the formula is published.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }
}
