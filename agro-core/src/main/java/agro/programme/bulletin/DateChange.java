package agro.programme.bulletin;

import agro.generation.DateDistribution;
import agro.generation.ForecastRow;
import agro.season.LedgerEntry;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A date of the last page beside the same date as it is seen today.
 *
 * @param before the line as it was issued
 * @param now the line of today's forecast
 */
public record DateChange(LedgerEntry before, ForecastRow now) {

  private static final int LOW = LedgerEntry.CHANCES.indexOf(10);
  private static final int HIGH = LedgerEntry.CHANCES.indexOf(90);

  /** Refuses nulls. */
  public DateChange {
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(now, "now");
  }

  /**
   * Days by which the median has moved.
   *
   * @return positive when it is later now; nothing where one of the two is not this season
   */
  public OptionalLong movedDays() {
    var then = before.median();
    var today = now.dates().median();
    return then.isPresent() && today.isPresent()
        ? OptionalLong.of(ChronoUnit.DAYS.between(then.get(), today.get()))
        : OptionalLong.empty();
  }

  /**
   * Whether the date has passed, in the light of today, with nine chances in ten.
   *
   * @param asOf day of issue
   * @return true if it lies before the day
   */
  public boolean isOver(LocalDate asOf) {
    return dates().quantile(0.9).map(day -> day.isBefore(asOf)).orElse(false);
  }

  private DateDistribution dates() {
    return now.dates();
  }

  /**
   * Whether today's median lies in the interval that the last page gave with eight chances in ten.
   *
   * @return true inside; days count in full
   */
  public boolean wasInside() {
    var today = dates().median();
    var low = before.quantiles().get(LOW);
    var high = before.quantiles().get(HIGH);
    if (today.isEmpty()) {
      return high.isEmpty();
    }
    return low.map(day -> !today.get().isBefore(day)).orElse(false)
        && high.map(day -> !today.get().isAfter(day)).orElse(true);
  }

  /** First and last day of the interval of the last page with eight chances in ten. */
  Optional<LocalDate> low() {
    return before.quantiles().get(LOW);
  }

  Optional<LocalDate> high() {
    return before.quantiles().get(HIGH);
  }
}
