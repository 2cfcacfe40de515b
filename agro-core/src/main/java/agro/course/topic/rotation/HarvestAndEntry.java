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
import agro.dose.LabelLimits;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import agro.dose.ReEntryLimit;
import agro.programme.interval.LimitRule;
import agro.programme.interval.Permission;
import agro.programme.interval.SeasonQuestions;
import agro.programme.interval.SeasonRules;
import agro.working.Caution;
import agro.working.Working;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The last day before a harvest, the harvest after a late spray, and entry into the field. */
final class HarvestAndEntry implements ExerciseType {

  private static final String PRODUCT = "A";
  private static final List<Integer> HOURS = List.of(12, 24, 36, 48, 72);

  private record Label(int preHarvest, int interval, int hours) {}

  @Override
  public String code() {
    return "rotation-harvest";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.HARVEST_DAY_COUNTED,
        RotationMistake.COUNTED_FORWARD,
        RotationMistake.INTERVAL_FOR_PRE_HARVEST,
        RotationMistake.HARVEST_AS_PLANNED,
        RotationMistake.FIRST_DAY_COUNTED,
        RotationMistake.ENTRY_ON_DRY_SPRAY,
        RotationMistake.PRE_HARVEST_FOR_RE_ENTRY);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var harvest = LabelledField.day(draw.whole(40, 150));
    var label = new Label(draw.whole(3, 28), draw.whole(5, 21), draw.oneOf(HOURS));
    int late = draw.whole(2, 7);
    var last = last(harvest, label);
    var field = draw.oneOf(context.setting().fields());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(HarvestAndEntry.class, "rotation");
    return ExerciseBody.titled(words.say("harvest.title"))
        .story(
            words.say(
                "harvest.story",
                "field",
                field,
                "crop",
                crop,
                "day",
                words.day(harvest),
                "harvest",
                label.preHarvest(),
                "interval",
                label.interval(),
                "hours",
                label.hours()))
        .givens(
            Givens.none()
                .withDay("day", harvest)
                .withNumber("harvest", label.preHarvest())
                .withNumber("interval", label.interval())
                .withNumber("hours", label.hours())
                .withNumber("late", late))
        .part(words.say("harvest.question.last"), earlier -> last(harvest, last, label, context))
        .part(
            words.say("harvest.question.harvest", "days", late),
            earlier -> harvest(earlier.day(0).plusDays(late), harvest, label, context))
        .part(
            words.say("harvest.question.entry"),
            earlier -> entry(earlier.day(0).plusDays(late), label, context))
        .cautions(Caution.all())
        .build();
  }

  private static LocalDate last(LocalDate harvest, Label label) {
    var limits = LabelLimits.of(PRODUCT).with(PreHarvestLimit.ofDays(label.preHarvest()));
    var programme =
        LabelledField.programme(List.of(LabelledField.record(PRODUCT, limits)), harvest);
    var found = harvest;
    while (LabelledField.asked(programme, PRODUCT, found, EnumSet.of(LimitRule.PRE_HARVEST))
        != Permission.ALLOWED) {
      found = found.minusDays(1);
    }
    return found;
  }

  private static SolvedPart last(
      LocalDate harvest, LocalDate found, Label label, CourseContext context) {
    var words = context.words().in(HarvestAndEntry.class, "rotation");
    var slips =
        List.of(
            NextSpray.slip(
                RotationMistake.HARVEST_DAY_COUNTED, harvest.minusDays(label.preHarvest() - 1)),
            NextSpray.slip(RotationMistake.COUNTED_FORWARD, harvest.plusDays(label.preHarvest())),
            NextSpray.slip(
                RotationMistake.INTERVAL_FOR_PRE_HARVEST, harvest.minusDays(label.interval())));
    var working =
        Working.of(words.say("harvest.title"))
            .step(
                words.say("harvest.step.last"),
                words.say("harvest.formula.last"),
                LabelledField.shifted(harvest, -label.preHarvest(), words),
                words.day(found));
    return new SolvedPart(new DayAnswer(found, 0), working, slips);
  }

  private static SolvedPart harvest(
      LocalDate sprayed, LocalDate planned, Label label, CourseContext context) {
    var words = context.words().in(HarvestAndEntry.class, "rotation");
    var found = new PreHarvest.Days(label.preHarvest()).earliestHarvest(sprayed);
    var slips =
        List.of(
            NextSpray.slip(RotationMistake.HARVEST_AS_PLANNED, planned),
            NextSpray.slip(RotationMistake.FIRST_DAY_COUNTED, found.minusDays(1)),
            NextSpray.slip(
                RotationMistake.INTERVAL_FOR_PRE_HARVEST, sprayed.plusDays(label.interval())));
    var working =
        Working.of(words.say("harvest.title"))
            .step(words.say("harvest.step.sprayed"), "", "", words.day(sprayed))
            .step(
                words.say("harvest.step.harvest"),
                words.say("harvest.formula.harvest"),
                LabelledField.shifted(sprayed, label.preHarvest(), words),
                words.day(found));
    return new SolvedPart(new DayAnswer(found, 0), working, slips);
  }

  private static SolvedPart entry(LocalDate sprayed, Label label, CourseContext context) {
    var words = context.words().in(HarvestAndEntry.class, "rotation");
    var limits = LabelLimits.of(PRODUCT).with(ReEntryLimit.ofHours(label.hours()));
    var programme =
        LabelledField.programme(List.of(LabelledField.record(PRODUCT, limits)))
            .with(LabelledField.spray("1", sprayed, PRODUCT));
    var moment =
        SeasonQuestions.of(SeasonRules.of(programme)).whenEnter("1").moment().orElseThrow();
    var found = moment.toLocalDate();
    var slips =
        List.of(
            NextSpray.slip(RotationMistake.ENTRY_ON_DRY_SPRAY, sprayed),
            NextSpray.slip(
                RotationMistake.PRE_HARVEST_FOR_RE_ENTRY, sprayed.plusDays(label.preHarvest())));
    var working =
        Working.of(words.say("harvest.title"))
            .step(
                words.say("harvest.step.entry"),
                words.say("harvest.formula.entry"),
                words.day(sprayed) + ", 18:00 + " + label.hours() + " h",
                words.day(found) + ", " + moment.toLocalTime());
    return new SolvedPart(new DayAnswer(found, 0), working, slips);
  }
}
