package agro.stats;

/**
 * Quantiles of the standard normal distribution to sixteen digits.
 *
 * <p>Three rational functions of Wichura 1988, Algorithm AS 241, Applied Statistics 37:477-484
 * (coefficients from memory; checked in the tests against quantiles of a published program).
 */
public final class NormalQuantile {

  private static final double SPLIT_CENTRE = 0.425;
  private static final double CENTRE_SQUARE = 0.180625;
  private static final double SPLIT_TAIL = 5;
  private static final double TAIL_SHIFT = 1.6;

  private static final double[] CENTRE_ABOVE = {
    2509.0809287301227,
    33430.57558358813,
    67265.7709270087,
    45921.95393154987,
    13731.69376550946,
    1971.5909503065513,
    133.14166789178438,
    3.3871328727963665
  };
  private static final double[] CENTRE_BELOW = {
    5226.495278852854,
    28729.085735721943,
    39307.89580009271,
    21213.794301586597,
    5394.196021424751,
    687.1870074920579,
    42.31333070160091,
    1
  };
  private static final double[] TAIL_ABOVE = {
    0.0007745450142783414,
    0.022723844989269184,
    0.2417807251774506,
    1.2704582524523684,
    3.6478483247632045,
    5.769497221460691,
    4.630337846156546,
    1.4234371107496835
  };
  private static final double[] TAIL_BELOW = {
    1.0507500716444169e-9,
    0.0005475938084995345,
    0.015198666563616457,
    0.14810397642748008,
    0.6897673349851,
    1.6763848301838038,
    2.053191626637759,
    1
  };
  private static final double[] FAR_ABOVE = {
    2.0103343992922881e-7,
    2.7115555687434876e-5,
    0.0012426609473880784,
    0.026532189526576124,
    0.29656057182850487,
    1.7848265399172913,
    5.463784911164114,
    6.657904643501103
  };
  private static final double[] FAR_BELOW = {
    2.0442631033899397e-15,
    1.421511758316446e-7,
    1.8463183175100548e-5,
    0.0007868691311456133,
    0.014875361290850615,
    0.1369298809227358,
    0.599832206555888,
    1
  };

  private NormalQuantile() {}

  /**
   * The value below which a standard normal number lies with a given chance.
   *
   * @param chance 0 to 1
   * @return the quantile; minus infinity at 0 and infinity at 1; NaN outside 0 to 1
   */
  public static double of(double chance) {
    if (!(chance >= 0 && chance <= 1)) {
      return Double.NaN;
    }
    if (chance == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    if (chance == 1) {
      return Double.POSITIVE_INFINITY;
    }
    double centred = chance - 0.5;
    if (Math.abs(centred) <= SPLIT_CENTRE) {
      return centred * ratio(CENTRE_ABOVE, CENTRE_BELOW, CENTRE_SQUARE - centred * centred);
    }
    double depth = Math.sqrt(-Math.log(centred < 0 ? chance : 1 - chance));
    double size =
        depth <= SPLIT_TAIL
            ? ratio(TAIL_ABOVE, TAIL_BELOW, depth - TAIL_SHIFT)
            : ratio(FAR_ABOVE, FAR_BELOW, depth - SPLIT_TAIL);
    return centred < 0 ? -size : size;
  }

  private static double ratio(double[] above, double[] below, double x) {
    double numerator = 0;
    double denominator = 0;
    for (int i = 0; i < above.length; i++) {
      numerator = numerator * x + above[i];
      denominator = denominator * x + below[i];
    }
    return numerator / denominator;
  }
}
