package agro.trial.bioassay;

import agro.report.InputProblem;

/**
 * The animals of a group by their condition at the assessment.
 *
 * @param dead dead ones
 * @param moribund those that cannot right themselves or walk, but still move
 * @param alive all others
 */
public record ConditionCounts(int dead, int moribund, int alive) {

  /** Refuses negative counts. */
  public ConditionCounts {
    if (dead < 0 || moribund < 0 || alive < 0) {
      throw InputProblem.of(dead + " dead, " + moribund + " moribund, " + alive + " alive")
          .expected("counts of 0 or more")
          .because("animals are counted")
          .mend("write 0 where none was found");
    }
  }

  /**
   * Animals in the group.
   *
   * @return dead, moribund and alive together
   */
  public int exposed() {
    return dead + moribund + alive;
  }

  /**
   * Animals that count as responding.
   *
   * @param endPoint which ones count; {@link EndPoint#DEAD} or {@link EndPoint#DEAD_OR_MORIBUND}
   * @return their number
   * @throws InputProblem when the end point is missing or leaves moribund animals open
   */
  public int responded(EndPoint endPoint) {
    if (endPoint == EndPoint.DEAD) {
      return dead;
    }
    if (endPoint == EndPoint.DEAD_OR_MORIBUND) {
      return dead + moribund;
    }
    throw EndPoints.open(moribund + " moribund animals and no word on whether they responded");
  }
}
