package agro.generation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** Reads the biofix of a season by a rule. */
final class BiofixSearch {

  private BiofixSearch() {}

  /**
   * Applies a rule to a season.
   *
   * @param rule the rule
   * @param season visits and degree-days
   * @param median median of the first flight in °C·d
   * @param shape fitted shape of the flights
   * @return the biofix, or nothing when the rule is not fulfilled in what was seen
   */
  static Optional<Biofix> find(
      BiofixRule rule, ObservedSeason season, double median, FlightShape shape) {
    if (rule instanceof BiofixRule.CalendarDay calendar) {
      return Optional.of(onDay(rule, firstOccurrence(calendar, season.scale().firstDay())));
    }
    if (rule instanceof BiofixRule.ShareOfFirstFlight share) {
      var degreeDays = median + shape.offsetDegreeDaysC(1, share.share());
      var days = season.scale().daysUntil(Math.max(0, degreeDays));
      return Double.isFinite(days)
          ? Optional.of(onDay(rule, season.scale().firstDay().plusDays((long) days)))
          : Optional.empty();
    }
    if (rule instanceof BiofixRule.CumulativeCatch cumulative) {
      return cumulative(cumulative, season);
    }
    var length = rule instanceof BiofixRule.FirstOfRun run ? run.visits() : 1;
    return firstOfRun(rule, season, length);
  }

  private static LocalDate firstOccurrence(BiofixRule.CalendarDay rule, LocalDate start) {
    var day = rule.day().atYear(start.getYear());
    return day.isBefore(start) ? rule.day().atYear(start.getYear() + 1) : day;
  }

  private static Biofix onDay(BiofixRule rule, LocalDate day) {
    return new Biofix(rule, day, day, false);
  }

  private static Optional<Biofix> cumulative(
      BiofixRule.CumulativeCatch rule, ObservedSeason season) {
    var caught = 0L;
    var visits = worked(season);
    for (var visit : visits) {
      caught += visit.count();
      if (caught >= rule.adults()) {
        var first = visit.date().equals(visits.get(0).date());
        return Optional.of(at(rule, visit, before(visits, visit), first));
      }
    }
    return Optional.empty();
  }

  /** Runs are counted trap by trap; the earliest run of any trap is the biofix. */
  private static Optional<Biofix> firstOfRun(BiofixRule rule, ObservedSeason season, int length) {
    var byTrap = new LinkedHashMap<String, List<TrapVisit>>();
    for (var visit : worked(season)) {
      byTrap.computeIfAbsent(visit.trap(), name -> new ArrayList<>()).add(visit);
    }
    Biofix best = null;
    for (var visits : byTrap.values()) {
      for (int i = 0, run = 0; i < visits.size(); i++) {
        run = visits.get(i).count() > 0 ? run + 1 : 0;
        if (run == length) {
          var first = visits.get(i - length + 1);
          var found = at(rule, first, before(visits, first), first.equals(visits.get(0)));
          best = best == null || found.latest().isBefore(best.latest()) ? found : best;
          break;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * The last day on which the same trap was known to work before a visit, or the visit's own first
   * day: nights on which the trap had failed may have had the event already.
   */
  private static LocalDate before(List<TrapVisit> worked, TrapVisit visit) {
    return worked.stream()
        .filter(other -> other.trap().equals(visit.trap()) && other.date().isBefore(visit.date()))
        .map(TrapVisit::date)
        .reduce((earlier, later) -> later)
        .orElse(visit.from());
  }

  private static Biofix at(BiofixRule rule, TrapVisit visit, LocalDate earliest, boolean first) {
    return new Biofix(rule, earliest, visit.date().minusDays(1), first);
  }

  private static List<TrapVisit> worked(ObservedSeason season) {
    return season.traps().visits().stream()
        .filter(visit -> visit.state() != TrapState.FAILED)
        .toList();
  }
}
