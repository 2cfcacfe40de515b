package agro.generation;

import agro.development.ThermalTimeScale;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;

/**
 * The visits of one season together with the degree-days of its place, counted from the season's
 * start day.
 *
 * @param traps the visits
 * @param scale degree-days from the start day on, to the last day that is known
 */
public record ObservedSeason(TrapSeason traps, ThermalTimeScale scale) {

  private static final int MANY = 5;
  private static final double HARDLY_ANY_WARMTH = 20;

  /** Refuses nulls. */
  public ObservedSeason {
    Objects.requireNonNull(traps, "traps");
    Objects.requireNonNull(scale, "scale");
  }

  /**
   * The year that names the season.
   *
   * @return the year in which it starts
   */
  public int year() {
    return traps.year();
  }

  /** The visits that tell something, on the degree-day scale; the others go into the report. */
  CatchData usable(ReadReport.Collector report) {
    var used = new ArrayList<TrapVisit>();
    var dropped = new LinkedHashMap<String, List<String>>();
    for (var visit : traps.visits()) {
      report.countRow();
      var reason = reasonToDrop(visit);
      if (reason.isEmpty()) {
        used.add(visit);
      } else {
        dropped
            .computeIfAbsent(reason, why -> new ArrayList<>())
            .add(visit.trap() + " on " + visit.date());
      }
    }
    dropped.forEach(
        (reason, visits) ->
            report.add(
                Deed.DROPPED,
                SourceLocation.NONE,
                "season "
                    + year()
                    + ", "
                    + visits.size()
                    + (visits.size() == 1 ? " visit: " : " visits: ")
                    + reason
                    + " ("
                    + String.join(", ", visits)
                    + ")"));
    var from = new double[used.size()];
    var to = new double[used.size()];
    for (var i = 0; i < from.length; i++) {
      from[i] = scale.degreeDaysCAtStartOf(used.get(i).from());
      to[i] = scale.degreeDaysCAtStartOf(used.get(i).date());
    }
    var data = new CatchData(year(), used, from, to);
    if (data.totalCatch() >= MANY && data.lastDegreeDaysC() < HARDLY_ANY_WARMTH) {
      report.add(
          Deed.NOTED,
          SourceLocation.NONE,
          "season "
              + year()
              + ": "
              + data.totalCatch()
              + " animals were caught while only "
              + Numbers.fixed(data.lastDegreeDaysC(), 0)
              + " °C·d had come together: are the temperatures in the stated unit, and is the lower"
              + " threshold right?");
    }
    return data;
  }

  private String reasonToDrop(TrapVisit visit) {
    if (visit.state() == TrapState.FAILED || visit.nightsOpen() == 0) {
      return "the trap was not open, so its nights are unknown and not zero";
    }
    if (visit.from().isBefore(scale.firstDay())) {
      return "it begins before the season's start day " + scale.firstDay();
    }
    if (visit.date().isAfter(end())) {
      return "temperatures are known only to " + scale.lastDay();
    }
    return "";
  }

  private LocalDate end() {
    return scale.lastDay().plusDays(1);
  }
}
