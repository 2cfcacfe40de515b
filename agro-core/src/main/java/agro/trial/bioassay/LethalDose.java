package agro.trial.bioassay;

import java.util.Objects;

/**
 * The dose to which a stated share of the animals responds, with its limits. With natural mortality
 * in the curve it is the share of those that would not have responded anyway.
 *
 * @param percent the share in percent
 * @param dose the dose on the axis of the assay
 * @param place the dose on the scale of the line, for example its log10
 * @param placeStandardError standard error of the place by the delta method, with the factor of
 *     heterogeneity as far as it applies
 * @param limits limits of the dose
 * @param method how the limits were found
 * @param confidence confidence of the limits
 * @param g Fieller's g: from 1 on the limits are unbounded
 */
public record LethalDose(
    double percent,
    double dose,
    double place,
    double placeStandardError,
    DoseLimits limits,
    LimitMethod method,
    double confidence,
    double g) {

  /** Refuses nulls. */
  public LethalDose {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(method, "method");
  }
}
