package agro.dose.tank;

import agro.source.Reference;
import agro.source.Standing;

/** The works that orders of mixing, vessels and formulas of this package come from. */
public final class TankSources {

  /** Order of mixing with microcapsules before emulsifiable concentrates. */
  public static final Reference OKLAHOMA_STATE =
      Reference.read("Oklahoma State University Extension", 0, "Herbicide Mixing Order", "");

  /** Order of mixing with microcapsules after emulsifiable concentrates. */
  public static final Reference SOUTH_DAKOTA_STATE =
      Reference.read(
          "South Dakota State University Extension",
          0,
          "Preparing Spray Solutions: Mixing Order",
          "");

  /** Order of mixing with solutions before emulsifiable concentrates. */
  public static final Reference MANITOBA =
      Reference.read(
          "Manitoba Agriculture",
          2013,
          "Guide to Crop Protection: general mixing rules, as reprinted",
          "Winnipeg");

  /** Order of mixing with solutions last. */
  public static final Reference CANADIAN_FARM_PRESS =
      Reference.read("", 0, "Order of mixing as printed in the Canadian farm press", "");

  /** Order of mixing recalled from teaching. */
  public static final Reference RECALLED =
      Reference.fromMemory("", 0, "Order of mixing with high-load salts, not looked up", "");

  /** Loads, area per load and amounts per load. */
  public static final Reference LOADS =
      new Reference(
          "",
          0,
          "Loads of a tank from area, spray volume and capacity, from the units alone",
          "",
          Standing.COMPUTED);

  /** Dose per pump from the pumps that an area takes. */
  public static final Reference COCOA_MANUAL =
      Reference.read("Bateman, R.", 0, "Pesticide Use in Cocoa, section 6.3.3", "");

  /** Packs by trying all numbers of packs that can matter. */
  public static final Reference PACKS =
      new Reference(
          "",
          0,
          "Whole packs that cover a need, found among all sums of packs",
          "",
          Standing.COMPUTED);

  /** Sizes and marks of measuring vessels. */
  public static final Reference USUAL_VESSELS =
      Reference.commonPractice("Sizes and marks of usual measuring vessels");

  /** Half a mark as the error of reading. */
  public static final Reference HALF_A_MARK =
      Reference.commonPractice("A reading is good to half the distance of two marks");

  private TankSources() {}
}
