package agro.weather.log;

import agro.units.TemperatureUnit;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;

/** The numbers in the cells of one column, and what is remarkable in how they are written. */
final class NumberColumn {

  private static final byte NOTHING = -1;

  private final int size;
  private final double[] values;

  /** Digits behind the decimal mark, or {@link #NOTHING} where there is no number. */
  private final byte[] decimals;

  private final BitSet bare = new BitSet();

  /** The unit behind each number, null where there is none; empty where no number has one. */
  private TemperatureUnit[] units = new TemperatureUnit[0];

  private NumberColumn(int size, double[] values, byte[] decimals) {
    this.size = size;
    this.values = values;
    this.decimals = decimals;
  }

  /** A column without a number. */
  static NumberColumn empty(int rows) {
    var values = new double[rows];
    var decimals = new byte[rows];
    Arrays.fill(values, Double.NaN);
    Arrays.fill(decimals, NOTHING);
    return new NumberColumn(rows, values, decimals);
  }

  /**
   * Takes over the arrays of a scan.
   *
   * @param rows number of rows; what stands behind them in the arrays has no meaning
   * @param values the numbers, NaN where there is none
   * @param decimals the digits behind the decimal mark of each, -1 where there is no number
   */
  static NumberColumn of(int rows, double[] values, byte[] decimals) {
    return new NumberColumn(rows, values, decimals);
  }

  void put(int row, NumberCell cell) {
    values[row] = cell.value();
    decimals[row] = (byte) Math.min(Byte.MAX_VALUE, cell.decimals());
    boolean begins = cell.digits().startsWith(".") || cell.digits().startsWith("-.");
    bare.set(row, begins && cell.mark() != 0);
    if (cell.unit().isPresent()) {
      units = units.length == 0 ? new TemperatureUnit[size] : units;
      units[row] = cell.unit().get();
    }
  }

  /** Takes a number out, because it stands for a missing value. */
  void remove(int row) {
    values[row] = Double.NaN;
    decimals[row] = NOTHING;
  }

  int size() {
    return size;
  }

  boolean isNumber(int row) {
    return decimals[row] != NOTHING;
  }

  /** The number; NaN where there is none. */
  double value(int row) {
    return values[row];
  }

  /** How many digits stand behind the decimal mark; negative where there is no number. */
  int decimals(int row) {
    return decimals[row];
  }

  /** Whether the number begins with its decimal mark. */
  boolean isBare(int row) {
    return bare.get(row);
  }

  /** Whether any number begins with its decimal mark. */
  boolean hasBare() {
    return !bare.isEmpty();
  }

  /** Whether any number has its unit behind it. */
  boolean hasUnits() {
    return units.length > 0;
  }

  /** The unit behind the number, where one is written. */
  Optional<TemperatureUnit> unit(int row) {
    return hasUnits() ? Optional.ofNullable(units[row]) : Optional.empty();
  }
}
