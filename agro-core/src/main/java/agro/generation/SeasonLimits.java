package agro.generation;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What may end the season of a pest before its last day, beside want of warmth.
 *
 * @param dayLength short days that allow no further generation; empty when they do not matter
 * @param cold a cold day that ends the season; empty when none does
 * @param lastUsefulDay last day on which a date matters, such as the end of harvest; empty when it
 *     matters to the end of the season
 */
public record SeasonLimits(
    Optional<DayLengthCut> dayLength, Optional<ColdEnd> cold, Optional<LocalDate> lastUsefulDay) {

  /** Nothing but warmth limits the season. */
  public static final SeasonLimits NONE =
      new SeasonLimits(Optional.empty(), Optional.empty(), Optional.empty());

  /** Refuses nulls. */
  public SeasonLimits {
    Objects.requireNonNull(dayLength, "dayLength");
    Objects.requireNonNull(cold, "cold");
    Objects.requireNonNull(lastUsefulDay, "lastUsefulDay");
  }

  /**
   * The same with short days that allow no further generation.
   *
   * @param cut the critical day length
   * @return the changed limits
   */
  public SeasonLimits with(DayLengthCut cut) {
    return new SeasonLimits(Optional.of(cut), cold, lastUsefulDay);
  }

  /**
   * The same with a cold day that ends the season.
   *
   * @param end the cold day
   * @return the changed limits
   */
  public SeasonLimits with(ColdEnd end) {
    return new SeasonLimits(dayLength, Optional.of(end), lastUsefulDay);
  }

  /**
   * The same with a last day on which a date matters.
   *
   * @param day the day, for example the end of harvest
   * @return the changed limits
   */
  public SeasonLimits withLastUsefulDay(LocalDate day) {
    return new SeasonLimits(dayLength, cold, Optional.of(day));
  }
}
