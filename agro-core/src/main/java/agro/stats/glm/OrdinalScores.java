package agro.stats.glm;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.TreeSet;

/**
 * Scores on a scale whose classes have an order and no distances. Classes of the scale that no
 * observation has are left out of a fit, since nothing tells their limits.
 */
public final class OrdinalScores {

  private final List<String> classes;
  private final List<String> unused;
  private final int[] codes;
  private final double[] frequencies;

  private OrdinalScores(
      List<String> classes, List<String> unused, int[] codes, double[] frequencies) {
    this.classes = List.copyOf(classes);
    this.unused = List.copyOf(unused);
    this.codes = codes;
    this.frequencies = frequencies;
  }

  /**
   * Scores of a named scale.
   *
   * @param scale classes from lowest to highest
   * @param scores class of each observation
   * @return the scores
   * @throws InputProblem if a score is not on the scale, a class stands twice, or fewer than two
   *     classes were observed
   */
  public static OrdinalScores of(List<String> scale, List<String> scores) {
    if (new HashSet<>(scale).size() != scale.size()) {
      throw InputProblem.of("scale " + scale + " with a class twice")
          .expected("each class once, from lowest to highest")
          .because("the order of the classes would be ambiguous")
          .mend("remove the repeated class");
    }
    for (int i = 0; i < scores.size(); i++) {
      if (!scale.contains(scores.get(i))) {
        throw InputProblem.of("score \"" + scores.get(i) + "\" of observation " + (i + 1))
            .expected("one of " + scale)
            .because("a class without a place on the scale cannot be ordered")
            .mend("correct the score or add the class to the scale");
      }
    }
    var seen = new HashSet<>(scores);
    var used = scale.stream().filter(seen::contains).toList();
    var unused = scale.stream().filter(each -> !seen.contains(each)).toList();
    if (used.size() < 2) {
      throw InputProblem.of("scores that are all " + used)
          .expected("scores of at least two classes")
          .because("nothing differs that a model could explain")
          .mend("use a finer scale or another assessment");
    }
    int[] codes = scores.stream().mapToInt(used::indexOf).toArray();
    double[] ones = new double[codes.length];
    Arrays.fill(ones, 1);
    return new OrdinalScores(used, unused, codes, ones);
  }

  /**
   * Whole-number scores; their values give the order and nothing else.
   *
   * @param scores score of each observation
   * @return the scores
   * @throws InputProblem if fewer than two classes were observed
   */
  public static OrdinalScores ofNumbers(int... scores) {
    var scale = new TreeSet<Integer>();
    var labels = new ArrayList<String>();
    for (int score : scores) {
      scale.add(score);
      labels.add(Integer.toString(score));
    }
    return of(scale.stream().map(each -> Integer.toString(each)).toList(), labels);
  }

  /**
   * The scores with the number of times that each row was observed.
   *
   * @param counts not negative; a row of zero takes no part
   * @return new scores
   * @throws InputProblem if a count is negative or the number differs
   */
  public OrdinalScores withFrequencies(double... counts) {
    if (counts.length != codes.length) {
      throw InputProblem.of(counts.length + " frequencies for " + codes.length + " rows")
          .expected("one for each row")
          .because("numbers are matched by their place")
          .mend("give both in the same order and number");
    }
    double[] perClass = new double[classes.size()];
    for (int i = 0; i < counts.length; i++) {
      if (!(counts[i] >= 0) || Double.isInfinite(counts[i])) {
        throw InputProblem.of("a frequency of " + counts[i] + " in row " + (i + 1))
            .expected("zero or a positive number")
            .because("it says how often the row was observed")
            .mend("correct the frequency");
      }
      perClass[codes[i]] += counts[i];
    }
    for (int c = 0; c < perClass.length; c++) {
      if (perClass[c] == 0) {
        throw InputProblem.of("class " + classes.get(c) + " with frequencies of zero only")
            .expected("at least one observation of each class")
            .because("nothing tells the limits of the class")
            .mend("leave the rows of this class out");
      }
    }
    return new OrdinalScores(classes, unused, codes, counts.clone());
  }

  /**
   * Classes that were observed, from lowest to highest.
   *
   * @return at least two
   */
  public List<String> classes() {
    return classes;
  }

  /**
   * Classes of the scale that no observation has.
   *
   * @return often none
   */
  public List<String> unused() {
    return unused;
  }

  /**
   * Number of rows.
   *
   * @return number of rows
   */
  public int size() {
    return codes.length;
  }

  /**
   * Place of a row's class.
   *
   * @param row from 0
   * @return place from 0
   */
  public int code(int row) {
    return codes[row];
  }

  double frequency(int row) {
    return frequencies[row];
  }
}
