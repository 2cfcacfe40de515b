package agro.course.topic.rotation;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.DayAnswer;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.PreHarvestLimit;
import agro.programme.interval.SeasonQuestions;
import agro.programme.interval.SeasonRules;
import agro.working.Caution;
import agro.working.Working;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The earliest day of the next spray. */
final class NextSpray implements ExerciseType {

  private static final String PRODUCT = "A";

  @Override
  public String code() {
    return "rotation-interval";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.FIRST_DAY_COUNTED,
        RotationMistake.FREE_DAYS_BETWEEN,
        RotationMistake.PRE_HARVEST_FOR_INTERVAL);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var sprayed = LabelledField.day(draw.whole(0, 100));
    int interval = draw.whole(5, 21);
    int preHarvest = draw.whole(2, 28);
    var earliest = earliest(sprayed, interval, preHarvest);
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = context.words().in(NextSpray.class, "rotation");
    return ExerciseBody.titled(words.say("interval.title"))
        .story(
            words.say(
                "interval.story",
                "field",
                field,
                "pest",
                pest,
                "day",
                words.day(sprayed),
                "interval",
                interval,
                "harvest",
                preHarvest))
        .givens(
            Givens.none()
                .withDay("sprayed", sprayed)
                .withNumber("interval", interval)
                .withNumber("harvest", preHarvest))
        .part(
            words.say("interval.question"),
            earlier -> solve(sprayed, interval, preHarvest, earliest, context))
        .cautions(Caution.all())
        .build();
  }

  private static LocalDate earliest(LocalDate sprayed, int interval, int preHarvest) {
    var limits =
        LabelLimits.of(PRODUCT)
            .with(IntervalLimit.ofDays(interval))
            .with(PreHarvestLimit.ofDays(preHarvest));
    var programme =
        LabelledField.programme(List.of(LabelledField.record(PRODUCT, limits)))
            .with(LabelledField.spray("1", sprayed, PRODUCT));
    return SeasonQuestions.of(SeasonRules.of(programme))
        .nextAllowed(LabelledField.FIELD, PRODUCT, sprayed.plusDays(1))
        .day()
        .orElseThrow();
  }

  private static SolvedPart solve(
      LocalDate sprayed, int interval, int preHarvest, LocalDate found, CourseContext context) {
    var words = context.words().in(NextSpray.class, "rotation");
    var slips =
        List.of(
            slip(RotationMistake.FIRST_DAY_COUNTED, sprayed.plusDays(interval - 1)),
            slip(RotationMistake.FREE_DAYS_BETWEEN, sprayed.plusDays(interval + 1)),
            slip(RotationMistake.PRE_HARVEST_FOR_INTERVAL, sprayed.plusDays(preHarvest)));
    var working =
        Working.of(words.say("interval.title"))
            .step(
                words.say("interval.step"),
                words.say("interval.formula"),
                LabelledField.shifted(sprayed, interval, words),
                words.day(found));
    return new SolvedPart(new DayAnswer(found, 0), working, slips);
  }

  static TypicalSlip slip(RotationMistake mistake, LocalDate day) {
    return new TypicalSlip(mistake, new DayAnswer(day, 0));
  }
}
