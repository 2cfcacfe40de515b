package agro.trial.efficacy;

import java.util.List;
import java.util.Objects;

/**
 * Efficacy of one treatment: per plot, per block and over blocks in two ways.
 *
 * @param treatment the treatment
 * @param plots each treated plot against the control of its block
 * @param blocks all its plots of a block against the control of the block
 * @param pooled ratio of the sums over blocks
 * @param meanOfBlocks mean of the blocks' efficacies
 * @param toPrint which of the two to print
 * @param reason why
 * @param notes what was left out and why
 */
public record TreatmentEfficacy(
    String treatment,
    List<PlotEfficacy> plots,
    List<PlotEfficacy> blocks,
    EfficacyEstimate pooled,
    EfficacyEstimate meanOfBlocks,
    EfficacyEstimate.Summary toPrint,
    String reason,
    List<String> notes) {

  /** Copies the lists. */
  public TreatmentEfficacy {
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(pooled, "pooled");
    Objects.requireNonNull(meanOfBlocks, "meanOfBlocks");
    Objects.requireNonNull(toPrint, "toPrint");
    Objects.requireNonNull(reason, "reason");
    plots = List.copyOf(plots);
    blocks = List.copyOf(blocks);
    notes = List.copyOf(notes);
  }

  /**
   * The estimate to print.
   *
   * @return the pooled one or the mean of blocks
   */
  public EfficacyEstimate estimate() {
    return toPrint == EfficacyEstimate.Summary.POOLED ? pooled : meanOfBlocks;
  }
}
