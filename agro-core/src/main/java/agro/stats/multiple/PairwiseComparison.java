package agro.stats.multiple;

import agro.report.InputProblem;

/**
 * Compares all pairs of means.
 *
 * @param method how the tests are held to the level; not Dunnett's, which needs a control
 * @param level level of significance, such as 0.05
 */
public record PairwiseComparison(ComparisonMethod method, double level) {

  private static final double ROOT_TWO = Math.sqrt(2);

  /**
   * Checks the settings.
   *
   * @throws InputProblem if the method needs a control or the level is not between 0 and 1
   */
  public PairwiseComparison {
    if (method == ComparisonMethod.DUNNETT) {
      throw InputProblem.of("Dunnett's method for all pairs")
          .expected("a method for all pairs, such as Tukey's")
          .because("Dunnett's limits hold for differences from one control only")
          .mend("name the control with ControlComparison.with, or choose another method");
    }
    Checks.level(level);
  }

  /**
   * Tukey's method (Tukey-Kramer with unequal replication) at the level 0.05.
   *
   * @return the settings
   */
  public static PairwiseComparison withDefaults() {
    return new PairwiseComparison(ComparisonMethod.TUKEY, 0.05);
  }

  /**
   * The same with another method.
   *
   * @param newMethod the method
   * @return new settings
   * @throws InputProblem if the method needs a control
   */
  public PairwiseComparison with(ComparisonMethod newMethod) {
    return new PairwiseComparison(newMethod, level);
  }

  /**
   * The same at another level.
   *
   * @param newLevel level of significance
   * @return new settings
   * @throws InputProblem if the level is not between 0 and 1
   */
  public PairwiseComparison atLevel(double newLevel) {
    return new PairwiseComparison(method, newLevel);
  }

  /**
   * Compares all pairs.
   *
   * @param means the means with their errors
   * @return the pairs in the order of the means: the second minus the first, the third minus the
   *     first and so on
   */
  public MeanComparisons compare(ComparedMeans means) {
    var tests = new PairTests(means, Alternative.TWO_SIDED);
    for (int second = 0; second < means.size(); second++) {
      for (int first = second + 1; first < means.size(); first++) {
        tests.add(first, second);
      }
    }
    double[] rawP = tests.rawP();
    double[] adjusted;
    double critical = Double.NaN;
    if (method == ComparisonMethod.TUKEY) {
      var range = StudentisedRange.of(means.size(), means.degreesOfFreedom());
      adjusted = tests.adjustedBy(t -> range.above(ROOT_TWO * t));
      critical = range.upperQuantile(level) / ROOT_TWO;
    } else {
      adjusted = method.adjustment().orElseThrow().adjust(rawP);
      if (method.hasLimits()) {
        critical = tests.critical(method, level);
      }
    }
    return new MeanComparisons(
        means,
        new MeanComparisons.Terms(method, level, Alternative.TWO_SIDED, critical, 0),
        tests.result(rawP, adjusted, critical, level));
  }
}
