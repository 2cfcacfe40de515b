package agro.course.practical;

import agro.dose.ProductPerArea;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.VolumePerArea;
import agro.working.TextLanguage;
import java.util.Objects;
import java.util.Optional;

/**
 * How the calibrations of a class are pooled, judged and printed.
 *
 * @param benchmark what each group is compared with; nothing for the target where every group has
 *     one, else the mean
 * @param target target of the class for groups that state none
 * @param tolerance how far a group may be from it
 * @param outlierLimit least size of the modified z-score that makes an outlier, above 0
 * @param confidence level of the intervals, between 0 and 1
 * @param arithmeticTolerance share by which a group's own figure may differ from ours by rounding,
 *     above 0 and below 0.1
 * @param dose dose for which the tank is mixed, if the dose error is to be told in product
 * @param style units and digits of print
 * @param language language of print
 */
public record PoolingRules(
    Optional<CalibrationBenchmark> benchmark,
    Optional<VolumePerArea> target,
    VolumeTolerance tolerance,
    double outlierLimit,
    double confidence,
    double arithmeticTolerance,
    Optional<ProductPerArea> dose,
    QuantityStyle style,
    TextLanguage language) {

  private static final double MOST_ROUNDING = 0.1;

  /**
   * Ten per cent about the target or mean, outliers beyond 3.5, intervals of 95 %, two per cent for
   * rounding, metric units, English.
   */
  public static final PoolingRules STANDARD =
      new PoolingRules(
          Optional.empty(),
          Optional.empty(),
          VolumeTolerance.TEN_PER_CENT,
          3.5,
          0.95,
          0.02,
          Optional.empty(),
          QuantityStyle.METRIC,
          TextLanguage.ENGLISH);

  /** Refuses limits that judge nothing. */
  public PoolingRules {
    Objects.requireNonNull(benchmark, "benchmark");
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(tolerance, "tolerance");
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(style, "style");
    Objects.requireNonNull(language, "language");
    within(outlierLimit, Double.POSITIVE_INFINITY, "limit of the modified z-score", "3.5");
    within(confidence, 1, "level of the intervals", "0.95");
    within(arithmeticTolerance, MOST_ROUNDING, "share for rounding", "0.02");
    if (target.isPresent() && target.get().litresPerHectare() <= 0) {
      throw InputProblem.of("a target of " + target.get())
          .expected("a volume per area above zero")
          .because("the groups are compared with it in per cent")
          .mend("write the spray volume for which the tank is mixed, for example 300 L/ha");
    }
  }

  private static void within(double value, double high, String what, String usual) {
    if (!(value > 0 && value < high)) {
      throw InputProblem.of("the " + what + " is " + Numbers.plain(value))
          .expected("a number above 0" + (high < 2 ? " and below " + Numbers.plain(high) : ""))
          .because("nothing could be judged by it")
          .mend("write for example " + usual);
    }
  }

  /**
   * The same rules with another comparison.
   *
   * @param other what each group is compared with
   * @return new rules
   */
  public PoolingRules against(CalibrationBenchmark other) {
    return new PoolingRules(
        Optional.of(other),
        target,
        tolerance,
        outlierLimit,
        confidence,
        arithmeticTolerance,
        dose,
        style,
        language);
  }

  /**
   * The same rules with a target for groups that state none.
   *
   * @param other target of the class, above zero
   * @return new rules
   */
  public PoolingRules withTarget(VolumePerArea other) {
    return new PoolingRules(
        benchmark,
        Optional.of(other),
        tolerance,
        outlierLimit,
        confidence,
        arithmeticTolerance,
        dose,
        style,
        language);
  }

  /**
   * The same rules with another tolerance.
   *
   * @param other how far a group may be off
   * @return new rules
   */
  public PoolingRules within(VolumeTolerance other) {
    return new PoolingRules(
        benchmark,
        target,
        other,
        outlierLimit,
        confidence,
        arithmeticTolerance,
        dose,
        style,
        language);
  }

  /**
   * The same rules with another limit for outliers.
   *
   * @param limit least size of the modified z-score of an outlier, above 0
   * @return new rules
   */
  public PoolingRules withOutlierLimit(double limit) {
    return new PoolingRules(
        benchmark,
        target,
        tolerance,
        limit,
        confidence,
        arithmeticTolerance,
        dose,
        style,
        language);
  }

  /**
   * The same rules with another level of the intervals.
   *
   * @param level between 0 and 1
   * @return new rules
   */
  public PoolingRules withConfidence(double level) {
    return new PoolingRules(
        benchmark,
        target,
        tolerance,
        outlierLimit,
        level,
        arithmeticTolerance,
        dose,
        style,
        language);
  }

  /**
   * The same rules with another allowance for rounding in the groups' own figures.
   *
   * @param share above 0 and below 0.1
   * @return new rules
   */
  public PoolingRules withArithmeticTolerance(double share) {
    return new PoolingRules(
        benchmark, target, tolerance, outlierLimit, confidence, share, dose, style, language);
  }

  /**
   * The same rules with the dose for which the tank is mixed.
   *
   * @param intended product per area
   * @return new rules
   */
  public PoolingRules mixedForDose(ProductPerArea intended) {
    return new PoolingRules(
        benchmark,
        target,
        tolerance,
        outlierLimit,
        confidence,
        arithmeticTolerance,
        Optional.of(intended),
        style,
        language);
  }

  /**
   * The same rules in other units.
   *
   * @param other units and digits of print
   * @return new rules
   */
  public PoolingRules printedIn(QuantityStyle other) {
    return new PoolingRules(
        benchmark,
        target,
        tolerance,
        outlierLimit,
        confidence,
        arithmeticTolerance,
        dose,
        other,
        language);
  }

  /**
   * The same rules in another language.
   *
   * @param other language of print
   * @return new rules
   */
  public PoolingRules in(TextLanguage other) {
    return new PoolingRules(
        benchmark,
        target,
        tolerance,
        outlierLimit,
        confidence,
        arithmeticTolerance,
        dose,
        style,
        other);
  }
}
