package agro.benchmark;

import agro.trial.efficacy.EfficacyData;
import agro.trial.efficacy.EfficacyEvaluation;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.efficacy.PlotCounts;
import agro.trial.efficacy.TrialEfficacy;
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
 * Efficacy after Henderson and Tilton of six treatments in six blocks, invented counts, with all
 * its intervals, among them a bootstrap of 2,000 over the blocks for each treatment.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 20)
@Measurement(iterations = 20)
public class EfficacyBootstrapBenchmark {

  private static final int BLOCKS = 6;
  private static final int TREATMENTS = 6;
  private static final int REFITS = 2000;

  /**
   * Evaluates the trial.
   *
   * @return all efficacies with their intervals
   */
  @Benchmark
  public TrialEfficacy bootstrap() {
    var plots = new ArrayList<PlotCounts>();
    for (int block = 1; block <= BLOCKS; block++) {
      var name = String.valueOf(block);
      plots.add(PlotCounts.of(name, "control", 30 + 7 * block % 13, 40 + 5 * block % 11));
      for (int each = 1; each <= TREATMENTS; each++) {
        plots.add(
            PlotCounts.of(
                name, "T" + each, 25 + (11 * block + 3 * each) % 17, 3 * each + block * each % 5));
      }
    }
    return EfficacyEvaluation.withDefaults()
        .with(EfficacyFormula.HENDERSON_TILTON)
        .withRefits(REFITS, 1)
        .evaluate(EfficacyData.ofCounts("control", plots));
  }
}
