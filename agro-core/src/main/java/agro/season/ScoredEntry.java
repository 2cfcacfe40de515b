package agro.season;

import agro.generation.skill.ObservedDate;
import agro.generation.skill.RankedProbability;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * A kept forecast beside what came. A kept day stands for its middle; "not this season" for the end
 * of the season's last day.
 *
 * @param entry the forecast as issued
 * @param observed when the event came, or that it did not
 */
public record ScoredEntry(LedgerEntry entry, ObservedDate observed) {

  private static final double MIDDLE_OF_DAY = 0.5;

  /** Refuses an event that cannot be scored. */
  public ScoredEntry {
    Objects.requireNonNull(entry, "entry");
    if (!observed.known()) {
      throw new IllegalArgumentException("a forecast is scored by a known date: " + observed);
    }
  }

  private double horizonDays() {
    return ChronoUnit.DAYS.between(entry.seasonStart(), entry.seasonEnd()) + 1.0;
  }

  private double days(Optional<LocalDate> day) {
    return day.map(each -> ChronoUnit.DAYS.between(entry.seasonStart(), each) + MIDDLE_OF_DAY)
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double quantileDays(int chance) {
    return Math.min(
        horizonDays(), days(entry.quantiles().get(LedgerEntry.CHANCES.indexOf(chance))));
  }

  /**
   * The observed date as a number, with the season's end in place of "not this season".
   *
   * @return days since the start of the season
   */
  public double observedDays() {
    return Math.min(observed.days(), horizonDays());
  }

  /**
   * The median as a number, with the season's end in place of "not this season".
   *
   * @return days since the start of the season
   */
  public double medianDays() {
    return quantileDays(50);
  }

  /**
   * Forecast less observation.
   *
   * @return days, positive when the forecast was late
   */
  public double errorDays() {
    return medianDays() - observedDays();
  }

  /**
   * Ranked probability score up to the season's end, from the kept quantiles.
   *
   * @return days
   */
  public double rankedProbabilityDays() {
    var quantiles = entry.quantiles().stream().mapToDouble(this::days).toArray();
    var chances = LedgerEntry.CHANCES.stream().mapToDouble(chance -> chance / 100.0).toArray();
    return RankedProbability.ofQuantiles(
        chances, quantiles, entry.chanceNotReached(), observed.days(), horizonDays());
  }

  /**
   * Whether the observed date lies in an interval, whose days count in full.
   *
   * @param probability 0.5, 0.8 or 0.9
   * @return true inside
   * @throws IllegalArgumentException for another probability, whose ends were not kept
   */
  public boolean inside(double probability) {
    var low = (int) Math.rint(50 * (1 - probability));
    if (!LedgerEntry.CHANCES.contains(low)) {
      throw new IllegalArgumentException("the ledger keeps no interval of " + probability);
    }
    return observedDays() >= quantileDays(low) - MIDDLE_OF_DAY
        && observedDays() <= quantileDays(100 - low) + MIDDLE_OF_DAY;
  }
}
