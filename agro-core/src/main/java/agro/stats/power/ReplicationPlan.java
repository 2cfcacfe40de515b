package agro.stats.power;

import agro.report.InputProblem;
import java.util.function.IntUnaryOperator;

/**
 * What a design makes of its number of replicates: plots behind one mean, and degrees of freedom of
 * the error that the means are compared with.
 */
public final class ReplicationPlan {

  private static final int MOST_TREATMENTS = 10_000;

  private final String design;
  private final int treatments;
  private final int step;
  private final IntUnaryOperator errorDf;
  private final IntUnaryOperator plotsPerMean;

  private ReplicationPlan(
      String design,
      int treatments,
      int step,
      IntUnaryOperator errorDf,
      IntUnaryOperator plotsPerMean) {
    this.design = design;
    this.treatments = treatments;
    this.step = step;
    this.errorDf = errorDf;
    this.plotsPerMean = plotsPerMean;
  }

  /**
   * Plots dealt out freely: t (r - 1) degrees of freedom.
   *
   * @param treatments number of treatments t, at least 2
   * @return the plan
   * @throws InputProblem if there are fewer than two treatments
   */
  public static ReplicationPlan completelyRandomised(int treatments) {
    check("treatments", treatments);
    return new ReplicationPlan(
        "completely randomised", treatments, 1, r -> treatments * (r - 1), r -> r);
  }

  /**
   * Every treatment once in each block: (t - 1)(r - 1) degrees of freedom. Factorial treatments
   * count each combination as one treatment.
   *
   * @param treatments number of treatments t, at least 2
   * @return the plan
   * @throws InputProblem if there are fewer than two treatments
   */
  public static ReplicationPlan randomisedBlocks(int treatments) {
    check("treatments", treatments);
    return new ReplicationPlan(
        "randomised complete blocks", treatments, 1, r -> (treatments - 1) * (r - 1), r -> r);
  }

  /**
   * Every treatment once in each row and column of one or more squares, each with rows and columns
   * of its own: (t - 1)(s (t - 1) - 1) degrees of freedom for s squares. Replicates come t at a
   * time.
   *
   * @param treatments number of treatments t, at least 2
   * @return the plan
   * @throws InputProblem if there are fewer than two treatments
   */
  public static ReplicationPlan latinSquares(int treatments) {
    check("treatments", treatments);
    return new ReplicationPlan(
        "Latin squares",
        treatments,
        treatments,
        r -> (treatments - 1) * (r / treatments * (treatments - 1) - 1),
        r -> r);
  }

  /**
   * Whole-plot treatments of a split plot in blocks: (a - 1)(r - 1) degrees of freedom, and the
   * variance is the whole-plot mean square of plots of the smallest size.
   *
   * @param wholePlotTreatments number of treatments a of the whole plots, at least 2
   * @param subplots number of subplots in each whole plot, at least 2
   * @return the plan
   * @throws InputProblem if a number is smaller than two
   */
  public static ReplicationPlan splitPlotWholePlots(int wholePlotTreatments, int subplots) {
    check("whole-plot treatments", wholePlotTreatments);
    check("subplots", subplots);
    return new ReplicationPlan(
        "split plot, whole plots",
        wholePlotTreatments,
        1,
        r -> (wholePlotTreatments - 1) * (r - 1),
        r -> r * subplots);
  }

  /**
   * Subplot treatments of a split plot in blocks: a (b - 1)(r - 1) degrees of freedom, and the
   * variance is the subplot mean square.
   *
   * @param wholePlotTreatments number of treatments a of the whole plots, at least 2
   * @param subplotTreatments number of treatments b of the subplots, at least 2
   * @return the plan
   * @throws InputProblem if a number is smaller than two
   */
  public static ReplicationPlan splitPlotSubplots(int wholePlotTreatments, int subplotTreatments) {
    check("whole-plot treatments", wholePlotTreatments);
    check("subplot treatments", subplotTreatments);
    return new ReplicationPlan(
        "split plot, subplots",
        subplotTreatments,
        1,
        r -> wholePlotTreatments * (subplotTreatments - 1) * (r - 1),
        r -> r * wholePlotTreatments);
  }

  private static void check(String what, int number) {
    if (number < 2 || number > MOST_TREATMENTS) {
      throw InputProblem.of("The plan has " + number + " " + what)
          .expected("2 to " + MOST_TREATMENTS + " " + what)
          .because("a comparison needs two sides")
          .mend("count the treatments, the untreated control among them");
    }
  }

  /**
   * Refuses replicates that the design cannot have.
   *
   * @param replicates number of replicates
   * @throws InputProblem if they leave no degree of freedom or do not fill the design
   */
  void require(int replicates) {
    if (replicates < 1 || replicates % step != 0 || errorDf.applyAsInt(replicates) < 1) {
      throw InputProblem.of(replicates + " replicates of " + treatments + " treatments, " + design)
          .expected(
              (step > 1 ? "a multiple of " + step + " replicates, " : "") + "at least " + fewest())
          .because("without a degree of freedom for the error no difference can be tested")
          .mend("plan more replicates");
    }
  }

  /**
   * Fewest replicates that leave a degree of freedom for the error.
   *
   * @return 2, or one or two squares
   */
  public int fewest() {
    int replicates = step;
    while (errorDf.applyAsInt(replicates) < 1) {
      replicates += step;
    }
    return replicates;
  }

  /**
   * Degrees of freedom of the error.
   *
   * @param replicates number of replicates
   * @return at least 1
   * @throws InputProblem if the design cannot have so many replicates
   */
  public int errorDf(int replicates) {
    require(replicates);
    return errorDf.applyAsInt(replicates);
  }

  /**
   * Number of plots behind one mean.
   *
   * @param replicates number of replicates
   * @return the replicates, or more in a split plot
   */
  public int plotsPerMean(int replicates) {
    return plotsPerMean.applyAsInt(replicates);
  }

  /**
   * Number of treatments that are compared.
   *
   * @return at least 2
   */
  public int treatments() {
    return treatments;
  }

  /**
   * How many replicates are added at a time.
   *
   * @return 1, or the side of a Latin square
   */
  public int step() {
    return step;
  }

  /**
   * Name of the design.
   *
   * @return for print
   */
  public String design() {
    return design;
  }

  @Override
  public String toString() {
    return design + " of " + treatments + " treatments";
  }
}
