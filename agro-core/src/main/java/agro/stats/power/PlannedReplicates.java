package agro.stats.power;

import java.util.Locale;

/**
 * Replicates that a plan needs.
 *
 * @param plan the design
 * @param replicates the smallest number that reaches the wanted power
 * @param errorDf degrees of freedom of the error with so many
 * @param power the power with so many, at least the wanted one
 * @param wantedPower the power that was asked for
 */
public record PlannedReplicates(
    ReplicationPlan plan, int replicates, int errorDf, double power, double wantedPower) {

  private static final int FEW_DF = 12;

  /**
   * Whether the error would have fewer degrees of freedom than trials of plant protection products
   * are advised to have (12, EPPO standard PP 1/152; value from memory).
   *
   * @return true for fewer than 12
   */
  public boolean fewDegreesOfFreedom() {
    return errorDf < FEW_DF;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d replicates, %s: power %.3f with %d degrees of freedom for the error",
        replicates,
        plan,
        power,
        errorDf);
  }
}
