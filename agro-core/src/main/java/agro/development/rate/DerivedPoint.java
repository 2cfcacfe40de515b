package agro.development.rate;

import java.util.Arrays;

/** What follows from a rate curve beyond its parameters. */
public enum DerivedPoint {
  /** The temperature at and below which there is no development. */
  LOWER_THRESHOLD("lower threshold", "LT", "°C"),
  /** The temperature of fastest development. */
  OPTIMUM("optimum", "Topt", "°C"),
  /** The rate at the optimum. */
  GREATEST_RATE("greatest rate", "rmax", "1/d"),
  /** The temperature at and above which there is no development. */
  UPPER_THRESHOLD("upper threshold", "UT", "°C"),
  /** The degree-days that development takes; of the linear model alone. */
  THERMAL_CONSTANT("thermal constant", "K", "°C·d"),
  /**
   * The temperature at which most enzyme is active; of the enzyme models that fall at both ends.
   */
  INTRINSIC_OPTIMUM("intrinsic optimum", "Tphi", "°C");

  private final String words;
  private final String symbol;
  private final String unit;

  DerivedPoint(String words, String symbol, String unit) {
    this.words = words;
    this.symbol = symbol;
    this.unit = unit;
  }

  /**
   * The point in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * Its symbol.
   *
   * @return a few letters
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Its unit as printed.
   *
   * @return the unit
   */
  public String unit() {
    return unit;
  }

  /** The place among all points, in their order. */
  int place() {
    return Arrays.asList(values()).indexOf(this);
  }
}
