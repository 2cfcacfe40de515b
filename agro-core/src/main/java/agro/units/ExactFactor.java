package agro.units;

import java.math.BigDecimal;
import java.math.BigInteger;

/** An exact positive ratio of two units, kept in lowest terms. */
public final class ExactFactor {

  /** The factor that changes nothing. */
  public static final ExactFactor ONE = of(1, 1);

  private final BigInteger numerator;
  private final BigInteger denominator;
  private final double above;
  private final double below;

  /**
   * A ratio, reduced to lowest terms.
   *
   * @param numerator positive numerator
   * @param denominator positive denominator
   * @throws IllegalArgumentException if a part is zero or negative
   */
  public ExactFactor(BigInteger numerator, BigInteger denominator) {
    if (numerator.signum() <= 0 || denominator.signum() <= 0) {
      throw new IllegalArgumentException(
          "a unit factor is a positive ratio, but got " + numerator + "/" + denominator);
    }
    var common = commonDivisor(numerator, denominator);
    boolean lowest = common.equals(BigInteger.ONE);
    this.numerator = lowest ? numerator : numerator.divide(common);
    this.denominator = lowest ? denominator : denominator.divide(common);
    this.above = this.numerator.doubleValue();
    this.below = this.denominator.doubleValue();
  }

  /** The same as {@link BigInteger#gcd}, which is slow before it is compiled. */
  private static BigInteger commonDivisor(BigInteger one, BigInteger other) {
    return one.bitLength() < Long.SIZE && other.bitLength() < Long.SIZE
        ? BigInteger.valueOf(commonDivisor(one.longValue(), other.longValue()))
        : one.gcd(other);
  }

  /** The greatest whole number that divides both. */
  static long commonDivisor(long one, long other) {
    long a = one;
    long b = other;
    while (b != 0) {
      long rest = a % b;
      a = b;
      b = rest;
    }
    return a;
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
   * A factor from a decimal number, taken exactly as written.
   *
   * @param text positive decimal number, for example {@code "0.45359237"}
   * @return the ratio in lowest terms
   */
  public static ExactFactor decimal(String text) {
    var number = new BigDecimal(text);
    return number.scale() <= 0
        ? new ExactFactor(number.toBigIntegerExact(), BigInteger.ONE)
        : new ExactFactor(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
  }

  /**
   * What stands above the line.
   *
   * @return the numerator in lowest terms
   */
  public BigInteger numerator() {
    return numerator;
  }

  /**
   * What stands below the line.
   *
   * @return the denominator in lowest terms
   */
  public BigInteger denominator() {
    return denominator;
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
    return value * above / below;
  }

  /**
   * Converts a value the other way: multiplies by the denominator, then divides by the numerator.
   *
   * @param value any value; NaN and infinities pass through
   * @return the value converted by the reciprocal
   */
  public double convertBack(double value) {
    return value * below / above;
  }

  /** Whether both parts fit into a long. */
  boolean isLong() {
    return numerator.bitLength() < Long.SIZE && denominator.bitLength() < Long.SIZE;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ExactFactor factor
        && numerator.equals(factor.numerator)
        && denominator.equals(factor.denominator);
  }

  @Override
  public int hashCode() {
    return 31 * numerator.hashCode() + denominator.hashCode();
  }

  @Override
  public String toString() {
    return numerator + "/" + denominator;
  }
}
