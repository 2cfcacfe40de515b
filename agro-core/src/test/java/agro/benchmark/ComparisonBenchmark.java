package agro.benchmark;

import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.SumsOfSquares;
import agro.stats.multiple.PairwiseComparison;
import java.util.ArrayList;
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
 * 200 one-way analyses of variance of the square roots of Beall's insect counts (1942, distributed
 * with R), each with all pairs after Tukey. Nothing is made before the first call.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 40)
@Measurement(iterations = 20)
public class ComparisonBenchmark {

  private static final int ANALYSES = 200;

  private static final int[][] COUNTS = {
    {10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13},
    {11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13},
    {0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4},
    {3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4},
    {3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4},
    {11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13}
  };

  /**
   * Analyses 200 times.
   *
   * @return a sum of mean squares and chances
   */
  @Benchmark
  public double analyses() {
    var labels = new ArrayList<String>();
    var roots = new ArrayList<Double>();
    for (int spray = 0; spray < COUNTS.length; spray++) {
      for (int count : COUNTS[spray]) {
        labels.add(String.valueOf((char) ('A' + spray)));
        roots.add(Math.sqrt(count));
      }
    }
    double[] response = roots.stream().mapToDouble(Double::doubleValue).toArray();
    double sum = 0;
    for (int i = 0; i < ANALYSES; i++) {
      var spray = Factor.of("spray", labels);
      var fit = LinearModel.oneWay(spray).fit(response);
      sum += fit.analysis(SumsOfSquares.SEQUENTIAL).rows().size();
      var pairs = PairwiseComparison.withDefaults().compare(fit.means(spray).compared());
      for (var pair : pairs.pairs()) {
        sum += pair.adjustedP();
      }
    }
    return sum;
  }
}
