package agro.course.topic.rotation;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.programme.interval.LimitRule;
import agro.programme.interval.Permission;
import agro.programme.rotation.RotationRule;
import agro.working.Caution;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How many sprays fit into a season of three windows. */
final class SpraysOfSeason implements ExerciseType {

  private static final String PRODUCT = "A";

  private record Plan(LocalDate first, int window, int interval, int mostA, int mostB) {

    /** Sprays of one window, one after another on the first day that the interval allows. */
    int inWindow() {
      var limits = LabelLimits.of(PRODUCT).with(IntervalLimit.ofDays(interval));
      var programme = LabelledField.programme(List.of(LabelledField.record(PRODUCT, limits, "28")));
      int sprays = 0;
      for (int day = 0; day < window; day++) {
        var on = first.plusDays(day);
        if (LabelledField.asked(programme, PRODUCT, on, EnumSet.of(LimitRule.INTERVAL))
            == Permission.ALLOWED) {
          sprays++;
          programme = programme.with(LabelledField.spray(String.valueOf(sprays), on, PRODUCT));
        }
      }
      return sprays;
    }
  }

  @Override
  public String code() {
    return "rotation-season";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.FIRST_SPRAY_FORGOTTEN,
        RotationMistake.ONE_SPRAY_TOO_MANY,
        RotationMistake.MAXIMUM_IGNORED,
        RotationMistake.MAXIMUM_PER_WINDOW,
        RotationMistake.ROTATION_IGNORED,
        RotationMistake.OTHER_PRODUCT_FORGOTTEN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int interval = draw.whole(7, 14);
    int most = draw.whole(2, 5);
    var plan =
        new Plan(
            LabelledField.day(draw.whole(0, 40)),
            draw.whole(18, 35),
            interval,
            most,
            draw.whole(1, 3));
    int fitting = plan.inWindow();
    var groups = draw.some(WindowUse.SINGLE, 2);
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = context.words().in(SpraysOfSeason.class, "rotation");
    return ExerciseBody.titled(words.say("season.title"))
        .story(
            words.say(
                "season.story",
                "field",
                field,
                "pest",
                pest,
                "window",
                plan.window(),
                "day",
                words.day(plan.first())))
        .story(
            words.say(
                "season.products",
                "a",
                groups.get(0),
                "mostA",
                plan.mostA(),
                "b",
                groups.get(1),
                "mostB",
                plan.mostB(),
                "interval",
                interval))
        .givens(
            Givens.none()
                .withDay("first", plan.first())
                .withNumber("window", plan.window())
                .withNumber("interval", interval)
                .withNumber("mostA", plan.mostA())
                .withNumber("mostB", plan.mostB()))
        .part(words.say("season.question.window"), earlier -> window(plan, fitting, words))
        .part(
            words.say("season.question.a"),
            earlier -> ofA(Math.round(earlier.number(0)), plan, words))
        .part(
            words.say("season.question.all"),
            earlier ->
                all(Math.round(earlier.number(0)), Math.round(earlier.number(1)), plan, words))
        .cautions(Caution.all())
        .source(RotationRule.SUCCESSIVE_WINDOWS.source())
        .build();
  }

  private static TypicalSlip slip(RotationMistake mistake, long number) {
    return new TypicalSlip(mistake, NumberAnswer.whole(number));
  }

  private static SolvedPart window(Plan plan, long found, CourseWords words) {
    long between = Math.floorDiv(plan.window() - 1, plan.interval());
    var slips =
        List.of(
            slip(RotationMistake.FIRST_SPRAY_FORGOTTEN, between),
            slip(RotationMistake.ONE_SPRAY_TOO_MANY, found + 1));
    var last = plan.first().plusDays(between * plan.interval());
    var working =
        Working.of(words.say("season.title"))
            .step(
                words.say("season.step.days"),
                "",
                plan.window() + " − 1",
                words.say("days", "number", plan.window() - 1))
            .step(
                words.say("season.step.intervals"),
                words.say("season.formula.intervals"),
                (plan.window() - 1) + " / " + plan.interval(),
                String.valueOf(between))
            .step(
                words.say("season.step.window"),
                words.say("season.formula.window"),
                between + " + 1",
                found
                    + "; "
                    + words.say(
                        "season.days", "first", words.day(plan.first()), "last", words.day(last)));
    return new SolvedPart(NumberAnswer.whole(found), working, slips);
  }

  private static SolvedPart ofA(long inWindow, Plan plan, CourseWords words) {
    long found = Math.min(plan.mostA(), 2 * inWindow);
    var slips = new ArrayList<TypicalSlip>();
    long perWindow = 2 * Math.min(plan.mostA(), inWindow);
    if (plan.mostA() < 2 * inWindow) {
      slips.add(slip(RotationMistake.MAXIMUM_IGNORED, 2 * inWindow));
      if (perWindow < 2 * inWindow) {
        slips.add(slip(RotationMistake.MAXIMUM_PER_WINDOW, perWindow));
      }
      slips.add(slip(RotationMistake.ROTATION_IGNORED, 3 * inWindow));
    } else {
      slips.add(slip(RotationMistake.ROTATION_IGNORED, Math.min(plan.mostA(), 3 * inWindow)));
    }
    var working =
        Working.of(words.say("season.title"))
            .step(
                words.say("season.step.rotation"),
                "",
                "2 × " + inWindow,
                String.valueOf(2 * inWindow))
            .step(
                words.say("season.step.a"),
                words.say("season.formula.most"),
                "min(" + 2 * inWindow + "; " + plan.mostA() + ")",
                String.valueOf(found));
    return new SolvedPart(NumberAnswer.whole(found), working, slips);
  }

  private static SolvedPart all(long inWindow, long ofA, Plan plan, CourseWords words) {
    long ofB = Math.min(plan.mostB(), inWindow);
    long found = ofA + ofB;
    var slips = new ArrayList<TypicalSlip>();
    slips.add(slip(RotationMistake.OTHER_PRODUCT_FORGOTTEN, ofA));
    if (plan.mostB() < inWindow) {
      slips.add(slip(RotationMistake.MAXIMUM_IGNORED, ofA + inWindow));
    }
    var working =
        Working.of(words.say("season.title"))
            .step(
                words.say("season.step.b"),
                words.say("season.formula.most"),
                "min(" + inWindow + "; " + plan.mostB() + ")",
                String.valueOf(ofB))
            .step(words.say("season.step.all"), "", ofA + " + " + ofB, String.valueOf(found));
    return new SolvedPart(NumberAnswer.whole(found), working, slips);
  }
}
