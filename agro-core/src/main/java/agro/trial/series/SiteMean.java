package agro.trial.series;

import java.util.OptionalDouble;

/**
 * Mean of a treatment at one site: a point of the figure of means by site.
 *
 * @param site site and year in words
 * @param treatment the treatment
 * @param mean its mean, adjusted for blocks that lack a plot
 * @param standardError standard error from the scatter of the plots of this site alone, if known
 * @param plots number of plots
 */
public record SiteMean(
    String site, String treatment, double mean, OptionalDouble standardError, int plots) {}
