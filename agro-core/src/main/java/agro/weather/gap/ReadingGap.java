package agro.weather.gap;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * A stretch of a log without readings.
 *
 * @param first moment of the first reading that is not there
 * @param readings number of readings that are not there, at the step of the log
 * @param step step of the log
 * @param method what was done
 * @param errorCelsius root mean square of the standard errors of the filled readings in °C; NaN
 *     when left open
 * @param words what it rests on, or why it was left open
 */
public record ReadingGap(
    OffsetDateTime first,
    int readings,
    Duration step,
    ReadingGapMethod method,
    double errorCelsius,
    String words) {

  /** Refuses nulls. */
  public ReadingGap {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(words, "words");
  }

  /**
   * Length of the gap: the step for each reading that is not there.
   *
   * @return a positive time
   */
  public Duration length() {
    return step.multipliedBy(readings);
  }

  /**
   * Whether the readings were filled in.
   *
   * @return false when the gap was left open
   */
  public boolean isFilled() {
    return method != ReadingGapMethod.LEFT_OPEN;
  }
}
