package agro.generation;

/**
 * Where the spread of a forecast date comes from. The causes are crossed in full: every parameter
 * outcome with every season outcome with every weather outcome. Main effects are the variances of
 * the means; what the causes do only together is the interaction.
 *
 * @param weather variance from the weather ahead, in days squared
 * @param parameters variance from what past and present counts leave open, in days squared
 * @param season variance from the scatter of the pest between seasons, in days squared
 * @param temperatures variance from the errors of known days that the place did not measure, in
 *     days squared
 * @param interaction the rest of the variance, in days squared
 */
public record SpreadSplit(
    double weather, double parameters, double season, double temperatures, double interaction) {

  /**
   * A spread without errors of the temperatures up to the day of issue.
   *
   * @param weather variance from the weather ahead, in days squared
   * @param parameters variance from what past and present counts leave open, in days squared
   * @param season variance from the scatter of the pest between seasons, in days squared
   * @param interaction the rest of the variance, in days squared
   */
  public SpreadSplit(double weather, double parameters, double season, double interaction) {
    this(weather, parameters, season, 0, interaction);
  }

  /**
   * The standard deviation of the date.
   *
   * @return days
   */
  public double standardDeviationDays() {
    return Math.sqrt(weather + parameters + season + temperatures + interaction);
  }
}
