package agro.generation;

/**
 * An interval from refits.
 *
 * @param of what it is an interval of
 * @param unit its unit, or empty
 * @param estimate the estimate of the fit itself
 * @param low lower limit
 * @param high upper limit
 */
public record RefitLimits(String of, String unit, double estimate, double low, double high) {}
