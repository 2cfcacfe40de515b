package agro.stats.power;

import agro.report.InputProblem;

/** Power of the F test of all treatments of a design. */
public final class TreatmentPower {

  private static final double USUAL_ALPHA = 0.05;
  private static final double LARGEST_NONCENTRALITY = 1e5;

  private final ReplicationPlan plan;
  private final double alpha;

  private TreatmentPower(ReplicationPlan plan, double alpha) {
    this.plan = plan;
    this.alpha = alpha;
  }

  /**
   * The F test at the level 0.05.
   *
   * @param plan the design
   * @return the test
   */
  public static TreatmentPower of(ReplicationPlan plan) {
    return new TreatmentPower(plan, USUAL_ALPHA);
  }

  /**
   * The same at another level.
   *
   * @param level between 0 and 1
   * @return a new test
   * @throws InputProblem if the level is not between 0 and 1
   */
  public TreatmentPower withAlpha(double level) {
    PowerChecks.chance("level", level);
    return new TreatmentPower(plan, level);
  }

  /**
   * Chance that the test finds a difference.
   *
   * @param replicates number of replicates
   * @param means true means of the treatments
   * @param standardDeviation standard deviation of a plot, the root of the error mean square
   * @return the power
   * @throws InputProblem if the number of means is not that of treatments, or a number is not
   *     usable
   */
  public double power(int replicates, double[] means, double standardDeviation) {
    PowerChecks.positive("standard deviation", standardDeviation);
    double squares = squares(means);
    double noncentrality =
        plan.plotsPerMean(replicates) * squares / (standardDeviation * standardDeviation);
    return new NoncentralF(
            plan.treatments() - 1,
            plan.errorDf(replicates),
            Math.min(noncentrality, LARGEST_NONCENTRALITY))
        .power(alpha);
  }

  private double squares(double[] means) {
    if (means.length != plan.treatments()) {
      throw InputProblem.of(means.length + " means for " + plan)
          .expected(plan.treatments() + " means")
          .because("the test compares all treatments of the design")
          .mend("give one mean for each treatment, or use leastFavourable");
    }
    double mean = 0;
    for (double each : means) {
      mean += each / means.length;
    }
    double squares = 0;
    for (double each : means) {
      squares += (each - mean) * (each - mean);
    }
    if (!Double.isFinite(squares)) {
      throw InputProblem.of("One of the means is not a finite number")
          .expected("finite means")
          .because("the power depends on how far they lie apart")
          .mend("state the means that you expect");
    }
    return squares;
  }

  /**
   * The smallest number of replicates with which the test finds a difference with a wanted chance.
   *
   * @param means true means of the treatments, not all equal
   * @param standardDeviation standard deviation of a plot, positive
   * @param wantedPower chance of finding it, above the level of the test and below 1
   * @return the replicates with the power that they give
   * @throws InputProblem if a number is not usable, or a million replicates would not do
   */
  public PlannedReplicates replicatesFor(
      double[] means, double standardDeviation, double wantedPower) {
    PowerChecks.wantedPower(wantedPower, alpha);
    double[] kept = means.clone();
    if (squares(kept) == 0) {
      throw InputProblem.of("All means are equal")
          .expected("means that differ")
          .because("a difference that is not there cannot be found")
          .mend("state the difference that matters in the field");
    }
    return DifferencePower.search(plan, wantedPower, r -> power(r, kept, standardDeviation));
  }

  /**
   * Means for which a difference of the two farthest treatments is hardest to find: all others lie
   * in the middle.
   *
   * @param difference distance of the smallest and the largest mean
   * @return one mean for each treatment, around zero
   */
  public double[] leastFavourable(double difference) {
    double[] means = new double[plan.treatments()];
    means[0] = -difference / 2;
    means[means.length - 1] = difference / 2;
    return means;
  }

  @Override
  public String toString() {
    return "F test, " + plan + ", level " + alpha;
  }
}
