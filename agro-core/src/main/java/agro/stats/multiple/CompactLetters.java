package agro.stats.multiple;

import agro.report.InputProblem;
import agro.source.Reference;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Letters beside means: two means share a letter if and only if they are not declared different,
 * for any symmetrical matrix of decisions, also where unequal errors make the pattern uneven.
 *
 * <p>Made by Piepho's algorithm (2004), with as few letters as will do. The order in which means
 * are given does not matter: they are put in order by their value, equal ones by their label.
 */
public final class CompactLetters {

  private static final int ALPHABET = 26;

  private final List<String> labels;
  private final List<BitSet> columns;

  private CompactLetters(List<String> labels, List<BitSet> columns) {
    this.labels = labels;
    this.columns = columns;
  }

  /**
   * Letters from decisions.
   *
   * @param labels names of the means, each once
   * @param means the means, for the order of the letters
   * @param different whether two means are declared different; symmetrical
   * @param order which mean gets the letter a
   * @return the letters
   * @throws InputProblem if lengths differ, a label repeats, a mean is not a number, or the matrix
   *     is not symmetrical
   */
  public static CompactLetters of(
      List<String> labels, double[] means, boolean[][] different, LetterOrder order) {
    check(labels, means, different);
    Comparator<Integer> byMean = Comparator.comparingDouble(each -> means[each] + 0.0);
    Comparator<Integer> byLabel = Comparator.comparing(labels::get);
    int[] places =
        IntStream.range(0, means.length)
            .boxed()
            .sorted(
                (order == LetterOrder.LARGEST_FIRST ? byMean.reversed() : byMean)
                    .thenComparing(byLabel))
            .mapToInt(Integer::intValue)
            .toArray();
    boolean[][] sorted = new boolean[places.length][places.length];
    var names = new ArrayList<String>();
    for (int i = 0; i < places.length; i++) {
      names.add(labels.get(places[i]));
      for (int j = 0; j < places.length; j++) {
        sorted[i][j] = different[places[i]][places[j]];
      }
    }
    return new CompactLetters(List.copyOf(names), new LetterColumns(sorted).columns());
  }

  private static void check(List<String> labels, double[] means, boolean[][] different) {
    if (labels.size() != means.length || means.length != different.length || means.length == 0) {
      throw InputProblem.of(
              labels.size()
                  + " labels, "
                  + means.length
                  + " means and decisions for "
                  + different.length)
          .expected("as many of each, at least one")
          .because("each mean has one name and one row of decisions")
          .mend("give them in the same order");
    }
    var seen = new HashSet<String>();
    for (int i = 0; i < means.length; i++) {
      if (!seen.add(labels.get(i))) {
        throw InputProblem.of("The label " + labels.get(i) + " twice")
            .expected("each mean once")
            .because("its letters could not be told apart")
            .mend("rename one of them");
      }
      Checks.number(means[i], "mean of " + labels.get(i));
      if (different[i].length != means.length || different[i][i]) {
        throw InputProblem.of("The decisions for " + labels.get(i))
            .expected(means.length + " decisions, and none against itself")
            .because("a mean does not differ from itself")
            .mend("give a square matrix with false on its diagonal");
      }
      for (int j = 0; j < i; j++) {
        if (different[i][j] != different[j][i]) {
          throw InputProblem.of("Two decisions on " + labels.get(i) + " and " + labels.get(j))
              .expected("the same decision in both directions")
              .because("a letter is shared or not")
              .mend("fill the matrix on both sides of its diagonal");
        }
      }
    }
  }

  /**
   * The work that the letters are made after.
   *
   * @return the reference
   */
  public static Reference source() {
    return MultipleSources.PIEPHO_2004;
  }

  /**
   * The means in the order of the letters.
   *
   * @return labels, that of the mean with the letter a first
   */
  public List<String> labels() {
    return labels;
  }

  /**
   * The letters of one mean, run together: {@code "ab"}. After z come capitals, then a1, b1 and so
   * on.
   *
   * @param label name of the mean
   * @return at least one letter
   * @throws InputProblem if there is no such mean
   */
  public String letters(String label) {
    return String.join("", letterList(label));
  }

  /**
   * The letters of one mean, one by one.
   *
   * @param label name of the mean
   * @return at least one letter
   * @throws InputProblem if there is no such mean
   */
  public List<String> letterList(String label) {
    int place = place(label);
    return IntStream.range(0, columns.size())
        .filter(column -> columns.get(column).get(place))
        .mapToObj(CompactLetters::letter)
        .toList();
  }

  /**
   * Number of different letters.
   *
   * @return at least 1
   */
  public int count() {
    return columns.size();
  }

  /**
   * The means that share a letter, letter by letter.
   *
   * @return the members of a, of b and so on, each in the order of the letters
   */
  public List<List<String>> groups() {
    return columns.stream().map(column -> column.stream().mapToObj(labels::get).toList()).toList();
  }

  /**
   * Whether two means share a letter.
   *
   * @param one label of a mean
   * @param other label of a mean
   * @return true if and only if they are not declared different
   * @throws InputProblem if there is no such mean
   */
  public boolean share(String one, String other) {
    int first = place(one);
    int second = place(other);
    return columns.stream().anyMatch(column -> column.get(first) && column.get(second));
  }

  private int place(String label) {
    int place = labels.indexOf(label);
    if (place < 0) {
      throw InputProblem.of("A mean named " + label)
          .expected("one of " + String.join(", ", labels))
          .because("there are no letters for another name")
          .mend("write the name as in the data, with the same capitals");
    }
    return place;
  }

  private static String letter(int column) {
    int turn = column / (2 * ALPHABET);
    int within = column % (2 * ALPHABET);
    char sign = (char) (within < ALPHABET ? 'a' + within : 'A' + within - ALPHABET);
    return turn == 0 ? Character.toString(sign) : Character.toString(sign) + turn;
  }

  /** One line for each mean: label and letters. */
  @Override
  public String toString() {
    var text = new StringBuilder();
    for (var label : labels) {
      text.append(text.isEmpty() ? "" : "\n").append(label).append(' ').append(letters(label));
    }
    return text.toString();
  }
}
