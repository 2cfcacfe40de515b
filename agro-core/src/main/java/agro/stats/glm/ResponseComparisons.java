package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.stats.multiple.CompactLetters;
import agro.stats.multiple.ComparedPair;
import agro.stats.multiple.LetterOrder;
import agro.stats.multiple.MeanComparisons;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Marginal means compared in pairs on the scale of the link, and told on that of the response.
 * Letters are those of the link scale; since a link is monotone they order the means alike.
 */
public final class ResponseComparisons {

  private final ResponseMeans means;
  private final MeanComparisons comparisons;
  private final List<ResponsePair> pairs;

  ResponseComparisons(ResponseMeans means, MeanComparisons comparisons) {
    this.means = means;
    this.comparisons = comparisons;
    this.pairs = comparisons.pairs().stream().map(this::told).toList();
  }

  private ResponsePair told(ComparedPair pair) {
    var link = means.fit().model().link();
    boolean hasRatio = link == LinkFunction.LOG || link == LinkFunction.LOGIT;
    Optional<Double> ratio = hasRatio ? Optional.of(Math.exp(pair.difference())) : Optional.empty();
    Optional<ConfidenceLimits> limits =
        hasRatio
            ? pair.limits()
                .map(each -> new ConfidenceLimits(Math.exp(each.low()), Math.exp(each.high())))
            : Optional.empty();
    var first = means.mean(pair.first());
    var second = means.mean(pair.second());
    return new ResponsePair(
        pair, ratio, limits, first.mean() - second.mean(), error(pair, first, second));
  }

  private double error(ComparedPair pair, ResponseMean first, ResponseMean second) {
    var link = means.fit().model().link();
    double one = first.predictor().standardError();
    double other = second.predictor().standardError();
    double covariance =
        0.5 * (one * one + other * other - pair.standardError() * pair.standardError());
    double a = link.slope(first.predictor().estimate());
    double b = link.slope(second.predictor().estimate());
    return Math.sqrt(
        Math.max(0, a * a * one * one + b * b * other * other - 2 * a * b * covariance));
  }

  /**
   * The means that were compared, and those that were left out.
   *
   * @return the means that were compared, and those that were left out
   */
  public ResponseMeans means() {
    return means;
  }

  /**
   * The comparisons on the scale of the link.
   *
   * @return the comparisons on the scale of the link
   */
  public MeanComparisons comparisons() {
    return comparisons;
  }

  /**
   * All pairs.
   *
   * @return all pairs
   */
  public List<ResponsePair> pairs() {
    return pairs;
  }

  /**
   * One pair, in the order in which it was compared.
   *
   * @param one label of a mean
   * @param other label of another mean
   * @return the pair
   * @throws InputProblem if the two were not compared
   */
  public ResponsePair pair(String one, String other) {
    var both = new HashSet<>(List.of(one, other));
    return pairs.stream()
        .filter(each -> both.equals(Set.of(each.pair().first(), each.pair().second())))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the pair " + one + " and " + other)
                    .expected("two of the compared means " + comparisons.means().labels())
                    .because("means without a finite estimate are not compared by their errors")
                    .mend("take likelihoodRatio for these"));
  }

  /**
   * Letters of the means.
   *
   * @param order which mean gets the letter a
   * @return the letters of the compared means
   */
  public CompactLetters letters(LetterOrder order) {
    return comparisons.letters(order);
  }

  @Override
  public String toString() {
    return comparisons.method().words()
        + ", level "
        + comparisons.level()
        + "\n"
        + pairs.stream().map(each -> "  " + each).collect(Collectors.joining("\n"));
  }
}
