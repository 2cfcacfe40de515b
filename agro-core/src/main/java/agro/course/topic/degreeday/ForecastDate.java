package agro.course.topic.degreeday;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.DayAnswer;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.DegreeDayMethod;
import agro.source.Reference;
import agro.working.Caution;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The day on which a sum will be reached if the weather is as forecast. */
final class ForecastDate implements ExerciseType {

  /** Days behind, and the same extremes for each day ahead. */
  private record Plan(DayTable days, double lower, double min, double max, double requirement) {
    LocalDate today() {
      return days.day(days.size() - 1);
    }
  }

  @Override
  public String code() {
    return "degree-days-forecast";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.BIOFIX_DAY_COUNTED,
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.MAXIMUM_FOR_MEAN,
        DegreeDayMistake.SUM_ADDED,
        DegreeDayMistake.SUM_NOT_CARRIED,
        DegreeDayMistake.REQUIREMENT_FOR_REST,
        DegreeDayMistake.PART_DAY_DROPPED,
        DegreeDayMistake.COUNTED_FROM_BIOFIX);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    var plan = draw(draw, scale);
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    var givens =
        Givens.none()
            .withNumber("lower", plan.lower)
            .withNumber("forecast min", plan.min)
            .withNumber("forecast max", plan.max)
            .withNumber("requirement", plan.requirement);
    var unit = context.units().thermalTime().symbol();
    return ExerciseBody.titled(words.say("forecast.title"))
        .story(
            words.say(
                "forecast.story",
                "place",
                context.setting().place(),
                "pest",
                pest,
                "biofix",
                words.day(plan.days.firstDay()),
                "lower",
                scale.degrees(plan.lower),
                "requirement",
                scale.exactSum(plan.requirement)))
        .story(words.say("biofix.from.next") + " " + words.say("rule.mean"))
        .story(
            words.say(
                "forecast.ahead",
                "today",
                words.day(plan.today()),
                "max",
                scale.degrees(plan.max),
                "min",
                scale.degrees(plan.min)))
        .exhibit(plan.days.exhibit(scale))
        .givens(plan.days.in(givens))
        .part(
            words.say("forecast.question.sum", "today", words.day(plan.today()), "unit", unit),
            earlier -> sum(scale, plan))
        .part(
            words.say("forecast.question.rest", "unit", unit),
            earlier -> rest(scale, plan, earlier))
        .part(words.say("forecast.question.days"), earlier -> days(scale, plan, earlier))
        .part(words.say("forecast.question.date"), earlier -> date(scale, plan, earlier))
        .cautions(Caution.all())
        .source(DegreeDayMethod.AVERAGE_MEAN_LIMITED.source())
        .source(Reference.commonPractice("Whether the day of the biofix itself counts"))
        .build();
  }

  private static Plan draw(ExerciseDraw draw, DegreeScale scale) {
    double lower = scale.fahrenheit() ? draw.step(43, 50, 1) : draw.step(6, 10, 0.5);
    double unit = scale.either(1, 1.8);
    var min = new ArrayList<Double>();
    var max = new ArrayList<Double>();
    int rows = draw.whole(6, 8);
    for (int day = 0; day < rows; day++) {
      max.add((double) Math.round(lower + draw.whole(9, 17) * unit));
      min.add((double) Math.round(lower + draw.whole(-4, 4) * unit));
    }
    var days = new DayTable(LocalDate.of(2027, draw.whole(4, 6), draw.whole(1, 20)), min, max);
    double aheadMax = Math.round(lower + draw.whole(10, 18) * unit);
    double aheadMin = Math.round(lower + draw.whole(0, 4) * unit);
    double daily = scale.average(aheadMin, aheadMax, lower);
    // A part of the last day that rounding of steps does not turn into another day.
    double ahead = draw.whole(3, 9) + draw.step(0.25, 0.75, 0.05);
    double requirement = Math.round(days.sum(scale, lower, 1, rows - 1) + ahead * daily);
    return new Plan(days, lower, aheadMin, aheadMax, requirement);
  }

  private static SolvedPart sum(DegreeScale scale, Plan plan) {
    int last = plan.days.size() - 1;
    double right = plan.days.sum(scale, plan.lower, 1, last);
    double maxima = -last * plan.lower;
    for (int row = 1; row <= last; row++) {
      maxima += plan.days.max().get(row);
    }
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            working(scale),
            "date.sum",
            plan.days.terms(scale, plan.lower, 1, last),
            scale.sumText(right)),
        List.of(
            scale.slip(
                DegreeDayMistake.BIOFIX_DAY_COUNTED,
                right + plan.days.degreeDays(scale, plan.lower, 0)),
            scale.slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, plan.days.sumOfMeans(1, last)),
            scale.slip(DegreeDayMistake.MAXIMUM_FOR_MEAN, maxima)));
  }

  private static SolvedPart rest(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double sum = scale.number(earlier.thermalTime(0));
    double right = plan.requirement - sum;
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            working(scale),
            "missing",
            scale.term(plan.requirement) + " − " + scale.term(sum),
            scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.SUM_NOT_CARRIED, plan.requirement),
            scale.slip(DegreeDayMistake.SUM_ADDED, plan.requirement + sum)));
  }

  private static SolvedPart days(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double rest = scale.number(earlier.thermalTime(1));
    double daily = scale.average(plan.min, plan.max, plan.lower);
    double right = rest / daily;
    double mean = DegreeScale.mean(plan.min, plan.max);
    var working = scale.meanStep(working(scale), plan.min, plan.max);
    working =
        scale.step(
            working,
            "above",
            scale.term(mean) + " − " + scale.term(plan.lower),
            scale.sumText(daily));
    working =
        scale.step(
            working,
            "forecast.days",
            scale.term(rest) + " / " + scale.term(daily),
            number(scale, right).print(scale.words()));
    return new SolvedPart(
        number(scale, right),
        working,
        List.of(
            new TypicalSlip(DegreeDayMistake.THRESHOLD_FORGOTTEN, number(scale, rest / mean)),
            new TypicalSlip(
                DegreeDayMistake.REQUIREMENT_FOR_REST, number(scale, plan.requirement / daily))));
  }

  private static NumberAnswer number(DegreeScale scale, double days) {
    return NumberAnswer.computed(
        days, 1, scale.words().say("days"), scale.words().say("days.short"));
  }

  private static SolvedPart date(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double days = earlier.number(2);
    if (!(days > 0 && days < 366)) {
      throw new IllegalArgumentException("no day lies " + days + " days ahead");
    }
    int whole = (int) Math.ceil(days);
    var right = plan.today().plusDays(whole);
    var slips = new ArrayList<TypicalSlip>();
    if (whole > days) {
      slips.add(
          new TypicalSlip(DegreeDayMistake.PART_DAY_DROPPED, new DayAnswer(right.minusDays(1), 0)));
    }
    slips.add(
        new TypicalSlip(
            DegreeDayMistake.COUNTED_FROM_BIOFIX,
            new DayAnswer(plan.days.firstDay().plusDays(whole), 0)));
    return new SolvedPart(
        new DayAnswer(right, 0),
        scale.step(
            working(scale),
            "forecast.date",
            scale.words().day(plan.today()) + " + " + whole,
            scale.words().day(right)),
        slips);
  }

  private static Working working(DegreeScale scale) {
    return Working.of(scale.words().say("forecast.title"));
  }
}
