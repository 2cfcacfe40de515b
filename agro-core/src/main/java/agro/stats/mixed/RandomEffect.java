package agro.stats.mixed;

/**
 * Predicted effect of one level of a random term (best linear unbiased prediction).
 *
 * @param level name of the level
 * @param effect predicted deviation from the fixed part, shrunk towards zero
 * @param standardError standard error of prediction, the variances taken as known
 */
public record RandomEffect(String level, double effect, double standardError) {}
