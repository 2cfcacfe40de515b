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
import agro.dose.SprayVolume;
import agro.dose.sprayer.LiquidDensity;
import agro.source.Reference;
import agro.units.VolumePerArea;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The volume of water for which nozzles are chosen when the liquid is heavier. */
final class HeavyLiquid implements ExerciseType {

  @Override
  public String code() {
    return "calibration-density";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.ROOT_FORGOTTEN,
        CalibrationMistake.DIVIDED_BY_ROOT,
        CalibrationMistake.DENSITY_IGNORED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    double gravity = draw.step(1.12, 1.4, 0.01);
    var wanted = draw.sensible(new VolumePerArea(100), new VolumePerArea(400), units.volume(), 2);
    var field = draw.oneOf(context.setting().fields());
    var liquid = LiquidDensity.ofSpecificGravity(gravity);
    var words = context.words().in(HeavyLiquid.class, "calibration");
    return ExerciseBody.titled(words.say("density.title"))
        .story(
            words.say(
                "density.story",
                "field",
                field,
                "gravity",
                words.exact(gravity),
                "volume",
                words.exact(wanted, units.volume())))
        .givens(Givens.none().withNumber("gravity", gravity).withQuantity("volume", wanted))
        .part(
            words.say("density.question", "unit", units.volume().symbol()),
            earlier -> solve(gravity, wanted, context))
        .source(source(liquid, wanted))
        .build();
  }

  private static Reference source(LiquidDensity liquid, VolumePerArea wanted) {
    return liquid.correct(new SprayVolume(wanted)).working().references().get(0);
  }

  private static SolvedPart solve(double gravity, VolumePerArea wanted, CourseContext context) {
    var unit = new CalibrationUnits(context.units()).volume();
    var words = context.words().in(HeavyLiquid.class, "calibration");
    var liquid = LiquidDensity.ofSpecificGravity(gravity);
    var found = liquid.correct(new SprayVolume(wanted)).waterEquivalent().perArea();
    var slips =
        List.of(
            new TypicalSlip(
                CalibrationMistake.ROOT_FORGOTTEN, MeasuredAnswer.of(wanted.times(gravity), unit)),
            new TypicalSlip(
                CalibrationMistake.DIVIDED_BY_ROOT,
                MeasuredAnswer.of(wanted.dividedBy(Math.sqrt(gravity)), unit)),
            new TypicalSlip(CalibrationMistake.DENSITY_IGNORED, MeasuredAnswer.of(wanted, unit)));
    var working =
        Working.of(words.say("density.title"))
            .step(
                words.say("density.step.root"),
                words.say("density.formula.root"),
                "√" + words.exact(gravity),
                words.number(liquid.factor()))
            .step(
                words.say("density.step.volume"),
                words.say("density.formula"),
                words.exact(wanted, unit) + " × " + words.number(liquid.factor()),
                words.show(found, unit));
    return new SolvedPart(MeasuredAnswer.of(found, unit), working, slips);
  }
}
