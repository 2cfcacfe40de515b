package agro.course.sheet;

import agro.report.InputProblem;

/**
 * A point on log-probability paper.
 *
 * @param dose above 0
 * @param percent 0 to 100; none and all are shown as arrows at the edge
 */
public record PaperPoint(double dose, double percent) {

  /**
   * Checks the point.
   *
   * @throws InputProblem when dose or per cent are out of range
   */
  public PaperPoint {
    ProbitLine.logDose(dose);
    if (!(percent >= 0 && percent <= 100)) {
      throw InputProblem.of("a point at " + percent + " %")
          .expected("0 to 100 %")
          .because("a share of animals lies between none and all")
          .mend("give per cent, and after Abbott's correction 0 for what comes out below 0");
    }
  }
}
