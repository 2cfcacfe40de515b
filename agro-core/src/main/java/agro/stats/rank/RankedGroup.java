package agro.stats.rank;

/**
 * One group or treatment in a rank test.
 *
 * @param label its name
 * @param n number of values
 * @param rankSum sum of the ranks of its values; for blocks of unequal size the sum of its weighted
 *     deviations from the middle rank
 * @param meanRank rank sum divided by the number of values
 */
public record RankedGroup(String label, int n, double rankSum, double meanRank) {}
