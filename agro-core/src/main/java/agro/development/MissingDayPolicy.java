package agro.development;

/**
 * What a sum of degree-days does at a day without temperatures. No policy skips the day, which
 * would count it as one without development. To count filled days, fill the temperatures first:
 * they keep their origin and their error. {@link ThermalTimeBounds} gives a range instead of a sum.
 */
public enum MissingDayPolicy {
  /** Refuse to add up. */
  REFUSE,
  /** Stop at the end of the day before. */
  STOP_BEFORE
}
