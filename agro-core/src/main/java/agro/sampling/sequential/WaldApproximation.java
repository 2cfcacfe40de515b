package agro.sampling.sequential;

/**
 * Wald's approximate properties of a plan at one mean.
 *
 * @param h parameter of the operating characteristic
 * @param mean mean count for each unit
 * @param chanceLow chance of calling the field low
 * @param meanUnits mean number of units looked at
 */
public record WaldApproximation(double h, double mean, double chanceLow, double meanUnits) {}
