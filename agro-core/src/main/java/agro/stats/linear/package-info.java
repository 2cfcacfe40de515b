/**
 * Linear models of designed trials: factors and terms, least squares, analysis of variance with and
 * without strata, contrasts and marginal means.
 */
package agro.stats.linear;
