package agro.dose.sprayer;

import agro.dose.DoseSources;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The dose that a calibrated sprayer gives, with the uncertainty that the calibration passes on to
 * it. A range of the label stays a range; the uncertainty is kept apart from it.
 *
 * @param perTreatedArea dose per area that gets wet
 * @param perFieldArea dose per area of field, dry strips counted
 * @param relativeHalfWidth half the width of the interval as a share of the dose; empty if nothing
 *     was repeated
 * @param working the steps, with cautions
 */
public record CalibratedDose(
    ProductPerTreatedArea perTreatedArea,
    ProductPerArea perFieldArea,
    OptionalDouble relativeHalfWidth,
    Working working)
    implements Presentable {

  static CalibratedDose of(
      CalibratedVolume volume, ProductPerSprayVolume strength, double confidence) {
    var half = volume.relativeHalfWidth(confidence);
    double litres = volume.perTreatedArea().perArea().litresPerHectare();
    var treated = ProductPerTreatedArea.ofHectare(strength.perLitre().times(litres));
    var field = strength.sprayedAt(volume.perFieldArea());
    var working =
        Working.of("Dose of a calibrated sprayer")
            .step(
                "dose per treated area",
                "strength × volume per treated area",
                strength + " × " + volume.perTreatedArea().perArea(),
                treated.toString(),
                DoseSources.DOSE_AND_VOLUME)
            .step(
                "dose per area of field",
                "strength × volume per area of field",
                strength + " × " + volume.perFieldArea().perArea(),
                field.toString(),
                DoseSources.DOSE_AND_VOLUME)
            .step(
                "uncertainty from the calibration",
                "dose × (1 ± t × u)",
                "",
                half.isEmpty()
                    ? "not known: nothing was repeated often enough"
                    : "±"
                        + Numbers.significant(100 * half.getAsDouble(), 3)
                        + " % at a level of "
                        + Numbers.plain(100 * confidence)
                        + " %",
                SprayerSources.T_INTERVAL)
            .withCautions(Caution.all());
    return new CalibratedDose(treated, field, half, working);
  }

  /**
   * The dose per treated area at the low end of the interval.
   *
   * @return low and high end of the label's range, each less by the half width; nothing if the
   *     uncertainty is not known
   */
  public Optional<ProductPerTreatedArea> leastPerTreatedArea() {
    return scaled(perTreatedArea.amount(), -1).map(perTreatedArea::withAmount);
  }

  /**
   * The dose per treated area at the high end of the interval, the one to compare with a maximum.
   *
   * @return low and high end of the label's range, each more by the half width; nothing if the
   *     uncertainty is not known
   */
  public Optional<ProductPerTreatedArea> mostPerTreatedArea() {
    return scaled(perTreatedArea.amount(), 1).map(perTreatedArea::withAmount);
  }

  /**
   * The dose per area of field at the low end of the interval.
   *
   * @return low and high end of the label's range, each less by the half width; nothing if the
   *     uncertainty is not known
   */
  public Optional<ProductPerArea> leastPerFieldArea() {
    return scaled(perFieldArea.amount(), -1).map(perFieldArea::withAmount);
  }

  /**
   * The dose per area of field at the high end of the interval. A maximum of a label refers to
   * treated ground unless it says otherwise; on bands compare {@link #mostPerTreatedArea}.
   *
   * @return low and high end of the label's range, each more by the half width; nothing if the
   *     uncertainty is not known
   */
  public Optional<ProductPerArea> mostPerFieldArea() {
    return scaled(perFieldArea.amount(), 1).map(perFieldArea::withAmount);
  }

  private Optional<ProductAmount> scaled(ProductAmount amount, int sign) {
    return relativeHalfWidth.isEmpty()
        ? Optional.empty()
        : Optional.of(amount.times(1 + sign * relativeHalfWidth.getAsDouble()));
  }

  @Override
  public Presentation presentation() {
    return working.presentation();
  }
}
