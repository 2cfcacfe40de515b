package agro.programme;

import agro.report.InputProblem;
import java.time.LocalDate;

/**
 * The days of one generation of a pest in a district, given or foreseen.
 *
 * @param district the district; empty for all
 * @param pest the pest
 * @param generation number of the generation, from 1
 * @param first its first day
 * @param last its last day
 */
public record GenerationDays(
    String district, String pest, int generation, LocalDate first, LocalDate last) {

  /** Refuses days out of order. */
  public GenerationDays {
    district = district.strip();
    pest = pest.strip();
    if (last.isBefore(first) || generation < 1) {
      throw InputProblem.of(
              "generation " + generation + " of " + pest + " from " + first + " to " + last)
          .expected("a number from 1 and a last day on or after the first one")
          .because("applications are counted within a generation")
          .mend("look at the number and at both days");
    }
  }

  /**
   * Whether a day lies in the generation.
   *
   * @param day the day
   * @return true from the first to the last day, both included
   */
  public boolean covers(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }
}
