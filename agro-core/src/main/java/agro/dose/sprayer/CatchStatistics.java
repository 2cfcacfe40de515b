package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.FlowRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Mean, spread and outliers of a catch test. */
final class CatchStatistics {

  private final CatchTest test;
  private final List<FlowRate> flows;
  private final double[] flowing;

  CatchStatistics(CatchTest test) {
    this.test = test;
    this.flows = test.catches().stream().map(one -> one.mean().dividedBy(test.time())).toList();
    this.flowing =
        flows.stream().mapToDouble(FlowRate::litresPerMinute).filter(flow -> flow > 0).toArray();
    if (flowing.length == 0) {
      throw InputProblem.of("nothing was caught under any nozzle")
          .expected("at least one nozzle that gives something")
          .because("the mean would be zero, and no nozzle can be compared with it")
          .mend("open the valve, check filter and pump, and catch again");
    }
  }

  CatchTestResult result() {
    double mean = mean(flowing);
    double median = median(flowing);
    var findings = new ArrayList<NozzleFinding>();
    for (int i = 0; i < flows.size(); i++) {
      findings.add(finding(test.catches().get(i).nozzle(), flows.get(i), mean, median));
    }
    var spread = spread(mean);
    return new CatchTestResult(
        new NozzleFlow(new FlowRate(mean)),
        spread,
        uncertainty(mean),
        findings,
        test.tolerance(),
        test.units(),
        CatchWorking.of(test, findings, mean, spread, uncertainty(mean)));
  }

  private NozzleFinding finding(String nozzle, FlowRate flow, double mean, double median) {
    double value = flow.litresPerMinute();
    double fromMean = value / mean - 1;
    var aboveNew =
        test.newFlow().isPresent()
            ? OptionalDouble.of(value / test.newFlow().get().litresPerMinute() - 1)
            : OptionalDouble.empty();
    return new NozzleFinding(
        nozzle, flow, fromMean, value / median - 1, aboveNew, verdict(value, fromMean));
  }

  private NozzleVerdict verdict(double litresPerMinute, double fromMean) {
    if (litresPerMinute == 0) {
      return NozzleVerdict.BLOCKED;
    }
    double limit = test.tolerance().share() + NozzleFinding.ROUNDING;
    if (Math.abs(fromMean) <= limit) {
      return NozzleVerdict.WITHIN;
    }
    return fromMean < 0 ? NozzleVerdict.LOW : NozzleVerdict.HIGH;
  }

  /** Standard deviation between the nozzles that flow, in L/min. */
  private Optional<FlowRate> spread(double mean) {
    if (flowing.length < 2) {
      return Optional.empty();
    }
    return Optional.of(new FlowRate(Math.sqrt(variance(mean))));
  }

  private double variance(double mean) {
    double sum = 0;
    for (double flow : flowing) {
      sum += (flow - mean) * (flow - mean);
    }
    return sum / (flowing.length - 1);
  }

  /**
   * Relative standard error of the mean of all nozzles. Of k nozzles out of N, each caught several
   * times, it is that of a two-stage sample: (1 - k/N) times the variance between nozzles over k,
   * plus k/N times the variance within over the number of catches. With one catch a nozzle the two
   * cannot be told apart, and the whole spread counts.
   */
  private Optional<RelativeUncertainty> uncertainty(double mean) {
    int nozzles = flowing.length;
    double perLitre = 60 / test.time().seconds();
    double squares = 0;
    int freedom = 0;
    double reciprocals = 0;
    for (var one : test.catches()) {
      if (one.mean().litres() > 0) {
        squares += one.squares() * perLitre * perLitre;
        freedom += one.volumes().size() - 1;
        reciprocals += 1.0 / one.volumes().size();
      }
    }
    if (freedom == 0) {
      return nozzles < 2
          ? Optional.empty()
          : Optional.of(share(Math.sqrt(variance(mean) / nozzles), mean, nozzles - 1));
    }
    double sampled = Math.min(1, (double) nozzles / test.nozzlesOnSprayer());
    double within = sampled * squares / freedom * reciprocals / ((double) nozzles * nozzles);
    boolean all = sampled == 1;
    if (!all && nozzles < 2) {
      return Optional.empty();
    }
    double between = all ? 0 : (1 - sampled) * variance(mean) / nozzles;
    return Optional.of(share(Math.sqrt(between + within), mean, all ? freedom : nozzles - 1));
  }

  private static RelativeUncertainty share(double error, double mean, int freedom) {
    return new RelativeUncertainty(error / mean, freedom);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double median(double[] values) {
    var sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : 0.5 * (sorted[middle - 1] + sorted[middle]);
  }
}
