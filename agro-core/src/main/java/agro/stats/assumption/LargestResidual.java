package agro.stats.assumption;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.UpperTail;
import java.util.List;
import java.util.Locale;

/**
 * The residual that stands farthest out, named and never removed. Each residual is divided by its
 * own standard error; the largest is tested by Student's t after leaving it out of the variance,
 * and the chance is multiplied by the number of residuals (Bonferroni), since the largest was
 * looked for.
 *
 * @param label name of the plot or row
 * @param index its place, from 0
 * @param residual its residual
 * @param standardised residual divided by its standard error
 * @param studentised the same with the variance of all other rows
 * @param pValue chance of a largest one like this, by Bonferroni, at most 1
 * @param tested number of residuals that were looked at
 * @param remarks what a reader has to know, possibly nothing
 */
public record LargestResidual(
    String label,
    int index,
    double residual,
    double standardised,
    double studentised,
    double pValue,
    int tested,
    List<String> remarks) {

  private static final double FULL_LEVERAGE = 1 - 1e-10;
  private static final double ROUNDING = 1e-12;

  /** Keeps the remarks as they are now. */
  public LargestResidual {
    remarks = List.copyOf(remarks);
  }

  /**
   * Finds the residual that stands farthest out.
   *
   * @param labels names of the rows
   * @param residuals residuals of a least squares fit, as many
   * @param leverages diagonal of the hat matrix, as many, 0 to 1
   * @param residualDf degrees of freedom of the residuals, at least 2
   * @return the largest by size of the standardised residual; the first of equal ones
   * @throws InputProblem if lengths differ, there are fewer than two degrees of freedom, or all
   *     residuals are zero
   */
  public static LargestResidual find(
      List<String> labels, double[] residuals, double[] leverages, int residualDf) {
    check(labels, residuals, leverages, residualDf);
    double squares = 0;
    for (double each : residuals) {
      squares += each * each;
    }
    double variance = squares / residualDf;
    int at = -1;
    double largest = 0;
    int tested = 0;
    for (int i = 0; i < residuals.length; i++) {
      if (leverages[i] < FULL_LEVERAGE) {
        tested++;
        double own = residuals[i] / Math.sqrt(variance * (1 - leverages[i]));
        if (at < 0 || Math.abs(own) > Math.abs(largest) * (1 + ROUNDING)) {
          at = i;
          largest = own;
        }
      }
    }
    if (at < 0 || !(squares > 0)) {
      throw InputProblem.of("All residuals are zero")
          .expected("residuals that scatter")
          .because("a row stands out only against the scatter of the others")
          .mend("check the data: the model fits every row exactly");
    }
    double left = (residualDf - largest * largest) / (residualDf - 1);
    double studentised =
        left > ROUNDING
            ? largest / Math.sqrt(left)
            : Math.copySign(Double.POSITIVE_INFINITY, largest);
    double p = Math.min(1, 2.0 * tested * UpperTail.t(Math.abs(studentised), residualDf - 1));
    return new LargestResidual(
        labels.get(at),
        at,
        residuals[at],
        largest,
        studentised,
        p,
        tested,
        remarks(residuals.length - tested, left));
  }

  private static List<String> remarks(int untested, double left) {
    var remarks = new java.util.ArrayList<String>();
    if (untested > 0) {
      remarks.add(
          untested
              + " rows fix a parameter of the model alone: their residual is always zero and cannot"
              + " be tested");
    }
    if (left <= ROUNDING) {
      remarks.add("without this row the model fits all others exactly");
    }
    return remarks;
  }

  private static void check(
      List<String> labels, double[] residuals, double[] leverages, int residualDf) {
    if (labels.size() != residuals.length || leverages.length != residuals.length) {
      throw InputProblem.of(
              labels.size()
                  + " names, "
                  + residuals.length
                  + " residuals and "
                  + leverages.length
                  + " leverages")
          .expected("one of each for each row")
          .because("a residual is judged by its own standard error")
          .mend("give all three of one fit");
    }
    for (int i = 0; i < residuals.length; i++) {
      if (!Double.isFinite(residuals[i]) || !(leverages[i] >= 0 && leverages[i] <= 1 + 1e-9)) {
        throw InputProblem.of(
                "Row "
                    + labels.get(i)
                    + " has residual "
                    + residuals[i]
                    + " and leverage "
                    + leverages[i])
            .expected("a finite residual and a leverage from 0 to 1")
            .because("the leverage is the share of a row in its own fitted value")
            .mend("take both from one least squares fit");
      }
    }
    if (residualDf < 2) {
      throw InputProblem.of("The residuals have " + residualDf + " degrees of freedom")
          .expected("at least 2")
          .because("one is used up by leaving the row out")
          .mend("use more replicates");
    }
  }

  /**
   * The work that the test rests on.
   *
   * @return Cook and Weisberg 1982
   */
  public Reference source() {
    return AssumptionSources.COOK_WEISBERG_1982;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "largest residual: %s, standardised %.2f, %s (Bonferroni over %d)",
        label,
        standardised,
        agro.stats.TestSentence.chance(pValue),
        tested);
  }
}
