package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.GroupedValues;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import agro.stats.assumption.VarianceTest;
import agro.stats.assumption.VarianceTestResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the error variances of the sites are alike, which one pooled error for all supposes.
 * Bartlett's test uses the error mean squares of the single trials with their own degrees of
 * freedom; Levene's and Brown and Forsythe's use the scaled residuals.
 *
 * @param trials the trials whose error variance is known and above zero
 * @param bartlett statistic of Bartlett's test, nothing for fewer than two such trials
 * @param bartlettDegreesOfFreedom trials less one
 * @param bartlettChance its chance, nothing without a statistic
 * @param levene Levene's test, if there is one
 * @param brownForsythe the same from medians, for skewed values
 * @param ratio largest over smallest error variance
 * @param notes sites without an error variance
 */
public record SiteVariances(
    List<SingleTrial> trials,
    OptionalDouble bartlett,
    int bartlettDegreesOfFreedom,
    OptionalDouble bartlettChance,
    Optional<VarianceTestResult> levene,
    Optional<VarianceTestResult> brownForsythe,
    OptionalDouble ratio,
    List<String> notes) {

  /** Largest ratio of error variances that is commonly pooled. */
  static final double POOLED_UP_TO = 4;

  /** Copies the lists. */
  public SiteVariances {
    trials = List.copyOf(trials);
    notes = List.copyOf(notes);
    Objects.requireNonNull(bartlett, "bartlett");
    Objects.requireNonNull(levene, "levene");
    Objects.requireNonNull(brownForsythe, "brownForsythe");
    Objects.requireNonNull(ratio, "ratio");
  }

  static SiteVariances of(List<SingleTrial> all) {
    var notes = new ArrayList<String>();
    for (var trial : all) {
      if (trial.errorVariance().isEmpty()) {
        notes.add(
            trial.site()
                + " has no error of its own: "
                + (trial.blocks() == 1 ? "it has one block" : "its treatments stand there once"));
      } else if (!trial.hasScatter()) {
        notes.add(trial.site() + " has an error variance of zero: its plots do not scatter");
      }
    }
    var trials = all.stream().filter(SingleTrial::hasScatter).toList();
    if (trials.size() < 2) {
      return new SiteVariances(
          trials,
          OptionalDouble.empty(),
          0,
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          notes);
    }
    double statistic = bartlett(trials);
    int df = trials.size() - 1;
    return new SiteVariances(
        trials,
        OptionalDouble.of(statistic),
        df,
        OptionalDouble.of(UpperTail.chiSquared(statistic, df)),
        residualTest(VarianceTest.LEVENE, trials),
        residualTest(VarianceTest.BROWN_FORSYTHE, trials),
        OptionalDouble.of(variance(largest(trials)) / variance(smallest(trials))),
        notes);
  }

  private static double variance(SingleTrial trial) {
    return trial.errorVariance().orElseThrow();
  }

  private static SingleTrial largest(List<SingleTrial> trials) {
    return trials.stream().max(Comparator.comparingDouble(SiteVariances::variance)).orElseThrow();
  }

  private static SingleTrial smallest(List<SingleTrial> trials) {
    return trials.stream().min(Comparator.comparingDouble(SiteVariances::variance)).orElseThrow();
  }

  private static double bartlett(List<SingleTrial> trials) {
    double df = 0;
    double pooled = 0;
    double logs = 0;
    double inverses = 0;
    for (var trial : trials) {
      double own = trial.errorDegreesOfFreedom();
      df += own;
      pooled += own * variance(trial);
      logs += own * Math.log(variance(trial));
      inverses += 1 / own;
    }
    double correction = 1 + (inverses - 1 / df) / (3.0 * (trials.size() - 1));
    return Math.max(0, (df * Math.log(pooled / df) - logs) / correction);
  }

  private static Optional<VarianceTestResult> residualTest(
      VarianceTest test, List<SingleTrial> trials) {
    var groups = new LinkedHashMap<String, double[]>();
    trials.forEach(
        trial ->
            groups.put(
                trial.site(),
                trial.scaledResiduals().stream().mapToDouble(Double::doubleValue).toArray()));
    try {
      return Optional.of(test.test(GroupedValues.of(groups)));
    } catch (InputProblem nothingToTest) {
      // Residuals of two plots are one number with two signs: no scatter of distances is left.
      return Optional.empty();
    }
  }

  /**
   * Whether one pooled error may serve: the test did not find a difference, or the ratio is small.
   *
   * @param level level of the test
   * @return false also when nothing is known
   */
  public boolean mayBePooled(double level) {
    return bartlettChance.isPresent()
        && (bartlettChance.getAsDouble() > level || ratio.getAsDouble() <= POOLED_UP_TO);
  }

  /**
   * The tests in one sentence.
   *
   * @return for example "Bartlett: chi-squared = 3.10; df = 3; P = 0.377"
   */
  public String sentence() {
    if (bartlett.isEmpty()) {
      return "No test: fewer than two sites have an error variance.";
    }
    return "Bartlett: "
        + TestSentence.of(
            "chi-squared",
            bartlett.getAsDouble(),
            bartlettChance.getAsDouble(),
            bartlettDegreesOfFreedom)
        + levene.map(test -> ". Levene: " + test.sentence()).orElse("")
        + brownForsythe.map(test -> ". Brown-Forsythe: " + test.sentence()).orElse("")
        + ". Largest over smallest error variance: "
        + PlainFigure.of(ratio.getAsDouble())
        + " ("
        + largest(trials).site()
        + " over "
        + smallest(trials).site()
        + ").";
  }

  /**
   * What the tests mean for the analysis over sites.
   *
   * @param level level of the tests
   * @return one or two sentences
   */
  public String meaning(double level) {
    if (bartlett.isEmpty()) {
      return "Whether the sites scatter alike is not known, and one error for all rests on trust.";
    }
    if (mayBePooled(level)) {
      return bartlettChance.getAsDouble() > level
          ? "The error variances may be alike, and one pooled error serves for all sites. With few"
              + " degrees of freedom the test sees large differences only."
          : "The error variances differ, but by no more than the factor of "
              + PlainFigure.of(POOLED_UP_TO)
              + " that is commonly pooled; F tests over sites of equal size hardly suffer.";
    }
    return "The error variances differ. A pooled error is too large for the quiet sites and too"
        + " small for the noisy ones, and the test of treatment by site rejects too readily. Weigh"
        + " plots by one over the error variance of their site (SiteWeights.BY_ERROR_VARIANCE), take"
        + " a scale on which sites scatter alike, or read the single trials side by side.";
  }

  @Override
  public String toString() {
    return sentence();
  }
}
