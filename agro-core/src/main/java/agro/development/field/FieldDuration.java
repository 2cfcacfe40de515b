package agro.development.field;

import agro.report.InputProblem;

/**
 * One season or site: how long it took from the start to the event, and how warm it was.
 *
 * @param label season or site
 * @param days days from the start to the event, above 0
 * @param meanCelsius mean temperature of these days in °C
 */
public record FieldDuration(String label, double days, double meanCelsius) {

  /**
   * Checks the figures.
   *
   * @throws InputProblem when the duration is not above zero or a figure is not finite
   */
  public FieldDuration {
    if (!(Double.isFinite(days) && days > 0 && Double.isFinite(meanCelsius))) {
      throw InputProblem.of(label + ": " + days + " days at a mean of " + meanCelsius + " °C")
          .expected("a duration above 0 days and a finite mean temperature")
          .because("the base temperature is sought from both")
          .mend("leave seasons out in which the event was not seen");
    }
  }

  /**
   * Sum of the daily mean temperatures, d T.
   *
   * @return °C·d above 0 °C
   */
  double warmthSum() {
    return days * meanCelsius;
  }
}
