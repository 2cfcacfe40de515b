package agro.course.marking;

import java.util.List;

/**
 * A number as it was written, with all its readings.
 *
 * @param readings at least one, the likeliest first
 * @param doubtful whether nobody can tell which reading was meant
 * @param end place behind the number
 */
record WrittenNumber(List<NumberReading> readings, boolean doubtful, int end) {

  /**
   * One reading.
   *
   * @param value the number
   * @param halfDigit half a unit of the last digit that was written; 0 for a fraction
   */
  record NumberReading(double value, double halfDigit) {
    NumberReading times(double factor) {
      return new NumberReading(value * factor, Math.abs(halfDigit * factor));
    }
  }

  WrittenNumber {
    readings = List.copyOf(readings);
  }

  WrittenNumber times(double factor, int newEnd) {
    return new WrittenNumber(
        readings.stream().map(one -> one.times(factor)).toList(), doubtful, newEnd);
  }

  boolean isFinite() {
    return readings.stream().allMatch(one -> Double.isFinite(one.value()));
  }
}
