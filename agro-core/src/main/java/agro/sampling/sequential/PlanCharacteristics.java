package agro.sampling.sequential;

/**
 * What a plan does in fields of one mean.
 *
 * @param mean mean count for each unit
 * @param chanceLow chance of calling the field low (the operating characteristic)
 * @param chanceHigh chance of calling it high
 * @param chanceUndecided chance of no decision at the end
 * @param meanUnits mean number of units looked at (the average sample number)
 * @param deviationOfUnits standard deviation of the number of units
 * @param usualMostUnits number of units that nine plans in ten do not go beyond
 */
public record PlanCharacteristics(
    double mean,
    double chanceLow,
    double chanceHigh,
    double chanceUndecided,
    double meanUnits,
    double deviationOfUnits,
    int usualMostUnits) {

  /**
   * The same properties under another mean, as when a share of units stands for a mean count.
   *
   * @param otherMean the mean to show
   * @return new properties
   */
  PlanCharacteristics at(double otherMean) {
    return new PlanCharacteristics(
        otherMean,
        chanceLow,
        chanceHigh,
        chanceUndecided,
        meanUnits,
        deviationOfUnits,
        usualMostUnits);
  }
}
