package agro.course.topic.degreeday;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.development.DegreeDayMethod;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A week with a cold day added to a running sum. */
final class WeekSum implements ExerciseType {

  private static final int DAYS = 7;

  private record Plan(DayTable days, double lower, double before, double requirement) {}

  @Override
  public String code() {
    return "degree-days-week";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.NEGATIVE_DAY_COUNTED,
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.THRESHOLD_ONCE,
        DegreeDayMistake.MAXIMUM_FOR_MEAN,
        DegreeDayMistake.SUM_NOT_CARRIED,
        DegreeDayMistake.SUM_SUBTRACTED,
        DegreeDayMistake.WEEK_LEFT_OUT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    var plan = draw(draw, scale);
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    var unit = context.units().thermalTime().symbol();
    var givens =
        Givens.none()
            .withNumber("lower", plan.lower)
            .withNumber("before", plan.before)
            .withNumber("requirement", plan.requirement);
    return ExerciseBody.titled(words.say("week.title"))
        .story(
            words.say(
                "week.story",
                "place",
                context.setting().place(),
                "pest",
                pest,
                "lower",
                scale.degrees(plan.lower),
                "before",
                scale.exactSum(plan.before),
                "requirement",
                scale.exactSum(plan.requirement)))
        .story(words.say("rule.mean"))
        .exhibit(plan.days.exhibit(scale))
        .givens(plan.days.in(givens))
        .part(words.say("week.question.week", "unit", unit), earlier -> week(scale, plan))
        .part(
            words.say("week.question.running", "unit", unit),
            earlier -> running(scale, plan, earlier))
        .part(
            words.say("week.question.missing", "unit", unit),
            earlier -> missing(scale, plan, earlier))
        .source(DegreeDayMethod.AVERAGE_MEAN_LIMITED.source())
        .build();
  }

  private static Plan draw(ExerciseDraw draw, DegreeScale scale) {
    double lower = scale.fahrenheit() ? draw.step(43, 50, 1) : draw.step(6, 10, 0.5);
    double unit = scale.either(1, 1.8);
    int cold = draw.whole(1, DAYS - 2);
    var min = new ArrayList<Double>();
    var max = new ArrayList<Double>();
    for (int day = 0; day < DAYS; day++) {
      boolean isCold = day == cold;
      double up = isCold ? draw.whole(1, 3) : draw.whole(8, 16);
      double down = isCold ? draw.whole(6, 9) : draw.whole(-4, 4);
      max.add((double) Math.round(lower + up * unit));
      min.add((double) Math.round(lower - down * unit));
    }
    double before = draw.step(40, 160, 1) * scale.either(1, 2);
    double requirement = draw.step(300, 450, 5) * scale.either(1, 2);
    var first = LocalDate.of(2027, draw.whole(4, 5), draw.whole(1, 20));
    return new Plan(new DayTable(first, min, max), lower, before, requirement);
  }

  private static SolvedPart week(DegreeScale scale, Plan plan) {
    var days = plan.days;
    double right = days.sum(scale, plan.lower, 0, DAYS - 1);
    double means = days.sumOfMeans(0, DAYS - 1);
    double maxima = days.max().stream().mapToDouble(max -> Math.max(0, max - plan.lower)).sum();
    var working = Working.of(scale.words().say("week.title"));
    for (int row = 0; row < DAYS; row++) {
      working =
          working.step(
              scale.words().day(days.day(row)),
              row == 0 ? scale.words().say("limited.formula") : "",
              "max(0; ("
                  + scale.term(days.max().get(row))
                  + " + "
                  + scale.term(days.min().get(row))
                  + ") / 2 − "
                  + scale.term(plan.lower)
                  + ")",
              scale.sumText(days.degreeDays(scale, plan.lower, row)));
    }
    working =
        scale.step(
            working, "week", days.terms(scale, plan.lower, 0, DAYS - 1), scale.sumText(right));
    return new SolvedPart(
        scale.answer(right),
        working,
        List.of(
            scale.slip(DegreeDayMistake.NEGATIVE_DAY_COUNTED, means - DAYS * plan.lower),
            scale.slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, means),
            scale.slip(DegreeDayMistake.THRESHOLD_ONCE, means - plan.lower),
            scale.slip(DegreeDayMistake.MAXIMUM_FOR_MEAN, maxima)));
  }

  private static SolvedPart running(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double week = scale.number(earlier.thermalTime(0));
    double right = plan.before + week;
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            Working.of(scale.words().say("week.title")),
            "running",
            scale.term(plan.before) + " + " + scale.term(week),
            scale.sumText(right)),
        plan.before > week
            ? List.of(
                scale.slip(DegreeDayMistake.SUM_NOT_CARRIED, week),
                scale.slip(DegreeDayMistake.SUM_SUBTRACTED, plan.before - week))
            : List.of(scale.slip(DegreeDayMistake.SUM_NOT_CARRIED, week)));
  }

  private static SolvedPart missing(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double running = scale.number(earlier.thermalTime(1));
    double right = plan.requirement - running;
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            Working.of(scale.words().say("week.title")),
            "missing",
            scale.term(plan.requirement) + " − " + scale.term(running),
            scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.WEEK_LEFT_OUT, plan.requirement - plan.before),
            scale.slip(
                DegreeDayMistake.SUM_NOT_CARRIED, plan.requirement - (running - plan.before))));
  }
}
