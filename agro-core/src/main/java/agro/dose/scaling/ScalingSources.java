package agro.dose.scaling;

import agro.source.Reference;
import agro.source.Standing;

/** Works that the scalings rest on, each once. */
final class ScalingSources {

  static final Reference UNITS_ALONE =
      new Reference(
          "",
          0,
          "From the units of the figures alone, without an assumption",
          "",
          Standing.COMPUTED);

  static final Reference MASS_BALANCE =
      new Reference(
          "",
          0,
          "What is dissolved stays: strength times amount is the same before and after",
          "Taught in US Army Medical Department subcourse MD0173, Pesticides in the Military",
          Standing.COMPUTED);

  static final Reference PEARSON =
      Reference.fromMemory(
          "",
          0,
          "Pearson square (rule of mixtures), taught in pharmacy and feed mixing",
          "textbook");

  static final Reference PLATE_COUNT =
      Reference.fromMemory(
          "",
          0,
          "Plate count: colonies divided by plated volume and dilution, pooled over plates",
          "textbook of microbiology");

  static final Reference COUNTABLE_30_300 =
      Reference.fromMemory("", 0, "Plates with 30 to 300 colonies are counted", "textbook");

  static final Reference COUNTABLE_25_250 =
      Reference.fromMemory("", 0, "Plates with 25 to 250 colonies are counted", "textbook");

  static final Reference GARWOOD =
      Reference.fromMemory(
          "Garwood, F.",
          1936,
          "Fiducial limits for the Poisson distribution",
          "Biometrika 28:437-442");

  static final Reference BAND =
      Reference.read(
          "",
          0,
          "Banded rates: rate on the band times band width over row spacing",
          "Ontario ministry of agriculture");

  static final Reference GRANULE_COURSE =
      Reference.read(
          "",
          0,
          "Band applicators of granules: amount to collect over a course; adjust when it is more"
              + " than 10 % from the target",
          "Pesticide Environmental Stewardship");

  static final Reference DRENCH_TIME =
      Reference.commonPractice("Soil drench at 250 to 300 mL/acre, 55 to 60 days after planting");

  static final Reference MANURE_PRACTICE =
      Reference.commonPractice(
          "2 to 3 kg of each of three biocontrol agents to a tonne of farmyard manure, kept 15 days"
              + " at 25 to 30 % moisture");

  static final Reference MOISTURE =
      new Reference(
          "",
          0,
          "Dry matter stays when water is added; moisture on wet or on dry matter by definition",
          "",
          Standing.COMPUTED);

  static final Reference HARDNESS_DEGREES =
      Reference.fromMemory(
          "",
          0,
          "Degrees of hardness: 1 °dH is 10 mg CaO/L, 1 °fH 10 mg CaCO3/L, 1 °e one grain CaCO3 per"
              + " imperial gallon; molar masses CaO 56.077, CaCO3 100.086 g/mol",
          "textbook of water chemistry; standard atomic weights Ca 40.078, C 12.011, O 15.999");

  static final Reference FIRST_ORDER =
      Reference.fromMemory(
          "", 0, "First-order decay: half of what is there is lost in each half-life", "textbook");

  static final Reference SPOONS =
      Reference.fromMemory(
          "",
          0,
          "Spoons: US 14.79 mL (half a fluid ounce), metric 15 mL, Australian 20 mL",
          "UCUM 2.2 for the first two; the Australian spoon not looked up");

  private ScalingSources() {}
}
