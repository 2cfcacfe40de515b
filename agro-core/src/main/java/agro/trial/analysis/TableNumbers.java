package agro.trial.analysis;

import agro.working.Cell;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** How numbers of a column are printed. */
final class TableNumbers {

  private static final int DIGITS = 3;
  private static final int MOST = 8;
  private static final double ROUNDING = 1e-6;

  private TableNumbers() {}

  /** Decimals that give the largest number of a column four digits. */
  static int decimals(DoubleStream numbers) {
    double largest = numbers.filter(Double::isFinite).map(Math::abs).max().orElse(1);
    if (largest == 0) {
      return 0;
    }
    return (int) Math.max(0, Math.min(MOST, DIGITS - Math.floor(Math.log10(largest))));
  }

  /** As few decimals as show every number of a column, at most three. */
  static int needed(DoubleStream numbers) {
    double[] all = numbers.toArray();
    double power = 1;
    for (int decimals = 0; decimals < DIGITS; decimals++) {
      double unit = power;
      if (DoubleStream.of(all).allMatch(each -> isWhole(each * unit))) {
        return decimals;
      }
      power *= 10;
    }
    return DIGITS;
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) < ROUNDING;
  }

  static Cell cell(OptionalDouble value, int decimals) {
    return value.isPresent() ? cell(value.getAsDouble(), decimals) : Cell.notKnown();
  }

  static Cell cell(double value, int decimals) {
    if (Double.isNaN(value)) {
      return Cell.notKnown();
    }
    return Double.isInfinite(value) ? Cell.text("unbounded") : Cell.number(value, decimals);
  }

  /** A chance: four decimals, or below the smallest printed one. */
  static Cell chance(double value) {
    return value < 0.0001 ? Cell.text("< 0.0001") : Cell.number(value, 4);
  }
}
