package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.VolumePerArea;

/**
 * Spray per area that is really treated, the bands or spots alone. It is not a {@link
 * agro.dose.SprayVolume}, which counts the whole field.
 *
 * @param perTreatedArea volume per treated area, above zero
 */
public record TreatedSprayVolume(VolumePerArea perTreatedArea) {

  /** Refuses a spray of nothing. */
  public TreatedSprayVolume {
    if (!(perTreatedArea.litresPerHectare() > 0)) {
      throw InputProblem.of("a spray volume of " + perTreatedArea + " on the treated area")
          .expected("a volume per area above zero")
          .because("the strength of the tank is the dose divided by the spray volume")
          .mend("state what the nozzles put on the ground they hit, measured in a calibration");
    }
  }

  /**
   * A volume per treated area as people write it.
   *
   * @param text for example {@code "300 L/ha"}
   * @return the volume
   * @throws agro.units.UnreadableQuantity if the text is not clear
   */
  public static TreatedSprayVolume parse(String text) {
    return new TreatedSprayVolume(VolumePerArea.parse(text));
  }

  @Override
  public String toString() {
    return perTreatedArea + " on the treated area";
  }
}
