package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Turns the times that a logger wrote, in the order of the file, into instants. When a civil clock
 * is set back, an hour is written twice: as soon as the times step back or repeat, the second hour
 * has begun. A time in the hour that the clock skipped cannot have been, and is dropped.
 */
final class LogClock {

  private final Optional<ZoneRules> rules;
  private final Optional<ZoneId> zone;
  private final List<Tally> skipped = new ArrayList<>();
  private final List<Doubled> doubled = new ArrayList<>();
  private Optional<Boolean> writesOffsets = Optional.empty();
  private ZoneOffsetTransition skippedAt;
  private final Optional<ZoneOffset> declaredDayOffset;
  private ZoneOffset dayOffset;

  LogClock(Optional<ZoneId> zone, Optional<ZoneOffset> declaredDayOffset) {
    this.zone = zone;
    this.declaredDayOffset = declaredDayOffset;
    this.rules = zone.map(ZoneId::getRules);
  }

  /** One setting back of the clock. */
  private static final class Doubled {
    private final ZoneOffsetTransition transition;
    private final SourceLocation place;
    private long lastLocal;
    private boolean second;

    private Doubled(ZoneOffsetTransition transition, SourceLocation place) {
      this.transition = transition;
      this.place = place;
      this.lastLocal = Long.MIN_VALUE;
    }

    private ZoneOffset offset(long local) {
      second |= local <= lastLocal;
      lastLocal = local;
      return second ? transition.getOffsetAfter() : transition.getOffsetBefore();
    }
  }

  /** Seconds since 1970-01-01T00:00Z, or nothing when the clock never showed that time. */
  OptionalLong instant(TimePattern.Stamp stamp, SourceLocation place) {
    requireOneKind(stamp, place);
    var offset = stamp.offset().or(() -> offsetOf(stamp.localSeconds(), place));
    if (offset.isEmpty()) {
      return OptionalLong.empty();
    }
    long second = stamp.localSeconds() - offset.get().getTotalSeconds();
    if (dayOffset == null) {
      requireKnownClock(stamp, place);
      dayOffset = declaredDayOffset.orElseGet(() -> usualDayOffset(second, offset.get()));
    }
    return OptionalLong.of(second);
  }

  /** Whether a time has been read, so that the offset of the days is known. */
  boolean hasBegun() {
    return dayOffset != null;
  }

  private ZoneOffset usualDayOffset(long second, ZoneOffset written) {
    return rules
        .map(known -> known.getStandardOffset(Instant.ofEpochSecond(second)))
        .orElse(written);
  }

  private void requireKnownClock(TimePattern.Stamp stamp, SourceLocation place) {
    if (declaredDayOffset.isPresent() && zone.isEmpty() && stamp.offset().isEmpty()) {
      throw InputProblem.at(
              place, "days cut at UTC" + declaredDayOffset.get() + ", but a clock of unknown zone")
          .expected("the time zone of the clock, or times with their offset")
          .because("it is unknown where on that clock the days of the place begin")
          .mend("declare the zone of the clock too, for example UTC");
    }
  }

  private void requireOneKind(TimePattern.Stamp stamp, SourceLocation place) {
    boolean written = stamp.offset().isPresent();
    if (writesOffsets.isEmpty()) {
      writesOffsets = Optional.of(written);
    } else if (writesOffsets.get() != written) {
      throw InputProblem.at(
              place, written ? "a time with an offset from UTC" : "a time without its offset")
          .expected("all times of the log with an offset, or none")
          .because("the times cannot be put on one line")
          .mend("write all times alike");
    }
  }

  private Optional<ZoneOffset> offsetOf(long local, SourceLocation place) {
    if (rules.isEmpty() || rules.get().isFixedOffset()) {
      return Optional.of(rules.map(fixed -> fixed.getOffset(Instant.EPOCH)).orElse(ZoneOffset.UTC));
    }
    var time = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC);
    var offsets = rules.get().getValidOffsets(time);
    if (offsets.size() == 1) {
      return Optional.of(offsets.get(0));
    }
    var transition = rules.get().getTransition(time);
    if (transition.isGap()) {
      skip(transition, place);
      return Optional.empty();
    }
    return Optional.of(doubled(transition, place).offset(local));
  }

  private void skip(ZoneOffsetTransition transition, SourceLocation place) {
    if (!transition.equals(skippedAt)) {
      skippedAt = transition;
      skipped.add(
          new Tally(
              Deed.DROPPED,
              "a time that the clock skipped when it was set forward from "
                  + words(transition.getDateTimeBefore())
                  + " to "
                  + words(transition.getDateTimeAfter())));
    }
    skipped.get(skipped.size() - 1).add(place);
  }

  private Doubled doubled(ZoneOffsetTransition transition, SourceLocation place) {
    var last = doubled.isEmpty() ? null : doubled.get(doubled.size() - 1);
    if (last == null || !last.transition.equals(transition)) {
      last = new Doubled(transition, place);
      doubled.add(last);
    }
    return last;
  }

  /** Whether a time fell into an hour that comes twice. */
  boolean hasDoubledHour() {
    return !doubled.isEmpty();
  }

  /** The offset in which days are cut at midnight, all year. */
  ZoneOffset dayOffset() {
    return dayOffset == null ? ZoneOffset.UTC : dayOffset;
  }

  /** What was assumed and dropped about the clock. */
  void tell(ReadReport.Collector collector, SourceLocation file) {
    tellDays(collector, file);
    skipped.forEach(tally -> tally.tell(collector));
    for (var each : doubled) {
      var hour =
          "the clock was set back from "
              + words(each.transition.getDateTimeBefore())
              + " to "
              + words(each.transition.getDateTimeAfter());
      collector.add(
          each.second ? Deed.NOTED : Deed.ASSUMED,
          each.place,
          each.second
              ? hour + "; the doubled hour stands in the log twice and is read in its order"
              : hour + "; the doubled hour stands in the log once and is taken for the first one");
    }
  }

  private void tellDays(ReadReport.Collector collector, SourceLocation file) {
    var midnights = "days run from midnight to midnight ";
    if (declaredDayOffset.isPresent()) {
      collector.add(
          Deed.NOTED, file, midnights + "of UTC" + dayOffset() + " all year, as declared");
    } else if (zone.isEmpty() && writesOffsets.orElse(false)) {
      collector.add(
          Deed.ASSUMED, file, midnights + "at the offset of the first reading, " + dayOffset());
    } else if (zone.isEmpty()) {
      collector.add(
          Deed.ASSUMED,
          file,
          "no time zone is declared: the clock is taken to keep one time all year, and days run"
              + " from midnight to midnight of it");
    } else if (!rules.orElseThrow().isFixedOffset()) {
      collector.add(
          Deed.NOTED,
          file,
          midnights
              + "of standard time in "
              + zone.get()
              + " (UTC"
              + dayOffset()
              + ") all year, so that each has 24 hours");
    }
  }

  private static String words(LocalDateTime time) {
    return time.toLocalDate() + " " + time.toLocalTime();
  }
}
