package agro.units;

/**
 * An amount of thermal time: degree-days above a lower threshold that is stated elsewhere.
 *
 * @param degreeDaysC thermal time in °C·d, finite; negative for the distance back to an earlier
 *     event
 */
public record ThermalTime(double degreeDaysC) implements Comparable<ThermalTime> {

  /** No thermal time. */
  public static final ThermalTime ZERO = new ThermalTime(0);

  /** Refuses values that are not finite. */
  public ThermalTime {
    if (!Double.isFinite(degreeDaysC)) {
      throw new IllegalArgumentException(
          "thermal time is finite, but got " + degreeDaysC + " °C·d");
    }
  }

  /**
   * Thermal time in a stated unit; 180 °F·d are 100 °C·d, without an offset.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the thermal time
   */
  public static ThermalTime of(double value, ThermalTimeUnit unit) {
    return new ThermalTime(unit.inCelsiusDays().convert(value));
  }

  /**
   * Thermal time in °C·d.
   *
   * @param degreeDaysC number of °C·d
   * @return the thermal time
   */
  public static ThermalTime ofDegreeDaysC(double degreeDaysC) {
    return new ThermalTime(degreeDaysC);
  }

  /**
   * The number in a stated unit.
   *
   * @param unit the unit
   * @return the thermal time in that unit
   */
  public double in(ThermalTimeUnit unit) {
    return unit.inCelsiusDays().inverse().convert(degreeDaysC);
  }

  /**
   * The sum of two amounts above the same threshold.
   *
   * @param other the amount to add
   * @return the sum
   */
  public ThermalTime plus(ThermalTime other) {
    return new ThermalTime(degreeDaysC + other.degreeDaysC);
  }

  /**
   * The amount times a number.
   *
   * @param factor finite number
   * @return the product
   */
  public ThermalTime times(double factor) {
    return new ThermalTime(degreeDaysC * factor);
  }

  @Override
  public int compareTo(ThermalTime other) {
    return Double.compare(degreeDaysC, other.degreeDaysC);
  }

  @Override
  public String toString() {
    return Numbers.plain(degreeDaysC) + " °C·d";
  }
}
