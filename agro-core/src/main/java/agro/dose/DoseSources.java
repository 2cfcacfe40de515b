package agro.dose;

import agro.source.Reference;
import agro.source.Standing;

/** The works that the formulas and tables of this package come from. */
public final class DoseSources {

  /** Dose expressions for high crops: leaf-wall area and tree-row volume. */
  public static final Reference EPPO_2021 =
      Reference.fromMemory(
          "European and Mediterranean Plant Protection Organization",
          2021,
          "Dose expression in efficacy evaluation and labelling of plant protection products in high"
              + " growing crops",
          "EPPO Standard PP 1/239(3)");

  /** Tree-row volume from height, width and distance of the rows. */
  public static final Reference LANDERS_TREE_ROWS =
      Reference.read(
          "Landers, A.",
          0,
          "Tree Row Volume",
          "Cornell University, New York State Agricultural Experiment Station");

  /** Codes of formulations, edition of March 2017. */
  public static final Reference FORMULATION_CODES_2017 =
      Reference.read(
          "CropLife International",
          2017,
          "Catalogue of pesticide formulation types and international coding system, as quoted in"
              + " two lists",
          "Technical Monograph 2, 7th edition, revised March 2017");

  /** Codes of formulations that later editions dropped. */
  public static final Reference FORMULATION_CODES_2014 =
      Reference.read(
          "Ctgb", 2014, "Evaluation Manual, chapter 2, appendix 3: codes of formulations", "Ede");

  /** Suffixes on labels of the United States and the number before them. */
  public static final Reference US_SUFFIXES =
      Reference.fromMemory(
          "", 0, "Suffixes of formulations on labels of the United States, not looked up", "");

  /** Product from active ingredient and strength. */
  public static final Reference PRODUCT_REQUIRED =
      Reference.read(
          "International Rice Research Institute",
          0,
          "Rice Knowledge Bank: calibration and product required",
          "Los Baños");

  /** Division of a dose per area by the spray volume, and back. */
  public static final Reference DOSE_AND_VOLUME =
      new Reference(
          "",
          0,
          "Dose per area equals strength of the spray times spray volume per area, from the units"
              + " alone",
          "",
          Standing.COMPUTED);

  /** Acid equivalent and salt of one product. */
  public static final Reference ACID_IN_SALT =
      new Reference(
          "",
          0,
          "Share of acid in a salt from the two strengths that its label states",
          "",
          Standing.COMPUTED);

  private DoseSources() {}
}
