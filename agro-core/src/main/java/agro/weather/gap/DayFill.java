package agro.weather.gap;

/** The extremes proposed for one day of a gap, with their standard errors, all in °C. */
record DayFill(double min, double max, double minError, double maxError) {

  /** Where the extremes would cross, both are their mean. */
  DayFill {
    if (min > max) {
      min = 0.5 * (min + max);
      max = min;
    }
  }

  boolean isKnown() {
    return Double.isFinite(min)
        && Double.isFinite(max)
        && Double.isFinite(minError)
        && Double.isFinite(maxError);
  }
}
