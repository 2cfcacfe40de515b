package agro.stats.rank;

import agro.stats.TestSentence;

/**
 * Comparison of two groups.
 *
 * @param first name of the first group
 * @param second name of the second group
 * @param difference second minus first: of mean ranks, rank sums or means, as the method says
 * @param standardError standard error of the difference
 * @param statistic difference divided by its standard error
 * @param degreesOfFreedom those of the standard error; infinite for a normal statistic
 * @param pValue two-sided chance before adjustment
 * @param adjustedPValue two-sided chance after adjustment for all pairs
 */
public record RankPair(
    String first,
    String second,
    double difference,
    double standardError,
    double statistic,
    double degreesOfFreedom,
    double pValue,
    double adjustedPValue) {

  RankPair adjustedTo(double adjusted) {
    return new RankPair(
        first, second, difference, standardError, statistic, degreesOfFreedom, pValue, adjusted);
  }

  @Override
  public String toString() {
    return second + " - " + first + ": " + TestSentence.chance(adjustedPValue);
  }
}
