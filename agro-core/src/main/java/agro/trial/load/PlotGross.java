package agro.trial.load;

/**
 * Value of what a plot yielded.
 *
 * @param plot name of the plot
 * @param block its block
 * @param treatment its treatment
 * @param grossPerHectare money for a hectare, before costs
 */
public record PlotGross(String plot, String block, String treatment, double grossPerHectare) {}
