package agro.sampling.size;

import agro.report.InputProblem;
import agro.sampling.VarianceModel;
import agro.source.Reference;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * Counting until the mean is known with a stated precision: stop as soon as the animals counted so
 * far reach the line T(n). On the line the standard error is exactly D times the mean.
 *
 * <p>By the power law (Green): ln T = ln(D² / a) / (b − 2) + (b − 1) / (b − 2) · ln n. By mean
 * crowding (Kuno): T = (α + 1) / (D² − (β − 1) / n), which needs n above (β − 1) / D². The negative
 * binomial is the latter with α = 0 and β − 1 = 1 / k, counts at random that with β = 1.
 *
 * @param model how the variance follows from the mean: power law with b other than 2, mean
 *     crowding, negative binomial or counts at random
 * @param relativeError D, standard error over mean, above 0
 */
public record PrecisionStopLine(VarianceModel model, double relativeError) implements Presentable {

  /**
   * Checks the model.
   *
   * @throws InputProblem when there is no such line for the model, or the error is not above zero
   */
  public PrecisionStopLine {
    if (!(relativeError > 0 && Double.isFinite(relativeError))) {
      throw InputProblem.of("a standard error of " + relativeError + " times the mean")
          .expected("a finite number above 0")
          .because("counting would never end")
          .mend("take for example 0.25 for scouting");
    }
    boolean noLine =
        model instanceof VarianceModel.Presence
            || model instanceof VarianceModel.Known
            || (model instanceof VarianceModel.Power power && power.b() == 2);
    if (noLine) {
      throw InputProblem.of("a stop line for " + model.words())
          .expected("a power law with b other than 2, mean crowding, a negative binomial or chance")
          .because("the number of animals says nothing of the precision there")
          .mend("fit the variance over several fields first");
    }
  }

  /**
   * Animals at which counting stops.
   *
   * @param units units looked at so far, n
   * @return T(n)
   * @throws InputProblem when n is not above the limit, below which the precision is out of reach
   */
  public double stopAt(int units) {
    if (!(units > limit())) {
      throw InputProblem.of(units + " units")
          .expected("more than " + Numbers.fixed(limit(), 2) + " units")
          .because("with fewer the precision cannot be reached, however many animals there are")
          .mend("look at more units before asking, or be content with a larger error");
    }
    double square = relativeError * relativeError;
    if (model instanceof VarianceModel.Power power) {
      double b = power.b();
      return Math.exp(Math.log(square / power.a()) / (b - 2) + (b - 1) / (b - 2) * Math.log(units));
    }
    return clump() / (square - crowd() / units);
  }

  /**
   * Number of units that must be exceeded.
   *
   * @return (β − 1) / D² by mean crowding, 0 by the power law
   */
  public double limit() {
    return model instanceof VarianceModel.Power
        ? 0
        : Math.max(0, crowd() / (relativeError * relativeError));
  }

  private double clump() {
    return model instanceof VarianceModel.Crowding crowding ? crowding.alpha() + 1 : 1;
  }

  private double crowd() {
    if (model instanceof VarianceModel.Crowding crowding) {
      return crowding.beta() - 1;
    }
    return model instanceof VarianceModel.NegativeBinomial negative ? 1 / negative.k() : 0;
  }

  /**
   * Whether counting may stop.
   *
   * @param units units looked at so far
   * @param animals animals counted so far
   * @return true when the line is reached
   */
  public boolean isReached(int units, long animals) {
    return units > limit() && animals > 0 && animals >= stopAt(units);
  }

  private Reference source() {
    return model instanceof VarianceModel.Power
        ? SamplingBibliography.GREEN_1970
        : SamplingBibliography.KUNO_1969;
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (int n : new int[] {5, 10, 15, 20, 30, 40, 50, 75, 100, 150, 200}) {
      if (n > limit()) {
        double stop = stopAt(n);
        rows.add(
            List.of(Cell.number(n, 0), Cell.number(Math.ceil(stop), 0), Cell.number(stop / n, 2)));
      }
    }
    return Presentation.titled("Stop line for a precision")
        .fact(
            "Precision", "standard error " + Numbers.plain(100 * relativeError) + " % of the mean")
        .fact("Spread", model.words())
        .fact("Least units", Integer.toString((int) Math.floor(limit()) + 1))
        .table(
            ResultTable.of(
                "Stop as soon as so many animals are counted",
                List.of(
                    Column.of("Units looked at"),
                    Column.of("Animals counted"),
                    Column.of("Mean on the line")),
                rows))
        .sources(List.of(source()))
        .build();
  }
}
