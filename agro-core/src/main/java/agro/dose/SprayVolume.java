package agro.dose;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.ParsedAmount;
import agro.units.ParsedRate;
import agro.units.QuantityStyle;
import agro.units.QuantityText;
import agro.units.RateDenominator;
import agro.units.Volume;
import agro.units.VolumePerArea;
import java.util.Optional;
import java.util.Set;

/**
 * The volume of finished spray per ground area. It has the unit of a rate of liquid product and is
 * a type of its own, so that the two cannot be swapped.
 *
 * @param perArea volume of spray per area, above zero
 */
public record SprayVolume(VolumePerArea perArea) implements Comparable<SprayVolume> {

  private static final Set<String> SPRAY =
      Set.of("", "water", "spray", "spray solution", "solution", "spray liquid");
  private static final Set<String> GROUND = Set.of("", "ground", "field");

  /** Volumes above this, one millimetre of water, are no spray on leaves. */
  private static final double ONE_MILLIMETRE = 10_000;

  /** Refuses a spray of nothing. */
  public SprayVolume {
    if (!(perArea.litresPerHectare() > 0)) {
      throw InputProblem.of("a spray volume of " + perArea)
          .expected("a volume per area above zero")
          .because("amounts per load and loads per field are divided by the spray volume")
          .mend("state what the sprayer puts out, measured in a calibration");
    }
  }

  private static String millimetres(VolumePerArea perArea) {
    return Numbers.significant(perArea.litresPerHectare() / ONE_MILLIMETRE, 3);
  }

  /**
   * What there is to say about a very large spray volume.
   *
   * @return a warning above 10 000 L/ha, which is one millimetre of water; else nothing
   */
  public Optional<DoseFinding> finding() {
    if (!(perArea.litresPerHectare() > ONE_MILLIMETRE)) {
      return Optional.empty();
    }
    return Optional.of(
        new DoseFinding(
            Severity.WARNING,
            "spray volume",
            perArea
                + " is "
                + millimetres(perArea)
                + " L on each square metre, or as many millimetres of water. That is a drench of"
                + " the soil and no spray on leaves. Look at the unit: 1 L/m² is 10 000 L/ha."));
  }

  /**
   * A spray volume as people write it, for example {@code "200 L/acre"}.
   *
   * @param text one volume per area
   * @return the spray volume
   * @throws agro.units.UnreadableQuantity if the text is not clear or is a range
   * @throws InputProblem if the text states product, active ingredient or another area
   */
  public static SprayVolume parse(String text) {
    requireSpray(text);
    return new SprayVolume(VolumePerArea.parse(text));
  }

  /** Refuses what says that it is no spray on ground. */
  static void requireSpray(String text) {
    var parsed = QuantityText.parse(text);
    var above = parsed instanceof ParsedRate rate ? rate.amount() : (ParsedAmount) parsed;
    var below =
        parsed instanceof ParsedRate rate && rate.per() instanceof RateDenominator.PerUnit per
            ? per.of()
            : "";
    if (!SPRAY.contains(above.of()) || !GROUND.contains(below)) {
      var what = SPRAY.contains(above.of()) ? below : above.of();
      throw InputProblem.of("\"" + text + "\" says \"" + what + "\"")
          .expected("a volume of spray per ground area, such as 200 L/ha")
          .because("a spray volume that is product, or counted on another area, gives a wrong mix")
          .mend("write the volume of finished spray per area of the field");
    }
  }

  /**
   * The spray for an area.
   *
   * @param area the area
   * @return the volume
   */
  public Volume on(Area area) {
    return perArea.times(area);
  }

  /**
   * The area that a volume of spray is enough for.
   *
   * @param spray the volume
   * @return the area
   */
  public Area areaOf(Volume spray) {
    return spray.dividedBy(perArea);
  }

  /**
   * The spray that one plant gets: spray volume ÷ plants per area.
   *
   * @param plantsPerHectare plants on a hectare, above zero
   * @return the volume of spray for one plant
   * @throws InputProblem if the number is not above zero
   */
  public Volume perPlant(double plantsPerHectare) {
    RateReader.requireNumber(plantsPerHectare);
    return new Volume(perArea.litresPerHectare() / plantsPerHectare);
  }

  /**
   * The spray volume in a reader's units.
   *
   * @param style family of units and digits
   * @return for example {@code "494.2 L/ha"}
   */
  public String print(QuantityStyle style) {
    return style.print(perArea);
  }

  @Override
  public int compareTo(SprayVolume other) {
    return perArea.compareTo(other.perArea);
  }

  @Override
  public String toString() {
    return perArea + " spray";
  }
}
