package agro.trial.bioassay;

import agro.report.InputProblem;

/** The question for the end point. */
final class EndPoints {

  private EndPoints() {}

  static InputProblem open(String read) {
    return InputProblem.of(read)
        .expected("the end point DEAD or DEAD_OR_MORIBUND")
        .because("the lethal dose depends on whether moribund animals count as responding")
        .mend("state the end point that was fixed before the assay");
  }

  static EndPoint stated(EndPoint endPoint) {
    if (endPoint == null) {
      throw open("no end point");
    }
    return endPoint;
  }
}
