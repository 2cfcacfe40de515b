package agro.season;

import agro.generation.TrapSeason;
import agro.generation.TrapVisit;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Puts together the seasons of one pest at one place. */
final class SeasonAssembly {
  private final MonitoredPest pest;
  private final MonitoredPlace place;
  private final LocalDate issueDate;
  private final KnownDays known;
  private final ReadReport.Collector report;

  SeasonAssembly(
      MonitoredPest pest,
      MonitoredPlace place,
      LocalDate issueDate,
      KnownDays known,
      ReadReport.Collector report) {
    this.known = known;
    this.pest = pest;
    this.place = place;
    this.issueDate = issueDate;
    this.report = report;
  }

  /** Joins logs and visits that are known on the day of issue. */
  PestSeasons join(
      DailyTemperatures own,
      Optional<DailyTemperatures> neighbour,
      Optional<DailyTemperatures> forecastDays,
      List<VisitLine> visits) {
    var temperatures = SeasonTemperatures.of(own, neighbour);
    report.addAll(temperatures.report());
    var bySeason = VisitBook.seasons(pest.season(), visits, report);
    bySeason.replaceAll(
        (year, all) ->
            all.stream()
                .filter(located -> known.knowsVisit(year, located.visit().date()))
                .toList());
    var years = new TreeSet<>(bySeason.keySet());
    pest.season().yearOf(issueDate).ifPresent(years::add);
    var seasons = new ArrayList<FieldSeason>();
    for (int year : years) {
      season(year, temperatures, bySeason.getOrDefault(year, List.of())).ifPresent(seasons::add);
    }
    if (seasons.isEmpty()) {
      throw noSeason(years.isEmpty());
    }
    return new PestSeasons(
        pest,
        place,
        issueDate,
        seasons,
        temperatures.offset(),
        neighbour,
        own,
        forecastDays,
        report.report());
  }

  private Optional<FieldSeason> season(
      int year, SeasonTemperatures temperatures, List<LocatedVisit> visits) {
    var start = pest.season().start(year);
    var end = pest.season().end(year);
    var underWay = !issueDate.isBefore(start) && issueDate.isBefore(end);
    var lastKnown = underWay ? issueDate : end;
    var found = temperatures.between(start, lastKnown);
    report.addAll(found.report());
    if (found.days().isEmpty()) {
      report.add(
          Deed.DROPPED,
          SourceLocation.NONE,
          "season "
              + year
              + ", with "
              + visits.size()
              + " visits: no temperature is known for its first day, "
              + start
              + ", so its degree-days cannot be added up");
      return Optional.empty();
    }
    return found
        .days()
        .map(known -> new FieldSeason(traps(year, visits, known.lastDay()), known, end));
  }

  private TrapSeason traps(int year, List<LocatedVisit> visits, LocalDate lastDay) {
    var kept = new ArrayList<TrapVisit>();
    for (var located : visits) {
      var visit = located.visit();
      if (visit.date().isAfter(lastDay.plusDays(1))) {
        report.add(
            Deed.DROPPED,
            located.location(),
            "visit to trap "
                + visit.trap()
                + " on "
                + visit.date()
                + ": temperatures are known only to "
                + lastDay);
      } else {
        kept.add(visit);
      }
    }
    return new TrapSeason(year, kept);
  }

  private InputProblem noSeason(boolean withoutVisits) {
    return InputProblem.of(
            withoutVisits
                ? "no visit for " + pest.name() + " at " + place.name() + " inside a season"
                : "no temperature on the first day of any season of "
                    + pest.name()
                    + " at "
                    + place.name())
        .expected("visits and temperatures for at least one season, " + pest.season().words())
        .because("without both there is no flight on the degree-day scale")
        .mend(
            withoutVisits
                ? "add the visits, or correct season_start and season_end in pests.csv"
                : "let the log, or that of a neighbour, begin on the first day of the season, or"
                    + " move season_start in pests.csv to a day that the log covers");
  }
}
