package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.multiple.ComparedMeans;
import agro.stats.multiple.LetterOrder;
import agro.stats.multiple.MeanComparisons;
import agro.stats.multiple.PairwiseComparison;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Means of treatments, compared in pairs.
 *
 * @param means one for each treatment, in natural order of names
 * @param comparisons all pairs with differences, limits and chances
 */
public record JoinedMeans(List<JoinedMean> means, MeanComparisons comparisons) {

  /** Copies the means. */
  public JoinedMeans {
    means = List.copyOf(means);
    Objects.requireNonNull(comparisons, "comparisons");
  }

  static JoinedMeans of(
      ComparedMeans compared,
      Map<String, OptionalDouble> errors,
      Map<String, Integer> plots,
      PairwiseComparison method) {
    var comparisons = method.compare(compared);
    var letters = comparisons.letters(LetterOrder.LARGEST_FIRST);
    var list = new ArrayList<JoinedMean>();
    for (int i = 0; i < compared.size(); i++) {
      var label = compared.labels().get(i);
      list.add(
          new JoinedMean(
              label,
              compared.mean(i),
              errors.getOrDefault(label, OptionalDouble.empty()),
              plots.getOrDefault(label, 0),
              letters.letters(label)));
    }
    return new JoinedMeans(list, comparisons);
  }

  /**
   * The mean of one treatment.
   *
   * @param treatment the treatment
   * @return its mean
   * @throws InputProblem when it has none
   */
  public JoinedMean of(String treatment) {
    return means.stream()
        .filter(each -> each.treatment().equals(treatment))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("a mean of \"" + treatment + "\"")
                    .expected("one of " + means.stream().map(JoinedMean::treatment).toList())
                    .because("there is no other mean")
                    .mend("write the treatment as in the trial"));
  }

  /**
   * Smallest standard error of a difference of two means.
   *
   * @return above zero
   */
  public double smallestErrorOfDifference() {
    return errorOfDifference(true);
  }

  /**
   * Largest standard error of a difference of two means; equal to the smallest one where all
   * treatments are replicated alike.
   *
   * @return above zero
   */
  public double largestErrorOfDifference() {
    return errorOfDifference(false);
  }

  private double errorOfDifference(boolean smallest) {
    var compared = comparisons.means();
    double found = smallest ? Double.POSITIVE_INFINITY : 0;
    for (int i = 0; i < compared.size(); i++) {
      for (int j = 0; j < i; j++) {
        double each = Math.sqrt(compared.differenceVariance(i, j));
        found = smallest ? Math.min(found, each) : Math.max(found, each);
      }
    }
    return found;
  }

  /**
   * How the means were compared, with the standard error of a difference.
   *
   * @return one sentence
   */
  public String sentence() {
    return "Means that share a letter do not differ by "
        + comparisons.method().words()
        + " at the level "
        + PlainFigure.of(comparisons.level())
        + "; "
        + errorWords()
        + ".";
  }

  /** Standard error of a difference and smallest significant difference. */
  String errorWords() {
    double low = smallestErrorOfDifference();
    double high = largestErrorOfDifference();
    boolean one = high - low <= 1e-6 * high;
    return "standard error of a difference "
        + PlainFigure.of(low)
        + (one ? "" : " to " + PlainFigure.of(high))
        + " with "
        + PlainFigure.of(comparisons.means().degreesOfFreedom())
        + " degrees of freedom"
        + comparisons
            .smallestSignificantDifference()
            .map(difference -> "; smallest significant difference " + difference)
            .orElse("");
  }

  /**
   * The means as a table for print.
   *
   * @param title what it shows
   * @param unit unit of the means, or empty
   * @return one line for each treatment
   */
  public ResultTable table(String title, String unit) {
    int decimals = PlainFigure.decimals(smallestErrorOfDifference());
    var rows = new ArrayList<List<Cell>>();
    for (var each : means) {
      rows.add(
          List.of(
              Cell.text(each.treatment()),
              Cell.number(each.plots(), 0),
              Cell.number(each.mean(), decimals),
              each.standardError().isPresent()
                  ? Cell.number(each.standardError().getAsDouble(), decimals)
                  : Cell.notKnown(),
              Cell.text(each.letters())));
    }
    return ResultTable.of(
            title,
            List.of(
                Column.of("Treatment"),
                Column.of("Plots"),
                Column.of("Mean", unit),
                Column.of("Standard error", unit),
                Column.of("Letters")),
            rows)
        .withNote(sentence());
  }

  @Override
  public String toString() {
    return means + "; " + sentence();
  }
}
