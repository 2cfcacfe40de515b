package agro.stats.mixed;

import agro.report.InputProblem;
import agro.stats.linear.Factor;
import java.util.Arrays;
import java.util.List;

/**
 * Repeated observations of subjects, for example of plots on several dates, whose correlation falls
 * off with the time between them: ρ to the power of the time in units of the shortest interval.
 * With equal intervals this is the first-order autoregressive correlation. A random effect of the
 * subject gives equal correlations (compound symmetry) instead.
 */
public final class WithinSubject {

  private final Factor subject;
  private final double[] times;
  private final double unit;

  private WithinSubject(Factor subject, double[] times, double unit) {
    this.subject = subject;
    this.times = times;
    this.unit = unit;
  }

  /**
   * Correlation that falls off with time.
   *
   * @param subject the subject of each observation
   * @param times time of each observation in any unit
   * @return the correlation, its ρ to be estimated
   * @throws InputProblem if numbers of observations differ, a time is not finite, a subject was
   *     observed twice at one time, or no subject was observed twice
   */
  public static WithinSubject autoregressive(Factor subject, double... times) {
    if (subject.size() != times.length) {
      throw InputProblem.of(times.length + " times for " + subject.size() + " observations")
          .expected("one time for each observation")
          .because("the correlation depends on the time between observations")
          .mend("give both columns of the same rows");
    }
    double shortest = Double.POSITIVE_INFINITY;
    for (int[] group : BlockOperator.groups(codes(subject), subject.levelCount())) {
      for (int i = 0; i < group.length; i++) {
        for (int j = 0; j < i; j++) {
          double gap = Math.abs(times[group[i]] - times[group[j]]);
          if (!(gap > 0)) {
            throw InputProblem.of(
                    subject.label(group[i]) + " was observed twice at time " + times[group[i]])
                .expected("one observation of a subject at a time")
                .because("two samples of one moment are no repeated dates")
                .mend("take their mean first, or correct the time");
          }
          shortest = Math.min(shortest, gap);
        }
      }
    }
    if (!Double.isFinite(shortest) || !Arrays.stream(times).allMatch(Double::isFinite)) {
      throw InputProblem.of("No " + subject.name() + " has two observations at known times")
          .expected("subjects that were observed repeatedly")
          .because("a correlation in time shows only where a subject was seen twice")
          .mend("leave the correlation out, or correct the names of the subjects");
    }
    return new WithinSubject(subject, times.clone(), shortest);
  }

  static int[] codes(Factor factor) {
    int[] codes = new int[factor.size()];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = factor.code(i);
    }
    return codes;
  }

  /**
   * The shortest interval, to which ρ belongs.
   *
   * @return in the unit of the times
   */
  public double shortestInterval() {
    return unit;
  }

  int size() {
    return times.length;
  }

  /** The matrix of correlations, or of their first or second derivatives by ρ. */
  BlockOperator matrix(double rho, int derivative) {
    List<int[]> groups = BlockOperator.groups(codes(subject), subject.levelCount());
    List<double[][]> blocks =
        groups.stream()
            .map(
                group -> {
                  double[][] block = new double[group.length][group.length];
                  for (int i = 0; i < group.length; i++) {
                    for (int j = 0; j < group.length; j++) {
                      double lag = Math.abs(times[group[i]] - times[group[j]]) / unit;
                      block[i][j] = power(rho, lag, derivative);
                    }
                  }
                  return block;
                })
            .toList();
    return BlockOperator.of(groups, blocks);
  }

  private static double power(double rho, double lag, int derivative) {
    double factor = 1;
    double exponent = lag;
    for (int i = 0; i < derivative; i++) {
      factor *= exponent;
      exponent -= 1;
    }
    // At ρ = 0 the second derivative of a lag between one and two has no limit; it counts as none.
    if (factor == 0 || (rho == 0 && exponent < 0)) {
      return 0;
    }
    return factor * Math.pow(rho, exponent);
  }
}
