package agro.generation;

import agro.development.DegreeDayModel;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** The steps of {@link FlightTiming#fit}: usable counts, search, verdict, season by season. */
final class FlightTimingProcedure {

  private static final String OTHER_THRESHOLDS = "other thresholds";

  private final FlightTiming timing;
  private final List<ObservedSeason> observed = new ArrayList<>();
  private final List<CatchData> data = new ArrayList<>();
  private final ReadReport.Collector report = new ReadReport.Collector("fit of flight timing");
  private final Progress progress;
  private final Optional<LureEstimate> lure;
  private final CatchConditions conditions;

  FlightTimingProcedure(FlightTiming timing, List<ObservedSeason> seasons, Progress progress) {
    this.timing = timing;
    this.progress = progress;
    var names = new HashSet<String>();
    for (var season : seasons) {
      requireFittingSeason(season, seasons.get(0), names.add(season.label()));
    }
    lure =
        timing.conditions().estimatesLure()
            ? new LureSearch(timing, seasons, progress).run()
            : Optional.empty();
    conditions = conditions(timing, lure);
    for (var season : seasons) {
      var usable = season.usable(conditions, report);
      if (usable.totalCatch() > 0) {
        observed.add(season);
        data.add(usable);
      } else {
        note(Deed.DROPPED, nothingFrom(season));
      }
    }
  }

  /** Without any catch the half-life of a lure stays unknown, and matters to nothing. */
  private static CatchConditions conditions(FlightTiming timing, Optional<LureEstimate> lure) {
    if (!timing.conditions().estimatesLure()) {
      return timing.conditions();
    }
    var days = lure.map(LureEstimate::halfLifeDays).orElse(LureFade.LONGEST_DAYS);
    return timing.conditions().with(LureFade.halfLife(days));
  }

  private static String nothingFrom(ObservedSeason season) {
    return "season "
        + season.label()
        + (season.traps().visits().isEmpty()
            ? ": no visit is given, so it tells nothing of the timing"
            : ": no animal was caught, so it tells nothing of the timing");
  }

  private static void requireFittingSeason(
      ObservedSeason season, ObservedSeason first, boolean newSeason) {
    if (!newSeason) {
      throw InputProblem.of("season " + season.label() + " is given twice")
          .expected("each season once")
          .because("the season is the unit of replication, and a repeated one would count double")
          .mend(
              "put all traps of a season into one list of visits, or name the sites with"
                  + " at(name)");
    }
    if (!season.scale().model().equals(first.scale().model())) {
      throw InputProblem.of(
              "season "
                  + season.label()
                  + " counts degree-days by "
                  + season.scale().model()
                  + ", season "
                  + first.label()
                  + " by "
                  + first.scale().model())
          .expected("one method and one pair of thresholds for all seasons")
          .because("an interval in degree-days holds only for the thresholds it was fitted with")
          .mend("accumulate all seasons with the same degree-day model");
    }
  }

  /** What the search found, for the fit and for whatever refits it. */
  record Core(
      List<FlightSearch.Found> found,
      SeasonwiseIntervals seasonwise,
      List<Optional<Double>> intervals,
      IntervalVerdict verdict) {

    CatchFit best() {
      return found.get(0).fit();
    }
  }

  FlightTimingFit run() {
    noteStartsWithoutSeason();
    return data.isEmpty() ? nothingCaught() : fit(core());
  }

  boolean nothing() {
    return data.isEmpty();
  }

  Core core() {
    var found = new FlightSearch(data, timing, givenMedians()).run(progress);
    var seasonwise = new SeasonwiseIntervals(found.get(0).fit(), timing.range());
    var intervals = seasonwise.run(progress);
    return new Core(found, seasonwise, intervals, verdict(found, intervals));
  }

  /** The interval and nothing else; nothing when the counts do not tell it. */
  Optional<IntervalEstimate> intervalAlone() {
    if (data.isEmpty()) {
      return Optional.empty();
    }
    var core = core();
    return core.verdict().usable()
        ? Optional.of(new IntervalEstimate(SeasonwiseIntervals.byYear(data, core.intervals())))
        : Optional.empty();
  }

  FlightTimingFit fit(Core core) {
    var best = core.best();
    var details = new FitDetails(timing, observed, best);
    var seasons = details.seasons(core.seasonwise(), core.intervals());
    new FitNotes(report).add(best, seasons, data, lure);
    conditions
        .life()
        .ifPresent(
            life ->
                note(
                    Deed.NOTED,
                    "with an adult life in the fit, start, spread and dates are those of the"
                        + " emergence; flights come later by about the mean life of "
                        + Numbers.plain(life.meanDays())
                        + " days"));
    var usable = core.verdict().usable();
    var byYear = SeasonwiseIntervals.byYear(data, core.intervals());
    noteSitesOfOneYear(byYear.size(), core.intervals());
    var correlation = FitDetails.meanCorrelation(seasons);
    return new FlightTimingFit(
        timing,
        Optional.of(model()),
        core.verdict(),
        core.found().get(0).mode().generations(),
        usable ? Optional.of(new IntervalEstimate(byYear)) : Optional.empty(),
        usable
            ? Optional.of(
                new ProfileInterval(best, progress)
                    .run(timing)
                    .widened(correlation, timing.range()))
            : Optional.empty(),
        details.shape(),
        best.size,
        seasons,
        core.found().stream().map(FlightSearch.Found::mode).toList(),
        details.visits(),
        conditions,
        lure,
        usable && hasTemperatures() ? sensitivity(best) : Optional.empty(),
        report.report());
  }

  private void noteSitesOfOneYear(int years, List<Optional<Double>> intervals) {
    var siteSeasons = intervals.stream().filter(Optional::isPresent).count();
    if (siteSeasons > years) {
      note(
          Deed.NOTED,
          siteSeasons
              + " seasons of several sites are "
              + years
              + (years == 1 ? " year" : " years")
              + ": sites of one year share its weather, so their intervals are averaged and each"
              + " year counts once");
    }
  }

  private boolean hasTemperatures() {
    return observed.stream().allMatch(season -> season.temperatures().isPresent());
  }

  private Optional<OtherThresholds> sensitivity(CatchFit best) {
    var here = new ThresholdScan(timing, conditions, observed, best, 1);
    var outcomes = new ArrayList<ThresholdOutcome>();
    var used = 0;
    for (var i = 0; i < OtherThresholds.STEPS_C.size(); i++) {
      var step = OtherThresholds.STEPS_C.get(i);
      progress.step(OTHER_THRESHOLDS, i, OtherThresholds.STEPS_C.size());
      var lower = here.lowerC + step;
      if (step == 0) {
        used = outcomes.size();
        outcomes.add(here.outcome());
      } else if (here.allows(lower)) {
        outcomes.add(here.at(lower).outcome());
      }
    }
    progress.step(OTHER_THRESHOLDS, 1, 1);
    return Optional.of(new OtherThresholds(outcomes, used));
  }

  /** The profile over thresholds, each fit started from that of its neighbour. */
  ThresholdProfile profileThresholds(double reachC, double stepC) {
    requireSteps(reachC, stepC);
    if (!hasTemperatures()) {
      throw InputProblem.of("seasons without their temperatures for an estimate of the threshold")
          .expected("seasons built with their temperatures")
          .because("degree-days above another threshold need the temperatures of each day")
          .mend("build the seasons with ObservedSeason.of(traps, model, temperatures)");
    }
    var core = data.isEmpty() ? null : core();
    if (core == null || !core.verdict().usable()) {
      throw noInterval(core, "an estimate of the threshold");
    }
    var here = new ThresholdScan(timing, conditions, observed, core.best(), 1);
    var scans = new ArrayList<ThresholdScan>(List.of(here));
    var steps = (int) Math.floor(reachC / stepC + 1e-9);
    for (var side : new int[] {-1, 1}) {
      var last = here;
      for (var i = 1; i <= steps && here.allows(here.lowerC + side * i * stepC); i++) {
        progress.step(OTHER_THRESHOLDS, scans.size() - 1L, 2L * steps);
        last = last.at(here.lowerC + side * i * stepC);
        scans.add(side < 0 ? 0 : scans.size(), last);
      }
    }
    progress.step(OTHER_THRESHOLDS, 2L * steps, 2L * steps);
    var best = scans.stream().mapToDouble(scan -> scan.fit.objective).max().orElseThrow();
    return ThresholdProfile.of(
        scans.stream()
            .map(
                scan ->
                    new ThresholdPoint(
                        scan.outcome(),
                        best - scan.fit.objective,
                        scan.fit.intervalStandardError()))
            .toList());
  }

  private static void requireSteps(double reachC, double stepC) {
    if (!(stepC >= 0.05 && reachC >= 2 * stepC && reachC <= 20)) {
      throw InputProblem.of("thresholds up to " + reachC + " °C away in steps of " + stepC + " °C")
          .expected("steps of 0.05 °C or more, at least two to each side, and 20 °C at most")
          .because("the region of threshold and interval is read from these steps")
          .mend("take 5 °C in steps of 0.5 °C");
    }
  }

  static InputProblem noInterval(Core core, String what) {
    return InputProblem.of(
            "the interval between flights is "
                + (core == null ? "unknown: no season with a catch" : core.verdict().words()))
        .expected("counts from which the interval follows, for " + what)
        .because("refits of an interval that the counts do not tell would only repeat the range")
        .mend("add seasons whose flights stand apart, or look at the page of the plain fit first");
  }

  private void noteStartsWithoutSeason() {
    var years = observed.stream().map(ObservedSeason::year).toList();
    timing.givenStarts().keySet().stream()
        .filter(year -> !years.contains(year))
        .sorted()
        .forEach(
            year ->
                note(
                    Deed.NOTED,
                    "the biofix given for season "
                        + year
                        + " holds for a forecast of that season only, for it is not among those"
                        + " fitted"));
  }

  private DegreeDayModel model() {
    return observed.get(0).scale().model();
  }

  private FlightTimingFit nothingCaught() {
    var scale = WeakPrior.FIRST_SCALE_IN_INTERVALS * timing.range().expected().degreeDaysC();
    note(
        Deed.ASSUMED,
        "no season with a catch: flights are given a scale of 0.12 published intervals");
    return new FlightTimingFit(
        timing,
        Optional.empty(),
        IntervalVerdict.NOT_IDENTIFIED,
        1,
        Optional.empty(),
        Optional.empty(),
        new FlightShape(timing.curve(), scale, scale),
        1,
        List.of(),
        List.of(),
        List.of(),
        report.report());
  }

  private double[] givenMedians() {
    var medians = new double[observed.size()];
    for (var s = 0; s < medians.length; s++) {
      var given = timing.givenStarts().get(observed.get(s).year());
      medians[s] = given == null ? Double.NaN : median(observed.get(s), given);
    }
    return medians;
  }

  /** The middle of the first flight that follows from a given biofix. */
  static double median(ObservedSeason season, GivenStart given) {
    var scale = season.scale();
    if (given.biofix().isBefore(scale.firstDay()) || given.biofix().isAfter(scale.lastDay())) {
      throw InputProblem.of(
              "the biofix "
                  + given.biofix()
                  + " of season "
                  + season.label()
                  + " lies outside its temperatures")
          .expected("a day from " + scale.firstDay() + " to " + scale.lastDay())
          .because("degree-days up to the biofix cannot be added up without temperatures")
          .mend("choose a day inside the log, or give a log that covers the biofix");
    }
    return scale.degreeDaysCAtStartOf(given.biofix()) + given.toMiddle().degreeDaysC();
  }

  private IntervalVerdict verdict(
      List<FlightSearch.Found> found, List<Optional<Double>> intervals) {
    var best = found.get(0);
    if (best.mode().interval().isEmpty()) {
      return IntervalVerdict.NOT_IDENTIFIED;
    }
    if (best.fit().atBoundary()) {
      return IntervalVerdict.AT_EDGE;
    }
    if (best.fit().model().everySecondFlightIsEmpty(best.fit().parameters)) {
      note(
          Deed.NOTED,
          "every second flight is all but empty in every season: the interval is probably twice as"
              + " long, and the range in which it was sought too low");
      return IntervalVerdict.AMBIGUOUS;
    }
    var usable = SeasonwiseIntervals.byYear(data, intervals).size();
    if (usable == 0) {
      return IntervalVerdict.NOT_IDENTIFIED;
    }
    if (hasRival(found)) {
      return IntervalVerdict.AMBIGUOUS;
    }
    return usable == 1 ? IntervalVerdict.THIS_SEASON_ONLY : IntervalVerdict.SEVERAL_SEASONS;
  }

  private static boolean hasRival(List<FlightSearch.Found> found) {
    var best = found.get(0).mode();
    return found.stream()
        .skip(1)
        .map(FlightSearch.Found::mode)
        .anyMatch(mode -> mode.contradicts(best) && mode.bic() - best.bic() < FlightMode.RIVAL_BIC);
  }

  private void note(Deed deed, String text) {
    report.add(deed, SourceLocation.NONE, text);
  }
}
