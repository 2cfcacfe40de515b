package agro.benchmark;

import agro.development.DegreeDayBatch;
import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.units.Temperature;
import java.time.LocalDate;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Thirty years of many stations, added up and asked for a date in every year. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 20)
@Measurement(iterations = 8)
public class StationSumsBenchmark {

  private static final int YEARS = 30;
  private static final LocalDate FIRST = LocalDate.of(1991, 1, 1);
  private static final int DAYS = (int) (FIRST.plusYears(YEARS).toEpochDay() - FIRST.toEpochDay());
  private static final double REQUIREMENT = 600;

  /** Number of stations. */
  @Param({"10", "100", "1000"})
  int stations;

  private InventedWeather weather;
  private DegreeDayBatch batch;
  private long bytes;

  /** Makes the days. */
  @Setup
  public void makeDays() {
    weather = new InventedWeather(stations * DAYS, 12, 2);
    var thresholds = Thresholds.between(new Temperature(10), new Temperature(30));
    var model = DegreeDayModel.singleSine(thresholds, UpperCutoff.HORIZONTAL);
    batch = DegreeDayBatch.of(model).withThreads(1);
  }

  /**
   * Accumulates all stations and looks up, in each year, the date of a sum at each of them.
   *
   * @return mean of the days until the sum
   */
  @Benchmark
  public double datesOfAllYears() {
    var sums = batch.accumulate(FIRST, DAYS, weather.min, weather.max);
    bytes = sums.bytes();
    double all = 0;
    for (int year = 0; year < YEARS; year++) {
      for (double days : sums.daysUntil(FIRST.plusYears(year), REQUIREMENT)) {
        all += days;
      }
    }
    return all / (stations * YEARS);
  }

  /** Says what the sums take in memory. */
  @TearDown
  public void tellMemory() {
    System.out.printf("memory: %.1f MB of sums%n", bytes / 1e6);
  }
}
