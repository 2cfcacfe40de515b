package agro.dose.sprayer;

import agro.source.Reference;
import agro.units.FlowRate;

/**
 * Nozzle sizes and colours after ISO 10625, as far as they are known here. Sizes 01 to 08 without
 * 035 were read in a trade list; 035, 10 and 15 are from memory and not looked up in the standard.
 * The standard does not cover nozzles with more than one part that sets the flow.
 */
public enum NozzleSize {
  /** 0.4 L/min at 3 bar. */
  SIZE_01("01", 1, NozzleColour.ORANGE, true),
  /** 0.6 L/min at 3 bar. */
  SIZE_015("015", 1.5, NozzleColour.GREEN, true),
  /** 0.8 L/min at 3 bar. */
  SIZE_02("02", 2, NozzleColour.YELLOW, true),
  /** 1.0 L/min at 3 bar. */
  SIZE_025("025", 2.5, NozzleColour.LILAC, true),
  /** 1.2 L/min at 3 bar. */
  SIZE_03("03", 3, NozzleColour.BLUE, true),
  /** 1.4 L/min at 3 bar, from memory. */
  SIZE_035("035", 3.5, NozzleColour.BROWN_RED, false),
  /** 1.6 L/min at 3 bar. */
  SIZE_04("04", 4, NozzleColour.RED, true),
  /** 2.0 L/min at 3 bar. */
  SIZE_05("05", 5, NozzleColour.BROWN, true),
  /** 2.4 L/min at 3 bar. */
  SIZE_06("06", 6, NozzleColour.GREY, true),
  /** 3.2 L/min at 3 bar. */
  SIZE_08("08", 8, NozzleColour.WHITE, true),
  /** 4.0 L/min at 3 bar, from memory. */
  SIZE_10("10", 10, NozzleColour.LIGHT_BLUE, false),
  /** 6.0 L/min at 3 bar, from memory. */
  SIZE_15("15", 15, NozzleColour.LIGHT_GREEN, false);

  private final String code;
  private final double tenths;
  private final NozzleColour colour;
  private final boolean read;

  NozzleSize(String code, double tenths, NozzleColour colour, boolean read) {
    this.code = code;
    this.tenths = tenths;
    this.colour = colour;
    this.read = read;
  }

  /**
   * The code as it is stamped on the nozzle.
   *
   * @return for example {@code "025"}
   */
  public String code() {
    return code;
  }

  /**
   * The size in tenths of a US gallon per minute at 40 psi.
   *
   * @return for example 2.5
   */
  public double tenths() {
    return tenths;
  }

  /**
   * The colour of the size.
   *
   * @return the colour
   */
  public NozzleColour colour() {
    return colour;
  }

  /**
   * Nominal flow of water at 3 bar.
   *
   * @return 0.4 L/min for each tenth
   */
  public FlowRate flowAt3Bar() {
    return curve(FlowBasis.LITRES_AT_3_BAR).flow().flow();
  }

  /**
   * How the flow grows with pressure.
   *
   * @param basis what the size counts
   * @return the curve
   */
  public NozzleCurve curve(FlowBasis basis) {
    return basis.curve(tenths);
  }

  /**
   * Where colour and flow come from.
   *
   * @return the source, with its standing
   */
  public Reference source() {
    return read ? SprayerSources.NOZZLE_SIZES : SprayerSources.NOZZLE_SIZES_FROM_MEMORY;
  }

  @Override
  public String toString() {
    return code + " (" + colour.words() + ")";
  }
}
