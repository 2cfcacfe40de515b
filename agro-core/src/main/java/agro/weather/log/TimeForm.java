package agro.weather.log;

import agro.report.InputProblem;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;

/**
 * How a log writes its times and what they mean. What is empty is detected or assumed, and told.
 *
 * @param pattern pattern of date and time in the letters of {@link
 *     java.time.format.DateTimeFormatter}
 * @param order order of day, month and year
 * @param serialDays beginning of the count of days, where times are numbers of days
 * @param zone clock of the log
 * @param dayOffset offset from UTC at whose midnight the days are cut
 * @param step time between readings
 * @param timing what a time means for its reading
 * @param observation when daily extremes were read off
 */
public record TimeForm(
    Optional<String> pattern,
    Optional<DateOrder> order,
    Optional<SerialDays> serialDays,
    Optional<ZoneId> zone,
    Optional<ZoneOffset> dayOffset,
    Optional<Duration> step,
    Optional<ReadingTime> timing,
    Optional<ExtremesReadAt> observation) {

  /** Everything is detected or assumed. */
  public static final TimeForm OPEN =
      new TimeForm(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * Checks the pattern and the step.
   *
   * @throws InputProblem when the pattern cannot be read or the step is not above zero
   */
  public TimeForm {
    Objects.requireNonNull(order, "order");
    Objects.requireNonNull(serialDays, "serialDays");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(dayOffset, "dayOffset");
    Objects.requireNonNull(timing, "timing");
    Objects.requireNonNull(observation, "observation");
    pattern.ifPresent(TimePattern::of);
    if (step.isPresent() && (step.get().isNegative() || step.get().isZero())) {
      throw InputProblem.of("a step of " + step.get() + " between readings")
          .expected("a time above zero")
          .because("the step tells how many readings a complete day has")
          .mend("give for example Duration.ofHours(1), or leave it out to take it from the log");
    }
  }

  /** With another pattern. */
  TimeForm withPattern(String newPattern) {
    return new TimeForm(
        Optional.of(newPattern), order, serialDays, zone, dayOffset, step, timing, observation);
  }

  /** With another order. */
  TimeForm withOrder(DateOrder newOrder) {
    return new TimeForm(
        pattern, Optional.of(newOrder), serialDays, zone, dayOffset, step, timing, observation);
  }

  /** With another serialDays. */
  TimeForm withSerialDays(SerialDays newSerialDays) {
    return new TimeForm(
        pattern, order, Optional.of(newSerialDays), zone, dayOffset, step, timing, observation);
  }

  /** With another zone. */
  TimeForm withZone(ZoneId newZone) {
    return new TimeForm(
        pattern, order, serialDays, Optional.of(newZone), dayOffset, step, timing, observation);
  }

  /** With another dayOffset. */
  TimeForm withDayOffset(ZoneOffset newDayOffset) {
    return new TimeForm(
        pattern, order, serialDays, zone, Optional.of(newDayOffset), step, timing, observation);
  }

  /** With another step. */
  TimeForm withStep(Duration newStep) {
    return new TimeForm(
        pattern, order, serialDays, zone, dayOffset, Optional.of(newStep), timing, observation);
  }

  /** With another timing. */
  TimeForm withTiming(ReadingTime newTiming) {
    return new TimeForm(
        pattern, order, serialDays, zone, dayOffset, step, Optional.of(newTiming), observation);
  }

  /** With another observation. */
  TimeForm withObservation(ExtremesReadAt newObservation) {
    return new TimeForm(
        pattern, order, serialDays, zone, dayOffset, step, timing, Optional.of(newObservation));
  }
}
