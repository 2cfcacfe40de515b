package agro.course.practical;

import agro.source.Reference;
import agro.source.Standing;
import java.util.Map;

/** Works and habits that the practical rests on, each once. */
final class PracticalSources {

  static final Reference OUTLIERS =
      Reference.fromMemory(
          "Iglewicz, B. & Hoaglin, D. C.",
          1993,
          "How to detect and handle outliers",
          "ASQC Basic References in Quality Control 16; the limit of 3.5 and the factor 0.6745 as"
              + " quoted in documentation of open R packages");

  static final Reference FIVE_PER_CENT =
      Reference.read(
          "Ozkan, E.",
          0,
          "Application rates within 5 % of the intended one, the accuracy recommended by the U.S."
              + " Department of Agriculture and the U.S. Environmental Protection Agency",
          "Ohio State University Extension, as reported in the farming press");

  static final Reference TEN_PER_CENT =
      Reference.commonPractice(
          "A sprayer more than 10 % off the intended volume is set again; a class of beginners is"
              + " given 5 to 10 %");

  static final Reference OWN_LIMIT =
      Reference.commonPractice("A limit that the teacher has chosen for this class");

  static final Reference T_INTERVAL =
      Reference.fromMemory(
          "Student",
          1908,
          "The probable error of a mean",
          "Biometrika 6:1-25; mean ± t × s ÷ √n with n - 1 degrees of freedom");

  static final Reference VOLUME_EQUATION =
      new Reference(
          "",
          0,
          "Volume per area = flow ÷ (speed × width), with a constant from the sizes of the units;"
              + " printed by Teagasc (600) and by the University of Florida, IFAS (5940)",
          "",
          Standing.COMPUTED);

  static final Reference SLIPS =
      Reference.commonPractice("These slips are seen in classes and at the tank");

  static final Reference EXACT_UNITS =
      new Reference(
          "",
          0,
          "Ratios of units from their exact definitions, after NIST Handbook 44 and UCUM",
          "",
          Standing.COMPUTED);

  private static final Map<Reference, String> KEYS =
      Map.of(
          FIVE_PER_CENT, "five",
          TEN_PER_CENT, "ten",
          OWN_LIMIT, "chosen",
          T_INTERVAL, "student",
          OUTLIERS, "outliers",
          VOLUME_EQUATION, "equation",
          SLIPS, "slips",
          EXACT_UNITS, "units");

  private PracticalSources() {}

  /** Name of the words that say a source in another language. */
  static String key(Reference source) {
    return KEYS.getOrDefault(source, "");
  }
}
