package agro.stats.multiple;

/** In which direction a difference from a control counts. */
public enum Alternative {
  /** Larger or smaller. */
  TWO_SIDED,
  /** Larger than the control only. */
  LARGER,
  /** Smaller than the control only. */
  SMALLER
}
