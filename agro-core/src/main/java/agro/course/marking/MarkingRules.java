package agro.course.marking;

/**
 * How strictly marks are given. Shares are of the marks of a part, 0 to 1.
 *
 * @param missingUnit share for a right number without its unit
 * @param roundedTooFar share for a right answer that was rounded further than the tolerance allows
 * @param recognisedMistake share for a wrong answer whose mistake is known
 * @param carriedForward share for an answer that is right on the student's own earlier answers
 * @param signMatters whether a number with the wrong sign is wrong
 * @param answersShown whether the right answers stand beside the marks
 */
public record MarkingRules(
    double missingUnit,
    double roundedTooFar,
    double recognisedMistake,
    double carriedForward,
    boolean signMatters,
    boolean answersShown) {

  /**
   * The usual rules: half of the marks without unit or rounded too far, none for a mistake, all of
   * them where a slip is carried forward.
   */
  public static final MarkingRules USUAL = new MarkingRules(0.5, 0.5, 0, 1, true, true);

  /** Refuses shares outside 0 to 1. */
  public MarkingRules {
    share(missingUnit);
    share(roundedTooFar);
    share(recognisedMistake);
    share(carriedForward);
  }

  private static void share(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share of the marks is 0 to 1, but got " + share);
    }
  }

  /**
   * These rules with another share for a right number without its unit.
   *
   * @param share 0 to 1
   * @return the changed rules
   */
  public MarkingRules withMissingUnit(double share) {
    return new MarkingRules(
        share, roundedTooFar, recognisedMistake, carriedForward, signMatters, answersShown);
  }

  /**
   * These rules with another share for an answer that was rounded too far.
   *
   * @param share 0 to 1
   * @return the changed rules
   */
  public MarkingRules withRoundedTooFar(double share) {
    return new MarkingRules(
        missingUnit, share, recognisedMistake, carriedForward, signMatters, answersShown);
  }

  /**
   * These rules with another share for a mistake that is known.
   *
   * @param share 0 to 1
   * @return the changed rules
   */
  public MarkingRules withRecognisedMistake(double share) {
    return new MarkingRules(
        missingUnit, roundedTooFar, share, carriedForward, signMatters, answersShown);
  }

  /**
   * These rules with another share for an answer that is right on the student's own earlier ones.
   *
   * @param share 0 to 1; 0 for no marks carried forward
   * @return the changed rules
   */
  public MarkingRules withCarriedForward(double share) {
    return new MarkingRules(
        missingUnit, roundedTooFar, recognisedMistake, share, signMatters, answersShown);
  }

  /**
   * These rules with or without the sign of a number.
   *
   * @param matters whether a number with the wrong sign is wrong
   * @return the changed rules
   */
  public MarkingRules withSignMatters(boolean matters) {
    return new MarkingRules(
        missingUnit, roundedTooFar, recognisedMistake, carriedForward, matters, answersShown);
  }

  /**
   * These rules with or without right answers beside the marks.
   *
   * @param shown whether they are shown
   * @return the changed rules
   */
  public MarkingRules withAnswersShown(boolean shown) {
    return new MarkingRules(
        missingUnit, roundedTooFar, recognisedMistake, carriedForward, signMatters, shown);
  }
}
