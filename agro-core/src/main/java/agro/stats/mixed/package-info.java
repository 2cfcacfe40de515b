/**
 * Linear mixed models: fixed effects of treatments, random effects of sites, blocks and whole
 * plots, and repeated dates, by restricted or full maximum likelihood.
 */
package agro.stats.mixed;
