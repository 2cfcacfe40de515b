package agro.trial.series;

import java.time.LocalDate;

/**
 * Scatter of plots on one date.
 *
 * @param date the day
 * @param errorVariance mean square of the error of that day, zero where plots of a treatment are
 *     equal
 * @param degreesOfFreedom its degrees of freedom
 */
public record DateSpread(LocalDate date, double errorVariance, int degreesOfFreedom) {}
