package agro.trial.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.stats.multiple.ComparisonMethod;
import agro.trial.Assessment;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What no analysis may depend on. */
class AnalysisPropertiesTest {

  private static FieldTrial trial(long seed, double factor, String prefix, boolean shuffled) {
    var random = new Random(seed);
    var lines = new ArrayList<Assessment>();
    for (int block = 1; block <= 4; block++) {
      for (int treatment = 0; treatment < 5; treatment++) {
        double value = 10 + 4 * treatment + block + 3 * random.nextGaussian();
        var plot =
            TrialPlot.of(
                Integer.toString(5 * block + treatment), "b" + block, prefix + (treatment + 1));
        lines.add(Assessment.of(plot, KnownTrials.DAY, "yield", factor * Math.max(1, value)));
      }
    }
    if (shuffled) {
      Collections.shuffle(lines, random);
    }
    return FieldTrial.of("t", List.of(TrialResponse.measure("yield", "kg")), lines);
  }

  private static AnalysedTrial analysed(FieldTrial trial, AnalysisRoute route) {
    return TrialAnalysis.of(trial, "yield").with(route).evaluate();
  }

  @Property(seed = "8", tries = 30)
  void orderOfLinesChangesNothing(@ForAll @IntRange(max = 10_000) int seed) {
    for (var route : List.of(AnalysisRoute.NORMAL, AnalysisRoute.RANKS)) {
      var one = analysed(trial(seed, 1, "t", false), route);
      var other = analysed(trial(seed, 1, "t", true), route);

      assertThat(other.presentation().toText()).isEqualTo(one.presentation().toText());
    }
  }

  @Property(seed = "8", tries = 30)
  void namesChangeNothing(@ForAll @IntRange(max = 10_000) int seed) {
    var one = analysed(trial(seed, 1, "t", false), AnalysisRoute.NORMAL);
    var other = analysed(trial(seed, 1, "wizened ", false), AnalysisRoute.NORMAL);

    assertThat(other.sentence().replace("wizened ", "t")).isEqualTo(one.sentence());
    for (int i = 1; i <= 5; i++) {
      var mean = one.treatmentMeans().mean("t" + i);
      var renamed = other.treatmentMeans().mean("wizened " + i);
      assertThat(renamed.mark()).isEqualTo(mean.mark());
      assertThat(renamed.mean().getAsDouble()).isCloseTo(mean.mean().getAsDouble(), within(1e-9));
    }
  }

  @Property(seed = "8", tries = 30)
  void scalingScalesMeansAndNoTest(
      @ForAll @IntRange(max = 10_000) int seed,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1000) double factor) {
    var one = analysed(trial(seed, 1, "t", false), AnalysisRoute.NORMAL);
    var other = analysed(trial(seed, factor, "t", false), AnalysisRoute.NORMAL);

    assertThat(other.sentence()).isEqualTo(one.sentence());
    for (var mean : one.treatmentMeans().means()) {
      var scaled = other.treatmentMeans().mean(mean.label());
      double expected = factor * mean.mean().getAsDouble();
      assertThat(scaled.mean().getAsDouble()).isCloseTo(expected, within(1e-9 * factor * 100));
      assertThat(scaled.mark()).isEqualTo(mean.mark());
      assertThat(scaled.limits().orElseThrow().width())
          .isCloseTo(factor * mean.limits().orElseThrow().width(), within(1e-9 * factor * 100));
    }
  }

  @Property(seed = "8", tries = 20)
  void lettersAgreeWithPairs(@ForAll @IntRange(max = 10_000) int seed) {
    for (var method : ComparisonMethod.values()) {
      if (method != ComparisonMethod.DUNNETT) {
        var means =
            TrialAnalysis.of(trial(seed, 1, "t", false), "yield")
                .compared(method)
                .evaluate()
                .treatmentMeans();
        for (var pair : means.pairs()) {
          var first = means.mean(pair.first()).mark();
          boolean share =
              means.mean(pair.second()).mark().chars().anyMatch(c -> first.indexOf(c) >= 0);
          assertThat(share).isEqualTo(!pair.isDifferent());
        }
      }
    }
  }

  @Property(seed = "8", tries = 200)
  void transformationsAreCarriedBack(@ForAll @DoubleRange(min = 0.01, max = 99.9) double value) {
    for (var each :
        List.of(
            Transformation.none(),
            Transformation.squareRoot(),
            Transformation.squareRoot(0.5),
            Transformation.logarithm(),
            new Logarithm(2, Logarithm.Base.NATURAL),
            Transformation.arcsine())) {
      double there = each.apply(value, OptionalInt.empty());
      assertThat(each.back(there)).isCloseTo(value, within(1e-9));
    }
  }
}
