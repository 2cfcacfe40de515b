package agro.programme.bulletin;

import agro.generation.TrapSeason;
import agro.generation.TrapState;
import agro.generation.TrapVisit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Catch of all traps together between two days on which one of them was visited. The catch of a
 * trap is spread evenly over the nights since its visit before.
 *
 * @param from first day, from its start
 * @param to last day, to its start
 * @param caught animals; a part of a count where the traps were not visited on the same days
 * @param trapNights nights on which traps could catch, over all traps; 0 where none worked
 * @param atLeast whether a trap was full, so that more may have flown
 */
public record CatchSpan(
    LocalDate from, LocalDate to, double caught, double trapNights, boolean atLeast) {

  /** Refuses days out of order. */
  public CatchSpan {
    if (!to.isAfter(from) || !(caught >= 0 && trapNights >= 0)) {
      throw new IllegalArgumentException(
          caught + " in " + trapNights + " trap-nights from " + from + " to " + to);
    }
  }

  /**
   * Catch for each night of a trap.
   *
   * @return the catch over the trap-nights; nothing where no trap worked
   */
  public OptionalDouble perTrapNight() {
    return trapNights > 0 ? OptionalDouble.of(caught / trapNights) : OptionalDouble.empty();
  }

  /**
   * The spans of a season.
   *
   * @param season the visits
   * @return the spans in order, without gaps between the first and the last visit; days with no
   *     trap out are left out
   */
  public static List<CatchSpan> of(TrapSeason season) {
    var days = new TreeSet<LocalDate>();
    for (var visit : season.visits()) {
      days.add(visit.from());
      days.add(visit.date());
    }
    var spans = new ArrayList<CatchSpan>();
    LocalDate from = null;
    for (var to : days) {
      if (from != null) {
        add(season.visits(), from, to, spans);
      }
      from = to;
    }
    return List.copyOf(spans);
  }

  private static void add(
      List<TrapVisit> visits, LocalDate from, LocalDate to, List<CatchSpan> spans) {
    double caught = 0;
    double nights = 0;
    boolean full = false;
    boolean out = false;
    for (var visit : visits) {
      if (visit.from().isAfter(from) || visit.date().isBefore(to)) {
        continue;
      }
      out = true;
      if (visit.state() != TrapState.FAILED && visit.nightsOpen() > 0) {
        double share = ChronoUnit.DAYS.between(from, to) / (double) visit.nights();
        caught += visit.count() * share;
        nights += visit.nightsOpen() * share;
        full |= visit.state() == TrapState.FULL;
      }
    }
    if (out) {
      spans.add(new CatchSpan(from, to, caught, nights, full));
    }
  }
}
