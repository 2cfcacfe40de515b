package agro.weather.gap;

import agro.weather.DayRuns;
import java.util.Objects;

/**
 * A gap, or the part of one that was treated in one way.
 *
 * @param days the days
 * @param method what was done
 * @param minErrorCelsius root mean square of the standard errors of the minima in °C; NaN when left
 *     open
 * @param maxErrorCelsius the same of the maxima
 * @param correlation how the errors of its days hang together
 * @param words what it rests on, or why it was left open
 */
public record FilledGap(
    DayRuns.Run days,
    GapMethod method,
    double minErrorCelsius,
    double maxErrorCelsius,
    ErrorCorrelation correlation,
    String words) {

  /** Refuses nulls. */
  public FilledGap {
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(correlation, "correlation");
    Objects.requireNonNull(words, "words");
  }

  /**
   * Whether the days have temperatures now.
   *
   * @return false when the gap was left open
   */
  public boolean isFilled() {
    return method != GapMethod.LEFT_OPEN;
  }
}
