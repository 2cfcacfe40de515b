/**
 * Whether treating pays: injury levels and thresholds with units of money, the uncertainty of both,
 * pest-days and yield loss, and what is counted when a count is held against a threshold.
 */
package agro.sampling.injury;
