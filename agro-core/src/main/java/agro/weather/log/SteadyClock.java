package agro.weather.log;

import java.time.Instant;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.Optional;

/**
 * The stretch around a time in which a clock keeps one offset from UTC, a day away from any change:
 * inside it the offset needs no looking up. Not thread-safe.
 */
final class SteadyClock {

  private static final int DAY = 86_400;

  private final Optional<ZoneRules> rules;
  private long from = Long.MAX_VALUE;
  private long to = Long.MIN_VALUE;
  private int offset;

  SteadyClock(Optional<ZoneId> zone) {
    rules = zone.map(ZoneId::getRules);
  }

  /** Whether the clock runs steadily at a time, given in seconds on that clock. */
  boolean isSteady(long local) {
    if (local < from || local >= to) {
      moveTo(local);
    }
    return local >= from && local < to;
  }

  /** Offset of the clock in seconds at the time that was asked for last, if it is steady there. */
  int offset() {
    return offset;
  }

  private void moveTo(long local) {
    if (rules.isEmpty() || rules.get().isFixedOffset()) {
      offset = rules.map(fixed -> fixed.getOffset(Instant.EPOCH).getTotalSeconds()).orElse(0);
      from = Long.MIN_VALUE;
      to = Long.MAX_VALUE;
      return;
    }
    // No offset is larger than 18 h, so two days away from every change is a day away on any clock.
    var moment = Instant.ofEpochSecond(local);
    var before = rules.get().previousTransition(moment.plusNanos(1));
    var after = rules.get().nextTransition(moment);
    offset = rules.get().getOffset(moment).getTotalSeconds();
    from = before == null ? Long.MIN_VALUE : before.toEpochSecond() + 2 * DAY;
    to = after == null ? Long.MAX_VALUE : after.toEpochSecond() - 2 * DAY;
  }
}
