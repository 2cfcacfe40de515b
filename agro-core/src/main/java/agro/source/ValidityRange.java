package agro.source;

import java.util.Objects;

/**
 * The range for which a formula or a parameter set was meant.
 *
 * @param quantity what is bounded, for example {@code "constant temperature"}
 * @param low smallest value that the source covers, in {@code unit}
 * @param high largest value that the source covers, in {@code unit}
 * @param unit unit of both bounds as printed, for example {@code "°C"}
 */
public record ValidityRange(String quantity, double low, double high, String unit) {

  /** Checks that the bounds are finite and in order. */
  public ValidityRange {
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(unit, "unit");
    if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
      throw new IllegalArgumentException(
          "a validity range needs finite bounds in order, but got " + low + " to " + high);
    }
  }

  /**
   * Whether a value lies inside the range, bounds included.
   *
   * @param value value in {@link #unit()}
   * @return false outside and for NaN
   */
  public boolean covers(double value) {
    return value >= low && value <= high;
  }
}
