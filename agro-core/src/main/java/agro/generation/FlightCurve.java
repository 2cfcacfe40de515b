package agro.generation;

import java.util.Locale;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;

/**
 * Standard shapes of a flight on the degree-day scale, centred on the median.
 *
 * <p>The share of a flight that is over when {@code x} °C·d have accumulated is {@code F((x - m) /
 * s)} with median {@code m} and scale {@code s}, both in °C·d.
 */
public enum FlightCurve {
  /** Symmetric; the scale is the standard deviation. */
  NORMAL {
    @Override
    public double cumulative(double z) {
      return NormalTable.cumulative(z);
    }

    @Override
    public double density(double z) {
      return NormalTable.density(z);
    }

    @Override
    public double quantile(double share) {
      return -ROOT_TWO * Erf.erfcInv(2 * checked(share));
    }
  },
  /** Symmetric with longer tails; the standard deviation is {@code pi / sqrt(3)} scales. */
  LOGISTIC {
    @Override
    public double cumulative(double z) {
      return z < 0 ? FastMath.exp(z) / (1 + FastMath.exp(z)) : 1 / (1 + FastMath.exp(-z));
    }

    @Override
    public double density(double z) {
      var tail = FastMath.exp(-FastMath.abs(z));
      return tail / ((1 + tail) * (1 + tail));
    }

    @Override
    public double quantile(double share) {
      return FastMath.log(checked(share) / (1 - share));
    }
  },
  /**
   * Skewed to late animals, as a catch is when adults live for weeks: the largest-value (Gumbel)
   * distribution moved to median zero, {@code F(z) = 2^(-exp(-z))}.
   */
  SKEWED {
    @Override
    public double cumulative(double z) {
      return FastMath.exp(-LOG_TWO * FastMath.exp(-z));
    }

    @Override
    public double density(double z) {
      return LOG_TWO * FastMath.exp(-z - LOG_TWO * FastMath.exp(-z));
    }

    @Override
    public double quantile(double share) {
      return -FastMath.log(-FastMath.log(checked(share)) / LOG_TWO);
    }
  };

  private static final double ROOT_TWO = FastMath.sqrt(2);
  private static final double LOG_TWO = FastMath.log(2);

  /**
   * The form in words.
   *
   * @return the name in lower case
   */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Share of the flight that is over.
   *
   * @param z distance from the median in scales
   * @return 0 to 1, and 0.5 at zero
   */
  public abstract double cumulative(double z);

  /**
   * Density of the flight, the derivative of {@link #cumulative}.
   *
   * @param z distance from the median in scales
   * @return 0 or more, per scale
   */
  public abstract double density(double z);

  /**
   * Where a share of the flight is over, the inverse of {@link #cumulative}.
   *
   * @param share share of the flight, above 0 and below 1
   * @return distance from the median in scales
   * @throws IllegalArgumentException when the share is not inside 0 to 1
   */
  public abstract double quantile(double share);

  private static double checked(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          "a share of the flight lies between 0 and 1, but got " + share);
    }
    return share;
  }
}
