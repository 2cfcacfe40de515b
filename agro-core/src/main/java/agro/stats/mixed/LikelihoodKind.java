package agro.stats.mixed;

/** What is maximised to estimate variances. */
public enum LikelihoodKind {
  /**
   * Restricted likelihood: of what is left after the fixed effects. In balanced designs the
   * estimates are those of the analysis of variance.
   */
  RESTRICTED,
  /**
   * Full likelihood: to compare models with different fixed effects. Variances come out too small.
   */
  FULL
}
