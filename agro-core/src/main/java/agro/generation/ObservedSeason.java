package agro.generation;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The visits of one season together with the degree-days of its place, counted from the season's
 * start day.
 *
 * @param traps the visits
 * @param scale degree-days from the start day on, to the last day that is known
 * @param temperatures the temperatures behind the scale; without them nothing can be said of other
 *     thresholds or of nights too cold for flight
 * @param site name of the place where several are fitted at once; empty for one place
 */
public record ObservedSeason(
    TrapSeason traps,
    ThermalTimeScale scale,
    Optional<DailyTemperatures> temperatures,
    String site) {

  private static final int MANY = 5;
  private static final double HARDLY_ANY_WARMTH = 20;

  /** Refuses nulls. */
  public ObservedSeason {
    Objects.requireNonNull(traps, "traps");
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(temperatures, "temperatures");
    Objects.requireNonNull(site, "site");
  }

  /**
   * A season of one place without its temperatures.
   *
   * @param traps the visits
   * @param scale degree-days from the start day on
   */
  public ObservedSeason(TrapSeason traps, ThermalTimeScale scale) {
    this(traps, scale, Optional.empty(), "");
  }

  /**
   * A season of one place with its temperatures.
   *
   * @param traps the visits
   * @param scale degree-days from the start day on
   * @param temperatures the temperatures behind the scale
   * @return the season
   */
  public static ObservedSeason of(
      TrapSeason traps, ThermalTimeScale scale, DailyTemperatures temperatures) {
    return new ObservedSeason(traps, scale, Optional.of(temperatures), "");
  }

  /**
   * A season of one place with its temperatures.
   *
   * @param traps the visits
   * @param model rule for the degree-days
   * @param temperatures temperatures without a gap, from the season's start day on
   * @return the season
   */
  public static ObservedSeason of(
      TrapSeason traps, DegreeDayModel model, DailyTemperatures temperatures) {
    return of(
        traps, ThermalTimeScale.of(model, temperatures, temperatures.firstDay()), temperatures);
  }

  /**
   * The same season under the name of its site, for a fit of several sites at once.
   *
   * @param name name of the site
   * @return the named season
   */
  public ObservedSeason at(String name) {
    return new ObservedSeason(traps, scale, temperatures, name);
  }

  /** The same season on the degree-day scale of another model, for which it needs temperatures. */
  ObservedSeason on(DegreeDayModel model) {
    var days = temperatures.orElseThrow();
    return new ObservedSeason(
        traps, ThermalTimeScale.of(model, days, scale.firstDay()), temperatures, site);
  }

  /** Year, and site where there are several. */
  String label() {
    return site.isEmpty() ? Integer.toString(year()) : year() + " at " + site;
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
    return usable(CatchConditions.NONE, report);
  }

  /**
   * The visits that tell something under given conditions, none of which is left to be estimated.
   */
  CatchData usable(CatchConditions conditions, ReadReport.Collector report) {
    var nights = new ConditionedNights(this, conditions);
    var used = new ArrayList<TrapVisit>();
    var dropped = new LinkedHashMap<String, List<String>>();
    for (var visit : traps.visits()) {
      report.countRow();
      var reason = reasonToDrop(visit, nights);
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
                    + label()
                    + ", "
                    + visits.size()
                    + (visits.size() == 1 ? " visit: " : " visits: ")
                    + reason
                    + " ("
                    + String.join(", ", visits)
                    + ")"));
    var data = nights.data(used);
    noteTooColdToCatch(data, report);
    return data;
  }

  private void noteTooColdToCatch(CatchData data, ReadReport.Collector report) {
    if (data.totalCatch() >= MANY && data.lastDegreeDaysC() < HARDLY_ANY_WARMTH) {
      report.add(
          Deed.NOTED,
          SourceLocation.NONE,
          "season "
              + label()
              + ": "
              + data.totalCatch()
              + " animals were caught while only "
              + Numbers.fixed(data.lastDegreeDaysC(), 0)
              + " °C·d had come together: are the temperatures in the stated unit, and is the lower"
              + " threshold right?");
    }
  }

  private String reasonToDrop(TrapVisit visit, ConditionedNights nights) {
    if (visit.state() == TrapState.FAILED || visit.nightsOpen() == 0) {
      return "the trap was not open, so its nights are unknown and not zero";
    }
    if (visit.from().isBefore(scale.firstDay())) {
      return "it begins before the season's start day " + scale.firstDay();
    }
    if (visit.date().isAfter(end())) {
      return "temperatures are known only to " + scale.lastDay();
    }
    if (nights.countOf(visit) == 0) {
      return visit.count() == 0
          ? "none of its nights was fit for flight, so it tells nothing"
          : "it caught animals though none of its nights was fit for flight: is the limit right?";
    }
    return "";
  }

  private LocalDate end() {
    return scale.lastDay().plusDays(1);
  }
}
