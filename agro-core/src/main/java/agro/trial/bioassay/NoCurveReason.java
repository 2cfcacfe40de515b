package agro.trial.bioassay;

/** Why groups have no rising dose-response curve. */
public enum NoCurveReason {
  /** All groups got the same dose. */
  ONE_DOSE(
      "two doses or more, better five", "one dose gives a point and no line", "test more doses"),
  /** Every animal responded at every dose. */
  ALL_RESPONDED(
      "survivors at some dose",
      "any curve that lies above all doses fits perfectly",
      "test lower doses as well"),
  /** No animal responded at any dose. */
  NONE_RESPONDED(
      "responding animals at some dose",
      "any curve that lies below all doses fits perfectly",
      "test higher doses as well"),
  /** At most one dose killed a part of its animals. */
  SEPARATED(
      "two doses or more that kill a part of their animals",
      "a line of any steepness fits, so the likelihood has no greatest value",
      "test doses between those that killed none and those that killed all"),
  /** Higher doses do not kill more. */
  NOT_RISING(
      "a share of responding animals that rises with the dose",
      "a lethal dose on a curve that falls or is level has no meaning",
      "look the doses up; perhaps groups are swapped or the doses lie too close together"),
  /** The search for the best curve did not settle. */
  NOT_SETTLED(
      "a likelihood with a greatest value",
      "the parameters run away or cannot be told apart with these groups",
      "test more doses, or estimate fewer parameters");

  private final String expected;
  private final String why;
  private final String cure;

  NoCurveReason(String expected, String why, String cure) {
    this.expected = expected;
    this.why = why;
    this.cure = cure;
  }

  String expected() {
    return expected;
  }

  String why() {
    return why;
  }

  String cure() {
    return cure;
  }
}
