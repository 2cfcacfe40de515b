package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.GroupedValues;
import agro.stats.TestSentence;
import agro.stats.assumption.GroupSpread;
import agro.stats.assumption.LargestResidual;
import agro.stats.assumption.NonAdditivity;
import agro.stats.assumption.ShapiroWilk;
import agro.stats.assumption.VarianceTest;
import agro.stats.linear.LinearModelFit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Checks of the assumptions of the analysis of variance, each with what it says in words. */
final class ModelChecks {

  private static final double DOUBTFUL = 0.05;
  private static final int FEW = 20;
  private static final int FEW_PLOTS = 4;

  private final TrialLines lines;
  private final LinearModelFit fit;
  private final double[] residuals;
  private final List<CheckedAssumption> checks = new ArrayList<>();
  private final List<Reference> sources = new ArrayList<>();

  ModelChecks(TrialLines lines, LinearModelFit fit) {
    this.lines = lines;
    this.fit = fit;
    this.residuals = fit.residuals();
  }

  List<CheckedAssumption> all() {
    add("normal residuals (Shapiro-Wilk)", this::normality);
    for (var test : VarianceTest.values()) {
      add("equal variances (" + test.title() + ")", () -> variances(test));
    }
    if (lines.ground().size() == 1 && isCompleteOnce()) {
      add("effects of blocks and treatments add up (Tukey)", this::additivity);
    }
    add("no plot far from all others", this::farthest);
    return List.copyOf(checks);
  }

  List<Reference> sources() {
    return List.copyOf(sources);
  }

  private record Finding(String sentence, double pValue, String words) {}

  private void add(String name, Supplier<Finding> check) {
    try {
      if (fit.residualDegreesOfFreedom() == 0 || fit.residualSumOfSquares() == 0) {
        throw InputProblem.of("there are no residuals that vary")
            .expected("plots that differ from what the model expects of them")
            .because("the check looks at residuals")
            .mend("use replicated plots");
      }
      var found = check.get();
      checks.add(
          new CheckedAssumption(
              name, found.sentence(), OptionalDouble.of(found.pValue()), found.words()));
    } catch (InputProblem problem) {
      checks.add(
          new CheckedAssumption(
              name,
              "not made: " + problem.read(),
              OptionalDouble.empty(),
              "Nothing is known about this."));
    }
  }

  private Finding normality() {
    var test = ShapiroWilk.test(residuals);
    sources.add(test.source());
    var words =
        test.pValue() <= DOUBTFUL
            ? "The residuals lie farther from a normal distribution than chance explains easily;"
                + " look at their figure."
            : "The residuals say nothing against a normal distribution"
                + (residuals.length < FEW
                    ? ", but " + residuals.length + " of them say little."
                    : ".");
    return new Finding(test.sentence(), test.pValue(), words);
  }

  private Finding variances(VarianceTest test) {
    var result = test.test(GroupedValues.of(lines.values().treatments(), residuals));
    sources.add(result.source());
    var words =
        result.pValue() <= DOUBTFUL
            ? "The plots of some treatments scatter more than those of others."
            : "The scatter of plots does not differ visibly between treatments.";
    var constant =
        result.groups().stream()
            .filter(group -> group.variance() == 0)
            .map(GroupSpread::label)
            .toList();
    if (!constant.isEmpty()) {
      words += " All plots agree in " + String.join("; ", constant) + ".";
    }
    if (result.groups().stream().anyMatch(group -> group.n() < FEW_PLOTS)) {
      words += " With fewer than four plots of a treatment a large P says little.";
    }
    return new Finding(result.sentence(), result.pValue(), words);
  }

  private boolean isCompleteOnce() {
    return lines.ground().get(0).factors().get(0).levelCount()
            * lines.values().treatments().stream().distinct().count()
        == residuals.length;
  }

  private Finding additivity() {
    var block = lines.ground().get(0).factors().get(0);
    var blocks = new ArrayList<String>();
    for (int i = 0; i < residuals.length; i++) {
      blocks.add(block.label(i));
    }
    var test =
        NonAdditivity.test(BlockedValues.of(blocks, lines.values().treatments(), fit.response()));
    sources.add(test.source());
    var words =
        test.pValue() <= DOUBTFUL
            ? "Differences between treatments change with the height of the block, as they do on a"
                + " wrong scale."
            : "Differences between treatments are much the same in all blocks.";
    return new Finding(test.sentence(), test.pValue(), words);
  }

  private Finding farthest() {
    var labels = lines.values().plots().stream().map(plot -> plot.label()).toList();
    var largest =
        LargestResidual.find(labels, residuals, fit.leverages(), fit.residualDegreesOfFreedom());
    sources.add(largest.source());
    var place = lines.values().plots().get(largest.index());
    var words =
        largest.pValue() <= DOUBTFUL
            ? "Look into the notes on this plot. It stays in the analysis unless a reason is found."
            : "It is no farther off than the farthest of so many plots may be.";
    return new Finding(
        place
            + ": "
            + TestSentence.of(
                "t", largest.studentised(), largest.pValue(), fit.residualDegreesOfFreedom() - 1.0)
            + " for the farthest of "
            + largest.tested(),
        largest.pValue(),
        words);
  }
}
