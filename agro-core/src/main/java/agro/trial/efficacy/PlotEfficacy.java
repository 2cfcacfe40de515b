package agro.trial.efficacy;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Efficacy of one plot, or of all plots of a treatment in one block, against the control of the
 * same block.
 *
 * @param block the block; empty in a trial without blocks
 * @param plot name of the plot, or of all plots of the treatment in the block
 * @param counts live pests for each unit
 * @param percent the efficacy; nothing where it has no value
 * @param undefined why it has no value; empty where it has one
 */
public record PlotEfficacy(
    String block, String plot, LiveCounts counts, OptionalDouble percent, String undefined) {

  /** Refuses null. */
  public PlotEfficacy {
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(counts, "counts");
    Objects.requireNonNull(percent, "percent");
    Objects.requireNonNull(undefined, "undefined");
  }
}
