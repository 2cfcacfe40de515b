package agro.dose.scaling;

import agro.report.InputProblem;

/**
 * A range of moisture that is asked for.
 *
 * @param low drier end
 * @param high wetter end
 */
public record MoistureRange(SubstrateMoisture low, SubstrateMoisture high) {

  /** Refuses a range that runs downwards. */
  public MoistureRange {
    if (low.waterPerDryMatter() > high.waterPerDryMatter()) {
      throw InputProblem.of("a moisture from " + low + " to " + high)
          .expected("the drier end first")
          .because("a range that runs downwards holds no moisture")
          .mend("change the ends round; a figure on dry matter is drier than it looks on wet mass");
    }
  }

  /**
   * One moisture.
   *
   * @param moisture both ends
   * @return the range
   */
  public static MoistureRange exactly(SubstrateMoisture moisture) {
    return new MoistureRange(moisture, moisture);
  }

  @Override
  public String toString() {
    return low.equals(high) ? low.toString() : low + " to " + high;
  }
}
