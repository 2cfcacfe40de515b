package agro.generation.skill;

import agro.generation.DateDistribution;
import agro.generation.FlightTiming;
import agro.generation.FlightTimingFit;
import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.generation.ObservedSeason;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The steps of a hindcast: dates of all seasons, days of issue, forecasts, in a fixed order. */
final class HindcastProcedure {

  private static final String WORK = "hindcast";

  private final HindcastPlan plan;
  private final SeasonArchive archive;
  private final Progress progress;
  private final Map<Learnt, FlightTimingFit> fits = new ConcurrentHashMap<>();
  private final ReadReport.Collector report = new ReadReport.Collector(WORK);

  HindcastProcedure(HindcastPlan plan, SeasonArchive archive, Progress progress) {
    this.plan = plan;
    this.archive = archive;
    this.progress = progress;
  }

  /** A forecast of one day of issue, and the events that it is scored for. */
  private record Issue(
      HindcastScheme scheme, int year, LocalDate date, Map<FlightEvent, List<LeadTime>> events) {}

  /** What a fit rests on. */
  private record Learnt(FlightTiming timing, List<ObservedSeason> past) {}

  /** What came of a day of issue: forecasts, or why there is none. */
  private record Outcome(List<HindcastForecast> forecasts, String refusal) {}

  Hindcast run() {
    var observed = SeasonDates.of(archive, progress);
    if (observed.isEmpty()) {
      throw InputProblem.of(
              "no season of " + archive.pest() + " at " + archive.place() + " is over")
          .expected("at least one season with visits and temperatures to its end")
          .because("forecasts of past seasons are judged by what came")
          .mend("wait for the end of the season, or add seasons that are over");
    }
    var issues = issues(observed);
    var outcomes =
        new OrderedWork(WORK, plan.atATime(), progress)
            .run(issues, issue -> outcome(issue, observed));
    var forecasts = new ArrayList<HindcastForecast>();
    for (var i = 0; i < issues.size(); i++) {
      forecasts.addAll(outcomes.get(i).forecasts());
      noteRefusal(issues.get(i), outcomes.get(i));
    }
    forecasts.sort(HindcastTables.ORDER);
    return new Hindcast(
        plan, archive.pest(), archive.place(), observed, forecasts, report.report());
  }

  private void noteRefusal(Issue issue, Outcome outcome) {
    if (!outcome.refusal().isEmpty()) {
      report.add(
          Deed.DROPPED,
          SourceLocation.NONE,
          "no forecast of "
              + issue.date()
              + ", "
              + issue.scheme().words()
              + ": "
              + outcome.refusal());
    }
  }

  private List<Issue> issues(List<SeasonDates> observed) {
    var issues = new ArrayList<Issue>();
    for (var scheme : plan.schemes()) {
      for (var season : observed) {
        var byDate = new TreeMap<LocalDate, Map<FlightEvent, List<LeadTime>>>();
        season.dates().forEach((event, date) -> add(byDate, season.year(), event, date));
        byDate.forEach(
            (date, events) -> issues.add(new Issue(scheme, season.year(), date, events)));
      }
    }
    return issues;
  }

  /** An event that did not come is foretold before the season's last day. */
  private void add(
      Map<LocalDate, Map<FlightEvent, List<LeadTime>>> byDate,
      int year,
      FlightEvent event,
      ObservedDate date) {
    if (!date.known() || !plan.shares().contains(event.share())) {
      return;
    }
    var start = archive.firstDay(year);
    var day = date.came() ? date.day(start) : archive.lastDay(year);
    for (var lead : plan.leads()) {
      var issueDate = lead.issueDate(day, start);
      if (!issueDate.isBefore(start) && issueDate.isBefore(day)) {
        byDate
            .computeIfAbsent(issueDate, each -> new TreeMap<>())
            .computeIfAbsent(event, each -> new ArrayList<>())
            .add(lead);
      }
    }
  }

  private Outcome outcome(Issue issue, List<SeasonDates> observed) {
    try {
      return new Outcome(forecasts(issue, observed), "");
    } catch (InputProblem refused) {
      return new Outcome(List.of(), refused.getMessage());
    }
  }

  private List<HindcastForecast> forecasts(Issue issue, List<SeasonDates> observed) {
    var known = archive.known(issue.year(), issue.date(), issue.scheme());
    requireNothingLater(issue, known);
    var fit = fit(timing(issue), known.past());
    var forecast = GenerationForecast.of(fit, known.underWay(), List.of(), Progress.silent());
    var references = new PlainReferences(fit, known, archive);
    var truth =
        observed.stream().filter(each -> each.year() == issue.year()).findFirst().orElseThrow();
    var made = new ArrayList<HindcastForecast>();
    issue
        .events()
        .forEach(
            (event, leads) -> {
              var dates = dates(forecast, event);
              var plain = references.of(event);
              for (var lead : leads) {
                made.add(
                    new HindcastForecast(
                        issue.scheme(),
                        issue.year(),
                        archive.firstDay(issue.year()),
                        archive.lastDay(issue.year()),
                        event,
                        lead,
                        issue.date(),
                        dates,
                        truth.date(event),
                        plain));
              }
            });
    return made;
  }

  /** Days of issue that learn from the very same seasons share one fit. */
  private FlightTimingFit fit(FlightTiming timing, List<ObservedSeason> past) {
    return fits.computeIfAbsent(
        new Learnt(timing, past), each -> timing.fit(past, Progress.silent()));
  }

  /** A biofix given by the user is known only once its day has come. */
  private FlightTiming timing(Issue issue) {
    var timing = archive.timing();
    var given = new HashMap<>(timing.givenStarts());
    given
        .entrySet()
        .removeIf(
            each ->
                each.getValue().biofix().isAfter(issue.date())
                    && (issue.scheme() == HindcastScheme.ONLY_EARLIER
                        || each.getKey() == issue.year()));
    return timing.withStarts(given);
  }

  private static void requireNothingLater(Issue issue, SeasonArchive.Known known) {
    var ofItself = known.past().stream().anyMatch(past -> past.year() == issue.year());
    var later =
        issue.scheme() == HindcastScheme.ONLY_EARLIER
            && known.past().stream().anyMatch(past -> isLater(past, issue.date()));
    if (ofItself || later || !known.underWay().asOf().equals(issue.date())) {
      throw new IllegalStateException(
          "what is said to be known on " + issue.date() + " holds something later");
    }
  }

  private static boolean isLater(ObservedSeason past, LocalDate date) {
    return past.scale().lastDay().isAfter(date)
        || past.traps().visits().stream().anyMatch(visit -> visit.date().isAfter(date));
  }

  /** The forecast of an event; one that it leaves out is over or not to come. */
  private static DateDistribution dates(GenerationForecast forecast, FlightEvent event) {
    var season = forecast.season();
    var row = forecast.flight(event.generation(), event.share());
    if (row.isPresent()) {
      return thinned(row.get(), season.firstDay());
    }
    var over = forecast.rows().stream().anyMatch(each -> each.generation() > event.generation());
    var outcome =
        over
            ? (double) ChronoUnit.DAYS.between(season.firstDay(), season.asOf())
            : Double.POSITIVE_INFINITY;
    return DateDistribution.ofOutcomes(season.firstDay(), new double[] {outcome});
  }

  /** A thousand outcomes keep every score to a few minutes. */
  private static DateDistribution thinned(ForecastRow row, LocalDate firstDay) {
    var days = new double[1001];
    for (var i = 0; i < days.length; i++) {
      days[i] = row.dates().quantileDays((i + 0.5) / days.length);
    }
    return DateDistribution.ofOutcomes(firstDay, days);
  }
}
