package agro.dose.sprayer;

import agro.units.FlowRate;

/**
 * The flow through one nozzle. A type of its own, since a sprayer of n nozzles whose nozzle flow is
 * taken for its whole flow is wrong by n times.
 *
 * @param flow flow, above zero
 */
public record NozzleFlow(FlowRate flow) {

  /** Refuses a nozzle through which nothing flows. */
  public NozzleFlow {
    SprayerChecks.aboveZero(
        flow,
        "nozzle flow",
        "a nozzle without flow covers nothing",
        "clean or replace the nozzle and catch again");
  }

  /**
   * A nozzle flow as people write it.
   *
   * @param text for example {@code "1.2 L/min"}
   * @return the flow
   * @throws agro.units.UnreadableQuantity if the text is not clear
   */
  public static NozzleFlow parse(String text) {
    return new NozzleFlow(FlowRate.parse(text));
  }

  /**
   * The flow of several such nozzles.
   *
   * @param nozzles number of nozzles, 1 or more
   * @return the flow of the sprayer
   */
  public SprayerFlow through(int nozzles) {
    SprayerChecks.oneOrMore(
        nozzles, "nozzles", "a sprayer has nozzles", "count the nozzles that spray");
    return new SprayerFlow(flow.times(nozzles));
  }

  @Override
  public String toString() {
    return flow + " per nozzle";
  }
}
