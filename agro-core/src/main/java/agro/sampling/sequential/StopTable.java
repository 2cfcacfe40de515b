package agro.sampling.sequential;

import java.util.Arrays;

/**
 * The totals at which a plan stops, worked out once for each number of units. Serves one thread.
 */
final class StopTable {

  private static final int FIRST_SIZE = 128;

  private final SequentialPlan plan;
  private long[] low = new long[0];
  private long[] high = new long[0];

  StopTable(SequentialPlan plan) {
    this.plan = plan;
  }

  long lastLow(int units) {
    if (units > low.length) {
      grow(units);
    }
    return low[units - 1];
  }

  long firstHigh(int units) {
    if (units > low.length) {
      grow(units);
    }
    return high[units - 1];
  }

  private void grow(int units) {
    int from = low.length;
    int size = Math.max(Math.max(FIRST_SIZE, units), 2 * from);
    if (plan.mostUnits().isPresent()) {
      size = Math.min(size, plan.mostUnits().getAsInt());
    }
    low = Arrays.copyOf(low, size);
    high = Arrays.copyOf(high, size);
    for (int n = from + 1; n <= size; n++) {
      low[n - 1] = plan.lastLow(n);
      high[n - 1] = plan.firstHigh(n);
    }
  }
}
