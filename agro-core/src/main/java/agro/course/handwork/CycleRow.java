package agro.course.handwork;

import agro.course.sheet.ProbitLine;
import agro.course.sheet.WorkingProbit;

/**
 * One dose in one cycle.
 *
 * @param group the dose as it was written down first
 * @param expected Y, probit on the line of the cycle before
 * @param coefficient w, weighting coefficient of one animal
 * @param weight n w
 * @param least working probit if none had died, Y − P / Z
 * @param range 1 / Z
 * @param most working probit if all had died, Y + Q / Z
 * @param working y, working probit
 */
public record CycleRow(
    ProbitGroup group,
    double expected,
    double coefficient,
    double weight,
    double least,
    double range,
    double most,
    double working) {

  /** Deviate beyond which an animal carries no weight that a computer can hold. */
  private static final double FAR = 30;

  static CycleRow of(
      ProbitGroup group,
      ProbitLine line,
      double natural,
      ControlWeights weights,
      HandRounding rounding) {
    double expected = rounding.expected(line.at(group.logDose()));
    var at = WorkingProbit.at(expected);
    if (Math.abs(expected - ProbitLine.HALF) > FAR) {
      return new CycleRow(group, expected, 0, 0, expected, 0, expected, expected);
    }
    double coefficient = rounding.weight(weights.weight(at, natural));
    double least = rounding.table(at.least());
    double range = rounding.table(at.range());
    double most = rounding.table(at.most());
    double share = group.corrected() / 100;
    double working = share <= 0.5 ? least + share * range : most - (1 - share) * range;
    return new CycleRow(
        group,
        expected,
        coefficient,
        rounding.total(group.exposed() * coefficient),
        least,
        range,
        most,
        rounding.working(working));
  }

  /**
   * Weight times log dose.
   *
   * @return n w x
   */
  public double weightX() {
    return weight * group.logDose();
  }

  /**
   * Weight times working probit.
   *
   * @return n w y
   */
  public double weightY() {
    return weight * working;
  }
}
