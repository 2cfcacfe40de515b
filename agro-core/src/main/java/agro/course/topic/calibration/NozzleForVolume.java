package agro.course.topic.calibration;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.SprayVolume;
import agro.dose.sprayer.FlowBasis;
import agro.dose.sprayer.NozzleFlow;
import agro.dose.sprayer.NozzleSize;
import agro.dose.sprayer.RequiredSetting;
import agro.dose.sprayer.SprayLayout;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Pressure;
import agro.units.Speed;
import agro.units.VolumePerArea;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The flow of a nozzle for a wanted volume, the nozzle that comes nearest, and its pressure. */
final class NozzleForVolume implements ExerciseType {

  /** Sizes whose colours were read in print. */
  private static final List<NozzleSize> SIZES =
      List.of(
          NozzleSize.SIZE_01,
          NozzleSize.SIZE_015,
          NozzleSize.SIZE_02,
          NozzleSize.SIZE_025,
          NozzleSize.SIZE_03,
          NozzleSize.SIZE_04,
          NozzleSize.SIZE_05,
          NozzleSize.SIZE_06,
          NozzleSize.SIZE_08);

  private static final double FAR = 0.12;

  private record Plan(
      VolumePerArea volume, Speed speed, int nozzles, Length spacing, Pressure pressure) {

    FlowRate nozzleFlow(CalibrationUnits units) {
      return RequiredSetting.flow(
              SprayLayout.boom(nozzles, spacing),
              new SprayVolume(volume),
              speed,
              units.spray(units.spacing()))
          .nozzle()
          .flow();
    }
  }

  @Override
  public String code() {
    return "calibration-nozzle";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.SPEED_PER_SECOND_IN_EQUATION,
        CalibrationMistake.FLOW_OF_BOOM,
        CalibrationMistake.DIVIDED_BY_NOZZLES_TWICE,
        CalibrationMistake.PRESSURE_IGNORED,
        CalibrationMistake.LINEAR_PRESSURE,
        CalibrationMistake.ROOT_FOR_SQUARE,
        CalibrationMistake.RATIO_UPSIDE_DOWN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var plan = draw(draw, units);
    while (!fits(plan, units)) {
      plan = draw(draw, units);
    }
    var drawn = plan;
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(NozzleForVolume.class, "calibration");
    var at = words.exact(plan.pressure(), units.pressure());
    return ExerciseBody.titled(words.say("nozzle.title"))
        .story(
            words.say(
                "nozzle.story",
                "field",
                field,
                "volume",
                words.exact(plan.volume(), units.volume()),
                "speed",
                words.exact(plan.speed(), context.units().speed()),
                "nozzles",
                plan.nozzles(),
                "spacing",
                words.exact(plan.spacing(), units.spacing())))
        .story(units.givenEquation(words, units.spacing()))
        .exhibit(table(units, words))
        .givens(
            Givens.none()
                .withQuantity("volume", plan.volume())
                .withQuantity("speed", plan.speed())
                .withNumber("nozzles", plan.nozzles())
                .withQuantity("spacing", plan.spacing())
                .withQuantity("pressure", plan.pressure()))
        .part(
            words.say("nozzle.question.flow", "unit", units.flow().symbol()),
            earlier -> flow(drawn, context))
        .part(
            words.say("nozzle.question.size", "pressure", at),
            earlier -> size(earlier.quantity(0, FlowRate.class), drawn.pressure(), context))
        .part(
            words.say("nozzle.question.pressure", "unit", units.pressure().symbol()),
            earlier ->
                pressure(earlier.quantity(0, FlowRate.class), size(earlier.choice(1)), context))
        .build();
  }

  private static Plan draw(ExerciseDraw draw, CalibrationUnits units) {
    double pressure = units.gallons() ? draw.step(20, 60, 5) : draw.step(1.5, 5, 0.5);
    return new Plan(
        draw.sensible(new VolumePerArea(80), new VolumePerArea(400), units.volume(), 2),
        units.drawSpeed(draw),
        draw.whole(6, 24),
        units.drawSpacing(draw),
        Pressure.of(pressure, units.pressure()));
  }

  /** Whether a size comes near the flow and no other nearly as near. */
  private static boolean fits(Plan plan, CalibrationUnits units) {
    var wanted = plan.nozzleFlow(units);
    var off =
        SIZES.stream()
            .map(size -> Math.abs(curve(size, units).flowAt(plan.pressure()).ratioTo(wanted) - 1))
            .sorted()
            .toList();
    return off.get(0) < FAR / 2 && off.get(1) > FAR;
  }

  private static FlowBasis basis(CalibrationUnits units) {
    return units.gallons() ? FlowBasis.US_GALLONS_AT_40_PSI : FlowBasis.LITRES_AT_3_BAR;
  }

  private static agro.dose.sprayer.NozzleCurve curve(NozzleSize size, CalibrationUnits units) {
    return size.curve(basis(units));
  }

  private static NozzleSize size(String code) {
    return SIZES.stream().filter(size -> size.code().equals(code)).findFirst().orElseThrow();
  }

  private static String named(NozzleSize size, CourseWords words) {
    return size.code() + " (" + words.say("colour." + size.colour().name()) + ")";
  }

