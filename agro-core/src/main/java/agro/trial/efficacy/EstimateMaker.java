package agro.trial.efficacy;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.trial.NaturalOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.TDistribution;

/** Makes the estimates of a trial, treatment by treatment. */
final class EstimateMaker {

  private static final String NO_SCATTER = "one block, or one plot of a group, has no scatter";

  private final EfficacyData data;
  private final EfficacyFormula formula;
  private final EfficacyEvaluation settings;

  EstimateMaker(EfficacyData data, EfficacyFormula formula, EfficacyEvaluation settings) {
    this.data = data;
    this.formula = formula;
    this.settings = settings;
  }

  TreatmentEfficacy treatment(String name) {
    var ratios = BlockRatios.of(data, formula, name);
    if (ratios.size() == 0) {
      throw InputProblem.of("no block with usable counts of both " + name + " and the control")
          .expected("at least one block with both")
          .because("a treated plot is held against the control of its own block")
          .mend("look at the blocks' names and at missing counts, or leave the treatment out");
    }
    var sample = RatioSample.of(ratios);
    var blocks = blockEfficacies(ratios);
    var scatter =
        sample.size() > 1
            ? Optional.of(
                BlockBootstrap.of(sample, settings.refits(), settings.seed(), settings.level()))
            : Optional.<BlockBootstrap>empty();
    var pooled = pooled(ratios, sample, scatter);
    var mean = meanOfBlocks(blocks, sample, scatter);
    var choice = SummaryChoice.of(pooled, mean, ratios, data.isMortality());
    return new TreatmentEfficacy(
        name,
        plotEfficacies(ratios),
        blocks,
        pooled,
        mean,
        choice.summary(),
        choice.reason(),
        ratios.notes());
  }

  private List<PlotEfficacy> plotEfficacies(BlockRatios ratios) {
    var plots = new ArrayList<PlotEfficacy>();
    for (int i = 0; i < ratios.size(); i++) {
      var block = ratios.blocks().get(i);
      for (var plot : block.treated()) {
        var one = new FourCounts(List.of(plot), block.control(), block.before());
        plots.add(efficacy(ratios.names().get(i), plot.plot(), one));
      }
    }
    return inOrder(plots);
  }

  private List<PlotEfficacy> blockEfficacies(BlockRatios ratios) {
    var blocks = new ArrayList<PlotEfficacy>();
    for (int i = 0; i < ratios.size(); i++) {
      var block = ratios.blocks().get(i);
      var plots = block.treated().stream().map(PlotCounts::plot).collect(Collectors.joining(", "));
      blocks.add(efficacy(ratios.names().get(i), plots, block));
    }
    return inOrder(blocks);
  }

  private static List<PlotEfficacy> inOrder(List<PlotEfficacy> plots) {
    plots.sort(
        Comparator.comparing(PlotEfficacy::block, NaturalOrder.ofNames())
            .thenComparing(PlotEfficacy::plot, NaturalOrder.ofNames()));
    return plots;
  }

  private PlotEfficacy efficacy(String block, String plot, FourCounts four) {
    var counts = four.liveCounts();
    var why = undefined(counts);
    return new PlotEfficacy(
        block,
        plot,
        counts,
        why.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(percent(counts)),
        why.orElse(""));
  }

  private Optional<String> undefined(LiveCounts counts) {
    if (data.isMortality()) {
      return counts.controlAfter() == 0
          ? Optional.of(EfficacyRefusals.allDead().read())
          : Optional.empty();
    }
    return formula.undefined(counts).map(InputProblem::read);
  }

  private double percent(LiveCounts counts) {
    if (!data.isMortality()) {
      return formula.percent(counts);
    }
    double treated = counts.treatedBefore().orElseThrow();
    double control = counts.controlBefore().orElseThrow();
    return formula.percent(
        MortalityPair.ofDead(
            treated - counts.treatedAfter(), treated, control - counts.controlAfter(), control));
  }

