package agro.generation;

import agro.development.DegreeDayModel;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.units.ThermalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** The steps of {@link FlightTiming#fit}: usable counts, search, verdict, season by season. */
final class FlightTimingProcedure {

  private static final double RESIDUAL_WARNING = 0.3;
  private static final double ABSURD_RESIDUAL = 6;

  private final FlightTiming timing;
  private final List<ObservedSeason> observed = new ArrayList<>();
  private final List<CatchData> data = new ArrayList<>();
  private final ReadReport.Collector report = new ReadReport.Collector("fit of flight timing");
  private final Progress progress;

  FlightTimingProcedure(FlightTiming timing, List<ObservedSeason> seasons, Progress progress) {
    this.timing = timing;
    this.progress = progress;
    var years = new HashSet<Integer>();
    for (var season : seasons) {
      requireFittingSeason(season, seasons.get(0), years.add(season.year()));
      var usable = season.usable(report);
      if (usable.totalCatch() > 0) {
        observed.add(season);
        data.add(usable);
      } else {
        report.add(
            Deed.DROPPED,
            SourceLocation.NONE,
            "season "
                + season.year()
                + ": no animal was caught, so it tells nothing of the timing");
      }
    }
  }

  private static void requireFittingSeason(
      ObservedSeason season, ObservedSeason first, boolean newYear) {
    if (!newYear) {
      throw InputProblem.of("season " + season.year() + " is given twice")
          .expected("each season once")
          .because("the season is the unit of replication, and a repeated one would count double")
          .mend("put all traps of a season into one list of visits");
    }
    if (!season.scale().model().equals(first.scale().model())) {
      throw InputProblem.of(
              "season "
                  + season.year()
                  + " counts degree-days by "
                  + season.scale().model()
                  + ", season "
                  + first.year()
                  + " by "
                  + first.scale().model())
          .expected("one method and one pair of thresholds for all seasons")
          .because("an interval in degree-days holds only for the thresholds it was fitted with")
          .mend("accumulate all seasons with the same degree-day model");
    }
  }

  FlightTimingFit run() {
    noteStartsWithoutSeason();
    if (data.isEmpty()) {
      return nothingCaught();
    }
    var found = new FlightSearch(data, timing, givenMedians()).run(progress);
    var modes = found.stream().map(FlightSearch.Found::mode).toList();
    var best = found.get(0).fit();
    var seasonwise = new SeasonwiseIntervals(best, timing.range());
    var intervals = seasonwise.run(progress);
    var verdict = verdict(found, intervals);
    var seasons = seasonTimings(best, seasonwise, intervals);
    noteDoubts(best, seasons);
    noteResiduals(seasons);
    noteOneFlight(best);
    return new FlightTimingFit(
        timing,
        Optional.of(model()),
        verdict,
        modes.get(0).generations(),
        verdict.usable()
            ? Optional.of(
                new IntervalEstimate(intervals.stream().flatMap(Optional::stream).toList()))
            : Optional.empty(),
        verdict.usable()
            ? Optional.of(new ProfileInterval(best, progress).run(timing))
            : Optional.empty(),
        best.model().shape(best.parameters),
        best.size,
        seasons,
        modes,
        visitFits(best),
        report.report());
  }

  private void noteStartsWithoutSeason() {
    var years = observed.stream().map(ObservedSeason::year).toList();
    timing.givenStarts().keySet().stream()
        .filter(year -> !years.contains(year))
        .sorted()
        .forEach(
            year ->
                report.add(
                    Deed.NOTED,
                    SourceLocation.NONE,
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
    report.add(
        Deed.ASSUMED,
        SourceLocation.NONE,
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
                  + season.year()
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
          "every second flight is all but empty in every season: the interval is probably twice as"
              + " long, and the range in which it was sought too low");
      return IntervalVerdict.AMBIGUOUS;
    }
    var usable = intervals.stream().filter(Optional::isPresent).count();
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

  private void note(String text) {
    report.add(Deed.NOTED, SourceLocation.NONE, text);
  }

  /** What a reader should know before believing the fit. */
  private void noteDoubts(CatchFit best, List<SeasonTiming> seasons) {
    if (!best.converged) {
      note("the fit had not come to rest when it was stopped: read its figures with care");
    }
    for (var season : seasons) {
      if (season.start().degreeDaysC() < 0) {
        note(
            "season "
                + season.year()
                + ": the middle of the first flight lies before the first day of the season. Are"
                + " the temperatures in the stated unit, and does the season start early enough?");
      }
    }
    for (var s = 0; s < data.size(); s++) {
      var residuals = best.residuals(s);
      for (var v = 0; v < residuals.length; v++) {
        if (residuals[v] > ABSURD_RESIDUAL) {
          var visit = data.get(s).book.get(v);
          note(
              "the count of "
                  + visit.count()
                  + " at trap "
                  + visit.trap()
                  + " on "
                  + visit.date()
                  + " is far above what the fit expects: is it right?");
        }
      }
    }
  }

  private List<SeasonTiming> seasonTimings(
      CatchFit best, SeasonwiseIntervals seasonwise, List<Optional<Double>> intervals) {
    var model = best.model();
    var shape = model.shape(best.parameters);
    var timings = new ArrayList<SeasonTiming>();
    for (var s = 0; s < data.size(); s++) {
      var start = seasonwise.start(s);
      var season = observed.get(s);
      var days = season.scale().daysUntil(Math.max(0, start));
      timings.add(
          new SeasonTiming(
              season.year(),
              new ThermalTime(start),
              Double.isFinite(days)
                  ? Optional.of(season.scale().firstDay().plusDays((long) days))
                  : Optional.empty(),
              intervals.get(s).map(ThermalTime::new),
              catchSizes(best, s),
              BiofixSearch.find(timing.biofixRule(), season, start, shape),
              data.get(s).visits(),
              data.get(s).totalCatch(),
              lagOneCorrelation(data.get(s).trap, best.residuals(s))));
    }
    return timings;
  }

  private static List<Double> catchSizes(CatchFit fit, int season) {
    var sizes = new ArrayList<Double>();
    for (var g = 0; g < fit.model().generations; g++) {
      sizes.add(
          fit.model().visibleShare(season, g, fit.parameters) > 0.01
              ? Math.exp(fit.parameters[fit.model().catchIndex(season, g)])
              : Double.NaN);
    }
    return sizes;
  }

  private List<VisitFit> visitFits(CatchFit fit) {
    var fits = new ArrayList<VisitFit>();
    for (var s = 0; s < data.size(); s++) {
      var season = data.get(s);
      var means = fit.means(s);
      var residuals = fit.residuals(s);
      for (var v = 0; v < season.visits(); v++) {
        fits.add(
            new VisitFit(
                season.year,
                season.fromDegreeDaysC[v],
                season.toDegreeDaysC[v],
                season.nightsOpen[v],
                season.count[v],
                season.full[v],
                means[v],
                residuals[v]));
      }
    }
    return fits;
  }

  private void noteResiduals(List<SeasonTiming> seasons) {
    var mean =
        seasons.stream()
            .mapToDouble(SeasonTiming::residualCorrelation)
            .filter(Double::isFinite)
            .average()
            .orElse(0);
    if (mean > RESIDUAL_WARNING) {
      report.add(
          Deed.NOTED,
          SourceLocation.NONE,
          "counts of running visits stray together (correlation of residuals "
              + Numbers.fixed(mean, 2)
              + "): the profile interval within these seasons is too narrow, and so may be dates");
    }
  }

  private void noteOneFlight(CatchFit fit) {
    if (fit.model().generations == 1) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "one flight only: nothing is known of the spread of later ones; each is given an added"
              + " scale of 0.12 published intervals");
    }
  }

  /** Correlation of the residuals of running visits to the same trap. */
  static double lagOneCorrelation(String[] trap, double[] residuals) {
    var product = 0.0;
    var square = 0.0;
    var mean = Arrays.stream(residuals).average().orElse(0);
    var before = new HashMap<String, Double>();
    for (var i = 0; i < residuals.length; i++) {
      var distance = residuals[i] - mean;
      square += distance * distance;
      var last = before.put(trap[i], distance);
      product += last == null ? 0 : distance * last;
    }
    return square == 0 ? Double.NaN : product / square;
  }
}
