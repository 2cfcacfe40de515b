package agro.course;

import agro.stats.SplitMix64;
import agro.units.Quantity;
import agro.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Sensible numbers from a seed. The stream is {@link SplitMix64} and powers are those of {@link
 * StrictMath}, so that a paper of an old version can be set again on any machine, whatever becomes
 * of other generators. Not for several threads.
 */
public final class ExerciseDraw {

  private static final double TO_UNIT = 0x1.0p-53;
  private static final int FIRST_PRIME = 31;

  private final SplitMix64 stream;

  private ExerciseDraw(SplitMix64 stream) {
    this.stream = stream;
  }

  /**
   * A stream.
   *
   * @param seed any number
   * @return draws that depend on the seed alone
   */
  public static ExerciseDraw of(long seed) {
    return new ExerciseDraw(SplitMix64.of(seed));
  }

  /**
   * A seed made of a seed and a text, such as the name of a student.
   *
   * @param seed any number
   * @param text any text
   * @return another seed
   */
  public static long seedFor(long seed, String text) {
    long mixed = SplitMix64.mix(seed + SplitMix64.GOLDEN);
    for (int i = 0; i < text.length(); i++) {
      mixed = SplitMix64.mix(FIRST_PRIME * mixed + text.charAt(i) + SplitMix64.GOLDEN);
    }
    return mixed;
  }

  /**
   * A share.
   *
   * @return 0 or more, below 1
   */
  public double share() {
    return (stream.next() >>> 11) * TO_UNIT;
  }

  /**
   * A whole number.
   *
   * @param low lowest
   * @param high highest
   * @return a number from low to high, both included
   */
  public int whole(int low, int high) {
    return low + (int) Math.floor(share() * (high - low + 1));
  }

  /**
   * A multiple of a step, free of the noise of binary fractions.
   *
   * @param low lowest
   * @param high highest
   * @param step above zero
   * @return low, low + step, ... up to high
   */
  public double step(double low, double high, double step) {
    int steps = (int) Math.floor((high - low) / step + 1e-9);
    return BigDecimal.valueOf(low)
        .add(BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(whole(0, steps))))
        .doubleValue();
  }

  /**
   * A number with few digits between two numbers, as it may stand on a label.
   *
   * @param low lowest, above zero
   * @param high highest
   * @param digits significant digits, 1 to 6
   * @return a number from low to high; between ends that are closer than the digits show, an end
   *     rounded towards the other
   */
  public double sensible(double low, double high, int digits) {
    double drawn = low * StrictMath.pow(high / low, share());
    var exact = new BigDecimal(drawn);
    int scale = digits - exact.precision() + exact.scale();
    double rounded = exact.setScale(scale, RoundingMode.HALF_EVEN).doubleValue();
    if (rounded < low) {
      return exact.setScale(scale, RoundingMode.CEILING).doubleValue();
    }
    return rounded > high ? exact.setScale(scale, RoundingMode.FLOOR).doubleValue() : rounded;
  }

  /**
   * An amount with few digits in a unit.
   *
   * @param <Q> kind of quantity
   * @param low lowest, above zero
   * @param high highest
   * @param unit unit in which it has few digits
   * @param digits significant digits
   * @return the amount
   */
  public <Q extends Quantity<Q>> Q sensible(Q low, Q high, Unit<Q> unit, int digits) {
    return low.withBaseValue(unit.toBase(sensible(low.in(unit), high.in(unit), digits)));
  }

  /**
   * One of several.
   *
   * @param <T> of what
   * @param all at least one
   * @return one of them
   */
  public <T> T oneOf(List<T> all) {
    return all.get(whole(0, all.size() - 1));
  }

  /**
   * Several without repeats, in random order.
   *
   * @param <T> of what
   * @param all at least as many as wanted
   * @param count how many
   * @return as many as wanted
   */
  public <T> List<T> some(List<T> all, int count) {
    var rest = new ArrayList<>(all);
    var chosen = new ArrayList<T>();
    for (int i = 0; i < count; i++) {
      chosen.add(rest.remove(whole(0, rest.size() - 1)));
    }
    return List.copyOf(chosen);
  }

  /**
   * How many of a number of animals react.
   *
   * @param number 0 or more
   * @param chance 0 to 1
   * @return 0 to number
   */
  public int binomial(int number, double chance) {
    int count = 0;
    for (int i = 0; i < number; i++) {
      count += share() < chance ? 1 : 0;
    }
    return count;
  }

  /**
   * A count of animals on a plant, by the Poisson distribution.
   *
   * @param mean 0 to 500
   * @return 0 or more
   */
  public int poisson(double mean) {
    double left = share() * StrictMath.exp(mean);
    double term = 1;
    int count = 0;
    while (left > term && term > Double.MIN_NORMAL) {
      left -= term;
      count++;
      term *= mean / count;
    }
    return count;
  }

  /**
   * A count of animals that live in clumps, by the negative binomial distribution.
   *
   * @param mean above zero
   * @param k clumping, above zero; small is clumped
   * @return 0 or more
   */
  public int clumped(double mean, double k) {
    double left = share();
    double failure = mean / (mean + k);
    double term = StrictMath.pow(k / (mean + k), k);
    int count = 0;
    while (left > term && term > Double.MIN_NORMAL) {
      left -= term;
      term *= failure * (k + count) / (count + 1);
      count++;
    }
    return count;
  }
}
