/**
 * The analysis of one trial, from the values of its plots to the printed page: transformations,
 * analysis of variance with strata, generalised linear and rank routes, checks of assumptions,
 * means with limits and letters, and what the trial could have shown.
 */
package agro.trial.analysis;
