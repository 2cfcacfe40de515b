package agro.benchmark;

import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.EndRule;
import agro.sampling.sequential.PlanCurve;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.WaldLines;
import java.util.ArrayList;
import java.util.List;
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

/** Operating characteristic and average sample number of sequential plans at 20 means, exactly. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5)
@Measurement(iterations = 10)
public class PlanCurveBenchmark {

  private static final int MEANS = 20;
  private static final double LOWEST_MEAN = 0.2;
  private static final double HIGHEST_MEAN = 4;

  private static List<Double> means() {
    var means = new ArrayList<Double>();
    for (int i = 0; i < MEANS; i++) {
      means.add(LOWEST_MEAN + i * (HIGHEST_MEAN - LOWEST_MEAN) / (MEANS - 1));
    }
    return means;
  }

  private static PlanCurve curve(double k, double low, double high, double error, int most) {
    var family = new CountFamily.Clumped(k);
    var lines = WaldLines.of(family, low, high, error, error);
    var plan = SequentialPlan.truncated(lines, most, EndRule.LEAVE_UNDECIDED);
    return PlanCurve.exact(plan, family, means());
  }

  /**
   * Mean 1 against 2, k 1, at most 100 samples.
   *
   * @return the curve
   */
  @Benchmark
  public PlanCurve usual() {
    return curve(1, 1, 2, 0.1, 100);
  }

  /**
   * Mean 5 against 6, k 0.3, errors of 5 %, at most 2,000 samples.
   *
   * @return the curve
   */
  @Benchmark
  public PlanCurve hard() {
    return curve(0.3, 5, 6, 0.05, 2000);
  }
}
