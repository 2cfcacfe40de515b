/**
 * Generalised linear models: means that follow a linear predictor through a link, with the variance
 * that belongs to the distribution.
 */
package agro.stats.glm;
