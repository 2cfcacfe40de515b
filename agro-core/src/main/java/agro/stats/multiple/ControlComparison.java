package agro.stats.multiple;

import agro.report.InputProblem;
import java.util.Objects;

/**
 * Compares several treatments with one control.
 *
 * @param control label of the control
 * @param method how the tests are held to the level; not Tukey's, which compares all pairs
 * @param alternative in which direction a difference counts
 * @param level level of significance, such as 0.05
 */
public record ControlComparison(
    String control, ComparisonMethod method, Alternative alternative, double level) {

  /**
   * Checks the settings.
   *
   * @throws InputProblem if the method compares all pairs or the level is not between 0 and 1
   */
  public ControlComparison {
    Objects.requireNonNull(control, "control");
    Objects.requireNonNull(alternative, "alternative");
    if (method == ComparisonMethod.TUKEY) {
      throw InputProblem.of("Tukey's method for comparisons with a control")
          .expected("Dunnett's method, or an adjustment of p-values")
          .because("Tukey's limits pay for pairs that are not looked at here")
          .mend("leave the method as it is, or compare all pairs with PairwiseComparison");
    }
    Checks.level(level);
  }

  /**
   * Dunnett's method, two-sided, at the level 0.05.
   *
   * @param control label of the control
   * @return the settings
   */
  public static ControlComparison of(String control) {
    return new ControlComparison(control, ComparisonMethod.DUNNETT, Alternative.TWO_SIDED, 0.05);
  }

  /**
   * The same with another method.
   *
   * @param newMethod the method
   * @return new settings
   * @throws InputProblem if the method compares all pairs
   */
  public ControlComparison with(ComparisonMethod newMethod) {
    return new ControlComparison(control, newMethod, alternative, level);
  }

  /**
   * The same for another direction.
   *
   * @param newAlternative in which direction a difference from the control counts
   * @return new settings
   */
  public ControlComparison with(Alternative newAlternative) {
    return new ControlComparison(control, method, newAlternative, level);
  }

  /**
   * The same at another level.
   *
   * @param newLevel level of significance
   * @return new settings
   * @throws InputProblem if the level is not between 0 and 1
   */
  public ControlComparison atLevel(double newLevel) {
    return new ControlComparison(control, method, alternative, newLevel);
  }

  /**
   * Compares each treatment with the control.
   *
   * <p>Unequal replication is exact. Where adjusted means are correlated in another way, Dunnett's
   * method takes the nearest correlations that are products; {@link
   * MeanComparisons#correlationError} says how near they are.
   *
   * @param means the means with their errors, that of the control among them
   * @return treatment minus control for each treatment, in the order of the means
   * @throws InputProblem if there is no mean with the control's label
   */
  public MeanComparisons compare(ComparedMeans means) {
    int place = means.indexOf(control);
    var tests = new PairTests(means, alternative);
    for (int each = 0; each < means.size(); each++) {
      if (each != place) {
        tests.add(each, place);
      }
    }
    double[] rawP = tests.rawP();
    double[] adjusted;
    double critical = Double.NaN;
    double deviation = 0;
    if (method == ComparisonMethod.DUNNETT) {
      var correlations = ProductCorrelations.of(means, place);
      deviation = correlations.deviation();
      var largest =
          DunnettDistribution.ofLoadings(
              correlations.loadings(), means.degreesOfFreedom(), alternative);
      adjusted = tests.adjustedBy(largest::above);
      critical = largest.upperQuantile(level);
    } else {
      adjusted = method.adjustment().orElseThrow().adjust(rawP);
      if (method.hasLimits()) {
        critical = tests.critical(method, level);
      }
    }
    return new MeanComparisons(
        means,
        new MeanComparisons.Terms(method, level, alternative, critical, deviation),
        tests.result(rawP, adjusted, critical, level));
  }
}
