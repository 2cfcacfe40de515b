package agro.development.field;

/**
 * An interval of a base temperature from resampled seasons, by studentised bootstrap: the quantiles
 * of (x* − x) / s*, s the jackknife standard error, turned round the estimate.
 *
 * @param level level, such as 0.9
 * @param low lower limit in °C
 * @param high upper limit in °C
 * @param resamples resamples drawn
 * @param failed resamples that gave no base temperature and were left out
 */
public record BaseInterval(double level, double low, double high, int resamples, int failed) {}
