/**
 * Field trials: the plot table as it was written down, the design that it shows, findings where the
 * two disagree, and corrections that keep the old value. Plants within a plot are sub-samples of
 * it; the plot is the replicate.
 */
package agro.trial;
