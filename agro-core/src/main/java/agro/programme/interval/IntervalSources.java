package agro.programme.interval;

import agro.source.Reference;

/** The works that the ways of counting come from. */
final class IntervalSources {

  /** The longest interval of a mixture. */
  static final Reference LONGEST_OF_MIXTURE =
      Reference.read(
          "United States Environmental Protection Agency",
          2007,
          "Worker Protection Standard: restrictions associated with applications, (a)(3)",
          "40 CFR 170.112, text of 2007");

  /** Clock from the end of the application, days of 24 hours, the longer of two intervals. */
  static final Reference CLOCK_FROM_THE_END =
      Reference.read(
          "California Department of Pesticide Regulation",
          0,
          "Field entry after scheduled pesticide applications",
          "3 CCR 6772");

  /** Whole days from the last application to harvest. */
  static final Reference DAYS_BEFORE_HARVEST =
      Reference.commonPractice(
          "The pre-harvest interval is counted on dates from the last application, as manuals for"
              + " applicators teach it.");

  /** Number, amount and interval as labels state them. */
  static final Reference LABEL_REVIEW =
      Reference.read(
          "United States Environmental Protection Agency",
          2014,
          "Label Review Manual, chapter 11: directions for use",
          "Office of Pesticide Programs, Washington");

  private IntervalSources() {}
}
