package agro.generation;

import agro.weather.gap.ErrorCorrelation;
import java.util.Objects;

/**
 * How the errors of the known days hang together: days bridged from a neighbour, interpolated and
 * forecast days. The standard error of each day stands in the temperatures themselves.
 *
 * @param correlation correlation of these errors from day to day and between minimum and maximum,
 *     within each unbroken run of days of one origin; none between runs
 * @param offsetMinCelsius standard error of the mean offset of the neighbour's minima in °C, the
 *     same on all bridged days
 * @param offsetMaxCelsius the same of its maxima
 */
public record KnownDayErrors(
    ErrorCorrelation correlation, double offsetMinCelsius, double offsetMaxCelsius) {

  /** Errors that all go the same way within a run, where nothing is known of them. */
  public static final KnownDayErrors WIDEST = new KnownDayErrors(ErrorCorrelation.FULL, 0, 0);

  /** Checks the errors. */
  public KnownDayErrors {
    Objects.requireNonNull(correlation, "correlation");
    if (!(offsetMinCelsius >= 0 && offsetMaxCelsius >= 0)
        || Double.isInfinite(offsetMinCelsius + offsetMaxCelsius)) {
      throw new IllegalArgumentException(
          "errors of an offset are 0 °C or more, not "
              + offsetMinCelsius
              + " and "
              + offsetMaxCelsius);
    }
  }
}
