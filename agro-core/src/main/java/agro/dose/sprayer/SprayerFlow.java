package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.FlowRate;
import java.util.List;

/**
 * The flow of all nozzles of a sprayer together, the two sides of an orchard sprayer included.
 *
 * @param flow flow, above zero
 */
public record SprayerFlow(FlowRate flow) {

  /** Refuses a sprayer from which nothing flows. */
  public SprayerFlow {
    SprayerChecks.aboveZero(
        flow,
        "sprayer flow",
        "a sprayer without flow covers nothing",
        "catch the flow of all nozzles and add it up");
  }

  /**
   * The flow of a sprayer as people write it.
   *
   * @param text for example {@code "16 L/min"}
   * @return the flow
   * @throws agro.units.UnreadableQuantity if the text is not clear
   */
  public static SprayerFlow parse(String text) {
    return new SprayerFlow(FlowRate.parse(text));
  }

  /**
   * The flow of nozzles of several sizes, as on an orchard sprayer.
   *
   * @param nozzles the flow of each nozzle, at least one
   * @return their sum
   * @throws InputProblem if the list is empty
   */
  public static SprayerFlow ofNozzles(List<NozzleFlow> nozzles) {
    if (nozzles.isEmpty()) {
      throw InputProblem.of("the list of nozzles is empty")
          .expected("the flow of each nozzle that sprays")
          .because("a sprayer without nozzles covers nothing")
          .mend("catch each nozzle, on both sides of an orchard sprayer");
    }
    double sum = 0;
    for (var nozzle : nozzles) {
      sum += nozzle.flow().litresPerMinute();
    }
    return new SprayerFlow(new FlowRate(sum));
  }

  /**
   * The share of one nozzle.
   *
   * @param nozzles number of nozzles, 1 or more
   * @return the mean flow of one nozzle
   */
  public NozzleFlow perNozzle(int nozzles) {
    SprayerChecks.oneOrMore(
        nozzles, "nozzles", "a sprayer has nozzles", "count the nozzles that spray");
    return new NozzleFlow(flow.dividedBy(nozzles));
  }

  @Override
  public String toString() {
    return flow + " of the whole sprayer";
  }
}
