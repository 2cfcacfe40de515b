package agro.units;

/** Which kind the ratio of two kinds is, and its number in the base unit of that kind. */
final class RatioKinds {

  private RatioKinds() {}

  /**
   * The kind of a ratio, or null if this library has none; a mass per volume is a concentration.
   */
  static QuantityKind of(QuantityKind above, QuantityKind below) {
    return switch (above) {
      case LENGTH -> below == QuantityKind.WORK_TIME ? QuantityKind.SPEED : null;
      case VOLUME -> ofVolume(below);
      case MASS -> ofMass(below);
      case COUNT -> ofCount(below);
      default -> null;
    };
  }

  private static QuantityKind ofVolume(QuantityKind below) {
    return switch (below) {
      case WORK_TIME -> QuantityKind.FLOW_RATE;
      case AREA -> QuantityKind.VOLUME_PER_AREA;
      case VOLUME -> QuantityKind.VOLUME_PER_VOLUME;
      case MASS -> QuantityKind.VOLUME_PER_MASS;
      case LENGTH -> QuantityKind.VOLUME_PER_LENGTH;
      default -> null;
    };
  }

  private static QuantityKind ofMass(QuantityKind below) {
    return switch (below) {
      case AREA -> QuantityKind.MASS_PER_AREA;
      case VOLUME -> QuantityKind.MASS_PER_VOLUME;
      case MASS -> QuantityKind.MASS_PER_MASS;
      case LENGTH -> QuantityKind.MASS_PER_LENGTH;
      default -> null;
    };
  }

  private static QuantityKind ofCount(QuantityKind below) {
    return switch (below) {
      case AREA -> QuantityKind.COUNT_PER_AREA;
      case VOLUME -> QuantityKind.COUNT_PER_VOLUME;
      case MASS -> QuantityKind.COUNT_PER_MASS;
      default -> null;
    };
  }

  /**
   * Converts a number of a ratio into the base unit of its kind, to the same double as the unit of
   * the ratio would give, without making that unit.
   */
  static double toBase(
      double value, QuantityKind kind, Unit<?> above, double amount, Unit<?> below) {
    if (amount == Math.rint(amount) && amount < 1e9) {
      return exactly(value, kind, above, (long) amount, below);
    }
    return exactly(value, kind, above, 1, below) / amount;
  }

  private static double exactly(
      double value, QuantityKind kind, Unit<?> above, long amount, Unit<?> below) {
    var factor = above.factor();
    var divisor = below.factor();
    var per = kind.perRatio();
    if (factor.isLong() && divisor.isLong()) {
      long up = 1;
      long down = 1;
      long[] ups = {
        factor.numerator().longValue(),
        per.numerator().longValue(),
        divisor.denominator().longValue()
      };
      long[] downs = {
        factor.denominator().longValue(),
        per.denominator().longValue(),
        divisor.numerator().longValue(),
        amount
      };
      for (int i = 0; i < ups.length; i++) {
        for (int j = 0; j < downs.length; j++) {
          long common = ExactFactor.commonDivisor(ups[i], downs[j]);
          ups[i] /= common;
          downs[j] /= common;
        }
      }
      boolean fits = true;
      for (long part : ups) {
        fits &= Math.multiplyHigh(up, part) == 0 && up * part > 0;
        up *= part;
      }
      for (long part : downs) {
        fits &= Math.multiplyHigh(down, part) == 0 && down * part > 0;
        down *= part;
      }
      if (fits) {
        return value * up / down;
      }
    }
    return factor
        .times(per)
        .times(divisor.inverse())
        .times(ExactFactor.of(1, amount))
        .convert(value);
  }
}
