package agro.programme;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Bloom of a crop or of weeds in or beside a field.
 *
 * @param field the field
 * @param plant what blooms
 * @param first first day of bloom
 * @param last last day; nothing while it still blooms
 */
public record BloomPeriod(String field, String plant, LocalDate first, Optional<LocalDate> last) {

  /** Refuses days out of order. */
  public BloomPeriod {
    field = field.strip();
    plant = plant.strip();
    if (last.filter(day -> day.isBefore(first)).isPresent()) {
      throw InputProblem.of("bloom of " + plant + " from " + first + " to " + last.get())
          .expected("a last day on or after the first one")
          .because("no day of bloom comes of it")
          .mend("look at year and month of both days");
    }
  }

  /**
   * Whether it blooms on a day.
   *
   * @param day the day
   * @return true from the first to the last day, both included
   */
  public boolean covers(LocalDate day) {
    return !day.isBefore(first) && last.map(end -> !day.isAfter(end)).orElse(true);
  }
}
