package agro.generation.skill;

import java.util.Arrays;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;

/**
 * The continuous ranked probability score (CRPS): the integral over x of {@code (F(x) - 1{y <=
 * x})^2} for the forecast distribution F and the observation y, in the unit of x. Smaller is
 * better; on average no other forecast beats the true distribution. For a point forecast it is the
 * absolute error.
 *
 * @see agro.source.Bibliography#GNEITING_RAFTERY_2007
 * @see agro.source.Bibliography#HERSBACH_2000
 */
public final class RankedProbability {

  private static final double ROOT_OF_PI = FastMath.sqrt(FastMath.PI);
  private static final double ROOT_OF_TWO = FastMath.sqrt(2);

  private RankedProbability() {}

  /**
   * CRPS of a normal forecast: {@code s (z (2 Phi(z) - 1) + 2 phi(z) - 1 / sqrt(pi))} with {@code z
   * = (y - m) / s}, after Gneiting, Raftery, Westveld and Goldman (2005). The limit at s = 0 is the
   * absolute error.
   *
   * @param mean mean m
   * @param standardDeviation standard deviation s, 0 or more
   * @param observed observation y
   * @return 0 or more; NaN when any argument is NaN
   * @throws IllegalArgumentException for a negative standard deviation
   */
  public static double ofNormal(double mean, double standardDeviation, double observed) {
    if (standardDeviation < 0) {
      throw new IllegalArgumentException("a standard deviation of " + standardDeviation);
    }
    if (standardDeviation == 0) {
      return FastMath.abs(observed - mean);
    }
    var z = (observed - mean) / standardDeviation;
    var density = FastMath.exp(-0.5 * z * z) / FastMath.sqrt(2 * FastMath.PI);
    // 2 Phi(z) - 1 without the loss of digits that a difference of probabilities would bring
    var central = Erf.erf(z / ROOT_OF_TWO);
    return standardDeviation * (z * central + 2 * density - 1 / ROOT_OF_PI);
  }

  /**
   * CRPS of the distribution that gives each member of an ensemble the same chance: {@code mean|x_i
   * - y| - sum_ij |x_i - x_j| / (2 m^2)} (Hersbach 2000).
   *
   * @param members at least one value, finite, in any order
   * @param observed observation y
   * @return 0 or more
   * @throws IllegalArgumentException without a member
   */
  public static double ofEnsemble(double[] members, double observed) {
    var m = required(members);
    return meanDistance(members, observed) - spread(members) / ((double) m * m);
  }

  /**
   * Fair CRPS of an ensemble that is a sample of m from the distribution that is meant: the spread
   * is divided by {@code 2 m (m - 1)}, so that small ensembles are not favoured for being narrow.
   *
   * @param members at least two values, finite, in any order
   * @param observed observation y
   * @return a number that may be slightly negative for a single case; for one member the absolute
   *     error
   * @throws IllegalArgumentException without a member
   */
  public static double ofEnsembleFair(double[] members, double observed) {
    var m = required(members);
    return meanDistance(members, observed)
        - (m == 1 ? 0 : spread(members) / ((double) m * (m - 1)));
  }

  /**
   * CRPS of a distribution some of whose mass lies beyond a horizon and of an observation that may
   * lie there too, such as dates with a chance of "not this season": the integral up to the horizon
   * only, {@code (F(x) - 1{y <= x})^2} over {@code x <= horizon}. It is proper, a
   * threshold-weighted score with the weight 1 up to the horizon (Gneiting and Ranjan 2011), and
   * equals the CRPS with everything beyond the horizon put on it. An observation that was not
   * reached costs what the forecast promised before the horizon; a chance of "not this season"
   * costs nothing then.
   *
   * @param outcomes equally likely outcomes, at least one; positive infinity for "not reached"
   * @param observed observation; positive infinity for "not reached"
   * @param horizon where the integral ends, finite
   * @return 0 or more, in the unit of the outcomes
   * @throws IllegalArgumentException without an outcome or without a finite horizon
   */
  public static double upTo(double[] outcomes, double observed, double horizon) {
    requireHorizon(horizon);
    var cut = Arrays.stream(outcomes).map(x -> FastMath.min(x, horizon)).toArray();
    return ofEnsemble(cut, FastMath.min(observed, horizon));
  }

  /**
   * CRPS up to a horizon of a distribution of which a few quantiles were kept: its distribution
   * function is taken to rise evenly between them. What lies below the first quantile is put on it;
   * what lies above the last finite one is put on it too, or spread evenly up to the horizon when
   * the next quantile was "not reached".
   *
   * @param probabilities rising, each above 0 and below 1
   * @param quantiles their values, never falling; positive infinity for "not reached"
   * @param chanceNotReached chance that the horizon is not reached, 0 to 1
   * @param observed observation; positive infinity for "not reached"
   * @param horizon where the integral ends, finite
   * @return 0 or more, in the unit of the quantiles
   * @throws IllegalArgumentException when the quantiles do not fit the probabilities or fall
   */
  public static double ofQuantiles(
      double[] probabilities,
      double[] quantiles,
      double chanceNotReached,
      double observed,
      double horizon) {
    requireHorizon(horizon);
    return new QuantileCurve(probabilities, quantiles, chanceNotReached, horizon).score(observed);
  }

  private static void requireHorizon(double horizon) {
    if (!Double.isFinite(horizon)) {
      throw new IllegalArgumentException("the integral needs a finite end, not " + horizon);
    }
  }

  private static int required(double[] members) {
    if (members.length == 0) {
      throw new IllegalArgumentException("an ensemble has at least one member");
    }
    return members.length;
  }

  private static double meanDistance(double[] members, double observed) {
    return Arrays.stream(members).map(x -> FastMath.abs(x - observed)).sum() / members.length;
  }

  /** Half of the sum of all distances between members: over sorted values one sum suffices. */
  private static double spread(double[] members) {
    var sorted = members.clone();
    Arrays.sort(sorted);
    var sum = 0.0;
    for (var i = 0; i < sorted.length; i++) {
      sum += (2.0 * i - sorted.length + 1) * sorted[i];
    }
    return sum;
  }
}
