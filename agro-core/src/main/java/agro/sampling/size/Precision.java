package agro.sampling.size;

import agro.report.InputProblem;
import agro.units.Numbers;

/** How exact a mean shall be. */
public sealed interface Precision {

  /**
   * The variance that the mean of a sample may have.
   *
   * @param mean expected mean, above 0
   * @param quantile two-sided quantile of the deviate for the level of an interval
   * @return the greatest variance of the mean
   */
  double variance(double mean, double quantile);

  /**
   * Level of the interval that is asked for.
   *
   * @return 0 to 1; NaN for a standard error
   */
  double level();

  /**
   * The precision in words.
   *
   * @return one line
   */
  String words();

  /**
   * A standard error that is a share of the mean.
   *
   * @param share D, above 0, such as 0.25
   */
  record RelativeStandardError(double share) implements Precision {
    /** Checks the share. */
    public RelativeStandardError {
      requirePositive(share, "standard error over the mean");
    }

    @Override
    public double variance(double mean, double quantile) {
      return share * mean * share * mean;
    }

    @Override
    public double level() {
      return Double.NaN;
    }

    @Override
    public String words() {
      return "a standard error of " + Numbers.plain(100 * share) + " % of the mean";
    }
  }

  /**
   * An interval whose half width is a share of the mean.
   *
   * @param share half width over the mean, above 0
   * @param level level of the interval, such as 0.95
   */
  record RelativeHalfWidth(double share, double level) implements Precision {
    /** Checks share and level. */
    public RelativeHalfWidth {
      requirePositive(share, "half width over the mean");
      requireLevel(level);
    }

    @Override
    public double variance(double mean, double quantile) {
      return Math.pow(share * mean / quantile, 2);
    }

    @Override
    public String words() {
      return "a "
          + Numbers.plain(100 * level)
          + " % interval of ± "
          + Numbers.plain(100 * share)
          + " % of the mean";
    }
  }

  /**
   * An interval of stated half width.
   *
   * @param halfWidth half width in the unit of the mean, above 0
   * @param level level of the interval, such as 0.95
   */
  record AbsoluteHalfWidth(double halfWidth, double level) implements Precision {
    /** Checks half width and level. */
    public AbsoluteHalfWidth {
      requirePositive(halfWidth, "half width");
      requireLevel(level);
    }

    @Override
    public double variance(double mean, double quantile) {
      return Math.pow(halfWidth / quantile, 2);
    }

    @Override
    public String words() {
      return "a " + Numbers.plain(100 * level) + " % interval of ± " + Numbers.plain(halfWidth);
    }
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number above 0")
          .because("no number of units gives a mean without error")
          .mend("say how exact the decision needs the mean, such as 0.25");
    }
  }

  private static void requireLevel(double level) {
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("a level of " + level)
          .expected("a number above 0 and below 1")
          .because("no interval holds the mean for certain")
          .mend("take for example 0.95");
    }
  }
}
