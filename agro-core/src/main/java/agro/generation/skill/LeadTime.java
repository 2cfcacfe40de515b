package agro.generation.skill;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * How long before an event a forecast is issued.
 *
 * @param daysBefore days before the event; empty for the first day of the season
 */
public record LeadTime(OptionalInt daysBefore) implements Comparable<LeadTime> {

  /** The first day of the season. */
  public static final LeadTime SEASON_START = new LeadTime(OptionalInt.empty());

  /** Refuses a lead of less than a day. */
  public LeadTime {
    if (daysBefore.isPresent() && daysBefore.getAsInt() < 1) {
      throw new IllegalArgumentException(
          "a forecast is issued at least 1 day before, but got " + daysBefore.getAsInt());
    }
  }

  /**
   * A lead of some days.
   *
   * @param days days before the event, at least 1
   * @return the lead
   */
  public static LeadTime days(int days) {
    return new LeadTime(OptionalInt.of(days));
  }

  /** Day of issue for an event, or the season's first day. */
  LocalDate issueDate(LocalDate event, LocalDate seasonStart) {
    return daysBefore.isPresent() ? event.minusDays(daysBefore.getAsInt()) : seasonStart;
  }

  /**
   * The lead in words.
   *
   * @return for example {@code "14 days before"}
   */
  public String words() {
    return daysBefore.isPresent()
        ? daysBefore.getAsInt() + (daysBefore.getAsInt() == 1 ? " day before" : " days before")
        : "season start";
  }

  /**
   * The lead as it ends a sentence.
   *
   * @return for example {@code "issued 14 days before"}
   */
  public String issuedWords() {
    return daysBefore.isPresent() ? "issued " + words() : "issued at the season's start";
  }

  /** Short leads before long ones; the season start comes last. */
  @Override
  public int compareTo(LeadTime other) {
    return Integer.compare(
        daysBefore.orElse(Integer.MAX_VALUE), other.daysBefore.orElse(Integer.MAX_VALUE));
  }
}
