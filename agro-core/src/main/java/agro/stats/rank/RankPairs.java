package agro.stats.rank;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.multiple.CompactLetters;
import agro.stats.multiple.LetterOrder;
import agro.stats.multiple.PValueAdjustment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * All pairwise comparisons of one family, in the order 1-2, 1-3, ..., 2-3, ... of the groups.
 *
 * @param title name of the method in print
 * @param labels names of the groups, in their order
 * @param adjustment how the chances were adjusted; NONE where the method holds the level of the
 *     whole family by itself
 * @param pairs the comparisons
 * @param source the work that the method rests on
 */
public record RankPairs(
    String title,
    List<String> labels,
    PValueAdjustment adjustment,
    List<RankPair> pairs,
    Reference source) {

  /** Keeps the lists as they are now. */
  public RankPairs {
    labels = List.copyOf(labels);
    pairs = List.copyOf(pairs);
  }

  static RankPairs of(
      String title,
      Reference source,
      List<String> labels,
      PValueAdjustment adjustment,
      PairTest test) {
    var pairs = new ArrayList<RankPair>();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = i + 1; j < labels.size(); j++) {
        pairs.add(test.compare(i, j));
      }
    }
    double[] adjusted = adjustment.adjust(pairs.stream().mapToDouble(RankPair::pValue).toArray());
    for (int i = 0; i < adjusted.length; i++) {
      pairs.set(i, pairs.get(i).adjustedTo(adjusted[i]));
    }
    return new RankPairs(title, labels, adjustment, pairs, source);
  }

  /**
   * The comparison of two groups.
   *
   * @param one a group
   * @param other another group
   * @return their comparison; its first group is the one that comes first in the order of groups
   * @throws IllegalArgumentException if the two names are equal or unknown
   */
  public RankPair pair(String one, String other) {
    return pairs.stream()
        .filter(
            each ->
                (each.first().equals(one) && each.second().equals(other))
                    || (each.first().equals(other) && each.second().equals(one)))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no comparison of " + one + " and " + other + "; groups are " + labels));
  }

  /**
   * Adjusted chances of all pairs.
   *
   * @return in the order 1-2, 1-3, ..., 2-3, ...
   */
  public double[] adjustedPValues() {
    return column(RankPair::adjustedPValue);
  }

  /**
   * Chances of all pairs before adjustment.
   *
   * @return in the order 1-2, 1-3, ..., 2-3, ...
   */
  public double[] pValues() {
    return column(RankPair::pValue);
  }

  /**
   * Compact letters: two groups share a letter when their difference was not found.
   *
   * @param level level of the decisions, between 0 and 1
   * @param order which group gets the letter a
   * @return the letters, ordered by the level of the groups
   * @throws InputProblem if the level is not between 0 and 1
   */
  public CompactLetters letters(double level, LetterOrder order) {
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("The level is " + level)
          .expected("a chance between 0 and 1, such as 0.05")
          .because("letters follow from decisions at that level")
          .mend("write 5 % as 0.05");
    }
    int size = labels.size();
    var different = new boolean[size][size];
    double[] heights = new double[size];
    int at = 0;
    for (int i = 0; i < size; i++) {
      for (int j = i + 1; j < size; j++) {
        var pair = pairs.get(at++);
        different[i][j] = pair.adjustedPValue() <= level;
        different[j][i] = different[i][j];
        // Differences from the first group give the order of all groups.
        heights[j] = i == 0 ? pair.difference() : heights[j];
      }
    }
    return CompactLetters.of(labels, heights, different, order);
  }

  private double[] column(ToDoubleFunction<RankPair> figure) {
    return pairs.stream().mapToDouble(figure).toArray();
  }

  @Override
  public String toString() {
    return title + ": " + pairs;
  }

  /** Compares two groups by their places. */
  @FunctionalInterface
  interface PairTest {
    RankPair compare(int first, int second);
  }
}
