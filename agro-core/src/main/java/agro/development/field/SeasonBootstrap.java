package agro.development.field;

import agro.report.Progress;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Studentised bootstrap over seasons: whole seasons are drawn with replacement. */
final class SeasonBootstrap {

  /** Below this share of usable resamples no interval is given. */
  private static final double LEAST_USABLE = 0.8;

  private SeasonBootstrap() {}

  /**
   * An interval of an estimate.
   *
   * @param estimate base temperature from chosen seasons; NaN when they do not determine one
   */
  static Optional<BaseInterval> interval(
      ToDoubleFunction<int[]> estimate,
      int seasons,
      double level,
      int resamples,
      long seed,
      Progress progress) {
    var all = new int[seasons];
    Arrays.setAll(all, i -> i);
    double value = estimate.applyAsDouble(all);
    double error = jackknife(estimate, all);
    if (!(error > 0 && Double.isFinite(value))) {
      return Optional.empty();
    }
    var random = RandomSource.XO_SHI_RO_256_PP.create(seed);
    var students = new double[resamples];
    int usable = 0;
    for (int b = 0; b < resamples; b++) {
      progress.step("resampled seasons", b, resamples);
      var drawn = draw(random, seasons);
      double other = estimate.applyAsDouble(drawn);
      double otherError = jackknife(estimate, drawn);
      if (Double.isFinite(other) && otherError > 0 && Double.isFinite(otherError)) {
        students[usable++] = (other - value) / otherError;
      }
    }
    progress.step("resampled seasons", resamples, resamples);
    if (usable < LEAST_USABLE * resamples) {
      return Optional.empty();
    }
    var sorted = Arrays.copyOf(students, usable);
    Arrays.sort(sorted);
    double tail = 0.5 * (1 - level);
    return Optional.of(
        new BaseInterval(
            level,
            value - error * quantile(sorted, 1 - tail),
            value - error * quantile(sorted, tail),
            resamples,
            resamples - usable));
  }

  private static int[] draw(UniformRandomProvider random, int seasons) {
    var drawn = new int[seasons];
    for (int i = 0; i < seasons; i++) {
      drawn[i] = random.nextInt(seasons);
    }
    return drawn;
  }

  /** Jackknife standard error, sqrt((n − 1) / n · sum of squared deviations). */
  private static double jackknife(ToDoubleFunction<int[]> estimate, int[] seasons) {
    int n = seasons.length;
    var without = new double[n];
    for (int left = 0; left < n; left++) {
      var rest = new int[n - 1];
      for (int i = 0, j = 0; i < n; i++) {
        if (i != left) {
          rest[j++] = seasons[i];
        }
      }
      without[left] = estimate.applyAsDouble(rest);
    }
    double mean = Moments.mean(without);
    double sum = 0;
    for (double value : without) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum * (n - 1) / n);
  }

  /** Quantile of sorted values by linear interpolation. */
  private static double quantile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) at;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }
}
