package agro.programme.window;

import java.util.List;

/**
 * Distribution of a sum of delays, and its integral, in a table of even steps.
 *
 * <p>Each delay is put on the lattice by hat functions, so that its mean is kept exactly; its
 * variance grows by less than a quarter of a squared step. Between the points the integral of the
 * distribution is then a straight line.
 */
final class DelayTable {

  private static final int STEPS = 3000;
  private static final int PARTS = 8;

  private final double step;
  private final double[] integral;
  private final boolean none;

  private DelayTable(double step, double[] integral, boolean none) {
    this.step = step;
    this.integral = integral;
    this.none = none;
  }

  static DelayTable of(List<StageDelay> delays) {
    double longest = delays.stream().mapToDouble(StageDelay::longest).sum();
    if (longest == 0) {
      return new DelayTable(1, new double[] {0, 1}, true);
    }
    double step = longest / STEPS;
    var masses = new double[] {1};
    for (var delay : delays) {
      if (delay.longest() > 0) {
        masses = convolved(masses, masses(delay, step));
      }
    }
    var integral = new double[masses.length + 1];
    double below = 0;
    for (int i = 0; i < masses.length; i++) {
      below += masses[i];
      integral[i + 1] = integral[i] + below * step;
    }
    return new DelayTable(step, integral, false);
  }

  /** Weights of the points of the lattice, which add up to one. */
  private static double[] masses(StageDelay delay, double step) {
    int cells = (int) Math.ceil(delay.longest() / step) + 1;
    var integral = new double[cells + 1];
    for (int i = 0; i < cells; i++) {
      integral[i + 1] = integral[i] + cell(delay, i * step, step);
    }
    var masses = new double[cells + 1];
    double before = 0;
    for (int i = 0; i < cells; i++) {
      double mean = (integral[i + 1] - integral[i]) / step;
      masses[i] = mean - before;
      before = mean;
    }
    masses[cells] = 1 - before;
    return masses;
  }

  /** Integral of the distribution over one step. */
  private static double cell(StageDelay delay, double from, double step) {
    if (delay.spread().isEmpty()) {
      return Math.max(0, Math.min(step, from + step - delay.mean().degreeDaysC()));
    }
    double sum = 0;
    for (int i = 0; i < PARTS; i++) {
      sum += delay.completedBy(from + (i + 0.5) * step / PARTS);
    }
    return sum * step / PARTS;
  }

  private static double[] convolved(double[] a, double[] b) {
    var sum = new double[a.length + b.length - 1];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length && a[i] != 0; j++) {
        sum[i + j] += a[i] * b[j];
      }
    }
    return sum;
  }

  /** Whether there is no delay at all. */
  boolean none() {
    return none;
  }

  /** Integral of the distribution from zero. */
  double integral(double degreeDaysC) {
    if (!(degreeDaysC > 0)) {
      return 0;
    }
    if (none) {
      return degreeDaysC;
    }
    double place = degreeDaysC / step;
    int last = integral.length - 1;
    if (place >= last) {
      return integral[last] + (place - last) * step;
    }
    int index = (int) place;
    return integral[index] + (place - index) * (integral[index + 1] - integral[index]);
  }

  /** Share that has taken no longer, as a mean over a small span about the time. */
  double completedBy(double degreeDaysC) {
    return mean(degreeDaysC - 0.5 * step, degreeDaysC + 0.5 * step);
  }

  /** Mean of the distribution between two times; the second may equal the first. */
  double mean(double from, double to) {
    double span = to - from;
    return span > 1e-6 * step
        ? Math.max(0, Math.min(1, (integral(to) - integral(from)) / span))
        : completedBy(0.5 * (from + to));
  }
}
