/**
 * Pests over time and what they cost in a trial: insect-days and areas under progress curves plot
 * by plot, the line of yield on them, and the value of graded yields against the cost of
 * treatments.
 */
package agro.trial.load;
