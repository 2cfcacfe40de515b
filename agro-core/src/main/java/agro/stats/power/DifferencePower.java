package agro.stats.power;

import agro.report.InputProblem;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Power of the comparison of two treatments by Student's t, with the error of the whole trial.
 * Power of a two-sided test counts both directions. Difference and standard deviation stand in one
 * unit; a coefficient of variation with a difference in per cent of the mean do as well.
 */
public final class DifferencePower {

  private static final int MOST_REPLICATES = 1_000_000;
  private static final int STEPS = 500;
  private static final double USUAL_ALPHA = 0.05;
  private static final double LARGEST_NONCENTRALITY = 400;

  private final ReplicationPlan plan;
  private final double alpha;
  private final TestSides sides;

  private DifferencePower(ReplicationPlan plan, double alpha, TestSides sides) {
    this.plan = plan;
    this.alpha = alpha;
    this.sides = sides;
  }

  /**
   * A two-sided comparison at the level 0.05.
   *
   * @param plan the design
   * @return the comparison
   */
  public static DifferencePower of(ReplicationPlan plan) {
    return new DifferencePower(plan, USUAL_ALPHA, TestSides.TWO);
  }

  /**
   * The same at another level.
   *
   * @param level between 0 and 1; for m comparisons after Bonferroni the level divided by m
   * @return a new comparison
   * @throws InputProblem if the level is not between 0 and 1
   */
  public DifferencePower withAlpha(double level) {
    PowerChecks.chance("level", level);
    return new DifferencePower(plan, level, sides);
  }

  /**
   * The same in one or both directions.
   *
   * @param wanted the directions
   * @return a new comparison
   */
  public DifferencePower withSides(TestSides wanted) {
    return new DifferencePower(plan, alpha, wanted);
  }

  /**
   * Chance of finding a difference.
   *
   * @param replicates number of replicates
   * @param difference true difference of the two treatments
   * @param standardDeviation standard deviation of a plot, the root of the error mean square
   * @return the power
   * @throws InputProblem if the design cannot have so many replicates or a number is not usable
   */
  public double power(int replicates, double difference, double standardDeviation) {
    PowerChecks.positive("standard deviation", standardDeviation);
    if (!Double.isFinite(difference)) {
      throw InputProblem.of("The difference is " + difference)
          .expected("a finite number")
          .because("the power is that of finding this difference")
          .mend("state the difference that matters in the field");
    }
    double error = standardDeviation * Math.sqrt(2.0 / plan.plotsPerMean(replicates));
    return power(difference / error, plan.errorDf(replicates), alpha, sides);
  }

  private static double power(double noncentrality, double df, double alpha, TestSides sides) {
    double limited =
        Math.max(-LARGEST_NONCENTRALITY, Math.min(LARGEST_NONCENTRALITY, noncentrality));
    return sides.power(new NoncentralT(df, limited), alpha);
  }

  /**
   * The smallest number of replicates with which a difference is found with a wanted chance.
   *
   * @param difference true difference, positive
   * @param standardDeviation standard deviation of a plot, positive
   * @param wantedPower chance of finding it, above the level of the test and below 1
   * @return the replicates with the power that they give
   * @throws InputProblem if a number is not usable, or a million replicates would not do
   */
  public PlannedReplicates replicatesFor(
      double difference, double standardDeviation, double wantedPower) {
    PowerChecks.positive("difference", difference);
    PowerChecks.wantedPower(wantedPower, alpha);
    return search(plan, wantedPower, r -> power(r, difference, standardDeviation));
  }

  static PlannedReplicates search(
      ReplicationPlan plan, double wanted, IntToDoubleFunction powerOf) {
    int step = plan.step();
    int low = plan.fewest() - step;
    int high = plan.fewest();
    while (powerOf.applyAsDouble(high) < wanted) {
      low = high;
      high *= 2;
      if (high > MOST_REPLICATES) {
        throw InputProblem.of("More than " + MOST_REPLICATES / 2 + " replicates are needed")
            .expected("a difference that a field trial can show")
            .because("the difference is very small beside the scatter of the plots")
            .mend("look for a larger difference or more even plots");
      }
    }
    while (high - low > step) {
      int middle = low + (high - low) / step / 2 * step;
      if (powerOf.applyAsDouble(middle) < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new PlannedReplicates(
        plan, high, plan.errorDf(high), powerOf.applyAsDouble(high), wanted);
  }

  /**
   * The smallest difference that is found with a wanted chance.
   *
   * @param replicates number of replicates
   * @param standardDeviation standard deviation of a plot, positive
   * @param wantedPower chance of finding it, above the level of the test and below 1
   * @return the difference, in the unit of the standard deviation
   * @throws InputProblem if a number is not usable
   */
  public double smallestDifference(int replicates, double standardDeviation, double wantedPower) {
    PowerChecks.positive("standard deviation", standardDeviation);
    double error = standardDeviation * Math.sqrt(2.0 / plan.plotsPerMean(replicates));
    return smallestDifference(error, plan.errorDf(replicates), alpha, sides, wantedPower);
  }

  /**
   * The smallest true difference that a trial, planned or done, would have found with a wanted
   * chance.
   *
   * @param standardError standard error of the difference of the two means, positive
   * @param df its degrees of freedom, positive
   * @param alpha level of the test, between 0 and 1
   * @param sides directions of the test
   * @param wantedPower chance of finding it, above the level and below 1
   * @return the difference, in the unit of the standard error
   * @throws InputProblem if a number is not usable
   */
  public static double smallestDifference(
      double standardError, double df, double alpha, TestSides sides, double wantedPower) {
    PowerChecks.positive("standard error", standardError);
    PowerChecks.positive("number of degrees of freedom", df);
    PowerChecks.chance("level", alpha);
    PowerChecks.wantedPower(wantedPower, alpha);
    double high = 1;
    while (power(high, df, alpha, sides) < wantedPower) {
      high *= 2;
      if (high > LARGEST_NONCENTRALITY) {
        throw InputProblem.of(
                "Even a difference of "
                    + LARGEST_NONCENTRALITY
                    + " standard errors is found with a smaller chance than "
                    + wantedPower)
            .expected("a wanted power that the trial can reach")
            .because("with " + df + " degrees of freedom the critical value is very large")
            .mend("use more replicates or a less strict level");
      }
    }
    var solver = new BracketingNthOrderBrentSolver(1e-14, 1e-13, 1e-15, 5);
    return standardError
        * solver.solve(STEPS, d -> power(d, df, alpha, sides) - wantedPower, 0, high);
  }

  @Override
  public String toString() {
    return "difference of two treatments, " + plan + ", level " + alpha + ", sides " + sides;
  }
}
