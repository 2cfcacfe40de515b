package agro.benchmark;

import agro.weather.Medium;
import agro.weather.log.LogColumns;
import agro.weather.log.LogFormat;
import agro.weather.log.TemperatureLog;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A file of hourly readings to daily extremes. Without warm-up and with one measurement in each
 * fork it is the first call in a fresh JVM.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 10)
@Measurement(iterations = 10)
public class LogBenchmark {

  /** The file, with the columns time and temp_c. */
  @Param({"agro-core/target/benchmark/hourly.csv"})
  String file;

  /**
   * Reads the file.
   *
   * @return the daily extremes
   */
  @Benchmark
  public TemperatureLog read() {
    return read(Path.of(file));
  }

  /**
   * Reads the file with nothing declared.
   *
   * @return the daily extremes
   */
  @Benchmark
  public TemperatureLog detect() {
    return TemperatureLog.read(Path.of(file));
  }

  private static TemperatureLog read(Path path) {
    var format = LogFormat.readings().withColumns(new LogColumns.Readings("time", "temp_c"));
    return TemperatureLog.read(path, format, "Mill Field", Medium.shelterAir());
  }

  /**
   * The same as a program of its own, to be timed from outside.
   *
   * @param arguments the file
   */
  public static void main(String[] arguments) {
    System.out.println(read(Path.of(arguments[0])).daily().size() + " days");
  }
}
