package agro.dose;

import agro.report.InputProblem;
import agro.units.QuantityRange;
import agro.units.VolumePerArea;

/**
 * The spray volume that a label assumes where it states a dose per litre, a range or one volume.
 *
 * @param range low and high volume of spray per area, above zero
 */
public record LabelSprayVolume(QuantityRange<VolumePerArea> range) {

  /** Refuses a spray of nothing. */
  public LabelSprayVolume {
    if (!(range.low().litresPerHectare() > 0)) {
      throw InputProblem.of("a spray volume of " + range + " on a label")
          .expected("volumes per area above zero")
          .because("a dose per litre becomes a dose per area by the volume that the label assumes")
          .mend("copy the spray volume of the label, or say that it is not recorded");
    }
  }

  /**
   * A spray volume of a label, for example {@code "400-600 L/ha"}.
   *
   * @param text one volume per area or a range
   * @return the spray volume
   * @throws agro.units.UnreadableQuantity if the text is not clear
   * @throws InputProblem if the text states product, active ingredient or another area
   */
  public static LabelSprayVolume parse(String text) {
    SprayVolume.requireSpray(text);
    return new LabelSprayVolume(VolumePerArea.parseRange(text));
  }

  /**
   * Whether a sprayer's volume lies within what the label assumes.
   *
   * @param spray volume of the sprayer
   * @return true from low to high
   */
  public boolean contains(SprayVolume spray) {
    return range.contains(spray.perArea());
  }

  @Override
  public String toString() {
    return range + " spray";
  }
}
