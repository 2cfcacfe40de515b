package agro.weather.sun;

/**
 * How far a sundial is ahead of an even clock. With g = 2π (n − 1) / 365 and n = 1 on 1 January,
 *
 * <p>E = 229.18 (0.000075 + 0.001868 cos g − 0.032077 sin g − 0.014615 cos 2g − 0.04089 sin 2g)
 * minutes (Spencer 1971, Search 2:172; value from memory).
 */
public final class EquationOfTime {

  private static final double MINUTES_PER_RADIAN = 229.18;
  private static final double DAYS = 365;

  private EquationOfTime() {}

  /**
   * Solar time less mean time.
   *
   * @param dayOfYear 1 for 1 January to 366
   * @return minutes, about -14.3 in February to 16.4 in November
   */
  public static double minutes(int dayOfYear) {
    double g = 2 * Math.PI * (dayOfYear - 1) / DAYS;
    return MINUTES_PER_RADIAN
        * (0.000075
            + 0.001868 * Math.cos(g)
            - 0.032077 * Math.sin(g)
            - 0.014615 * Math.cos(2 * g)
            - 0.04089 * Math.sin(2 * g));
  }
}
