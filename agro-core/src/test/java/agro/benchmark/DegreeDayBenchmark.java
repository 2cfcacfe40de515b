package agro.benchmark;

import agro.development.DegreeDayBatch;
import agro.development.DegreeDayMethod;
import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.units.Temperature;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Degree-days of arrays of station-days on one thread; one call is one measurement. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 30)
@Measurement(iterations = 12)
public class DegreeDayBenchmark {

  /** Number of station-days. */
  @Param({"100000", "1000000", "10000000"})
  int days;

  /** Rule above the upper threshold. */
  @Param({"HORIZONTAL"})
  UpperCutoff cutoff;

  private InventedWeather weather;
  private double[] result;
  private DegreeDayModel model;
  private DegreeDayBatch batch;

  /** Makes the days. */
  @Setup
  public void makeDays() {
    weather = new InventedWeather(days, 12, 1);
    result = new double[days];
    var thresholds = Thresholds.between(new Temperature(10), new Temperature(30));
    model = new DegreeDayModel(DegreeDayMethod.SINGLE_SINE, thresholds, cutoff);
    batch = DegreeDayBatch.of(model).withThreads(1);
  }

  /**
   * All days in one batch.
   *
   * @return the degree-days
   */
  @Benchmark
  public double[] batch() {
    batch.degreeDaysC(weather.min, weather.max, result);
    return result;
  }

  /**
   * One day after the other by the model, for comparison.
   *
   * @return the degree-days
   */
  @Benchmark
  public double[] model() {
    return model.degreeDaysC(weather.min, weather.max);
  }
}
