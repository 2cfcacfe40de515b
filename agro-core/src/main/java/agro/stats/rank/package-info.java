/**
 * Comparisons of groups that rest on ranks, and Welch's comparison of means with unequal variances,
 * with the pairwise comparisons that follow them.
 */
package agro.stats.rank;
