package agro.trial.efficacy;

import agro.units.Numbers;

/**
 * Which of pooled and mean of blocks to print.
 *
 * @param summary the choice
 * @param reason why
 */
record SummaryChoice(EfficacyEstimate.Summary summary, String reason) {

  private static final double UNEVEN = 2;

  static SummaryChoice of(
      EfficacyEstimate pooled, EfficacyEstimate mean, BlockRatios ratios, boolean mortality) {
    if (mean.percent().isEmpty()) {
      return pooled("a block has no efficacy of its own, and a mean would have to leave it out");
    }
    if (pooled.percent().isEmpty() || ratios.size() < 2) {
      return pooled("there is one block, and its plots are put together");
    }
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (var block : ratios.blocks()) {
      double left = block.controlAfter() / (mortality ? block.controlBefore() : 1);
      least = Math.min(least, left);
      most = Math.max(most, left);
    }
    if (most / least > UNEVEN) {
      return pooled(
          "the control of the fullest block has "
              + Numbers.significant(most / least, 2)
              + " times the pests of the emptiest one, and in a mean the blocks with few pests,"
              + " whose efficacies scatter most, would count as much as the others");
    }
    return new SummaryChoice(
        EfficacyEstimate.Summary.MEAN_OF_BLOCKS,
        "the controls of the blocks are alike within a factor of two, so that every block tells"
            + " as much as another, and the same values can go into an analysis of variance");
  }

  private static SummaryChoice pooled(String reason) {
    return new SummaryChoice(EfficacyEstimate.Summary.POOLED, reason);
  }
}
