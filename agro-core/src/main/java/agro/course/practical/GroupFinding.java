package agro.course.practical;

import agro.dose.ProductPerArea;
import agro.dose.sprayer.CalibratedVolume;
import agro.units.VolumePerArea;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one group's calibration came to, beside that of the class.
 *
 * @param readings what the group measured
 * @param calibration its spray volume per area with uncertainty and steps
 * @param compared the volume that it is compared with and for which the tank is mixed
 * @param departure its volume ÷ that volume - 1
 * @param verdict whether it is within the tolerance
 * @param modifiedScore modified z-score; nothing where the class is too small for it
 * @param outlier whether the score is beyond the limit
 * @param ownArithmetic its own figure, if it wrote one
 * @param plotDose product per area that its plot gets when the tank is mixed for {@code compared};
 *     nothing where no dose was stated
 */
public record GroupFinding(
    GroupReadings readings,
    CalibratedVolume calibration,
    VolumePerArea compared,
    double departure,
    GroupVerdict verdict,
    OptionalDouble modifiedScore,
    boolean outlier,
    Optional<OwnArithmetic> ownArithmetic,
    Optional<ProductPerArea> plotDose) {

  /** Refuses nulls. */
  public GroupFinding {
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(calibration, "calibration");
    Objects.requireNonNull(compared, "compared");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(modifiedScore, "modifiedScore");
    Objects.requireNonNull(ownArithmetic, "ownArithmetic");
    Objects.requireNonNull(plotDose, "plotDose");
  }

  /**
   * Name of the group.
   *
   * @return the name as it stands in the file
   */
  public String group() {
    return readings.group();
  }

  /**
   * The spray volume of the group.
   *
   * @return volume per area from its readings
   */
  public VolumePerArea volume() {
    return calibration.perFieldArea().perArea();
  }

  /**
   * Half the width of the group's own interval as a share of its volume.
   *
   * @param confidence level between 0 and 1
   * @return the share; nothing where readings were not repeated, or differ too much
   */
  public OptionalDouble relativeHalfWidth(double confidence) {
    return calibration.relativeHalfWidth(confidence);
  }

  /**
   * The nozzles that were blocked or more than 10 % from the median of those caught.
   *
   * @return their numbers in the order of the catches; none where single nozzles were not caught
   */
  public List<String> oddNozzles() {
    return readings.oddNozzles();
  }

  /**
   * The dose that the plot gets, over the intended one, when the tank is mixed for the volume that
   * the group is compared with.
   *
   * @return volume of the group ÷ that volume
   */
  public double timesIntended() {
    return 1 + departure;
  }

  /**
   * The dose that the plot gets, over the intended one, when the group mixes its tank for the
   * figure that it worked out itself.
   *
   * @return our volume ÷ its own; nothing where it wrote none
   */
  public OptionalDouble timesIntendedByOwnFigure() {
    return ownArithmetic.isPresent()
        ? OptionalDouble.of(1 / ownArithmetic.get().timesOurs())
        : OptionalDouble.empty();
  }

  /**
   * Whether the group is named: off the tolerance, an outlier, or with arithmetic that differs.
   *
   * @return true if anything has to be looked at
   */
  public boolean needsAttention() {
    return isOff() || ownArithmetic.map(own -> !own.agrees()).orElse(false);
  }

  /**
   * Whether the sprayer as measured is off the tolerance or an outlier of the class.
   *
   * @return true if it is one of the two
   */
  public boolean isOff() {
    return verdict != GroupVerdict.WITHIN || outlier;
  }
}
