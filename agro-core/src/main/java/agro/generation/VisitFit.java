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
 */
public record VisitFit(
    int year,
    double fromDegreeDaysC,
    double toDegreeDaysC,
    double nightsOpen,
    int count,
    boolean full,
    double mean,
    double residual) {

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
}
