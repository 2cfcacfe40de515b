package agro.generation;

/**
 * The half-life of lures as the counts tell it.
 *
 * @param halfLifeDays the estimate in days; at 200 the lures do not show that they fade
 * @param lowDays lower limit of the 90 % profile interval in days, not below 2
 * @param highDays upper limit in days; infinite when lures that never fade lie within it
 * @param gain log likelihood above that of lures that do not fade
 */
public record LureEstimate(double halfLifeDays, double lowDays, double highDays, double gain) {}
