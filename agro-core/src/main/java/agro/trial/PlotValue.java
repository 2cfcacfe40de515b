package agro.trial;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * What one plot showed on one day: the values of its sub-samples. The sub-samples describe the
 * plot; they are no replicates.
 *
 * @param plot the plot
 * @param subSampleValues the known values, one for each sub-sample, at least one
 * @param outOf how many were looked at in all, for counts out of n
 */
public record PlotValue(TrialPlot plot, List<Double> subSampleValues, OptionalInt outOf) {

  /** Copies the values and refuses a plot without any. */
  public PlotValue {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(outOf, "outOf");
    subSampleValues = List.copyOf(subSampleValues);
    if (subSampleValues.isEmpty()) {
      throw new IllegalArgumentException(plot.label() + " needs at least one value");
    }
  }

  /**
   * Number of sub-samples with a value.
   *
   * @return 1 when the plot was assessed as a whole
   */
  public int subSamples() {
    return subSampleValues.size();
  }

  /**
   * Sum of the sub-samples, in an order that does not depend on the table's.
   *
   * @return the total of the plot
   */
  public double total() {
    return subSampleValues.stream().mapToDouble(Double::doubleValue).sorted().sum();
  }

  /**
   * Mean of the sub-samples.
   *
   * @return the mean of the plot
   */
  public double mean() {
    return total() / subSamples();
  }

  /**
   * Share of the affected ones among those looked at in the whole plot.
   *
   * @return a number from 0 to 1
   * @throws IllegalStateException when the variable is no count out of n
   */
  public double share() {
    if (outOf.isEmpty()) {
      throw new IllegalStateException(
          "a share needs the number looked at; declare the variable as a count out of n");
    }
    return total() / outOf.getAsInt();
  }
}
