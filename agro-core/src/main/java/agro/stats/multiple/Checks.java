package agro.stats.multiple;

import agro.report.InputProblem;

/** Checks of arguments that several classes take. */
final class Checks {

  private static final double FEWEST_DEGREES = 0.1;

  private Checks() {}

  static double degreesOfFreedom(double df) {
    if (!(df >= FEWEST_DEGREES)) {
      throw InputProblem.of("Degrees of freedom of the error: " + plain(df))
          .expected("a positive number, usually 1 or more; infinity for a known variance")
          .because("without degrees of freedom nothing is known about the error")
          .mend("use at least two replicates, or give the error of the whole analysis");
    }
    return df;
  }

  static double number(double value, String what) {
    if (Double.isNaN(value)) {
      throw InputProblem.of("The " + what + " is not a number")
          .expected("a number")
          .because("a chance cannot be given for it")
          .mend("look where the value was computed; 0/0 comes from a variance of zero");
    }
    return value;
  }

  static double chance(double p) {
    if (!(p >= 0 && p <= 1)) {
      throw InputProblem.of("A chance of " + plain(p))
          .expected("a number from 0 to 1")
          .because("chances lie between 0 and 1")
          .mend("give 0.05 for five per cent");
    }
    return p;
  }

  static double level(double alpha) {
    if (!(alpha > 0 && alpha < 1)) {
      throw InputProblem.of("A level of significance of " + plain(alpha))
          .expected("a number between 0 and 1, usually 0.05")
          .because("at 0 nothing and at 1 everything differs")
          .mend("give 0.05 for five per cent");
    }
    return alpha;
  }

  /** A number without a needless fraction. */
  static String plain(double number) {
    if (Double.isInfinite(number)) {
      return number > 0 ? "infinite" : "-infinite";
    }
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? Long.toString((long) number)
        : Double.toString(number);
  }
}
