/**
 * Comparing several means: the studentised range, Dunnett's distribution, adjusted p-values,
 * pairwise comparisons with simultaneous limits, and compact letters.
 *
 * <p>Numbers in, numbers out: labels are plain text, responses carry no units.
 */
package agro.stats.multiple;
