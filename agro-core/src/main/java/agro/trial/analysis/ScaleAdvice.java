package agro.trial.analysis;

import agro.trial.ResponseKind;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Offers another scale or route where the values call for one. It offers and never chooses: a scale
 * that is chosen by its p-value has no level.
 */
final class ScaleAdvice {

  private static final double DOUBTFUL = 0.05;
  private static final int FEWEST = 3;
  private static final double ROOT_FROM = 0.7;
  private static final double LOGARITHM_FROM = 1.5;

  private ScaleAdvice() {}

  static List<String> of(AnalysisSubject subject, double[] values, List<CheckedAssumption> checks) {
    var advice = new ArrayList<String>();
    var doubtful =
        checks.stream()
            .filter(check -> check.pValue().isPresent() && check.pValue().getAsDouble() <= DOUBTFUL)
            .map(CheckedAssumption::name)
            .toList();
    if (subject.transformation().isNone()) {
      power(subject, values).ifPresent(advice::add);
      shares(subject, values, advice);
    }
    if (!doubtful.isEmpty()) {
      advice.add(
          "In doubt: "
              + String.join("; ", doubtful)
              + ". Look at the figure of residuals before the p-values, and state beforehand which"
              + " scale is the one that counts.");
    }
    if (subject.values().response().kind() == ResponseKind.SCORE) {
      advice.add(
          "For a score, analysis of ranks or an ordinal model needs no distances between grades.");
    }
    return advice;
  }

  private static void shares(AnalysisSubject subject, double[] values, List<String> advice) {
    if (!subject.isShare()) {
      return;
    }
    boolean ends = false;
    for (double value : values) {
      ends |= value < 20 || value > 80;
    }
    if (ends) {
      advice.add(
          "Shares near 0 or 100 % scatter less than those between; "
              + (subject.values().response().kind() == ResponseKind.COUNT_OUT_OF
                  ? "the binomial or quasi-binomial route takes that and the numbers looked at into"
                      + " account, the arcsine of the root only the first."
                  : "the arcsine of the root takes that into account."));
    }
  }

  private static Optional<String> power(AnalysisSubject subject, double[] values) {
    var groups = new LinkedHashMap<String, List<Double>>();
    for (int i = 0; i < values.length; i++) {
      groups
          .computeIfAbsent(subject.values().treatments().get(i), key -> new ArrayList<>())
          .add(values[i]);
    }
    var means = new ArrayList<Double>();
    var variances = new ArrayList<Double>();
    for (var group : groups.values()) {
      double mean = group.stream().mapToDouble(Double::doubleValue).average().orElse(0);
      double squares = group.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
      if (mean > 0 && group.size() > 1 && squares > 0) {
        means.add(Math.log(mean));
        variances.add(Math.log(squares / (group.size() - 1)));
      }
    }
    if (subject.values().response().kind() != ResponseKind.COUNT || means.size() < FEWEST) {
      return Optional.empty();
    }
    double slope = slope(means, variances);
    if (!(slope >= ROOT_FROM)) {
      return Optional.empty();
    }
    return Optional.of(
        "Over the treatments the variance of plots grows as the mean to the power "
            + Numbers.fixed(slope, 1)
            + (slope < LOGARITHM_FROM
                ? ": near 1 the square root or a quasi-Poisson model fits such counts"
                : ": near 2 the logarithm or a negative binomial model fits such counts")
            + " better than the values as they are.");
  }

  private static double slope(List<Double> x, List<Double> y) {
    double meanX = x.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double meanY = y.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double products = 0;
    double squares = 0;
    for (int i = 0; i < x.size(); i++) {
      products += (x.get(i) - meanX) * (y.get(i) - meanY);
      squares += (x.get(i) - meanX) * (x.get(i) - meanX);
    }
    return products / squares;
  }
}
