package agro.trial.series;

import agro.trial.TrialPlot;
import java.time.LocalDate;

/**
 * One number of one plot on one day.
 *
 * @param plot the plot
 * @param date the day
 * @param value the number
 */
public record DatedFigure(TrialPlot plot, LocalDate date, double value) {}
