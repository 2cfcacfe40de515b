package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.TestSentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Test that one predictor serves all cut points (proportional odds with the logit link): the score
 * test against a model with coefficients of their own for each cut point. It needs no fit of that
 * model. Peterson and Harrell 1990, Applied Statistics 39:205-217; Brant 1990, Biometrics
 * 46:1171-1178 (both from memory). The score test is known to be liberal where cells are small.
 *
 * @param statistic chi-squared over all coefficients
 * @param degreesOfFreedom coefficients times cut points less one
 * @param p chance of as large a statistic if the assumption holds
 * @param coefficients the same for each coefficient by itself, the others being kept parallel
 */
public record ParallelCuts(
    double statistic, int degreesOfFreedom, double p, List<DevianceRow> coefficients) {

  /** Copies the list. */
  public ParallelCuts {
    coefficients = List.copyOf(coefficients);
  }

  static ParallelCuts of(OrdinalFit fit) {
    var search = fit.search();
    if (search.cuts < 2 || search.columns == 0) {
      throw InputProblem.of(
              "a test of parallel cuts with "
                  + search.cuts
                  + " cut points and "
                  + search.columns
                  + " coefficients")
          .expected("at least three classes and one coefficient")
          .because("there is nothing that could differ between cut points")
          .mend("leave the test out");
    }
    if (fit.isSeparated()) {
      throw InputProblem.of("a test of parallel cuts for separated scores")
          .expected("finite estimates of all coefficients")
          .because("the test is taken at the estimates")
          .mend("leave out the levels without finite estimates, or use rank methods");
    }
    var score = new ParallelCutsScore(search);
    boolean[] all = new boolean[search.columns];
    Arrays.fill(all, true);
    var whole = score.test("all", all);
    var rows = new ArrayList<DevianceRow>();
    var named = fit.coefficients().stream().filter(CoefficientEstimate::isFinite).toList();
    for (int j = 0; j < search.columns; j++) {
      boolean[] one = new boolean[search.columns];
      one[j] = true;
      rows.add(score.test(named.get(j).name(), one));
    }
    return new ParallelCuts(whole.statistic(), whole.degreesOfFreedom(), whole.p(), rows);
  }

  /**
   * The test in one sentence.
   *
   * @return the test in one sentence
   */
  public String sentence() {
    return TestSentence.of("chi-squared", statistic, p, degreesOfFreedom);
  }

  @Override
  public String toString() {
    return "score test of parallel cuts: "
        + sentence()
        + coefficients.stream()
            .map(each -> "\n  " + each.term() + ": " + each.sentence())
            .collect(Collectors.joining());
  }
}
