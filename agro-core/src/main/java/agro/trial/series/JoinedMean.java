package agro.trial.series;

import java.util.OptionalDouble;

/**
 * A mean of a treatment with its letters.
 *
 * @param treatment the treatment
 * @param mean its mean
 * @param standardError standard error of the mean, if it has one
 * @param plots number of plots behind it
 * @param letters means that share a letter were not found to differ
 */
public record JoinedMean(
    String treatment, double mean, OptionalDouble standardError, int plots, String letters) {}
