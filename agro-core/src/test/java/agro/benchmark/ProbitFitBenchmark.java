package agro.benchmark;

import agro.stats.glm.LinkFunction;
import agro.trial.bioassay.BioassayData;
import agro.trial.bioassay.DoseAxis;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.DoseResponse;
import agro.trial.bioassay.EndPoint;
import java.util.ArrayList;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A thousand probit fits of the five doses of rotenone on chrysanthemum aphid, each with its LD50
 * and Fieller's limits, which the peer does not compute. The first call in a fresh JVM holds the
 * loading of all classes, for nothing is made before it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 60)
@Measurement(iterations = 30)
public class ProbitFitBenchmark {

  private static final int FITS = 1000;
  private static final int REPEATS = 60;
  private static final double[] DOSES = {10.2, 7.7, 5.1, 3.8, 2.6};
  private static final int[] EXPOSED = {50, 49, 46, 48, 50};
  private static final int[] RESPONDED = {44, 42, 24, 16, 6};

  /**
   * Fits a thousand times.
   *
   * @return the sum of the upper limits of the LD50
   */
  @Benchmark
  public double fits() {
    return run();
  }

  private static double run() {
    var groups = new ArrayList<DoseGroup>();
    for (int i = 0; i < DOSES.length; i++) {
      groups.add(DoseGroup.of(DOSES[i], EXPOSED[i], RESPONDED[i]));
    }
    var axis = new DoseAxis.NamedDose("concentration", "mg/L");
    var data = BioassayData.of("rotenone", axis, EndPoint.AS_COUNTED, groups);
    var choices = DoseResponse.withDefaults().with(LinkFunction.PROBIT);
    double sum = 0;
    for (int i = 0; i < FITS; i++) {
      sum += choices.fit(data).lethalDose(50).limits().high();
    }
    return sum;
  }

  /**
   * Prints the limit, then the seconds of the first call and the best of the others.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    double first = 0;
    double best = Double.POSITIVE_INFINITY;
    double last = 0;
    for (int i = 0; i < REPEATS; i++) {
      long start = System.nanoTime();
      last = run();
      double seconds = (System.nanoTime() - start) / 1e9;
      first = i == 0 ? seconds : first;
      best = i == 0 ? best : Math.min(best, seconds);
    }
    System.out.println("upper limit " + last / FITS);
    System.out.printf(Locale.ROOT, "first %.4f s, best of the others %.4f s%n", first, best);
  }
}
