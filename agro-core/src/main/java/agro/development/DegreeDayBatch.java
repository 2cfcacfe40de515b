package agro.development;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Degree-days of very many station-days in plain arrays: all the days of one station, then all
 * those of the next. The figures are those of {@link DegreeDayModel} to 1e-9 °C·d on days within
 * ±60 °C, and do not depend on the number of threads. A day with a temperature that is NaN or
 * infinite has NaN degree-days. Immutable.
 *
 * <p>The single sine and the single triangle go through closed forms of their own that the JIT
 * compiler turns into vector instructions, some ten times as fast as one day after the other; other
 * methods are computed station by station with their model.
 */
public final class DegreeDayBatch {

  private static final String WORK = "degree-days";

  /** Days that a thread takes at a time, at least: enough to hear of a cancellation at once. */
  private static final int DAYS_AT_A_TIME = 64 * CrossingBlock.DAYS;

  private final DegreeDayModel model;
  private final int threads;
  private final Optional<Progress> progress;

  private DegreeDayBatch(DegreeDayModel model, int threads, Optional<Progress> progress) {
    this.model = model;
    this.threads = threads;
    this.progress = progress;
  }

  /**
   * A batch on as many threads as there are processors.
   *
   * @param model rule for the degree-days of a day
   * @return the batch
   */
  public static DegreeDayBatch of(DegreeDayModel model) {
    return new DegreeDayBatch(
        Objects.requireNonNull(model, "model"),
        Runtime.getRuntime().availableProcessors(),
        Optional.empty());
  }

  /**
   * Sets the number of threads. The results do not depend on it.
   *
   * @param newThreads at least 1; with 1, the calling thread does all the work
   * @return a new batch
   * @throws InputProblem when there is no thread
   */
  public DegreeDayBatch withThreads(int newThreads) {
    if (newThreads < 1) {
      throw InputProblem.of("a batch on " + newThreads + " threads")
          .expected("1 thread or more")
          .because("somebody has to do the work")
          .mend("give the number of processors that may be used");
    }
    return new DegreeDayBatch(model, newThreads, progress);
  }

  /**
   * Sets who hears how far the work has come. Without it, whoever listens on the calling thread.
   *
   * @param listener called on the calling thread; may cancel
   * @return a new batch
   */
  public DegreeDayBatch withProgress(Progress listener) {
    return new DegreeDayBatch(model, threads, Optional.of(listener));
  }

  /**
   * The rule for the degree-days of a day.
   *
   * @return the model
   */
  public DegreeDayModel model() {
    return model;
  }

  /**
   * Degree-days of one run of days.
   *
   * @param minCelsius lowest temperatures in °C, NaN on missing days
   * @param maxCelsius highest temperatures in °C, as many as there are lowest ones
   * @return a new array of as many values in °C·d, NaN on missing days
   * @throws InputProblem when the arrays differ in length or a minimum is above its maximum
   * @throws java.util.concurrent.CancellationException when the listener cancels
   */
  public double[] degreeDaysC(double[] minCelsius, double[] maxCelsius) {
    var result = new double[minCelsius.length];
    degreeDaysC(minCelsius, maxCelsius, result);
    return result;
  }

  /**
   * Degree-days of one run of days into an array at hand, so that nothing is allocated.
   *
   * @param minCelsius lowest temperatures in °C, NaN on missing days
   * @param maxCelsius highest temperatures in °C, as many as there are lowest ones
   * @param degreeDaysC where the values in °C·d go; may be one of the other arrays
   * @throws InputProblem when the arrays differ in length or a minimum is above its maximum
   * @throws java.util.concurrent.CancellationException when the listener cancels
   */
  public void degreeDaysC(double[] minCelsius, double[] maxCelsius, double[] degreeDaysC) {
    requireLength(minCelsius.length, maxCelsius.length, "maxima");
    requireLength(minCelsius.length, degreeDaysC.length, "places for the result");
    int length = minCelsius.length;
    var curve = curve();
    int size = curve.isPresent() ? DAYS_AT_A_TIME : Math.max(1, length);
    int units = Math.toIntExact(((long) length + size - 1) / size);
    run(
        units,
        () -> {
          var days = worker(curve);
          return unit -> {
            int from = unit * size;
            days.compute(minCelsius, maxCelsius, from, Math.min(size, length - from), degreeDaysC);
          };
        });
  }

