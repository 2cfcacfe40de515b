package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.report.Progress;
import java.util.Arrays;

/**
 * Exact properties of a plan at one mean: the distribution of the running total over the totals at
 * which sampling still goes on, carried from unit to unit, and the mass that leaves it at each
 * line.
 */
final class ForwardRecursion {

  /** A plan is followed until less than this is still under way. */
  private static final double UNDER_WAY = 1e-14;

  /** Totals at either end whose probability is below this are no longer carried. */
  private static final double CARRIED = 1e-20;

  /**
   * Probabilities of a count below this are left out of the sums; all together they stay below it.
   */
  private static final double NEGLIGIBLE = 1e-17;

  private static final double NINE_IN_TEN = 0.9;
  private static final int MOST_UNITS = 1_000_000;
  private static final int PROGRESS_STEP = 256;

  private final SequentialPlan plan;
  private final CountFamily family;
  private final double mean;
  private final Progress progress;

  private double[] probability = new double[0];
  private double[] above = new double[0];
  private double[] mass = {1};
  private long firstTotal;
  private double low;
  private double high;
  private double undecided;
  private double units;
  private double squares;
  private int usualMost;

  ForwardRecursion(SequentialPlan plan, CountFamily family, double mean, Progress progress) {
    this.plan = plan;
    this.family = family;
    this.mean = mean;
    this.progress = progress;
  }

  PlanCharacteristics run() {
    int most = plan.mostUnits().orElse(MOST_UNITS);
    double left = 1;
    for (int n = 1; n <= most && left > UNDER_WAY; n++) {
      if (n % PROGRESS_STEP == 0) {
        progress.step("units of the plan", n, most);
      }
      boolean last = plan.mostUnits().isPresent() && n == most;
      double stopped = step(n, last);
      units += n * stopped;
      squares += (double) n * n * stopped;
      left = sum(mass);
      if (usualMost == 0 && left <= 1 - NINE_IN_TEN) {
        usualMost = n;
      }
    }
    if (plan.mostUnits().isEmpty() && left > UNDER_WAY) {
      throw InputProblem.of("a plan that still goes on after " + MOST_UNITS + " units")
          .expected("a plan that comes to an end")
          .because("its properties cannot be added up")
          .mend("set the means further apart, or end the plan with truncated");
    }
    return new PlanCharacteristics(
        mean,
        low,
        high,
        undecided,
        // A sum over all units may come out beyond the last one by a rounding error.
        Math.min(most, Math.max(1, units)),
        Math.sqrt(Math.max(0, squares - units * units)),
        usualMost);
  }

  /** One more unit; returns the mass that stops at it. */
  private double step(int n, boolean last) {
    long from = Math.max(firstTotal, plan.lastLow(n) + 1);
    long high1 = plan.firstHigh(n);
    long to = highestReachable(high1);
    double before = low + high + undecided;
    takeLow(plan.lastLow(n));
    takeHigh(high1);
    var next = new double[(int) Math.max(0, to - from + 1)];
    convolve(next, from);
    carry(next, from);
    if (last) {
      end(n);
    }
    return low + high + undecided - before;
  }

  /** Keeps the totals that matter. */
  private void carry(double[] next, long from) {
    int first = 0;
    int end = next.length;
    while (first < end && next[first] < CARRIED) {
      first++;
    }
    while (end > first && next[end - 1] < CARRIED) {
      end--;
    }
    firstTotal = from + first;
    mass = first == 0 && end == next.length ? next : Arrays.copyOfRange(next, first, end);
  }

  private long highestReachable(long firstHigh) {
    long reachable = firstTotal + mass.length - 1 + lastCount();
    return Math.min(firstHigh - 1, reachable);
  }

  /** Largest count with a probability that matters. */
  private int lastCount() {
    if (probability.length == 0) {
      grow();
    }
    return probability.length - 1;
  }

  private void grow() {
    int size = 1;
    while (family.chanceOfMoreThan(mean, size - 1) > NEGLIGIBLE) {
      size = Math.max(size + 1, size * 5 / 4);
    }
    probability = new double[size];
    above = new double[size + 1];
    for (int x = 0; x < size; x++) {
      probability[x] = family.probability(mean, x);
      above[x] = family.chanceOfMoreThan(mean, x - 1);
    }
    above[size] = family.chanceOfMoreThan(mean, size - 1);
  }

  /** Mass that comes to a total at or below the low line. */
  private void takeLow(long lastLow) {
    for (int i = 0; i < mass.length; i++) {
      long room = lastLow - (firstTotal + i);
      if (room < 0) {
        break;
      }
      low += mass[i] * (1 - chanceAtLeast(room + 1));
    }
  }

  /** Mass that comes to a total at or above the high line. */
  private void takeHigh(long firstHigh) {
    for (int i = 0; i < mass.length; i++) {
      high += mass[i] * chanceAtLeast(firstHigh - (firstTotal + i));
    }
  }

  private double chanceAtLeast(long count) {
    lastCount();
    if (count <= 0) {
      return 1;
    }
    return count < above.length ? above[(int) count] : 0;
  }

  private void convolve(double[] next, long from) {
    int shift = (int) (from - firstTotal);
    for (int i = 0; i < mass.length; i++) {
      double weight = mass[i];
      if (weight == 0) {
        continue;
      }
      int first = Math.max(0, shift - i);
      int end = Math.min(probability.length, next.length + shift - i);
      addScaled(next, i - shift, probability, first, end, weight);
    }
  }

  /** next[x + offset] += weight · probability[x]; one plain loop, which runs on vectors. */
  private static void addScaled(
      double[] next, int offset, double[] probability, int first, int end, double weight) {
    for (int x = first; x < end; x++) {
      next[x + offset] += weight * probability[x];
    }
  }

  private void end(int n) {
    for (int i = 0; i < mass.length; i++) {
      switch (plan.endRule().decide((double) (firstTotal + i) / n, plan.bounds().middle())) {
        case LOW -> low += mass[i];
        case HIGH -> high += mass[i];
        default -> undecided += mass[i];
      }
    }
    mass = new double[0];
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
