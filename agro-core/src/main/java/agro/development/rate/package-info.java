/**
 * Rate of development as a function of constant temperature: the models of the literature, their
 * thresholds and optima, and their fits to rearing data with intervals.
 */
package agro.development.rate;
