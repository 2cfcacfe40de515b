package agro.course.handwork;

import agro.course.sheet.ProbitLine;
import agro.report.InputProblem;

/**
 * The sums of a weighted regression.
 *
 * @param w Σ of the weights n w
 * @param wx Σ of weight times log dose
 * @param wy Σ of weight times probit
 * @param wxx Σ of weight times squared log dose
 * @param wxy Σ of weight times log dose times probit
 * @param wyy Σ of weight times squared probit
 */
public record RegressionSums(double w, double wx, double wy, double wxx, double wxy, double wyy) {

  static final RegressionSums EMPTY = new RegressionSums(0, 0, 0, 0, 0, 0);

  RegressionSums with(double weight, double x, double y) {
    return new RegressionSums(
        w + weight,
        wx + weight * x,
        wy + weight * y,
        wxx + weight * x * x,
        wxy + weight * x * y,
        wyy + weight * y * y);
  }

  /**
   * Weighted mean of the log doses.
   *
   * @return Σnwx / Σnw
   */
  public double meanX() {
    return wx / w;
  }

  /**
   * Weighted mean of the probits.
   *
   * @return Σnwy / Σnw
   */
  public double meanY() {
    return wy / w;
  }

  /**
   * Sum of squares of the log doses about their mean.
   *
   * @return Σnwx² − (Σnwx)² / Σnw
   */
  public double sxx() {
    return wxx - wx * wx / w;
  }

  /**
   * Sum of products about the means.
   *
   * @return Σnwxy − Σnwx Σnwy / Σnw
   */
  public double sxy() {
    return wxy - wx * wy / w;
  }

  /**
   * Sum of squares of the probits about their mean.
   *
   * @return Σnwy² − (Σnwy)² / Σnw
   */
  public double syy() {
    return wyy - wy * wy / w;
  }

  /**
   * What the line leaves of the sum of squares of the probits.
   *
   * @return Syy − Sxy² / Sxx, never below 0
   */
  public double chiSquared() {
    return Math.max(0, syy() - sxy() * sxy() / sxx());
  }

  /** The regression line. */
  ProbitLine line(HandRounding rounding) {
    if (!(w > 0 && sxx() > 1e-12 * wxx)) {
      throw InputProblem.of("weights that add up to " + w)
          .expected("weight at two doses or more")
          .because("the expected probits lie so far out that no dose says anything of the slope")
          .mend("begin with a line that passes nearer to the points");
    }
    double slope = rounding.result(rounding.result(sxy()) / rounding.result(sxx()));
    double middle = rounding.result(meanY()) - slope * rounding.result(meanX());
    return new ProbitLine(rounding.result(middle), slope);
  }
}
