package agro.generation;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;

/**
 * All visits to the traps of one pest at one place in one season.
 *
 * @param year the year in which the season starts, which names it
 * @param visits the visits, kept in order of day and trap
 */
public record TrapSeason(int year, List<TrapVisit> visits) {

  /** Sorts the visits and refuses two of one trap that overlap. */
  public TrapSeason {
    visits =
        visits.stream()
            .sorted(Comparator.comparing(TrapVisit::date).thenComparing(TrapVisit::trap))
            .toList();
    var lastVisit = new HashMap<String, LocalDate>();
    for (var visit : visits) {
      var before = lastVisit.put(visit.trap(), visit.date());
      if (before != null && visit.from().isBefore(before)) {
        throw InputProblem.of(
                "the visits to trap "
                    + visit.trap()
                    + " overlap: one ends on "
                    + before
                    + ", the next begins on "
                    + visit.from())
            .expected("visits that follow each other")
            .because("a night that is counted twice doubles its catch")
            .mend("correct the days of the two visits");
      }
    }
  }

  /**
   * The season as it was known at the start of a day: visits on that day or earlier.
   *
   * @param day the last day whose visits are known
   * @return the same season without later visits
   */
  public TrapSeason upTo(LocalDate day) {
    return new TrapSeason(
        year, visits.stream().filter(visit -> !visit.date().isAfter(day)).toList());
  }

  /**
   * Adults caught in the whole season by traps that worked or were full.
   *
   * @return the sum of the counts
   */
  public long totalCatch() {
    return visits.stream()
        .filter(visit -> visit.state() != TrapState.FAILED)
        .mapToLong(TrapVisit::count)
        .sum();
  }
}
