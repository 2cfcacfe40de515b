/**
 * More than one look at a question: trials of several sites and years together, repeated dates on
 * the same plots, and scores, whose grades have an order and no distances.
 */
package agro.trial.series;