  /**
   * Degree-days of many stations, added up.
   *
   * @param firstDay first day of every station
   * @param days days of each station, at least 1
   * @param minCelsius lowest temperatures in °C, all days of the first station, then all of the
   *     next; NaN on missing days
   * @param maxCelsius highest temperatures in °C, in the same order
   * @return the sums, which take 8 bytes for each station-day
   * @throws InputProblem when the arrays differ in length, are not whole stations, or a minimum is
   *     above its maximum
   * @throws java.util.concurrent.CancellationException when the listener cancels
   */
  public StationSums accumulate(
      LocalDate firstDay, int days, double[] minCelsius, double[] maxCelsius) {
    requireLength(minCelsius.length, maxCelsius.length, "maxima");
    if (days < 1 || minCelsius.length == 0 || minCelsius.length % days != 0) {
      throw InputProblem.of(minCelsius.length + " station-days, with " + days + " for each station")
          .expected("at least one station, each with the same number of days")
          .because("the days of one station would be taken for those of another")
          .mend("give the number of days of one station, and NaN for days that it lacks");
    }
    var places = new ArrayList<String>();
    for (int i = 0; i < minCelsius.length / days; i++) {
      places.add("station " + (i + 1));
    }
    var sums = new StationSums(model, places, Objects.requireNonNull(firstDay), days);
    run(
        places.size(),
        days,
        (worker, station) -> {
          int from = station * days;
          worker.compute(minCelsius, maxCelsius, from, days, sums.daily());
          sums.addUp(station);
        });
    return sums;
  }

  /**
   * Degree-days of many stations, added up from the first day of any of them to the last.
   *
   * @param stations daily extremes, all of air or all of soil; days that a station lacks are
   *     missing
   * @return the sums, which take 8 bytes for each station-day
   * @throws InputProblem when there is no station, or the media differ in kind
   * @throws java.util.concurrent.CancellationException when the listener cancels
   */
  public StationSums accumulate(List<DailyTemperatures> stations) {
    if (stations.isEmpty()) {
      throw InputProblem.of("a list of stations without any")
          .expected("at least one station")
          .because("there is nothing to add up")
          .mend("give the daily extremes of the stations");
    }
    var first = stations.get(0).firstDay();
    var last = stations.get(0).lastDay();
    for (var station : stations) {
      station.medium().require(stations.get(0).medium().kind(), "the stations before it");
      first = station.firstDay().isBefore(first) ? station.firstDay() : first;
      last = station.lastDay().isAfter(last) ? station.lastDay() : last;
    }
    var places = stations.stream().map(DailyTemperatures::place).toList();
    var firstDay = first;
    int days = Math.toIntExact(ChronoUnit.DAYS.between(first, last) + 1);
    var sums = new StationSums(model, places, firstDay, days);
    run(
        places.size(),
        days,
        (worker, number) -> {
          var station = stations.get(number);
          var daily = daily(worker, station);
          int from = number * days;
          int before = (int) ChronoUnit.DAYS.between(firstDay, station.firstDay());
          Arrays.fill(sums.daily(), from, from + days, Double.NaN);
          System.arraycopy(daily, 0, sums.daily(), from + before, daily.length);
          sums.addUp(number);
        });
    return sums;
  }

  /** Computes a stretch of days of one station. */
  private interface DayWorker {
    void compute(double[] min, double[] max, int from, int days, double[] degreeDaysC);
  }

  /** Does one station. */
  private interface StationWorker {
    void accept(DayWorker days, int station);
  }

  private void run(int stations, int days, StationWorker work) {
    int atATime = Math.max(1, DAYS_AT_A_TIME / days);
    run(
        (stations + atATime - 1) / atATime,
        () -> {
          var worker = worker(curve());
          return unit -> {
            int end = Math.min(stations, (unit + 1) * atATime);
            for (int station = unit * atATime; station < end; station++) {
              work.accept(worker, station);
            }
          };
        });
  }

  private void run(int units, Supplier<IntConsumer> worker) {
    ParallelUnits.run(WORK, units, threads, progress.orElseGet(Progress::ofThread), worker);
  }

  private Optional<CrossingCurve> curve() {
    return switch (model.method()) {
      case SINGLE_SINE -> Optional.of(CrossingCurve.SINE);
      case SINGLE_TRIANGLE -> Optional.of(CrossingCurve.TRIANGLE);
      default -> Optional.empty();
    };
  }

  private DayWorker worker(Optional<CrossingCurve> curve) {
    if (curve.isEmpty()) {
      return this::byTheModel;
    }
    var block = new CrossingBlock(curve.get(), model.thresholds(), model.cutoff());
    return (min, max, from, days, degreeDaysC) -> {
      for (int at = 0; at < days; at += CrossingBlock.DAYS) {
        int size = Math.min(CrossingBlock.DAYS, days - at);
        block.degreeDays(min, max, from + at, size, degreeDaysC);
      }
    };
  }

  private double[] daily(DayWorker worker, DailyTemperatures station) {
    if (curve().isEmpty()) {
      return model.daily(station).valuesC();
    }
    var daily = new double[station.size()];
    worker.compute(station.minimaCelsius(), station.maximaCelsius(), 0, daily.length, daily);
    return daily;
  }

  private void byTheModel(double[] min, double[] max, int from, int days, double[] degreeDaysC) {
    var run =
        model.degreeDaysC(
            Arrays.copyOfRange(min, from, from + days), Arrays.copyOfRange(max, from, from + days));
    System.arraycopy(run, 0, degreeDaysC, from, days);
  }

  private static void requireLength(int minima, int others, String what) {
    if (minima != others) {
      throw InputProblem.of(minima + " daily minima and " + others + " " + what)
          .expected("as many minima as " + what)
          .because("each day needs both")
          .mend("give arrays for the same days");
    }
  }
}
