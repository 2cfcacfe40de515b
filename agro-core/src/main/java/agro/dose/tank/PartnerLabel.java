package agro.dose.tank;

import agro.dose.CropSize;
import agro.dose.LabelEntry;
import agro.dose.LabelLimits;
import agro.dose.LabelSprayVolume;
import agro.dose.PlannedUse;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import java.util.Objects;
import java.util.Optional;

/**
 * What the label of a partner says, and what is known of the use, for the check of the mix.
 *
 * @param limits limits of the label
 * @param assumed spray volume that the label assumes where it states a dose per litre
 * @param crop how large the crop is
 * @param use strength, days, earlier applications and circumstances; its dose and spray volume give
 *     way to those of the mix; earlier doses count on the ground that got wet. Nothing where only
 *     the dose is to be checked
 */
public record PartnerLabel(
    LabelLimits limits,
    LabelEntry<LabelSprayVolume> assumed,
    CropSize crop,
    Optional<PlannedUse> use) {

  /** Refuses nulls. */
  public PartnerLabel {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(assumed, "assumed");
    Objects.requireNonNull(crop, "crop");
    Objects.requireNonNull(use, "use");
  }

  /**
   * The limits alone.
   *
   * @param limits limits of the label
   * @return the label; spray volume not recorded, crop not stated
   */
  public static PartnerLabel of(LabelLimits limits) {
    return new PartnerLabel(
        limits, LabelEntry.notRecorded(), CropSize.NOT_STATED, Optional.empty());
  }

  /**
   * The same label with the spray volume that it assumes.
   *
   * @param volume one volume per area or a range
   * @return the label
   */
  public PartnerLabel assuming(LabelSprayVolume volume) {
    return new PartnerLabel(limits, LabelEntry.stated(volume), crop, use);
  }

  /**
   * The same label with the size of the crop, which may explain another spray volume.
   *
   * @param size how large the crop is
   * @return the label
   */
  public PartnerLabel on(CropSize size) {
    return new PartnerLabel(limits, assumed, size, use);
  }

  /**
   * The same label with strength, days, earlier applications and circumstances.
   *
   * @param planned the use; its dose and spray volume give way to those of the mix
   * @return the label
   */
  public PartnerLabel usedAs(PlannedUse planned) {
    return new PartnerLabel(limits, assumed, crop, Optional.of(planned));
  }

  PlannedUse planned(ProductPerArea dose, SprayVolume spray) {
    return use.map(
            known ->
                new PlannedUse(
                    dose,
                    known.strength(),
                    Optional.of(spray),
                    known.day(),
                    known.harvest(),
                    known.earlier(),
                    known.circumstances(),
                    known.distances()))
        .orElseGet(() -> PlannedUse.of(dose).sprayedAt(spray));
  }
}
