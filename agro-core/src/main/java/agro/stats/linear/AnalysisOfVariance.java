package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sums of squares of the terms of a linear model with their tests. */
public final class AnalysisOfVariance {

  private final LinearModelFit fit;
  private final SumsOfSquares kind;
  private final List<VarianceRow> rows;
  private final VarianceRow residual;
  private final List<LostEffect> lost;

  private AnalysisOfVariance(
      LinearModelFit fit,
      SumsOfSquares kind,
      List<VarianceRow> rows,
      VarianceRow residual,
      List<LostEffect> lost) {
    this.fit = fit;
    this.kind = kind;
    this.rows = List.copyOf(rows);
    this.residual = residual;
    this.lost = lost;
  }

  static AnalysisOfVariance of(LinearModelFit fit, SumsOfSquares kind) {
    var design = fit.model().sumToZero();
    var spaces = fit.model().spaces(kind);
    var lost = design.rank() < design.columns() ? design.lostEffects() : List.<LostEffect>of();
    double[] effects = fit.effects();
    var rows = new ArrayList<VarianceRow>();
    for (int t = 0; t < spaces.size(); t++) {
      String name = design.terms().get(t).name();
      String note = note(name, spaces.get(t), Estimability.expected(design, t), lost);
      rows.add(row(fit, name, spaces.get(t), effects, note));
    }
    int df = fit.residualDegreesOfFreedom();
    var residual =
        new VarianceRow(
            "residual", df, fit.residualSumOfSquares(), Optional.empty(), fit.reasonForNoTest());
    return new AnalysisOfVariance(fit, kind, rows, residual, lost);
  }

  private static VarianceRow row(
      LinearModelFit fit, String name, TermSpace space, double[] effects, String note) {
    int df = space.degreesOfFreedom();
    double squares = space.sumOfSquares(effects);
    Optional<VarianceRatio> test = Optional.empty();
    if (df > 0 && fit.reasonForNoTest().isEmpty()) {
      double error = fit.residualSumOfSquares() / fit.residualDegreesOfFreedom();
      test = Optional.of(VarianceRatio.of(squares / df, df, error, fit.residualDegreesOfFreedom()));
    }
    return new VarianceRow(name, df, squares, test, note);
  }

  private static String note(String name, TermSpace space, int expected, List<LostEffect> lost) {
    if (!space.reason().isEmpty()) {
      return space.reason();
    }
    int missing = expected - space.degreesOfFreedom();
    for (LostEffect each : lost) {
      if (each.term().equals(name) && missing > 0) {
        return each.toString();
      }
    }
    return missing > 0
        ? missing + " of " + expected + " effects of " + name + " are confounded with other terms"
        : "";
  }

  /**
   * Which terms each term is adjusted for.
   *
   * @return the kind of the sums of squares
   */
  public SumsOfSquares kind() {
    return kind;
  }

  /**
   * One row for each term in the order of the model, without the residual.
   *
   * @return the rows
   */
  public List<VarianceRow> rows() {
    return rows;
  }

  /**
   * The row of the residual.
   *
   * @return a row without a test
   */
  public VarianceRow residual() {
    return residual;
  }

  /**
   * The row of a term.
   *
   * @param term a term of the model
   * @return its row
   * @throws InputProblem if the model has no such term
   */
  public VarianceRow row(ModelTerm term) {
    int place = fit.model().terms().indexOf(term);
    if (place < 0) {
      throw InputProblem.of("term " + term.name())
          .expected("one of " + fit.model().terms())
          .because("only terms of the model have a row")
          .mend("name a term of the model");
    }
    return rows.get(place);
  }

  /**
   * Sum of squares about the mean.
   *
   * @return the total; rows and residual add up to it if the kind is sequential
   */
  public double totalSumOfSquares() {
    return fit.totalSumOfSquares();
  }

  /**
   * Effects that the observations cannot tell.
   *
   * @return nothing if all can be told
   */
  public List<LostEffect> lostEffects() {
    return lost;
  }

  /**
   * Share of the total sum of squares that a term explains, eta squared.
   *
   * @param term a term of the model
   * @return 0 to 1
   * @throws InputProblem if nothing varies
   */
  public double etaShare(ModelTerm term) {
    return share(row(term).sumOfSquares(), totalSumOfSquares());
  }

  /**
   * Share of a term in itself and the residual together, partial eta squared.
   *
   * @param term a term of the model
   * @return 0 to 1
   * @throws InputProblem if both are zero
   */
  public double partialEtaShare(ModelTerm term) {
    double own = row(term).sumOfSquares();
    return share(own, own + residual.sumOfSquares());
  }

  private static double share(double part, double whole) {
    if (!(whole > 0)) {
      throw InputProblem.of("a sum of squares of zero")
          .expected("observations that vary")
          .because("there is nothing to be shared out")
          .mend("look at the data: all values are the same");
    }
    return part / whole;
  }

  /**
   * Coefficient of variation: the residual standard deviation in per cent of the general mean.
   *
   * @return per cent
   * @throws InputProblem if there is no error variance or the mean is not positive
   */
  public double coefficientOfVariationPercent() {
    double variance = fit.requireVariance();
    if (!(fit.mean() > 0)) {
      throw InputProblem.of("a general mean of " + fit.mean())
          .expected("a positive mean of a scale with a true zero")
          .because("a spread in per cent of such a mean says nothing")
          .mend("give the residual standard deviation instead");
    }
    return 100 * Math.sqrt(variance) / fit.mean();
  }

  /**
   * Relative efficiency of a blocking term: what the error variance would have been without it.
   * Rows of a Latin square are one such term and columns another.
   *
   * @param block the blocking term, orthogonal to the treatments
   * @param otherBlocks further blocking terms that would have stayed
   * @return the efficiency
   * @throws InputProblem if there is no error variance or the term has no degrees of freedom
   */
  public BlockingEfficiency relativeEfficiency(ModelTerm block, ModelTerm... otherBlocks) {
    double error = fit.requireVariance();
    var row = row(block);
    double meanSquare =
        row.meanSquare()
            .orElseThrow(
                () ->
                    InputProblem.of("term " + block.name() + " without degrees of freedom")
                        .expected("a blocking term that can be told")
                        .because("its mean square is needed")
                        .mend("state blocks before the treatments they are confounded with"));
    int rest = fit.response().length - 1 - row.degreesOfFreedom();
    for (ModelTerm other : otherBlocks) {
      rest -= row(other).degreesOfFreedom();
    }
    return BlockingEfficiency.of(
        meanSquare, row.degreesOfFreedom(), error, residual.degreesOfFreedom(), rest);
  }

  @Override
  public String toString() {
    var text = new StringBuilder("Analysis of variance, sums of squares " + kind.words());
    rows.forEach(row -> text.append("\n  ").append(row));
    text.append("\n  ").append(residual);
    return text.toString();
  }
}
