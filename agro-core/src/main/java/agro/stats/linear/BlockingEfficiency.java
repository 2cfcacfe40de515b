package agro.stats.linear;

import agro.source.Reference;

/**
 * What blocking gained: the error variance that the same plots would have had without the blocks,
 * over the one with them, after Yates 1935.
 *
 * @param ratio estimated ratio of the variances; 1.2 means that 20 % more plots without blocks
 *     would have been as precise
 * @param corrected the ratio with Fisher's correction for the degrees of freedom that blocks take
 */
public record BlockingEfficiency(double ratio, double corrected) {

  /**
   * The work that the ratio follows.
   *
   * @return a reference
   */
  public static Reference source() {
    return LinearSources.YATES_1935;
  }

  static BlockingEfficiency of(
      double blockMeanSquare, int blockDf, double error, int df, int rest) {
    double without = (blockDf * blockMeanSquare + rest * error) / (blockDf + rest);
    double ratio = without / error;
    double dfWithout = df + blockDf;
    double correction = (df + 1) * (dfWithout + 3) / ((df + 3) * (dfWithout + 1));
    return new BlockingEfficiency(ratio, ratio * correction);
  }
}
