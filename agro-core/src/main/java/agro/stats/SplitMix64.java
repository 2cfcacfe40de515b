package agro.stats;

/**
 * The generator SplitMix64 of Steele, Lea and Flood (2014), written out so that a seed gives the
 * same numbers on every machine and in every version of Java and of any library. Not for several
 * threads.
 */
public final class SplitMix64 {

  /** The step between states: 2⁶⁴ divided by the golden ratio. */
  public static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private long state;

  private SplitMix64(long state) {
    this.state = state;
  }

  /**
   * A stream.
   *
   * @param seed any number
   * @return numbers that depend on the seed alone
   */
  public static SplitMix64 of(long seed) {
    return new SplitMix64(seed);
  }

  /**
   * The next number.
   *
   * @return 64 random bits
   */
  public long next() {
    state += GOLDEN;
    return mix(state);
  }

  /**
   * The finaliser of the generator, which spreads every bit over all others.
   *
   * @param value any number
   * @return another number, a different one for each value
   */
  public static long mix(long value) {
    long mixed = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }
}
