package agro.trial.load;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.trial.NaturalOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;

/** Gains of treatments over the control, block by block, or of two samples without blocks. */
final class TreatmentValues {

  private final GradedYield settings;
  private final List<PlotGross> plots;

  private TreatmentValues(GradedYield settings, List<PlotGross> plots) {
    this.settings = settings;
    this.plots = plots;
  }

  static List<TreatmentValue> of(GradedYield settings, List<PlotGross> plots) {
    var maker = new TreatmentValues(settings, plots);
    return plots.stream()
        .map(PlotGross::treatment)
        .distinct()
        .sorted(NaturalOrder.ofNames())
        .map(maker::value)
        .toList();
  }

  private TreatmentValue value(String treatment) {
    double gross = mean(values(treatment, null));
    double cost = settings.cost(treatment);
    if (treatment.equals(settings.control())) {
      return new TreatmentValue(
          treatment, gross, cost, 0, 0, 0, Optional.empty(), OptionalDouble.empty(), "the control");
    }
    var blocks =
        plots.stream()
            .map(PlotGross::block)
            .distinct()
            .filter(b -> !values(treatment, b).isEmpty())
            .filter(b -> !values(settings.control(), b).isEmpty())
            .toList();
    if (blocks.isEmpty()) {
      throw InputProblem.of("no block with both " + treatment + " and the control")
          .expected("at least one")
          .because("a gain is stated against the control of the same block")
          .mend("look at the names of the blocks");
    }
    boolean paired = blocks.size() > 1;
    double extra = cost - settings.cost(settings.control());
    double[] gain = paired ? withinBlocks(treatment, blocks) : betweenPlots(treatment);
    double half =
        gain[1] > 0 && gain[2] > 0
            ? gain[1] * new TDistribution(gain[2]).inverseCumulativeProbability(upper())
            : Double.NaN;
    double net = gain[0] - extra;
    return new TreatmentValue(
        treatment,
        gross,
        cost,
        gain[0],
        extra,
        net,
        half > 0 ? Optional.of(new ConfidenceLimits(net - half, net + half)) : Optional.empty(),
        gain[0] > 0 ? OptionalDouble.of(Math.max(0, extra) / gain[0]) : OptionalDouble.empty(),
        note(half > 0, paired, blocks.size()));
  }

  private static String note(boolean limits, boolean paired, int blocks) {
    if (!limits) {
      return "no limits: there is no scatter to judge by";
    }
    return paired
        ? "differences within " + blocks + " blocks, Student's t"
        : "plots without blocks, two samples after Satterthwaite";
  }

  private double upper() {
    return 0.5 + 0.5 * settings.level();
  }

  /** Gain, its standard error and degrees of freedom. */
  private double[] withinBlocks(String treatment, List<String> blocks) {
    var gains = new ArrayList<Double>();
    for (var block : blocks) {
      gains.add(mean(values(treatment, block)) - mean(values(settings.control(), block)));
    }
    return new double[] {
      mean(gains), Math.sqrt(variance(gains) / gains.size()), gains.size() - 1.0
    };
  }

  private double[] betweenPlots(String treatment) {
    var treated = values(treatment, null);
    var control = values(settings.control(), null);
    double gain = mean(treated) - mean(control);
    if (treated.size() < 2 || control.size() < 2) {
      return new double[] {gain, 0, 0};
    }
    double t = variance(treated) / treated.size();
    double c = variance(control) / control.size();
    double freedom =
        (t + c) * (t + c) / (t * t / (treated.size() - 1) + c * c / (control.size() - 1));
    return new double[] {gain, Math.sqrt(t + c), freedom};
  }

  private List<Double> values(String treatment, String block) {
    return plots.stream()
        .filter(plot -> plot.treatment().equals(treatment))
        .filter(plot -> block == null || plot.block().equals(block))
        .map(PlotGross::grossPerHectare)
        .sorted()
        .toList();
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).sorted().average().orElse(Double.NaN);
  }

  private static double variance(List<Double> values) {
    double mean = mean(values);
    double sum = 0;
    for (double value : values.stream().sorted().toList()) {
      sum += (value - mean) * (value - mean);
    }
    return sum / (values.size() - 1);
  }
}
