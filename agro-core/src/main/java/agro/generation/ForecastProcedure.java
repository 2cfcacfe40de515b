package agro.generation;

import agro.development.ThermalTimeScale;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The steps of {@link GenerationForecast#of}. */
final class ForecastProcedure {

  private static final int MOST_GENERATIONS = 8;
  private static final int TIMING_OUTCOMES = 201;
  private static final double LEAST_CHANCE = 0.05;
  private static final double LEAST_SHARE = 0.005;
  private static final double SPREAD_NEEDS = 0.99;

  private final FlightTimingFit fit;
  private final SeasonUnderWay season;
  private final List<StageOffset> stages;
  private final Progress progress;
  private final ReadReport.Collector report = new ReadReport.Collector("forecast of flights");
  private final WeatherAhead weather;
  private final KnownSpread known;
  private final List<StageScale> scales = new ArrayList<>();
  private final List<FlownShare> flown = new ArrayList<>();
  private FlightOutcomes flights;
  private ForecastSpread spreads;
  private boolean startSeen;

  ForecastProcedure(
      FlightTimingFit fit, SeasonUnderWay season, List<StageOffset> stages, Progress progress) {
    this.fit = fit;
    this.season = season;
    this.stages = List.copyOf(stages);
    this.progress = progress;
    requireSameScale();
    weather = new WeatherAhead(season);
    stages.forEach(stage -> scales.add(StageScale.of(stage, season, weather)));
    known = new KnownSpread(season);
  }

  private void requireSameScale() {
    if (fit.model().isPresent() && !fit.model().get().equals(season.model())) {
      throw InputProblem.of(
              "the fit counts degree-days by "
                  + fit.model().get()
                  + ", the season under way by "
                  + season.model())
          .expected("one degree-day model for both")
          .because("an interval in degree-days holds only for the thresholds it was fitted with")
          .mend("accumulate the season under way with the model of the fit");
    }
  }

  GenerationForecast run() {
    prepare();
    new ForecastNotes(season, weather, known, report).add();
    var rows = rows();
    return new GenerationForecast(fit, season, rows, flown, report.report());
  }

  /** The outcomes from which the lines of the forecast are read. */
  FlightOutcomes outcomes(int count) {
    return new FlightOutcomes(season, weather, known, prepare(), fit.shape(), count);
  }

  private SeasonPosterior prepare() {
    var days = season.known().between(season.firstDay(), season.known().lastDay());
    var scale = ThermalTimeScale.of(season.model(), days, season.firstDay());
    var observed = ObservedSeason.of(season.traps(), scale, days);
    var data = observed.usable(fit.conditions(), report);
    startSeen = data.totalCatch() > 0;
    var given = fit.timing().givenStarts().get(season.traps().year());
    var startKnown =
        given == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(FlightTimingProcedure.median(observed, given));
    requireStart(startKnown);
    var prior = new NewSeasonPrior(fit, startKnown, MOST_GENERATIONS, report);
    var posterior =
        new SeasonPosterior(data, fit, prior).run(fit.timing().range(), scale.totalC(), progress);
    noteInformation();
    if (startSeen) {
      var start = Math.min(posterior.moments(1).mean(), scale.totalC());
      known.countFrom(weather.daysUntil(start, weather.outcome(0)));
    }
    flights = new FlightOutcomes(season, weather, known, posterior, fit.shape(), TIMING_OUTCOMES);
    spreads =
        new ForecastSpread(
            weather,
            flights,
            posterior,
            prior.seasonShare,
            startSeen || prior.startKnown.isPresent());
    return posterior;
  }

  private void noteInformation() {
    var information = SeasonPosterior.information(fit);
    if (startSeen && information < 1) {
      note(
          "counts of running visits stray together (correlation "
              + Numbers.fixed(fit.residualCorrelation(), 2)
              + " in past seasons), so each count of this season tells "
              + Numbers.fixed(100 * information, 0)
              + " % of what an independent one would");
    }
  }

  private void requireStart(OptionalDouble startKnown) {
    if (fit.seasons().isEmpty() && !startSeen && startKnown.isEmpty()) {
      throw InputProblem.of("no animal was caught so far, this season or before")
          .expected("a catch of this season, a past season with catches, or a biofix")
          .because("degree-days count from the first flight, and nothing tells when it is")
          .mend("wait for the first catch, add past seasons, or give a biofix");
    }
  }

  private List<ForecastRow> rows() {
    var rows = new ArrayList<ForecastRow>();
    for (var g = 1; g <= MOST_GENERATIONS; g++) {
      progress.step("forecast", g - 1L, MOST_GENERATIONS);
      var flight = flightRows(g);
      if (at(flight, FlightShare.HALF).dates().chanceNotThisSeason() > 1 - LEAST_CHANCE) {
        note(
            "flight "
                + g
                + " and later ones are left out: half of it comes this season with a chance below"
                + " 5 % (not this season: "
                + at(flight, FlightShare.HALF).notThisSeason().words()
                + ")");
        addFlown(g);
        break;
      }
      if (g > fit.generations() && fit.verdict().usable()) {
        var searched = seasonsThatWouldHaveSeen(g);
        note(
            searched == 0
                ? "no past season was long enough to show flight "
                    + g
                    + "; its dates follow from the interval"
                : "flight "
                    + g
                    + " and later ones are left out: in "
                    + searched
                    + (searched == 1 ? " past season" : " past seasons")
                    + " traps stood when half of it should have flown, and showed no such flight");
        if (searched > 0) {
          break;
        }
      }
      addFlown(g);
      if (!isOver(flight)) {
        rows.addAll(flight);
        rows.addAll(stageRows(g));
      }
    }
    progress.step("forecast", MOST_GENERATIONS, MOST_GENERATIONS);
    return rows;
  }

  /** Past seasons whose traps stood beyond the middle of a flight that the fit did not find. */
  private long seasonsThatWouldHaveSeen(int g) {
    var interval = fit.workingInterval().degreeDaysC();
    return fit.seasons().stream()
        .filter(
            past ->
                fit.visits().stream()
                    .filter(visit -> visit.year() == past.year())
                    .anyMatch(
                        visit ->
                            visit.toDegreeDaysC()
                                > past.start().degreeDaysC() + (g - 1) * interval))
        .count();
  }

  private void note(String text) {
    report.add(Deed.NOTED, SourceLocation.NONE, text);
  }

  private boolean isOver(List<ForecastRow> flight) {
    return at(flight, FlightShare.NEARLY_ALL).dates().chanceBy(season.asOf().minusDays(1))
        > 1 - LEAST_CHANCE;
  }

  private static ForecastRow at(List<ForecastRow> flight, FlightShare share) {
    return flight.stream().filter(row -> row.share() == share).findFirst().orElseThrow();
  }

  /** Flights of which nothing to speak of has flown are left out. */
  private void addFlown(int g) {
    var share = flights.flown(g);
    if (share.high() >= LEAST_SHARE) {
      flown.add(share);
    }
  }

  private List<ForecastRow> flightRows(int g) {
    var rows = new ArrayList<ForecastRow>();
    for (var share : FlightShare.values()) {
      rows.add(row(g, "flight", share, Optional.empty()));
    }
    return rows;
  }

  private List<ForecastRow> stageRows(int g) {
    var rows = new ArrayList<ForecastRow>();
    for (var i = 0; i < scales.size(); i++) {
      for (var share : FlightShare.values()) {
        rows.add(row(g, stages.get(i).stage(), share, Optional.of(scales.get(i))));
      }
    }
    return rows;
  }

  private ForecastRow row(int g, String event, FlightShare share, Optional<StageScale> stage) {
    var found = flights.dates(g, share, stage);
    var offset = fit.shape().offsetDegreeDaysC(g, share.share());
    return new ForecastRow(
        g,
        event,
        share,
        found.dates(),
        1 - found.dates().chanceNotThisSeason() >= SPREAD_NEEDS
            ? spreads.of(g, offset, stage)
            : Optional.empty(),
        found.notThisSeason());
  }
}
