package agro.course.sheet;

import agro.report.InputProblem;
import agro.stats.NormalQuantile;
import agro.stats.NormalTail;

/**
 * A straight line of probits on the logarithm of the dose: Y = a + b x with x = log10 dose and
 * probit = normal deviate + 5, so that half of the animals die at Y = 5.
 *
 * @param intercept a, in probits
 * @param slope b, probits for each tenfold dose
 */
public record ProbitLine(double intercept, double slope) {

  /** Probit of one half. */
  public static final double HALF = 5;

  /**
   * Checks the numbers.
   *
   * @throws InputProblem when they are not finite
   */
  public ProbitLine {
    if (!Double.isFinite(intercept) || !Double.isFinite(slope)) {
      throw InputProblem.of("a line with intercept " + intercept + " and slope " + slope)
          .expected("two finite numbers")
          .because("no line can be drawn otherwise")
          .mend("look for a dose whose logarithm is missing");
    }
  }

  /**
   * The line through two points read off log-probability paper.
   *
   * @param oneDose a dose, above 0
   * @param onePercent per cent killed by it, between 0 and 100
   * @param otherDose another dose, above 0
   * @param otherPercent per cent killed by that, between 0 and 100
   * @return the line
   * @throws InputProblem when a dose or per cent is out of range, or the doses are equal
   */
  public static ProbitLine through(
      double oneDose, double onePercent, double otherDose, double otherPercent) {
    double x = logDose(oneDose);
    double run = logDose(otherDose) - x;
    if (run == 0) {
      throw InputProblem.of("two points at a dose of " + oneDose)
          .expected("two different doses")
          .because("one place of the axis makes no line")
          .mend("read the line at two doses that lie far apart");
    }
    double slope = (probit(otherPercent) - probit(onePercent)) / run;
    return new ProbitLine(probit(onePercent) - slope * x, slope);
  }

  /**
   * Probit of a share.
   *
   * @param percent per cent, between 0 and 100, both excluded
   * @return normal deviate + 5
   * @throws InputProblem for 0, 100 and what lies outside
   */
  public static double probit(double percent) {
    if (!(percent > 0 && percent < 100)) {
      throw InputProblem.of("the probit of " + percent + " %")
          .expected("more than 0 % and less than 100 %")
          .because("the probits of none and of all lie at infinity")
          .mend("leave such a dose out of the first line; working probits take it in later");
    }
    return percent <= 50
        ? HALF + NormalQuantile.of(percent / 100)
        : HALF - NormalQuantile.of((100 - percent) / 100);
  }

  /**
   * The share that belongs to a probit.
   *
   * @param probit any number
   * @return per cent
   */
  public static double percent(double probit) {
    return 100 * NormalTail.below(probit - HALF);
  }

  /**
   * Logarithm of a dose to base 10.
   *
   * @param dose above 0
   * @return the logarithm
   * @throws InputProblem when the dose is not above 0
   */
  public static double logDose(double dose) {
    if (!(dose > 0 && Double.isFinite(dose))) {
      throw InputProblem.of("a dose of " + dose)
          .expected("a finite number above 0")
          .because("only numbers above 0 have a logarithm")
          .mend("give doses themselves and not their logarithms; a control has no place here");
    }
    return Math.log10(dose);
  }

  /**
   * Height of the line.
   *
   * @param logDose x
   * @return Y, in probits
   */
  public double at(double logDose) {
    return intercept + slope * logDose;
  }

  /**
   * Where the line reaches a share.
   *
   * @param percent per cent, between 0 and 100
   * @return logarithm of the dose; not finite for a level line
   * @throws InputProblem for 0 and 100
   */
  public double logDoseFor(double percent) {
    return (probit(percent) - intercept) / slope;
  }
}
