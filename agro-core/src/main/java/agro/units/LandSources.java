package agro.units;

import agro.source.Reference;

/** Sources of the sizes of land units; weak ones, which is why each unit carries its own. */
final class LandSources {

  static final Reference PRINTED_PAGES =
      Reference.read(
          "",
          0,
          "Land measures as printed in encyclopaedia, property and government pages; no circular of"
              + " a survey department was read",
          "");

  static final Reference CENTRAL_AMERICA =
      Reference.read(
          "",
          1966,
          "World weights and measures: handbook for statisticians, and national decrees, as quoted"
              + " by a dictionary of units; some country headings assigned by order",
          "United Nations, Statistical Papers M 21");

  static final Reference FROM_MEMORY =
      Reference.fromMemory("", 0, "Land measures of the country, not looked up", "");

  private LandSources() {}
}
