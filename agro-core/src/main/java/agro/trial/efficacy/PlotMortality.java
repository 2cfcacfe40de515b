package agro.trial.efficacy;

import java.util.Objects;

/**
 * Dead animals of one plot, cage or dish.
 *
 * @param plot name of the plot
 * @param block its block; empty in a trial without blocks
 * @param treatment its treatment
 * @param dead how many died
 * @param total how many there were, above 0
 */
public record PlotMortality(
    String plot, String block, String treatment, double dead, double total) {

  /**
   * Checks the numbers.
   *
   * @throws agro.report.InputProblem when more died than there were, or there were none
   */
  public PlotMortality {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(treatment, "treatment");
    MortalityPair.share(dead, total);
  }

  /**
   * A plot named after block and treatment.
   *
   * @param block its block
   * @param treatment its treatment
   * @param dead how many died
   * @param total how many there were
   * @return the plot
   */
  public static PlotMortality of(String block, String treatment, double dead, double total) {
    return new PlotMortality((block + " " + treatment).trim(), block, treatment, dead, total);
  }
}
