package agro.generation.skill;

import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Forecasts of past seasons as they would have been issued, beside what came, with their scores.
 *
 * @param plan which forecasts were made
 * @param pest the pest
 * @param place the place
 * @param observed the dates of every season, by which the forecasts are judged
 * @param forecasts the forecasts, by scheme, season, event and lead
 * @param report forecasts that could not be made, and what was assumed
 */
public record Hindcast(
    HindcastPlan plan,
    String pest,
    String place,
    List<SeasonDates> observed,
    List<HindcastForecast> forecasts,
    ReadReport report)
    implements Presentable {

  /** Copies the lists. */
  public Hindcast {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(report, "report");
    observed = List.copyOf(observed);
    forecasts = List.copyOf(forecasts);
  }

  /**
   * Forecasts past seasons by the usual plan.
   *
   * @param archive the seasons and what was known of them
   * @return forecasts, dates and scores
   * @throws agro.report.InputProblem when no season is over
   */
  public static Hindcast of(SeasonArchive archive) {
    return HindcastPlan.usual().of(archive);
  }

  /**
   * The events that were forecast.
   *
   * @return in order of flight and share
   */
  public List<FlightEvent> events() {
    return forecasts.stream().map(HindcastForecast::event).distinct().sorted().toList();
  }

  /**
   * Some of the forecasts.
   *
   * @param scheme the scheme
   * @param event the event; empty for all
   * @param lead the lead; empty for all
   * @return the forecasts, possibly none
   */
  public List<HindcastForecast> forecasts(
      HindcastScheme scheme, Optional<FlightEvent> event, Optional<LeadTime> lead) {
    return forecasts.stream()
        .filter(each -> each.scheme() == scheme)
        .filter(each -> event.isEmpty() || each.event().equals(event.get()))
        .filter(each -> lead.isEmpty() || each.lead().equals(lead.get()))
        .toList();
  }

  /**
   * Scores of all events at one lead.
   *
   * @param scheme the scheme
   * @param lead the lead
   * @return the scores
   */
  public HindcastScores scores(HindcastScheme scheme, LeadTime lead) {
    return HindcastScores.of(forecasts(scheme, Optional.empty(), Optional.of(lead)));
  }

  /**
   * Scores of one event at one lead.
   *
   * @param scheme the scheme
   * @param event the event
   * @param lead the lead
   * @return the scores
   */
  public HindcastScores scores(HindcastScheme scheme, FlightEvent event, LeadTime lead) {
    return HindcastScores.of(forecasts(scheme, Optional.of(event), Optional.of(lead)));
  }

  /**
   * All events together by lead: errors, scores, coverage.
   *
   * @param scheme the scheme
   * @return a line a lead
   */
  public ResultTable byLead(HindcastScheme scheme) {
    return HindcastTables.byLead(this, scheme);
  }

  /**
   * Skill against each reference by lead.
   *
   * @param scheme the scheme
   * @return a line a lead
   */
  public ResultTable skillByLead(HindcastScheme scheme) {
    return HindcastTables.skillByLead(this, scheme);
  }

  /**
   * Every event at every lead: errors, scores, coverage and skill.
   *
   * @param scheme the scheme
   * @return a line for each event and lead with a forecast
   */
  public ResultTable byEvent(HindcastScheme scheme) {
    return HindcastTables.byEvent(this, scheme);
  }

  /**
   * The dates by which the forecasts are judged.
   *
   * @return a line for each season and event
   */
  public ResultTable observedTable() {
    return HindcastTables.observed(this);
  }

  /**
   * Every single forecast beside what came.
   *
   * @return a line for each forecast
   */
  public ResultTable rows() {
    return HindcastTables.rows(this);
  }

  @Override
  public Presentation presentation() {
    return HindcastPages.page(this);
  }

  @Override
  public String toString() {
    return presentation().toText();
  }
}
