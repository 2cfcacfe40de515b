package agro.course.topic.degreeday;

import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.course.sheet.SineTable;
import agro.development.DegreeDayMethod;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * The area of a sine day above a threshold: by the formula, or by the printed table where there is
 * no computer.
 *
 * @param scale unit and words
 * @param min lowest temperature
 * @param max highest temperature
 * @param exam whether the printed table is used
 */
record SineSteps(DegreeScale scale, double min, double max, boolean exam) {

  double mean() {
    return DegreeScale.mean(min, max);
  }

  double half() {
    return (max - min) / 2;
  }

  /** The argument of the table and of the arcsine. */
  double argument(double threshold) {
    return (threshold - mean()) / half();
  }

  /** Area above the threshold that lies so many half ranges above the mean. */
  double area(double argument) {
    return exam
        ? half() * SineTable.of().lookUp(argument)
        : scale.areaAbove(DegreeDayMethod.SINGLE_SINE, min, max, mean() + argument * half());
  }

  /** What a calculator in degrees gives: the angle beside π/2 is not in radians. */
  double areaInDegrees(double argument) {
    double angle = Math.asin(argument);
    return half() * (Math.cos(angle) - argument * (Math.PI / 2 - Math.toDegrees(angle))) / Math.PI;
  }

  /** The area with its steps; further slips can be given. */
  SolvedPart solve(String title, double argument, TypicalSlip... more) {
    double right = area(argument);
    var slips = new ArrayList<TypicalSlip>();
    slips.add(scale.slip(DegreeDayMistake.HALF_RANGE_FORGOTTEN, right / half()));
    slips.add(scale.slip(DegreeDayMistake.SIGN_TURNED, area(-argument)));
    // Outside −1 to 1 a student's own argument has no angle.
    if (!exam && Math.abs(argument) < 1) {
      slips.add(scale.slip(DegreeDayMistake.ARCSINE_IN_DEGREES, areaInDegrees(argument)));
    }
    slips.addAll(List.of(more));
    var working = Working.of(title);
    return new SolvedPart(
        scale.answer(right),
        exam ? byTable(working, argument) : byFormula(working, argument),
        slips);
  }

  private Working byTable(Working working, double argument) {
    double factor = SineTable.of().lookUp(argument);
    var looked =
        scale.step(
            working,
            "sine.table",
            "f(" + scale.words().number(argument) + ")",
            scale.words().number(factor, 4));
    return scale.step(
        looked,
        "sine.factor",
        scale.term(half()) + " × " + scale.words().number(factor, 4),
        scale.sumText(area(argument)));
  }

  private Working byFormula(Working working, double argument) {
    if (Math.abs(argument) >= 1) {
      return scale.step(working, "sine.whole", "", scale.sumText(area(argument)));
    }
    var words = scale.words();
    double angle = Math.asin(argument);
    var withAngle =
        scale.step(
            working,
            "sine.angle",
            "arcsin(" + words.number(argument) + ")",
            words.number(angle, 4) + " rad");
    return scale.step(
        withAngle,
        "sine.area",
        scale.term(half())
            + " × ["
            + words.number(Math.cos(angle), 4)
            + " − "
            + scale.term(argument)
            + " × "
            + words.number(Math.PI / 2 - angle, 4)
            + "] / π",
        scale.sumText(area(argument)));
  }
}
