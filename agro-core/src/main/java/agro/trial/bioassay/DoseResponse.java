package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.stats.glm.LinkFunction;
import java.util.Objects;
import java.util.Optional;

/**
 * How dose-response data are evaluated. Every choice is printed with the result.
 *
 * @param link probit, logit or complementary log-log
 * @param scale what the line is drawn on
 * @param natural how natural mortality is allowed for
 * @param immunity whether a share of immune animals is estimated too
 * @param information which information standard errors rest on
 * @param heterogeneity when scatter beyond the binomial widens the limits
 * @param limitMethod how limits are found
 * @param confidence of all limits, for example 0.95
 * @param controlCeiling share of responding controls above which an assay is refused
 */
public record DoseResponse(
    LinkFunction link,
    DoseScale scale,
    NaturalMortality natural,
    boolean immunity,
    FisherInformation information,
    HeterogeneityRule heterogeneity,
    LimitMethod limitMethod,
    double confidence,
    double controlCeiling) {

  /** Share of responding controls above which an assay is usually refused. */
  public static final double USUAL_CONTROL_CEILING = 0.2;

  private static final double PUBLISHED_LEVEL = 0.15;
  private static final double USUAL_CONFIDENCE = 0.95;

  /** Refuses links that are not for shares and confidences that are none. */
  public DoseResponse {
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(natural, "natural");
    Objects.requireNonNull(information, "information");
    Objects.requireNonNull(heterogeneity, "heterogeneity");
    Objects.requireNonNull(limitMethod, "limitMethod");
    if (!link.isForProportions()) {
      throw InputProblem.of("the link " + link)
          .expected("PROBIT, LOGIT or COMPLEMENTARY_LOG_LOG")
          .because("a share has to stay between 0 and 1 at every dose")
          .mend("choose one of the three");
    }
    requireShare(confidence > 0 && confidence < 1, "a confidence of " + confidence);
    requireShare(controlCeiling >= 0 && controlCeiling < 1, "a ceiling of " + controlCeiling);
  }

  private static void requireShare(boolean inside, String read) {
    if (!inside) {
      throw InputProblem.of(read)
          .expected("a share between 0 and 1")
          .because("limits and refusals need it")
          .mend("write 95 % as 0.95 and 20 % as 0.2");
    }
  }

  /**
   * Probit on log10 dose; natural mortality in the model when a control responded; expected
   * information; Fieller limits of 95 % with heterogeneity when P is below 0.15; controls up to 20
   * %.
   *
   * @return the choices
   */
  public static DoseResponse withDefaults() {
    return new DoseResponse(
        LinkFunction.PROBIT,
        DoseScale.LOG10,
        NaturalMortality.ifControlsResponded(),
        false,
        FisherInformation.EXPECTED,
        HeterogeneityRule.below(PUBLISHED_LEVEL),
        LimitMethod.FIELLER,
        USUAL_CONFIDENCE,
        USUAL_CONTROL_CEILING);
  }

  /**
   * These choices with another link.
   *
   * @param other probit, logit or complementary log-log
   * @return new choices
   * @throws InputProblem when the link is not for shares
   */
  public DoseResponse with(LinkFunction other) {
    return new DoseResponse(
        other,
        scale,
        natural,
        immunity,
        information,
        heterogeneity,
        limitMethod,
        confidence,
        controlCeiling);
  }

  /**
   * These choices with another scale.
   *
   * @param other what the line is drawn on
   * @return new choices
   */
  public DoseResponse with(DoseScale other) {
    return new DoseResponse(
        link,
        other,
        natural,
        immunity,
        information,
        heterogeneity,
        limitMethod,
        confidence,
        controlCeiling);
  }

  /**
   * These choices with another allowance for natural mortality.
   *
   * @param other the way
   * @return new choices
   */
  public DoseResponse with(NaturalMortality other) {
    return new DoseResponse(
        link,
        scale,
        other,
        immunity,
        information,
        heterogeneity,
        limitMethod,
        confidence,
        controlCeiling);
  }

  /**
   * These choices with another information.
   *
   * @param other expected or observed
   * @return new choices
   */
  public DoseResponse with(FisherInformation other) {
    return new DoseResponse(
        link,
        scale,
        natural,
        immunity,
        other,
        heterogeneity,
        limitMethod,
        confidence,
        controlCeiling);
  }

  /**
   * These choices with another rule for heterogeneity.
   *
   * @param other the rule
   * @return new choices
   */
  public DoseResponse with(HeterogeneityRule other) {
    return new DoseResponse(
        link,
        scale,
        natural,
        immunity,
        information,
        other,
        limitMethod,
        confidence,
        controlCeiling);
  }

  /**
   * These choices with another method for limits.
   *
   * @param other the method
   * @return new choices
   */
  public DoseResponse with(LimitMethod other) {
    return new DoseResponse(
        link,
        scale,
        natural,
        immunity,
        information,
        heterogeneity,
        other,
        confidence,
        controlCeiling);
  }

  /**
   * These choices with another confidence.
   *
   * @param share for example 0.95
   * @return new choices
   */
  public DoseResponse withConfidence(double share) {
    return new DoseResponse(
        link,
        scale,
        natural,
        immunity,
        information,
        heterogeneity,
        limitMethod,
        share,
        controlCeiling);
  }

  /**
   * These choices with another ceiling for the controls. 20 % is common practice without a source.
   *
   * @param share share of responding controls above which an assay is refused
   * @return new choices
   */
  public DoseResponse withControlCeiling(double share) {
    return new DoseResponse(
        link, scale, natural, immunity, information, heterogeneity, limitMethod, confidence, share);
  }

  /**
   * These choices with a share of animals that no dose reaches as a further parameter.
   *
   * @return new choices
   */
  public DoseResponse withImmunity() {
    return new DoseResponse(
        link,
        scale,
        natural,
        true,
        information,
        heterogeneity,
        limitMethod,
        confidence,
        controlCeiling);
  }

  /**
   * Fits one curve through all groups, without regard to series and days.
   *
   * @param data the assay
   * @return the fit
   * @throws InputProblem when the controls forbid it or no rising curve exists; the message says
   *     why, and what can be said without a curve
   */
  public DoseResponseFit fit(BioassayData data) {
    return SingleCurve.attempt(this, data).orThrow();
  }

  /**
   * Why no curve can be fitted, and what the data say all the same.
   *
   * @param data the assay
   * @return nothing when a curve can be fitted
   * @throws InputProblem when the controls forbid any use of the data
   */
  public Optional<WithoutCurve> withoutCurve(BioassayData data) {
    return Optional.ofNullable(SingleCurve.attempt(this, data).none());
  }

  /**
   * Fits all series and compares them: one line, parallel lines, separate lines.
   *
   * @param data an assay with at least two series
   * @return the comparison
   * @throws InputProblem when there are fewer than two series or one of them has no curve
   */
  public SeriesComparison compare(BioassayData data) {
    return SeriesComparison.of(this, data);
  }
}
