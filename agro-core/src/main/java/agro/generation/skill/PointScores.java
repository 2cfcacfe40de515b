package agro.generation.skill;

import java.util.function.DoubleBinaryOperator;
import org.hipparchus.util.FastMath;

/**
 * Scores of single forecast values beside what was observed, in the unit of the values. An error is
 * forecast less observation: positive when the forecast was late.
 *
 * @see agro.source.Bibliography#GNEITING_RAFTERY_2007
 */
public final class PointScores {

  private PointScores() {}

  /**
   * Mean error.
   *
   * @param forecast forecast values, finite
   * @param observed observed values, as many
   * @return mean of forecast less observation, positive when forecasts were late on average; NaN
   *     without any value
   */
  public static double bias(double[] forecast, double[] observed) {
    return mean(forecast, observed, (f, o) -> f - o);
  }

  /**
   * Mean absolute error.
   *
   * @param forecast forecast values, finite
   * @param observed observed values, as many
   * @return 0 or more; NaN without any value
   */
  public static double meanAbsoluteError(double[] forecast, double[] observed) {
    return mean(forecast, observed, (f, o) -> FastMath.abs(f - o));
  }

  /**
   * Root of the mean squared error, with n in the denominator.
   *
   * @param forecast forecast values, finite
   * @param observed observed values, as many
   * @return 0 or more; NaN without any value
   */
  public static double rootMeanSquaredError(double[] forecast, double[] observed) {
    return FastMath.sqrt(mean(forecast, observed, (f, o) -> (f - o) * (f - o)));
  }

  /**
   * Skill of a score that is better when smaller: {@code 1 - score / reference}.
   *
   * @param score mean score of the forecasts
   * @param reference mean score of the reference on the same cases
   * @return 1 for a perfect forecast, 0 for one no better than the reference, negative for a worse
   *     one; NaN when the reference is perfect, for nothing can be gained on it
   */
  public static double skill(double score, double reference) {
    return reference == 0 ? Double.NaN : 1 - score / reference;
  }

  private static double mean(double[] forecast, double[] observed, DoubleBinaryOperator term) {
    if (forecast.length != observed.length) {
      throw new IllegalArgumentException(
          forecast.length + " forecasts for " + observed.length + " observations");
    }
    var sum = 0.0;
    for (var i = 0; i < forecast.length; i++) {
      sum += term.applyAsDouble(forecast[i], observed[i]);
    }
    return sum / forecast.length;
  }
}
