package agro.demo;

import java.time.LocalDate;
import java.util.Arrays;

/** Degree-days summed hour by hour from the start of a season. */
final class HourlyScale {
  private final LocalDate start;
  private final double[] sums;

  HourlyScale(LocalDate start, double[] sums) {
    this.start = start;
    this.sums = sums;
  }

  LocalDate start() {
    return start;
  }

  int hours() {
    return sums.length - 1;
  }

  LocalDate day(int hour) {
    return start.plusDays(hour / 24);
  }

  /** Degree-days up to an hour of the season, fractions on the straight line. */
  double at(double hour) {
    int whole = (int) Math.min(Math.max(hour, 0), hours());
    double part = Math.min(hour - whole, 1);
    return whole >= hours() ? sums[hours()] : sums[whole] + part * (sums[whole + 1] - sums[whole]);
  }

  /** The hour at which a sum is reached, or a number beyond the last hour when it never is. */
  double hourOf(double degreeDaysC) {
    if (degreeDaysC >= sums[hours()]) {
      return Double.POSITIVE_INFINITY;
    }
    int found = Arrays.binarySearch(sums, degreeDaysC);
    if (found >= 0) {
      return found;
    }
    int after = Math.max(1, -found - 1);
    double step = sums[after] - sums[after - 1];
    return after - 1 + Math.max(0, degreeDaysC - sums[after - 1]) / step;
  }
}
