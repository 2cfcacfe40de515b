/**
 * Checks of what an analysis of variance assumes: normal residuals, equal variances, effects that
 * add up, and no single plot that stands far out. Such checks are looked at together with the
 * residuals; none of them is a licence or a prohibition by itself.
 */
package agro.stats.assumption;
