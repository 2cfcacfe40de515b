package agro.generation.skill;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * How many observations lay inside the intervals that were forecast for them.
 *
 * @param inside observations inside, 0 to {@code forecasts}
 * @param forecasts number of forecasts, 0 or more
 * @param claimed chance that the intervals claim, for example 0.9
 */
public record IntervalCoverage(int inside, int forecasts, double claimed) {

  /** Fewer forecasts say next to nothing of calibration (common practice, no source). */
  public static final int LEAST_TO_JUDGE = 20;

  /** Checks the numbers. */
  public IntervalCoverage {
    if (inside < 0 || inside > forecasts || !(claimed > 0 && claimed < 1)) {
      throw new IllegalArgumentException(
          inside + " of " + forecasts + " inside intervals that claim " + claimed);
    }
  }

  /**
   * The share inside.
   *
   * @return 0 to 1; NaN without forecasts
   */
  public double share() {
    return forecasts == 0 ? Double.NaN : (double) inside / forecasts;
  }

  /**
   * Lower end of the exact binomial interval of the coverage (Clopper and Pearson 1934). It takes
   * the forecasts as independent; those of one season are not, and the true interval is wider.
   *
   * @param confidence for example 0.95, above 0 and below 1
   * @return 0 to 1; 0 without forecasts
   */
  public double low(double confidence) {
    return inside == 0
        ? 0
        : new BetaDistribution(inside, forecasts - inside + 1.0)
            .inverseCumulativeProbability(tail(confidence));
  }

  /**
   * Upper end of the exact binomial interval of the coverage.
   *
   * @param confidence for example 0.95, above 0 and below 1
   * @return 0 to 1; 1 without forecasts
   */
  public double high(double confidence) {
    return inside == forecasts
        ? 1
        : new BetaDistribution(inside + 1.0, forecasts - inside)
            .inverseCumulativeProbability(1 - tail(confidence));
  }

  private static double tail(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException(
          "a confidence lies between 0 and 1, but got " + confidence);
    }
    return (1 - confidence) / 2;
  }

  /**
   * Whether there are too few forecasts to judge the calibration.
   *
   * @return true below {@value #LEAST_TO_JUDGE}
   */
  public boolean tooFewToJudge() {
    return forecasts < LEAST_TO_JUDGE;
  }
}
