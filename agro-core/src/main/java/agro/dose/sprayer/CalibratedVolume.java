package agro.dose.sprayer;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityRange;
import agro.units.VolumePerArea;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The spray volume per area that a calibration found. On bands and spots the volume per treated
 * area stands beside the volume per area of field; elsewhere the two are the same.
 *
 * @param perTreatedArea volume per area that gets wet
 * @param perFieldArea volume per area of field, dry strips counted
 * @param uncertainty relative uncertainty of both from repeated readings; nothing if each was taken
 *     once
 * @param units units of print
 * @param remarks what the reader should know, one sentence each
 * @param working the steps, with cautions
 */
public record CalibratedVolume(
    TreatedVolume perTreatedArea,
    SprayVolume perFieldArea,
    Optional<RelativeUncertainty> uncertainty,
    SprayUnits units,
    List<String> remarks,
    Working working)
    implements Presentable {

  /** The level of the intervals in print. */
  public static final double CONFIDENCE = 0.95;

  /** Copies the remarks. */
  public CalibratedVolume {
    Objects.requireNonNull(perTreatedArea, "perTreatedArea");
    Objects.requireNonNull(perFieldArea, "perFieldArea");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Objects.requireNonNull(units, "units");
    Objects.requireNonNull(working, "working");
    remarks = List.copyOf(remarks);
  }

  /**
   * Half the width of the t interval as a share of the volume. Every dose per area has the same
   * share, because the strength in the tank is fixed.
   *
   * @param confidence level between 0 and 1, for example 0.95
   * @return t × relative standard error; empty if nothing was repeated, or if so few readings
   *     differ so much that the interval would begin below zero
   * @throws InputProblem if the level is not between 0 and 1
   */
  public OptionalDouble relativeHalfWidth(double confidence) {
    SprayerChecks.confidence(confidence);
    if (uncertainty.isEmpty()) {
      return OptionalDouble.empty();
    }
    double half = uncertainty.get().halfWidth(confidence);
    return half < 1 ? OptionalDouble.of(half) : OptionalDouble.empty();
  }

  /**
   * The interval of the volume per treated area.
   *
   * @param confidence level between 0 and 1, for example 0.95
   * @return volume × (1 ± half width); nothing where {@link #relativeHalfWidth} is empty
   * @throws InputProblem if the level is not between 0 and 1
   */
  public Optional<QuantityRange<VolumePerArea>> treatedInterval(double confidence) {
    var half = relativeHalfWidth(confidence);
    if (half.isEmpty()) {
      return Optional.empty();
    }
    var volume = perTreatedArea.perArea();
    return Optional.of(
        volume.times(1 - half.getAsDouble()).to(volume.times(1 + half.getAsDouble())));
  }

  /**
   * The dose per area that this sprayer gives with a spray of a stated strength, and how well the
   * calibration knows it.
   *
   * @param strength product per volume of spray
   * @param confidence level between 0 and 1
   * @return dose per treated area and per area of field, with its interval and steps
   * @throws InputProblem if the level is not between 0 and 1
   */
  public CalibratedDose doseOf(ProductPerSprayVolume strength, double confidence) {
    return CalibratedDose.of(this, strength, confidence);
  }

  /**
   * The dose that comes out when the tank was mixed for another volume per area than this sprayer
   * puts out.
   *
   * @param intended dose for which the tank is mixed
   * @param mixedFor volume per area for which it is mixed
   * @return intended × calibrated volume ÷ assumed volume, with the steps
   */
  public MismatchedDose doseWhenMixedFor(ProductPerArea intended, SprayVolume mixedFor) {
    return MismatchedDose.of(this, intended, mixedFor);
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled("Spray volume of this sprayer");
    if (perFieldArea.perArea().compareTo(perTreatedArea.perArea()) < 0) {
      page.fact("per treated area", units.stated(perTreatedArea.perArea()));
      page.fact("per area of field", units.stated(perFieldArea.perArea()));
    } else {
      page.fact("spray volume", units.stated(perTreatedArea.perArea()));
    }
    page.fact("interval (95 %)", interval());
    page.fact("dose per area", dose());
    remarks.forEach(page::paragraph);
    return page.working(working.withCautions(List.of())).cautions(Caution.all()).build();
  }

  private String interval() {
    return treatedInterval(CONFIDENCE)
        .map(range -> units.stated(range.low()) + " to " + units.stated(range.high()))
        .orElse("not known: repeat the catches, three times or more");
  }

  private String dose() {
    var half = relativeHalfWidth(CONFIDENCE);
    return half.isPresent()
        ? "known to ±" + Numbers.significant(100 * half.getAsDouble(), 2) + " % (95 %)"
        : "its uncertainty is not known";
  }
}
