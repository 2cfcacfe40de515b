package agro.dose.sprayer;

import agro.source.Reference;
import agro.source.Standing;

/** Works that the calibration of sprayers rests on, each once. */
final class SprayerSources {

  /** Volume per area from flow, speed and swath; the constant is exact. */
  static final Reference VOLUME_EQUATION =
      new Reference(
          "",
          0,
          "Volume per area = flow ÷ (speed × swath), with a constant from the sizes of the units;"
              + " printed by Teagasc (600) and by the University of Florida, IFAS (5940)",
          "",
          Standing.COMPUTED);

  static final Reference TEAGASC =
      Reference.read(
          "Teagasc",
          0,
          "Tillage crops, paper 5: litres per hectare and forward speed",
          "as printed in the farming pages of the Irish Independent");

  static final Reference IRRI =
      Reference.read(
          "International Rice Research Institute",
          0,
          "Rice Knowledge Bank: calibration and product required",
          "Los Baños");

  static final Reference OUNCE_METHOD =
      Reference.read(
          "Louisiana State University AgCenter",
          0,
          "Ounces equal gallons: sprayer calibration",
          "H128");

  static final Reference CATCH_TOLERANCE =
      Reference.read(
          "University of Georgia",
          0,
          "Forest pest control, appendix: each nozzle within 10 % of the average",
          "Special Bulletin 16");

  static final Reference STRICTER_TOLERANCE =
      Reference.read(
          "",
          0,
          "Each nozzle within 5 % of the mean, as some bodies ask",
          "Extension texts, publisher not recorded");

  static final Reference WORN_NOZZLE =
      Reference.read(
          "",
          0,
          "A nozzle is replaced when it passes 10 % more than a new one at the same pressure",
          "Machine handbooks, publisher not recorded");

  static final Reference SQUARE_ROOT_LAW =
      Reference.fromMemory(
          "",
          0,
          "Flow through an orifice grows with the square root of the pressure",
          "Textbooks of hydraulics");

  static final Reference NOZZLE_SIZES =
      Reference.read(
          "",
          0,
          "Colours of nozzle sizes 01 to 08 and flows at 2 bar after ISO 10625",
          "Trade list, not the standard itself; for 03 at 3 bar also HGCA, nozzle selection chart"
              + " 2010");

  static final Reference NOZZLE_SIZES_FROM_MEMORY =
      Reference.fromMemory(
          "International Organization for Standardization",
          0,
          "Equipment for crop protection: sprayer nozzles, colour coding for identification",
          "ISO 10625");

  static final Reference LIQUID_DENSITY =
      Reference.read(
          "University of Nebraska",
          2016,
          "Setting the sprayer flow rate for non-water solutions",
          "CropWatch");

  static final Reference DROPLET_SHARES =
      Reference.read(
          "Grains Research and Development Corporation",
          0,
          "Spray application manual, module 4.2",
          "Australia");

  static final Reference DROPLET_GUIDE_FROM_MEMORY =
      Reference.fromMemory(
          "", 0, "Guide diameters of droplet classes", "Extension tables of ASABE S572.1");

  static final Reference DROPLET_GUIDE_READ =
      Reference.read(
          "",
          0,
          "Guide diameters of droplet classes in another published guide",
          "Publisher not recorded");

  static final Reference T_INTERVAL =
      Reference.fromMemory(
          "Joint Committee for Guides in Metrology",
          2008,
          "Evaluation of measurement data: guide to the expression of uncertainty in measurement",
          "JCGM 100, sections 4.2, 5.1.2 and G.4");

  static final Reference TWO_STAGE_SAMPLE =
      Reference.fromMemory(
          "Cochran, W. G.", 1977, "Sampling techniques, chapter 10", "Wiley, third edition");

  static final Reference JOB_TIME =
      Reference.commonPractice(
          "The time of a job is the number of tank loads times the minutes for each");

  static final Reference MASS_BALANCE =
      new Reference(
          "",
          0,
          "What flows out is flow × time, and what goes in comes out: volumes and amounts balance",
          "",
          Standing.COMPUTED);

  private SprayerSources() {}
}
