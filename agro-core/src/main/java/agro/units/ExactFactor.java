package agro.units;

import java.math.BigInteger;

/**
 * An exact positive ratio of two units, kept in lowest terms.
 *
 * @param numerator positive numerator
 * @param denominator positive denominator
 */
public record ExactFactor(BigInteger numerator, BigInteger denominator) {

  /** The factor that changes nothing. */
  public static final ExactFactor ONE = of(1, 1);

  /** Reduces the ratio to lowest terms and refuses zero and negative parts. */
  public ExactFactor {
    if (numerator.signum() <= 0 || denominator.signum() <= 0) {
      throw new IllegalArgumentException(
          "a unit factor is a positive ratio, but got " + numerator + "/" + denominator);
    }
    var common = numerator.gcd(denominator);
    numerator = numerator.divide(common);
    denominator = denominator.divide(common);
  }

  /**
   * A factor from whole numbers.
   *
   * @param numerator positive numerator
   * @param denominator positive denominator
   * @return the ratio in lowest terms
   */
  public static ExactFactor of(long numerator, long denominator) {
    return new ExactFactor(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /**
   * The factor of two conversions in a row.
   *
   * @param next the second factor
   * @return the product
   */
  public ExactFactor times(ExactFactor next) {
    return new ExactFactor(
        numerator.multiply(next.numerator), denominator.multiply(next.denominator));
  }

  /**
   * The factor of the way back.
   *
   * @return the reciprocal
   */
  public ExactFactor inverse() {
    return new ExactFactor(denominator, numerator);
  }

  /**
   * Converts a value: multiplies by the numerator, then divides by the denominator, so that whole
   * results of whole values come out exactly.
   *
   * @param value any value; NaN and infinities pass through
   * @return the converted value
   */
  public double convert(double value) {
    return value * numerator.doubleValue() / denominator.doubleValue();
  }

  @Override
  public String toString() {
    return numerator + "/" + denominator;
  }
}
