package agro.stats.multiple;

import agro.report.InputProblem;
import java.util.List;
import java.util.Optional;

/** The outcome of comparing means: each pair with its test, and what follows from all of them. */
public final class MeanComparisons {

  private static final double EXACT = 1e-9;

  private final ComparedMeans means;
  private final Terms terms;
  private final List<ComparedPair> pairs;

  /**
   * What was compared by.
   *
   * @param criticalT NaN for methods without limits
   * @param correlationError see {@link #correlationError()}
   */
  record Terms(
      ComparisonMethod method,
      double level,
      Alternative alternative,
      double criticalT,
      double correlationError) {}

  MeanComparisons(ComparedMeans means, Terms terms, List<ComparedPair> pairs) {
    this.means = means;
    this.terms = terms;
    this.pairs = List.copyOf(pairs);
  }

  /**
   * The means that were compared.
   *
   * @return means with their errors
   */
  public ComparedMeans means() {
    return means;
  }

  /**
   * The method.
   *
   * @return the method used
   */
  public ComparisonMethod method() {
    return terms.method();
  }

  /**
   * The level of significance.
   *
   * @return between 0 and 1
   */
  public double level() {
    return terms.level();
  }

  /**
   * The direction in which differences counted.
   *
   * @return two-sided for all pairs
   */
  public Alternative alternative() {
    return terms.alternative();
  }

  /**
   * All compared pairs.
   *
   * @return an immutable list
   */
  public List<ComparedPair> pairs() {
    return pairs;
  }

  /**
   * One pair, as first minus second.
   *
   * @param first label of one mean
   * @param second label of the other
   * @return the pair, turned round where necessary
   * @throws InputProblem if a label is unknown or the two were not compared
   */
  public ComparedPair pair(String first, String second) {
    means.indexOf(first);
    means.indexOf(second);
    for (var pair : pairs) {
      if (pair.first().equals(first) && pair.second().equals(second)) {
        return pair;
      }
      if (pair.first().equals(second) && pair.second().equals(first)) {
        return pair.reversed();
      }
    }
    throw InputProblem.of("The pair " + first + " and " + second)
        .expected("two means that were compared with each other")
        .because("comparisons with a control hold that control in every pair")
        .mend("compare all pairs with PairwiseComparison");
  }

  /**
   * The multiple of the standard error that a difference has to reach.
   *
   * @return empty for methods without limits
   */
  public Optional<Double> criticalT() {
    return terms.method().hasLimits() ? Optional.of(terms.criticalT()) : Optional.empty();
  }

  /**
   * The smallest difference that is significant: Fisher's, Tukey's, Dunnett's and so on, by method.
   *
   * @return one number with equal replication, else a range over the pairs; empty for methods
   *     without limits
   */
  public Optional<SignificantDifference> smallestSignificantDifference() {
    return criticalT()
        .map(
            critical -> {
              var errors = pairs.stream().mapToDouble(ComparedPair::standardError);
              var all = errors.summaryStatistics();
              return new SignificantDifference(critical * all.getMin(), critical * all.getMax());
            });
  }

  /**
   * The difference that one pair has to reach.
   *
   * @param first label of one mean
   * @param second label of the other
   * @return the critical t times the standard error of the pair; empty for methods without limits
   * @throws InputProblem if a label is unknown or the two were not compared
   */
  public Optional<Double> significantDifference(String first, String second) {
    double error = pair(first, second).standardError();
    return criticalT().map(critical -> critical * error);
  }

  /**
   * How far the correlations of differences from a control are from the nearest ones that Dunnett's
   * distribution can have.
   *
   * @return 0 (but for rounding) where the distribution is exact
   */
  public double correlationError() {
    return terms.correlationError();
  }

  /**
   * Whether Dunnett's distribution belongs to these errors exactly.
   *
   * @return false where the nearest correlations stood in; true for all other methods
   */
  public boolean isExact() {
    return terms.correlationError() <= EXACT;
  }

  /**
   * Letters for a table of means: two means share a letter if and only if they are not declared
   * different.
   *
   * @param order which mean gets the letter a
   * @return the letters
   * @throws InputProblem for comparisons with a control, which leave most pairs open
   */
  public CompactLetters letters(LetterOrder order) {
    int size = means.size();
    if (pairs.size() != size * (size - 1) / 2 || terms.method() == ComparisonMethod.DUNNETT) {
      throw InputProblem.of("Letters for comparisons with a control")
          .expected("comparisons of all pairs")
          .because("letters say something about every two means")
          .mend("mark the means that differ from the control, or compare all pairs");
    }
    boolean[][] different = new boolean[size][size];
    for (var pair : pairs) {
      int first = means.indexOf(pair.first());
      int second = means.indexOf(pair.second());
      different[first][second] = pair.isDifferent();
      different[second][first] = pair.isDifferent();
    }
    return CompactLetters.of(means.labels(), means.means(), different, order);
  }

  @Override
  public String toString() {
    var text = new StringBuilder(terms.method().words());
    text.append(", level ").append(terms.level());
    if (terms.alternative() != Alternative.TWO_SIDED) {
      text.append(", ").append(terms.alternative() == Alternative.LARGER ? "larger" : "smaller");
      text.append(" than the control");
    }
    if (!isExact()) {
      text.append(", correlations approximated within ").append(terms.correlationError());
    }
    for (var pair : pairs) {
      text.append('\n').append(pair).append(pair.isDifferent() ? ", different" : "");
    }
    return text.toString();
  }
}
