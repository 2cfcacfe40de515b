package agro.weather.gap;

/**
 * How the errors of filled days hang together inside one gap: the errors of days k apart are
 * correlated by the k-th power of the correlation of neighbouring days, as in an autoregressive
 * process of order one. Errors of different gaps are independent.
 *
 * @param dayToDay correlation of the errors of one extreme on neighbouring days, -1 to 1
 * @param minToMax correlation of the errors of minimum and maximum on one day, -1 to 1
 */
public record ErrorCorrelation(double dayToDay, double minToMax) {

  /** Errors that have nothing to do with each other. */
  public static final ErrorCorrelation NONE = new ErrorCorrelation(0, 0);

  /**
   * Errors that all go the same way: the widest case, for filled days of which nothing is known.
   */
  public static final ErrorCorrelation FULL = new ErrorCorrelation(1, 1);

  /** Refuses values that are no correlations. */
  public ErrorCorrelation {
    if (!(Math.abs(dayToDay) <= 1 && Math.abs(minToMax) <= 1)) {
      throw new IllegalArgumentException(
          "correlations of -1 to 1 are needed, not " + dayToDay + " and " + minToMax);
    }
  }

  /** Both correlations, cut to -1 to 1 where rounding went past it. */
  static ErrorCorrelation cut(double dayToDay, double minToMax) {
    return new ErrorCorrelation(cut(dayToDay), cut(minToMax));
  }

  private static double cut(double correlation) {
    return Math.max(-1, Math.min(1, correlation));
  }
}
