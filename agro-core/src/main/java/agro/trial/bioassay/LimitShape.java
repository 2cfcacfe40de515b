package agro.trial.bioassay;

/** The form of a confidence region for a dose. */
public enum LimitShape {
  /** Between a lower and an upper limit. */
  BOUNDED,
  /** From a lower limit up without end. */
  NO_UPPER_LIMIT,
  /** From nothing up to an upper limit. */
  NO_LOWER_LIMIT,
  /** Below one dose or above another; only the doses between the two are refuted. */
  OUTSIDE,
  /** No dose at all is refuted. */
  EVERYWHERE
}
