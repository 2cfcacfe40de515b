package agro.trial.series;

import agro.trial.PlotValue;
import agro.trial.TrialPlot;
import java.util.List;
import java.util.Objects;

/**
 * The scores of one plot.
 *
 * @param plot the plot
 * @param scores scores of its plants or of the whole plot, from low to high
 */
public record PlotScore(TrialPlot plot, List<Double> scores) {

  /** Sorts the scores. */
  public PlotScore {
    Objects.requireNonNull(plot, "plot");
    scores = scores.stream().sorted().toList();
  }

  static PlotScore of(PlotValue value) {
    return new PlotScore(value.plot(), value.subSampleValues());
  }

  /**
   * The middle score, which needs the order of the grades and nothing else; half-way between two
   * grades when half of an even number lies on each side.
   *
   * @return the median
   */
  public double median() {
    return median(scores);
  }

  static double median(List<Double> sorted) {
    int size = sorted.size();
    double upper = sorted.get(size / 2);
    return size % 2 == 1 ? upper : (sorted.get(size / 2 - 1) + upper) / 2;
  }

  /**
   * Share of plants with a grade.
   *
   * @param grade the grade
   * @return 0 to 1
   */
  public double share(double grade) {
    return scores.stream().filter(each -> each == grade).count() / (double) scores.size();
  }

  /**
   * Share of plants with a grade or a higher one.
   *
   * @param grade the grade
   * @return 0 to 1
   */
  public double shareAtLeast(double grade) {
    return scores.stream().filter(each -> each >= grade).count() / (double) scores.size();
  }

  double mean() {
    return scores.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
