package agro.generation;

import agro.report.InputProblem;
import agro.report.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.random.RandomDataGenerator;

/** The steps of {@link FlightTiming#bootstrap}: fit, counts drawn anew, refits. */
final class BootstrapProcedure {

  private static final String WORK = "refits";

  /** Refits between two looks at the listener. */
  private static final int CHUNK = 16;

  private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

  private final FlightTiming timing;
  private final Progress progress;
  private final FlightTimingProcedure procedure;

  private FlightTimingProcedure.Core core;
  private List<Integer> apart;
  private double betweenSeasons;

  BootstrapProcedure(FlightTiming timing, List<ObservedSeason> seasons, Progress progress) {
    this.timing = timing;
    this.progress = progress;
    procedure = new FlightTimingProcedure(timing, seasons, progress);
  }

  FlightBootstrap run(int refits, long seed) {
    if (refits < 1) {
      throw InputProblem.of(refits + " refits")
          .expected("one or more, 1,000 for limits that are shown")
          .because("limits are read from the refits")
          .mend("ask for 1,000");
    }
    core = procedure.nothing() ? null : procedure.core();
    if (core == null || !core.verdict().usable()) {
      throw FlightTimingProcedure.noInterval(core, "refits");
    }
    var fit = procedure.fit(core);
    apart =
        IntStream.range(0, core.intervals().size())
            .filter(s -> core.intervals().get(s).isPresent())
            .boxed()
            .toList();
    betweenSeasons = scatterBetweenSeasons(fit.interval().orElseThrow());
    var draws = new ArrayList<FlightRefit>();
    var edge = 0;
    for (var from = 0; from < refits; from += CHUNK) {
      progress.step(WORK, from, refits);
      var chunk =
          IntStream.range(from, Math.min(refits, from + CHUNK))
              .parallel()
              .mapToObj(i -> refit(seed + (i + 1) * SEED_STEP))
              .toList();
      for (var each : chunk) {
        each.ifPresent(draws::add);
        edge += each.isEmpty() ? 1 : 0;
      }
    }
    progress.step(WORK, refits, refits);
    return new FlightBootstrap(fit, refits, seed, edge, betweenSeasons, draws);
  }

  /**
   * Scatter of the interval between seasons beyond the error that each season's own counts leave,
   * by moments: the variance of the seasons' estimates less their mean squared error.
   */
  private double scatterBetweenSeasons(IntervalEstimate estimate) {
    if (estimate.seasons() == 1) {
      return 0;
    }
    var own =
        apart.stream()
            .mapToDouble(s -> core.seasonwise().alone(s).intervalStandardError())
            .filter(Double::isFinite)
            .map(error -> error * error)
            .average()
            .orElse(0);
    var all = estimate.standardDeviationC() * estimate.standardDeviationC();
    return Math.sqrt(Math.max(0, all - own));
  }

  /** One set of counts drawn anew and fitted; nothing when it ends at the edge of the range. */
  private Optional<FlightRefit> refit(long seed) {
    var random = new RandomDataGenerator(seed);
    var best = core.best();
    var data = drawn(random);
    var model =
        new CatchModel(data, best.model().generations, best.model().arrivals, best.model().curve);
    var free = new boolean[model.parameters()];
    for (var p = 0; p < free.length; p++) {
      free[p] = best.isFree(p);
    }
    var pooled =
        new CatchFit(
                model,
                new WeakPrior(model, timing.range().expected().degreeDaysC()),
                free,
                timing.range().low().degreeDaysC(),
                timing.range().high().degreeDaysC())
            .maximise(best.parameters, best.size, true);
    var seasonwise = new SeasonwiseIntervals(pooled, timing.range());
    var intervals = seasonwise.of(apart);
    if (pooled.atBoundary() || intervals.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    var seasons = apart.stream().map(data::get).toList();
    var starts = new ArrayList<Double>();
    for (var s = 0; s < data.size(); s++) {
      starts.add(seasonwise.start(s));
    }
    return Optional.of(
        new FlightRefit(
            new IntervalEstimate(SeasonwiseIntervals.byYear(seasons, intervals)),
            pooled.parameters[model.intervalIndex()],
            starts,
            model.shape(pooled.parameters),
            pooled.size));
  }

  /** Counts about the fitted means of the same visits, each year with an interval of its own. */
  private List<CatchData> drawn(RandomDataGenerator random) {
    var best = core.best();
    var model = best.model();
    var shift = new TreeMap<Integer, Double>();
    for (var season : model.seasons) {
      shift.computeIfAbsent(
          season.year, year -> betweenSeasons > 0 ? random.nextNormal(0, betweenSeasons) : 0);
    }
    var mean =
        SeasonwiseIntervals.byYear(model.seasons, core.intervals()).stream()
            .mapToDouble(k -> k)
            .average()
            .orElseThrow();
    var drawn = new ArrayList<CatchData>();
    for (var s = 0; s < model.seasons.size(); s++) {
      var data = model.seasons.get(s);
      var alone = core.seasonwise().alone(s);
      var from = alone == null ? best : alone;
      var parameters = from.parameters.clone();
      parameters[from.model().intervalIndex()] = mean + shift.get(data.year);
      var means = new double[data.visits()];
      from.model().means(alone == null ? s : 0, parameters, means, null);
      var counts = new int[means.length];
      for (var v = 0; v < counts.length; v++) {
        counts[v] = draw(random, means[v], best.size * data.nightsOpen[v]);
      }
      drawn.add(data.withCounts(counts));
    }
    return drawn;
  }

  private static int draw(RandomDataGenerator random, double mean, double size) {
    var rate = random.nextGamma(size, mean / size);
    return rate > 0 ? random.nextPoisson(rate) : 0;
  }
}
