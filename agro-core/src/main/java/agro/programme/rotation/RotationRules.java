package agro.programme.rotation;

import agro.report.InputProblem;
import java.util.Objects;

/**
 * How strictly a rotation is judged.
 *
 * @param largestShare largest share of the crop's days in the field that windows with one group may
 *     cover, 0 to 1
 * @param nurseryBreak whether a group of the nursery has to rest for one generation in the field
 * @param table the groups
 */
public record RotationRules(double largestShare, boolean nurseryBreak, ModeOfActionTable table) {

  private static final double HALF = 0.5;

  /** Refuses a share outside of 0 to 1. */
  public RotationRules {
    Objects.requireNonNull(table, "table");
    if (!(largestShare > 0 && largestShare <= 1)) {
      throw InputProblem.of("a largest share of " + largestShare)
          .expected("a number above 0 and at most 1")
          .because("it is the share of the crop cycle that one group may cover")
          .mend("write 0.5 for a half, or 1 to leave the rule out");
    }
  }

  /**
   * At most half of the crop cycle for a group, and a break after the nursery.
   *
   * @return the rules
   */
  public static RotationRules standard() {
    return new RotationRules(HALF, true, ModeOfActionTable.builtIn());
  }

  /**
   * The same rules with another largest share.
   *
   * @param share above 0, at most 1; 1 leaves the rule out
   * @return new rules
   */
  public RotationRules withLargestShare(double share) {
    return new RotationRules(share, nurseryBreak, table);
  }

  /**
   * The same rules without a break after the nursery.
   *
   * @return new rules
   */
  public RotationRules withoutNurseryBreak() {
    return new RotationRules(largestShare, false, table);
  }
}
