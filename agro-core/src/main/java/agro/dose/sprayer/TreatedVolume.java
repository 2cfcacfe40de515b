package agro.dose.sprayer;

import agro.dose.SprayVolume;
import agro.units.VolumePerArea;

/**
 * The volume of spray per area that really gets wet: the bands or spots. Where all ground is
 * sprayed it equals the {@link SprayVolume} per ground area; on bands it is larger, and the two are
 * types of their own so that neither is taken for the other.
 *
 * @param perArea volume of spray per treated area, above zero
 */
public record TreatedVolume(VolumePerArea perArea) implements Comparable<TreatedVolume> {

  /** Refuses a spray of nothing. */
  public TreatedVolume {
    SprayerChecks.aboveZero(
        perArea,
        "volume per treated area",
        "no setting of a working sprayer puts out nothing",
        "take the spray volume from the label or from a calibration");
  }

  /**
   * The volume per treated area of a sprayer that is to put out a volume per area of field.
   *
   * @param field volume per ground area, dry strips counted
   * @param layout nozzles and widths
   * @return field volume ÷ treated share
   */
  public static TreatedVolume ofField(SprayVolume field, SprayLayout layout) {
    return new TreatedVolume(field.perArea().dividedBy(layout.treatedShare()));
  }

  /**
   * The volume per area of field, dry strips counted.
   *
   * @param treatedShare share of the field that gets wet, above 0 and up to 1
   * @return volume × share
   */
  SprayVolume onField(double treatedShare) {
    return new SprayVolume(perArea.times(treatedShare));
  }

  @Override
  public int compareTo(TreatedVolume other) {
    return perArea.compareTo(other.perArea);
  }

  @Override
  public String toString() {
    return perArea + " spray on treated area";
  }
}
