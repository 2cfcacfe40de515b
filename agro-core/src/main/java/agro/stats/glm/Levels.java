package agro.stats.glm;

import agro.report.InputProblem;

/** Confidence levels. */
final class Levels {

  private Levels() {}

  static double check(double level) {
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("a confidence level of " + level)
          .expected("a share between 0 and 1, such as 0.95")
          .because("it is the share of intervals that hold the true value")
          .mend("give 0.95 for 95 %");
    }
    return level;
  }
}
