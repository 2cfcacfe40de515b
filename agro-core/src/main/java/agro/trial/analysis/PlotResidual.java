package agro.trial.analysis;

import agro.trial.TrialPlot;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One plot in the analysis: what figures of values and of residuals need.
 *
 * @param plot the plot, with its block and treatment
 * @param value the plot's value on the scale of the values (per cent for shares)
 * @param analysed the same on the scale of the analysis
 * @param fitted what the model expects there; for generalised linear models on the scale of the
 *     values; empty for ranks
 * @param residual what is left; the deviance residual for generalised linear models; empty for
 *     ranks
 * @param standardised residual over its standard error; empty where there is no error
 */
public record PlotResidual(
    TrialPlot plot,
    double value,
    double analysed,
    OptionalDouble fitted,
    OptionalDouble residual,
    OptionalDouble standardised) {

  /** Refuses null. */
  public PlotResidual {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(fitted, "fitted");
    Objects.requireNonNull(residual, "residual");
    Objects.requireNonNull(standardised, "standardised");
  }
}
