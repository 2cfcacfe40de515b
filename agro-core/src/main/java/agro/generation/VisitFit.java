package agro.generation;

/**
 * One visit as the fit sees it, for figures and for judging the fit.
 *
 * @param year season
 * @param fromDegreeDaysC degree-days at the start of the interval, in °C·d
 * @param toDegreeDaysC degree-days at its end, in °C·d
 * @param nightsOpen open trap-nights
 * @param count adults caught
 * @param full whether the count is a least count because the trap was full
 * @param mean mean catch by the fitted curve
 * @param residual Pearson residual, (count - mean) / standard deviation
 * @param quantileResidual randomised quantile residual: where the count lies in its fitted
 *     distribution, as a standard normal value; it has no skew when the fit is right
 * @param site name of the site where several are fitted at once; otherwise empty
 */
public record VisitFit(
    int year,
    double fromDegreeDaysC,
    double toDegreeDaysC,
    double nightsOpen,
    int count,
    boolean full,
    double mean,
    double residual,
    double quantileResidual,
    String site) {

  /**
   * A visit of one place without its quantile residual, which is NaN.
   *
   * @param year season
   * @param fromDegreeDaysC degree-days at the start of the interval, in °C·d
   * @param toDegreeDaysC degree-days at its end, in °C·d
   * @param nightsOpen open trap-nights
   * @param count adults caught
   * @param full whether the count is a least count because the trap was full
   * @param mean mean catch by the fitted curve
   * @param residual Pearson residual
   */
  public VisitFit(
      int year,
      double fromDegreeDaysC,
      double toDegreeDaysC,
      double nightsOpen,
      int count,
      boolean full,
      double mean,
      double residual) {
    this(
        year,
        fromDegreeDaysC,
        toDegreeDaysC,
        nightsOpen,
        count,
        full,
        mean,
        residual,
        Double.NaN,
        "");
  }

  /**
   * Catch per open trap-night.
   *
   * @return adults per night
   */
  public double catchPerNight() {
    return count / nightsOpen;
  }

  /**
   * Fitted mean catch per open trap-night.
   *
   * @return adults per night
   */
  public double meanPerNight() {
    return mean / nightsOpen;
  }

  /**
   * Year, and site where there are several.
   *
   * @return the name of the season in print
   */
  public String label() {
    return site.isEmpty() ? Integer.toString(year) : year + " at " + site;
  }
}
