package agro.benchmark;

import agro.development.rate.RateFitting;
import agro.development.rate.RateIntervals;
import agro.development.rate.RateModel;
import agro.development.rate.RearingData;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
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

/**
 * A Briere-1 fit with 1,000 residual bootstraps, timed in its first call in a fresh JVM and warm.
 * Takes a file of temperatures and rates; {@code rate_fit_peer.py} does the same with SciPy.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 40)
@Measurement(iterations = 20)
public class RateFitBenchmark {

  private static final int REPEATS = 60;

  /** The file of rates. */
  @Param({"agro-core/src/test/python/rate_fit_rates.csv"})
  String file;

  private RearingData rates;

  /**
   * Reads the rates.
   *
   * @throws IOException if they cannot be read
   */
  @Setup
  public void readRates() throws IOException {
    rates = rates(Path.of(file));
  }

  /**
   * Fits the curve and bootstraps it.
   *
   * @return fit and intervals
   */
  @Benchmark
  public RateIntervals fitAndBootstrap() {
    return fitAndBootstrap(rates);
  }

  private static RateIntervals fitAndBootstrap(RearingData rates) {
    return RateFitting.of(RateModel.BRIERE_1).fit(rates).bootstrap();
  }

  private static RearingData rates(Path file) throws IOException {
    var lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    int n = lines.size() - 1;
    double[] celsius = new double[n];
    double[] days = new double[n];
    for (int i = 0; i < n; i++) {
      int comma = lines.get(i + 1).indexOf(',');
      celsius[i] = Double.parseDouble(lines.get(i + 1).substring(0, comma));
      days[i] = 1 / Double.parseDouble(lines.get(i + 1).substring(comma + 1));
    }
    return RearingData.ofMeans("", celsius, days);
  }

  /**
   * Prints the parameters, then the seconds of the first call and the best of the others.
   *
   * @param arguments the file of rates
   * @throws IOException if it cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    var rates = rates(Path.of(arguments[0]));
    double first = 0;
    double best = Double.POSITIVE_INFINITY;
    RateIntervals last = null;
    for (int i = 0; i < REPEATS; i++) {
      long start = System.nanoTime();
      last = fitAndBootstrap(rates);
      double seconds = (System.nanoTime() - start) / 1e9;
      first = i == 0 ? seconds : first;
      best = i == 0 ? best : Math.min(best, seconds);
    }
    var fit = java.util.Objects.requireNonNull(last).fit();
    System.out.println("parameters " + fit.curve().parameters());
    System.out.println("sum_of_squares " + fit.sumOfSquares());
    System.out.printf(Locale.ROOT, "first %.4f s, best of the others %.4f s%n", first, best);
  }
}
