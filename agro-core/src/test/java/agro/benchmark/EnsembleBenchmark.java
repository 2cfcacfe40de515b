package agro.benchmark;

import agro.development.DegreeDayBatch;
import agro.development.DegreeDayModel;
import agro.development.StationSums;
import agro.development.ThermalTimeEnsemble;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.units.Temperature;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Nine dates of ensembles and their quantiles, on one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 20)
@Measurement(iterations = 10)
public class EnsembleBenchmark {

  private static final int DAYS = 300;
  private static final int MEMBERS = 10_000;
  private static final int SERIES = 15;
  private static final LocalDate START = LocalDate.of(2001, 3, 1);
  private static final double[] EVENTS = {0.9, 1, 1.1, 1.8, 2, 2.2, 2.7, 3, 3.3};
  private static final double[] QUANTILES = {0.05, 0.5, 0.95};

  private InventedWeather weather;
  private double[] requirements;
  private DegreeDayBatch batch;
  private StationSums fewSums;

  /** Makes members and draws. */
  @Setup
  public void makeMembers() {
    weather = new InventedWeather(MEMBERS * DAYS, 12, 4);
    var random = new SplittableRandom(5);
    requirements = new double[MEMBERS];
    Arrays.setAll(requirements, i -> 270 + 15 * random.nextGaussian());
    var thresholds = Thresholds.above(new Temperature(7.4));
    batch =
        DegreeDayBatch.of(DegreeDayModel.singleSine(thresholds, UpperCutoff.NONE)).withThreads(1);
    int few = SERIES * DAYS;
    fewSums =
        batch.accumulate(
            START, DAYS, Arrays.copyOf(weather.min, few), Arrays.copyOf(weather.max, few));
  }

  /**
   * Ten thousand distinct series, each with its own requirement, from temperatures to quantiles.
   *
   * @return sum of all quantiles
   */
  @Benchmark
  public double distinctMembers() {
    var sums = batch.accumulate(START, DAYS, weather.min, weather.max);
    double all = 0;
    for (var event : ThermalTimeEnsemble.of(sums, START).each(requirements, EVENTS)) {
      for (double p : QUANTILES) {
        all += event.quantile(p);
      }
    }
    return all;
  }

  /**
   * Fifteen series, each with ten thousand draws, from sums to quantiles.
   *
   * @return sum of all quantiles
   */
  @Benchmark
  public double drawnRequirements() {
    double all = 0;
    var ensemble = ThermalTimeEnsemble.of(fewSums, START);
    for (var events : ensemble.crossedByMember(requirements, EVENTS)) {
      for (var event : events) {
        for (double p : QUANTILES) {
          all += event.quantile(p);
        }
      }
    }
    return all;
  }
}
