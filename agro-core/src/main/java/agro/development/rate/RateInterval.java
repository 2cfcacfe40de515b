package agro.development.rate;

import agro.stats.ConfidenceLimits;

/**
 * An estimate with its limits.
 *
 * @param name what is estimated, in words
 * @param symbol its symbol
 * @param unit its unit as printed
 * @param estimate the value of the fit
 * @param limits the limits; infinite where nothing bounds them, NaN where they are not known
 * @param missing share of refits that lack the value, such as a threshold that a refit does not
 *     have; 0 for profile intervals
 */
public record RateInterval(
    String name,
    String symbol,
    String unit,
    double estimate,
    ConfidenceLimits limits,
    double missing) {}
