package agro.development;

import agro.report.InputProblem;

/**
 * How long a part of life took at a constant temperature.
 *
 * @param celsius temperature in °C
 * @param days mean duration in days, above 0
 */
public record ObservedDuration(double celsius, double days) {

  /**
   * Checks the figures.
   *
   * @throws InputProblem when the duration is not above zero or a figure is not finite
   */
  public ObservedDuration {
    if (!(Double.isFinite(celsius) && Double.isFinite(days) && days > 0)) {
      throw InputProblem.of("a duration of " + days + " days at " + celsius + " °C")
          .expected("a finite temperature and a duration above 0 days")
          .because("development takes time")
          .mend("leave temperatures out at which nothing developed");
    }
  }
}
