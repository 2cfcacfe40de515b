package agro.trial.layout;

/** What the map and the sheet for the field tell of the treatments. */
public enum Blinding {
  /** The names of the treatments. */
  OPEN,
  /** A code for each treatment; the key is a page of its own. */
  TREATMENT_CODES,
  /** Numbers of plots only; the key is a page of its own. */
  PLOT_NUMBERS
}
