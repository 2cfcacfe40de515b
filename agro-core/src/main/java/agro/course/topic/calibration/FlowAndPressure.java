package agro.course.topic.calibration;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.sprayer.NozzleCurve;
import agro.dose.sprayer.NozzleFlow;
import agro.units.FlowRate;
import agro.units.Pressure;
import agro.units.PressureUnit;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The flow of a nozzle at another pressure, or the pressure for another flow. */
final class FlowAndPressure implements ExerciseType {

  private static final double NEAR = 0.15;
  private static final double LOWEST = 1;
  private static final double HIGHEST = 6;

  @Override
  public String code() {
    return "calibration-pressure";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.LINEAR_PRESSURE,
        CalibrationMistake.SQUARE_FOR_ROOT,
        CalibrationMistake.ROOT_FOR_SQUARE,
        CalibrationMistake.RATIO_UPSIDE_DOWN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var flow = draw.sensible(new FlowRate(0.5), new FlowRate(1.8), units.flow(), 2);
    var first = pressure(draw, units);
    var second = pressure(draw, units);
    while (Math.abs(second.ratioTo(first) - 1) < NEAR) {
      second = pressure(draw, units);
    }
    double change = draw.whole(2, 6) * 5;
    boolean more = isMore(draw.whole(0, 1) == 1, change / 100, second);
    var words = context.words().in(FlowAndPressure.class, "calibration");
    var curve = new NozzleCurve(new NozzleFlow(flow), first);
    var givens =
        Givens.none()
            .withQuantity("flow", flow)
            .withQuantity("pressure", first)
            .withQuantity("other", second);
    var other = second;
    var body =
        ExerciseBody.titled(words.say("pressure.title"))
            .story(
                words.say(
                    "pressure.story",
                    "flow",
                    words.exact(flow, units.flow()),
                    "pressure",
                    words.exact(first, units.pressure())))
            .part(
                words.say(
                    "pressure.question.flow",
                    "pressure",
                    words.exact(second, units.pressure()),
                    "unit",
                    units.flow().symbol()),
                earlier -> flow(curve, other, context));
    if (difficulty == Difficulty.ROUTINE) {
      givens = givens.withNumber("change", more ? change : -change);
      double factor = 1 + (more ? change : -change) / 100;
      body.part(
          words.say(
              more ? "pressure.question.more" : "pressure.question.less",
              "change",
              words.exact(change),
              "unit",
              units.pressure().symbol()),
          earlier -> {
            var own = new NozzleFlow(earlier.quantity(0, FlowRate.class));
            return changed(new NozzleCurve(own, other), factor, context);
          });
    }
    return body.givens(givens).build();
  }

  /** The direction wished for, unless the pressure would leave what nozzles are made for. */
  private static boolean isMore(boolean wished, double change, Pressure from) {
    double bar = from.in(PressureUnit.BAR);
    boolean tooHigh = bar * (1 + change) * (1 + change) > HIGHEST;
    boolean tooLow = bar * (1 - change) * (1 - change) < LOWEST;
    return wished ? !tooHigh : tooLow;
  }

  private static Pressure pressure(ExerciseDraw draw, CalibrationUnits units) {
    double number = units.gallons() ? draw.step(20, 60, 5) : draw.step(1.5, 5, 0.25);
    return Pressure.of(number, units.pressure());
  }

  private static SolvedPart flow(NozzleCurve curve, Pressure other, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(FlowAndPressure.class, "calibration");
    var found = curve.flowAt(other);
    var known = curve.flow().flow();
    double ratio = other.ratioTo(curve.pressure());
    var slips =
        List.of(
            slip(CalibrationMistake.LINEAR_PRESSURE, known.times(ratio), units),
            slip(CalibrationMistake.SQUARE_FOR_ROOT, known.times(ratio * ratio), units),
            slip(CalibrationMistake.RATIO_UPSIDE_DOWN, known.times(Math.sqrt(1 / ratio)), units));
    var working =
        Working.of(words.say("pressure.title"))
            .step(
                words.say("pressure.step.flow"),
                words.say("pressure.formula.flow"),
                words.exact(known, units.flow())
                    + " × √("
                    + words.exact(other, units.pressure())
                    + " / "
                    + words.exact(curve.pressure(), units.pressure())
                    + ")",
                words.show(found, units.flow()));
    return new SolvedPart(MeasuredAnswer.of(found, units.flow()), working, slips);
  }

  private static TypicalSlip slip(
      CalibrationMistake mistake, FlowRate flow, CalibrationUnits units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(flow, units.flow()));
  }

  private static SolvedPart changed(NozzleCurve curve, double factor, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(FlowAndPressure.class, "calibration");
    var known = curve.flow().flow();
    var wanted = known.times(factor);
    var found = curve.pressureFor(new NozzleFlow(wanted));
    var pressure = curve.pressure();
    var slips =
        List.of(
            pressureSlip(CalibrationMistake.LINEAR_PRESSURE, pressure.times(factor), units),
            pressureSlip(
                CalibrationMistake.ROOT_FOR_SQUARE, pressure.times(Math.sqrt(factor)), units),
            pressureSlip(
                CalibrationMistake.RATIO_UPSIDE_DOWN,
                pressure.times(1 / (factor * factor)),
                units));
    var working =
        Working.of(words.say("pressure.title"))
            .step(
                words.say("pressure.step.wanted"),
                "",
                words.show(known, units.flow()) + " × " + words.exact(factor),
                words.show(wanted, units.flow()))
            .step(
                words.say("pressure.step.pressure"),
                words.say("pressure.formula.pressure"),
                words.exact(pressure, units.pressure())
                    + " × ("
                    + words.show(wanted, units.flow())
                    + " / "
                    + words.show(known, units.flow())
                    + ")²",
                words.show(found, units.pressure()));
    return new SolvedPart(MeasuredAnswer.of(found, units.pressure()), working, slips);
  }

  static TypicalSlip pressureSlip(
      CalibrationMistake mistake, Pressure pressure, CalibrationUnits units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(pressure, units.pressure()));
  }
}
