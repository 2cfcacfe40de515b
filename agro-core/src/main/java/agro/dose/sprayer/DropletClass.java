package agro.dose.sprayer;

import agro.source.Reference;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Droplet classes of ISO 25358 and ASABE S572. A spray is put into a class by comparison with
 * reference nozzles measured on the same day with the same instrument; the standards give no table
 * of diameters. Printed diameters are guides, and sources disagree, so nothing here turns a
 * diameter into a class.
 */
public enum DropletClass {
  /** Extremely fine. */
  EXTREMELY_FINE("XF", "purple", 0, 60, 0, 80, Share.NONE),
  /** Very fine. */
  VERY_FINE("VF", "red", 60, 145, 80, 150, Share.NONE),
  /** Fine. */
  FINE("F", "orange", 145, 225, 150, 250, Share.NONE),
  /** Medium. */
  MEDIUM("M", "yellow", 226, 325, 250, 350, Share.UP_TO_20),
  /** Coarse. */
  COARSE("C", "blue", 326, 400, 350, 450, Share.BELOW_10),
  /** Very coarse. */
  VERY_COARSE("VC", "green", 401, 500, 450, 550, Share.BELOW_5),
  /** Extremely coarse. */
  EXTREMELY_COARSE("XC", "white", 501, 650, Double.NaN, Double.NaN, Share.NONE),
  /** Ultra coarse. */
  ULTRA_COARSE("UC", "black", 650, Double.POSITIVE_INFINITY, Double.NaN, Double.NaN, Share.NONE);

  private enum Share {
    NONE,
    UP_TO_20,
    BELOW_10,
    BELOW_5
  }

  private final String code;
  private final String colour;
  private final double low;
  private final double high;
  private final double otherLow;
  private final double otherHigh;
  private final Share fines;

  DropletClass(
      String code,
      String colour,
      double low,
      double high,
      double otherLow,
      double otherHigh,
      Share fines) {
    this.code = code;
    this.colour = colour;
    this.low = low;
    this.high = high;
    this.otherLow = otherLow;
    this.otherHigh = otherHigh;
    this.fines = fines;
  }

  /**
   * The letters of the class.
   *
   * @return for example {@code "VF"}
   */
  public String code() {
    return code;
  }

  /**
   * The colour of the class, from memory. It is not the colour of a nozzle size.
   *
   * @return a word
   */
  public String colour() {
    return colour;
  }

  /**
   * Printed guide diameters (volume median), which disagree.
   *
   * @return one or two guides, each with its source
   */
  public List<Guide> guides() {
    var first = guide(low, high, SprayerSources.DROPLET_GUIDE_FROM_MEMORY);
    return Double.isNaN(otherLow)
        ? List.of(first)
        : List.of(first, guide(otherLow, otherHigh, SprayerSources.DROPLET_GUIDE_READ));
  }

  /**
   * The share of the volume in droplets under 150 µm, as printed in the Grains Research and
   * Development Corporation's spray application manual.
   *
   * @return a phrase; nothing where none is printed
   */
  public Optional<String> volumeUnder150Micrometres() {
    return switch (fines) {
      case NONE -> Optional.empty();
      case UP_TO_20 -> Optional.of("up to 20 %");
      case BELOW_10 -> Optional.of("below 10 %");
      case BELOW_5 -> Optional.of("below 5 %");
    };
  }

  /**
   * Where the shares come from.
   *
   * @return the source
   */
  public Reference shareSource() {
    return SprayerSources.DROPLET_SHARES;
  }

  private static Guide guide(double low, double high, Reference source) {
    return new Guide(
        low > 0 ? OptionalDouble.of(low) : OptionalDouble.empty(),
        Double.isInfinite(high) ? OptionalDouble.empty() : OptionalDouble.of(high),
        source);
  }

  /**
   * A printed guide to the volume median diameter of a class.
   *
   * @param lowMicrometres lower end in µm, if printed
   * @param highMicrometres upper end in µm, if printed
   * @param source where it is printed
   */
  public record Guide(
      OptionalDouble lowMicrometres, OptionalDouble highMicrometres, Reference source) {}
}
