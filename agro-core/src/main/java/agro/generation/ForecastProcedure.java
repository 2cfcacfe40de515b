package agro.generation;

import agro.development.ThermalTimeScale;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.weather.DayOrigin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/** The steps of {@link GenerationForecast#of}. */
final class ForecastProcedure {

  private static final int MOST_GENERATIONS = 8;
  private static final int TIMING_OUTCOMES = 201;
  private static final int CROSSED_OUTCOMES = 15;
  private static final double LEAST_CHANCE = 0.05;
  private static final double SPREAD_NEEDS = 0.99;

  private final FlightTimingFit fit;
  private final SeasonUnderWay season;
  private final List<StageOffset> stages;
  private final Progress progress;
  private final ReadReport.Collector report = new ReadReport.Collector("forecast of flights");
  private final WeatherAhead weather;
  private NewSeasonPrior prior;
  private SeasonPosterior posterior;
  private boolean startSeen;

  ForecastProcedure(
      FlightTimingFit fit, SeasonUnderWay season, List<StageOffset> stages, Progress progress) {
    this.fit = fit;
    this.season = season;
    this.stages = List.copyOf(stages);
    this.progress = progress;
    requireSameScale();
    weather = new WeatherAhead(season);
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
    for (var stage : stages) {
      if (!stage.thresholds().equals(season.model().thresholds())) {
        throw InputProblem.of(
                "the stage \""
                    + stage.stage()
                    + "\" is stated above "
                    + stage.thresholds()
                    + ", the flights above "
                    + season.model().thresholds())
            .expected("one pair of thresholds for flights and stages")
            .because("degree-days above one threshold are not degree-days above another")
            .mend("state the requirement of the stage above the thresholds of the flights");
      }
    }
  }

  GenerationForecast run() {
    var known = season.known().between(season.firstDay(), season.known().lastDay());
    var scale = ThermalTimeScale.of(season.model(), known, season.firstDay());
    var observed = new ObservedSeason(season.traps(), scale);
    var data = observed.usable(report);
    startSeen = data.totalCatch() > 0;
    var given = fit.timing().givenStarts().get(season.traps().year());
    var startKnown =
        given == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(FlightTimingProcedure.median(observed, given));
    requireStart(startKnown);
    prior = new NewSeasonPrior(fit, startKnown, MOST_GENERATIONS, report);
    posterior =
        new SeasonPosterior(data, fit, prior).run(fit.timing().range(), scale.totalC(), progress);
    noteWeather();
    return new GenerationForecast(fit, season, rows(), report.report());
  }

  private void requireStart(OptionalDouble startKnown) {
    if (fit.seasons().isEmpty() && !startSeen && startKnown.isEmpty()) {
      throw InputProblem.of("no animal was caught so far, this season or before")
          .expected("a catch of this season, a past season with catches, or a biofix")
          .because("degree-days count from the first flight, and nothing tells when it is")
          .mend("wait for the first catch, add past seasons, or give a biofix");
    }
  }

  private void noteWeather() {
    var step = weather.stepAtSeam();
    note(
        "where the past years take over, on "
            + season.known().lastDay().plusDays(1)
            + ", the mean goes from "
            + Numbers.fixed(step[0], 1)
            + " to "
            + Numbers.fixed(step[1], 1)
            + " °C·d a day");
    note(
        "the weather ahead is that of "
            + season.members().size()
            + " past years, each in one unbroken run, smoothed by Student's t; so few years do not"
            + " show the rarest weather");
    var exact = daysOf(DayOrigin.NEIGHBOUR) + daysOf(DayOrigin.FORECAST);
    if (exact > 0) {
      note(
          exact
              + " days from the neighbour station or a forecast are taken as exact; their error is"
              + " not in the dates");
    }
  }

  private long daysOf(DayOrigin origin) {
    var known = season.known();
    return season
        .firstDay()
        .datesUntil(known.lastDay().plusDays(1))
        .filter(day -> known.origin(day) == origin)
        .count();
  }