  private EfficacyEstimate pooled(
      BlockRatios ratios, RatioSample sample, Optional<BlockBootstrap> scatter) {
    var counts = sample.means(ratios.before());
    var why = undefined(counts);
    if (why.isPresent()) {
      return new EfficacyEstimate(
          EfficacyEstimate.Summary.POOLED,
          OptionalDouble.empty(),
          why.orElseThrow(),
          OptionalDouble.empty(),
          List.of());
    }
    double percent = percent(counts);
    double[] error = sample.size() > 1 ? sample.logError() : new double[] {Double.NaN, 0};
    var limits = new ArrayList<EfficacyLimits>();
    limits.add(delta(sample, error));
    scatter.ifPresent(drawn -> limits.addAll(drawn.limits(false, percent)));
    limits.add(individuals(ratios));
    double standardError =
        data.isMortality() && sample.size() == 1
            ? 100 * IndividualLimits.mortalityError(ratios.together())
            : 100 * sample.ratio() * error[0];
    return new EfficacyEstimate(
        EfficacyEstimate.Summary.POOLED,
        OptionalDouble.of(percent),
        "",
        standardError > 0 ? OptionalDouble.of(standardError) : OptionalDouble.empty(),
        limits);
  }

  private EfficacyLimits delta(RatioSample sample, double[] error) {
    double ratio = sample.ratio();
    if (ratio == 0) {
      return EfficacyLimits.none(
          EfficacyInterval.DELTA, "nothing is left of the treated, and nothing has no logarithm");
    }
    if (!(error[0] > 0)) {
      return EfficacyLimits.none(
          EfficacyInterval.DELTA,
          sample.size() > 1 ? "the blocks agree to the last digit" : NO_SCATTER);
    }
    double half = student(error[1]) * error[0];
    return EfficacyLimits.ofRatio(
        EfficacyInterval.DELTA,
        new ConfidenceLimits(ratio * Math.exp(-half), ratio * Math.exp(half)),
        "");
  }

  private EfficacyLimits individuals(BlockRatios ratios) {
    return IndividualLimits.of(ratios.together(), data.isMortality(), settings.level());
  }

  private EfficacyEstimate meanOfBlocks(
      List<PlotEfficacy> blocks, RatioSample sample, Optional<BlockBootstrap> scatter) {
    var without = blocks.stream().filter(block -> block.percent().isEmpty()).toList();
    if (!without.isEmpty()) {
      return new EfficacyEstimate(
          EfficacyEstimate.Summary.MEAN_OF_BLOCKS,
          OptionalDouble.empty(),
          "block " + without.get(0).block() + ": " + without.get(0).undefined(),
          OptionalDouble.empty(),
          List.of());
    }
    double[] values =
        blocks.stream().mapToDouble(block -> block.percent().orElseThrow()).sorted().toArray();
    double mean = 0;
    for (double value : values) {
      mean += value / values.length;
    }
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    double error = Math.sqrt(squares / values.length / (values.length - 1.0));
    double half = values.length > 1 ? student(values.length - 1.0) * error : Double.NaN;
    var limits = new ArrayList<EfficacyLimits>();
    if (half > 0) {
      limits.add(
          EfficacyLimits.of(
              EfficacyInterval.STUDENT_T,
              mean - half,
              mean + half,
              mean + half > 100 ? "the upper limit passes 100 %, which no efficacy can" : ""));
    } else {
      limits.add(
          EfficacyLimits.none(
              EfficacyInterval.STUDENT_T,
              values.length > 1 ? "all blocks have the same efficacy" : NO_SCATTER));
    }
    if (sample.isPaired()) {
      double centre = mean;
      scatter.ifPresent(drawn -> limits.addAll(drawn.limits(true, centre)));
    }
    return new EfficacyEstimate(
        EfficacyEstimate.Summary.MEAN_OF_BLOCKS,
        OptionalDouble.of(mean),
        "",
        error > 0 ? OptionalDouble.of(error) : OptionalDouble.empty(),
        limits);
  }

  private double student(double freedom) {
    return new TDistribution(freedom).inverseCumulativeProbability(0.5 + 0.5 * settings.level());
  }
}
