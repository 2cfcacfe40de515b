package agro.stats.glm;

import agro.stats.ConfidenceLimits;

/**
 * Chance of a class or a lower one.
 *
 * @param upTo highest class that is counted
 * @param share the chance
 * @param limits limits of 95 %, transformed from the scale of the link; 0 to 1 where none are known
 */
public record CumulativeShare(String upTo, double share, ConfidenceLimits limits) {}
