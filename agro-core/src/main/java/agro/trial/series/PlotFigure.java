package agro.trial.series;

import agro.report.InputProblem;
import agro.trial.TrialPlot;
import java.util.Objects;

/**
 * One number for one plot.
 *
 * @param plot the plot
 * @param value its number, finite
 */
public record PlotFigure(TrialPlot plot, double value) {

  /**
   * Checks the number.
   *
   * @throws InputProblem when it is not finite
   */
  public PlotFigure {
    Objects.requireNonNull(plot, "plot");
    if (!Double.isFinite(value)) {
      throw InputProblem.of(plot.label() + " with the value " + value)
          .expected("a finite number")
          .because("one such value would spoil every mean")
          .mend(
              "leave the plot out; under a logarithm state a constant that is added to values of 0");
    }
  }
}
