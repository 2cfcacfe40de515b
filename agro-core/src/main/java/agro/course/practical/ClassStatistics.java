package agro.course.practical;

import agro.report.InputProblem;
import agro.stats.NormalQuantile;
import agro.units.QuantityRange;
import agro.units.VolumePerArea;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Spray volumes of several groups, summed up: mean and spread, and median and median absolute
 * deviation, which a few groups far off hardly move.
 *
 * @param groups number of groups, 1 or more
 * @param mean arithmetic mean
 * @param standardDeviation spread between groups, with n - 1 below the line; nothing for one group
 * @param interval interval of the mean by Student's t, cut off at zero; nothing for one group
 * @param confidence level of the interval
 * @param median median
 * @param medianDeviation median of the absolute deviations from the median
 */
public record ClassStatistics(
    int groups,
    VolumePerArea mean,
    Optional<VolumePerArea> standardDeviation,
    Optional<QuantityRange<VolumePerArea>> interval,
    double confidence,
    VolumePerArea median,
    VolumePerArea medianDeviation) {

  /** Groups from which on the rule of median and median deviation is used. */
  public static final int LEAST_FOR_OUTLIERS = 5;

  /** Upper quartile of the normal curve, 0.6745: the median deviation in standard deviations. */
  private static final double QUARTILE = NormalQuantile.of(0.75);

  /**
   * Sums up volumes.
   *
   * @param volumes the volume of each group, at least one
   * @param confidence level of the interval, between 0 and 1
   * @return the statistics
   * @throws InputProblem if there is no volume
   */
  public static ClassStatistics of(List<VolumePerArea> volumes, double confidence) {
    if (volumes.isEmpty()) {
      throw InputProblem.of("no group has a spray volume")
          .expected("at least one group with readings")
          .because("a mean of nothing does not exist")
          .mend("fill in the readings of the groups");
    }
    double[] values = volumes.stream().mapToDouble(VolumePerArea::litresPerHectare).toArray();
    double mean = Arrays.stream(values).sum() / values.length;
    double median = median(values);
    double deviation = median(Arrays.stream(values).map(v -> Math.abs(v - median)).toArray());
    return new ClassStatistics(
        values.length,
        new VolumePerArea(mean),
        spread(values, mean).map(VolumePerArea::new),
        spread(values, mean).map(s -> interval(mean, s, values.length, confidence)),
        confidence,
        new VolumePerArea(median),
        new VolumePerArea(deviation));
  }

  private static Optional<Double> spread(double[] values, double mean) {
    if (values.length < 2) {
      return Optional.empty();
    }
    double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    return Optional.of(Math.sqrt(squares / (values.length - 1)));
  }

  private static QuantityRange<VolumePerArea> interval(
      double mean, double spread, int groups, double confidence) {
    double half = factor(groups, confidence) * spread / Math.sqrt(groups);
    return new QuantityRange<>(
        new VolumePerArea(Math.max(0, mean - half)), new VolumePerArea(mean + half));
  }

  /** Quantile of Student's t for the mean of so many groups. */
  static double factor(int groups, double confidence) {
    return new TDistribution(groups - 1).inverseCumulativeProbability(0.5 * (1 + confidence));
  }

  private static double median(double[] values) {
    var sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : 0.5 * (sorted[middle - 1] + sorted[middle]);
  }

  /**
   * The coefficient of variation.
   *
   * @return standard deviation ÷ mean; nothing for one group
   */
  public OptionalDouble coefficientOfVariation() {
    return standardDeviation.isPresent()
        ? OptionalDouble.of(standardDeviation.get().ratioTo(mean))
        : OptionalDouble.empty();
  }

  /**
   * The modified z-score after Iglewicz and Hoaglin (1993): 0.6745 × (volume - median) ÷ median
   * absolute deviation.
   *
   * @param volume volume of a group
   * @return the score with its sign; nothing below five groups, or where half of the groups agree
   *     exactly, so that the deviation is zero
   */
  public OptionalDouble modifiedScore(VolumePerArea volume) {
    if (groups < LEAST_FOR_OUTLIERS || medianDeviation.litresPerHectare() == 0) {
      return OptionalDouble.empty();
    }
    double from = volume.litresPerHectare() - median.litresPerHectare();
    return OptionalDouble.of(QUARTILE * from / medianDeviation.litresPerHectare());
  }
}
