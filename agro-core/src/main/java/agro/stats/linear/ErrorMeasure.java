package agro.stats.linear;

import agro.report.InputProblem;

/** Where the error of a linear function of effects comes from. */
sealed interface ErrorMeasure
    permits ErrorMeasure.Single, ErrorMeasure.Missing, StratifiedFit.ByStratum {

  /** Variance of a function given in coordinates of the effects. */
  double variance(double[] z);

  /** Degrees of freedom of that variance. */
  double degreesOfFreedom(double[] z);

  /** Whether a function that is not a difference has an error too. */
  boolean coversMeans();

  /** One residual variance for all. */
  record Single(double meanSquare, int df) implements ErrorMeasure {
    @Override
    public double variance(double[] z) {
      return meanSquare * LinearModelFit.product(z, z);
    }

    @Override
    public double degreesOfFreedom(double[] z) {
      return df;
    }

    @Override
    public boolean coversMeans() {
      return true;
    }
  }

  /** No error at all. */
  record Missing(String reason) implements ErrorMeasure {
    @Override
    public double variance(double[] z) {
      throw problem(reason);
    }

    @Override
    public double degreesOfFreedom(double[] z) {
      throw problem(reason);
    }

    @Override
    public boolean coversMeans() {
      return false;
    }
  }

  /** The problem of a function without an error. */
  static InputProblem problem(String reason) {
    return InputProblem.of(reason)
        .expected("an error variance with at least one degree of freedom")
        .because("without an error nothing can be tested and no interval be given")
        .mend("use replicated observations, or leave an interaction out of the model");
  }
}