  private static Block table(CalibrationUnits units, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (var size : SIZES) {
      rows.add(
          List.of(
              Cell.text(size.code()),
              Cell.text(words.say("colour." + size.colour().name())),
              Cell.text(words.number(curve(size, units).flow().flow().in(units.flow())))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say(
                "nozzle.table",
                "pressure",
                words.exact(curve(SIZES.get(0), units).pressure(), units.pressure())),
            List.of(
                ResultTable.Column.of(words.say("nozzle.column.size")),
                ResultTable.Column.of(words.say("nozzle.column.colour")),
                ResultTable.Column.of(words.say("nozzle.column.flow"), units.flow().symbol())),
            rows));
  }

  private static SolvedPart flow(Plan plan, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var spacing = units.spacing();
    var words = context.words().in(NozzleForVolume.class, "calibration");
    var found = plan.nozzleFlow(units);
    var constant = words.number(units.constant(spacing));
    var slips =
        List.of(
            slip(
                CalibrationMistake.SPEED_PER_SECOND_IN_EQUATION,
                found.dividedBy(units.speedMixUp(plan.speed())),
                units),
            slip(CalibrationMistake.FLOW_OF_BOOM, found.times(plan.nozzles()), units),
            slip(
                CalibrationMistake.DIVIDED_BY_NOZZLES_TWICE,
                found.dividedBy(plan.nozzles()),
                units));
    var working =
        Working.of(words.say("nozzle.title"))
            .step(
                words.say("nozzle.step.flow"),
                words.say(
                    "equation.flow",
                    "constant",
                    constant,
                    "volume",
                    units.volume().symbol(),
                    "speed",
                    context.units().speed().symbol(),
                    "width",
                    spacing.symbol()),
                words.exact(plan.volume().in(units.volume()))
                    + " × "
                    + words.exact(plan.speed().in(context.units().speed()))
                    + " × "
                    + words.exact(plan.spacing().in(spacing))
                    + " / "
                    + constant,
                words.show(found, units.flow()));
    return new SolvedPart(MeasuredAnswer.of(found, units.flow()), working, slips);
  }

  private static TypicalSlip slip(
      CalibrationMistake mistake, FlowRate flow, CalibrationUnits units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(flow, units.flow()));
  }

  private static NozzleSize nearest(FlowRate wanted, Function<NozzleSize, FlowRate> flow) {
    return SIZES.stream()
        .min(
            Comparator.comparingDouble(
                size -> Math.abs(flow.apply(size).litresPerMinute() - wanted.litresPerMinute())))
        .orElseThrow();
  }

  private static SolvedPart size(FlowRate wanted, Pressure pressure, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(NozzleForVolume.class, "calibration");
    var choices =
        SIZES.stream().map(size -> new AnswerChoice(size.code(), named(size, words))).toList();
    var found = nearest(wanted, size -> curve(size, units).flowAt(pressure));
    var right = new ChoiceAnswer(choices, found.code());
    double ratio = pressure.ratioTo(curve(found, units).pressure());
    var ignored = nearest(wanted, size -> curve(size, units).flow().flow());
    var linear = nearest(wanted, size -> curve(size, units).flow().flow().times(ratio));
    var slips =
        List.of(
            new TypicalSlip(CalibrationMistake.PRESSURE_IGNORED, right.withCode(ignored.code())),
            new TypicalSlip(CalibrationMistake.LINEAR_PRESSURE, right.withCode(linear.code())));
    var nominal = wanted.dividedBy(Math.sqrt(ratio));
    var table = words.exact(curve(found, units).pressure(), units.pressure());
    var working =
        Working.of(words.say("nozzle.title"))
            .step(
                words.say("nozzle.step.nominal", "pressure", table),
                words.say("nozzle.formula.nominal"),
                words.show(wanted, units.flow())
                    + " × √("
                    + table
                    + " / "
                    + words.exact(pressure, units.pressure())
                    + ")",
                words.show(nominal, units.flow()))
            .step(
                words.say("nozzle.step.size"),
                "",
                words.show(curve(found, units).flow().flow(), units.flow()),
                named(found, words));
    return new SolvedPart(right, working, slips);
  }

  private static SolvedPart pressure(FlowRate wanted, NozzleSize size, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(NozzleForVolume.class, "calibration");
    var curve = curve(size, units);
    var found = curve.pressureFor(new NozzleFlow(wanted));
    double ratio = wanted.ratioTo(curve.flow().flow());
    var known = curve.pressure();
    var slips =
        List.of(
            FlowAndPressure.pressureSlip(
                CalibrationMistake.LINEAR_PRESSURE, known.times(ratio), units),
            FlowAndPressure.pressureSlip(
                CalibrationMistake.ROOT_FOR_SQUARE, known.times(Math.sqrt(ratio)), units),
            FlowAndPressure.pressureSlip(
                CalibrationMistake.RATIO_UPSIDE_DOWN, known.times(1 / (ratio * ratio)), units));
    var working =
        Working.of(words.say("nozzle.title"))
            .step(
                words.say("pressure.step.pressure"),
                words.say("pressure.formula.pressure"),
                words.exact(known, units.pressure())
                    + " × ("
                    + words.show(wanted, units.flow())
                    + " / "
                    + words.show(curve.flow().flow(), units.flow())
                    + ")²",
                words.show(found, units.pressure()));
    return new SolvedPart(MeasuredAnswer.of(found, units.pressure()), working, slips);
  }
}
