package agro.notebook.figure;

import agro.generation.DateDistribution;
import agro.generation.FlightShare;
import agro.generation.skill.FlightEvent;
import agro.generation.skill.Hindcast;
import agro.generation.skill.HindcastForecast;
import agro.generation.skill.HindcastPlan;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.LeadTime;
import agro.generation.skill.ObservedDate;
import agro.generation.skill.SeasonDates;
import agro.generation.skill.SkillReference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A small hindcast made by hand; every number is invented. */
final class HindcastSamples {

  static final FlightEvent HALF = new FlightEvent(2, FlightShare.HALF);

  private HindcastSamples() {}

  /** Two seasons, one event, forecast 7 days before: one hit on time and one miss 12 days late. */
  static Hindcast hindcast() {
    var seasons = new ArrayList<SeasonDates>();
    var forecasts = new ArrayList<HindcastForecast>();
    for (var year = 2024; year <= 2025; year++) {
      var firstDay = LocalDate.of(year, 3, 1);
      var observed = new ObservedDate(ObservedDate.Kind.CAME, 100.5, 0.8, "");
      var dates = new TreeMap<FlightEvent, ObservedDate>();
      dates.put(HALF, observed);
      seasons.add(new SeasonDates(year, firstDay, dates));
      var shift = year == 2024 ? 0 : 12;
      forecasts.add(
          new HindcastForecast(
              HindcastScheme.LEAVE_ONE_OUT,
              year,
              firstDay,
              LocalDate.of(year, 10, 31),
              HALF,
              LeadTime.days(7),
              observed.day(firstDay).minusDays(7),
              around(firstDay, 100.5 + shift, 1),
              observed,
              Map.of(SkillReference.CALENDAR, around(firstDay, 130.5, 2))));
    }
    var plan =
        HindcastPlan.usual()
            .withSchemes(HindcastScheme.LEAVE_ONE_OUT)
            .withLeads(LeadTime.days(7), LeadTime.SEASON_START);
    return new Hindcast(
        plan, "leek moth", "Upper Croft", seasons, forecasts, FigureSamples.report());
  }

  static Hindcast empty() {
    var whole = hindcast();
    return new Hindcast(
        whole.plan(), whole.pest(), whole.place(), whole.observed(), List.of(), whole.report());
  }

  /** Eleven outcomes, so many days apart. */
  private static DateDistribution around(LocalDate firstDay, double middle, double step) {
    var days = new double[11];
    for (var i = 0; i < days.length; i++) {
      days[i] = middle + (i - 5) * step;
    }
    return DateDistribution.ofOutcomes(firstDay, days);
  }
}