  private List<ForecastRow> rows() {
    var rows = new ArrayList<ForecastRow>();
    for (var g = 1; g <= MOST_GENERATIONS; g++) {
      progress.step("forecast", g - 1L, MOST_GENERATIONS);
      var flight = flightRows(g);
      if (at(flight, FlightShare.HALF).chanceNotThisSeason() > 1 - LEAST_CHANCE) {
        note(
            "flight "
                + g
                + " and later ones are left out: half of it comes this season with a chance below"
                + " 5 %");
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
    return at(flight, FlightShare.NEARLY_ALL).chanceBy(season.asOf().minusDays(1))
        > 1 - LEAST_CHANCE;
  }

  private static DateDistribution at(List<ForecastRow> flight, FlightShare share) {
    return flight.stream().filter(row -> row.share() == share).findFirst().orElseThrow().dates();
  }

  private List<ForecastRow> flightRows(int g) {
    var rows = new ArrayList<ForecastRow>();
    for (var share : FlightShare.values()) {
      rows.add(row(g, "flight", share, 0));
    }
    return rows;
  }

  private List<ForecastRow> stageRows(int g) {
    var rows = new ArrayList<ForecastRow>();
    for (var stage : stages) {
      for (var share : FlightShare.values()) {
        rows.add(row(g, stage.stage(), share, stage.afterFlight().degreeDaysC()));
      }
    }
    return rows;
  }

  private ForecastRow row(int g, String event, FlightShare share, double after) {
    var offset = fit.shape().offsetDegreeDaysC(g, share.share()) + after;
    var timing = posterior.quantiles(g, TIMING_OUTCOMES);
    var days = new double[timing.length * WeatherAhead.OUTCOMES];
    for (var i = 0; i < timing.length; i++) {
      for (var w = 0; w < WeatherAhead.OUTCOMES; w++) {
        days[i * WeatherAhead.OUTCOMES + w] =
            weather.daysUntil(timing[i] + offset, weather.outcome(w));
      }
    }
    var dates = DateDistribution.ofOutcomes(season.firstDay(), days);
    return new ForecastRow(
        g,
        event,
        share,
        dates,
        1 - dates.chanceNotThisSeason() >= SPREAD_NEEDS ? spread(g, offset) : Optional.empty());
  }

  /** Crosses normal outcomes of parameters and season with t outcomes of the weather. */
  private Optional<SpreadSplit> spread(int g, double offset) {
    var moments = posterior.moments(g);
    var seasonVariance = seasonVariance(g);
    var seasonSd = FastMath.sqrt(FastMath.min(moments.variance(), seasonVariance));
    var parameterSd = FastMath.sqrt(FastMath.max(0, moments.variance() - seasonVariance));
    var n = CROSSED_OUTCOMES;
    var normal = new NormalDistribution();
    var days = new double[n][n][n];
    for (var w = 0; w < n; w++) {
      var ahead = weather.outcome((w + 0.5) / n);
      for (var p = 0; p < n; p++) {
        var zp = normal.inverseCumulativeProbability((p + 0.5) / n);
        for (var s = 0; s < n; s++) {
          var zs = normal.inverseCumulativeProbability((s + 0.5) / n);
          var sum = moments.mean() + offset + parameterSd * zp + seasonSd * zs;
          days[w][p][s] = weather.daysUntil(sum, ahead);
          if (Double.isInfinite(days[w][p][s])) {
            return Optional.empty();
          }
        }
      }
    }
    return Optional.of(FullCrossing.split(days));
  }

  private double seasonVariance(int g) {
    var k = posterior.intervalVariance() * (g - 1.0) * (g - 1.0) * prior.seasonShare;
    var startShare = startSeen || prior.startKnown.isPresent() ? 0 : prior.seasonShare;
    return k + startShare * posterior.startVariance();
  }
}
