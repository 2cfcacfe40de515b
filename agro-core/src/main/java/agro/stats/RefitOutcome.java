package agro.stats;

/** How one refit of a bootstrap ended. */
public enum RefitOutcome {
  /** Converged inside its bounds. */
  GOOD,
  /** Converged with a parameter on a bound; its values count all the same. */
  ON_BOUNDARY,
  /** Did not converge, or could not be made; its values are left out. */
  FAILED
}
