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
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.DegreeDayMethod;
import agro.source.Reference;
import agro.units.ThermalTime;
import agro.working.Caution;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The day on which a sum is reached, counted from a biofix by a stated convention. */
final class SumReached implements ExerciseType {

  private static final int DAYS = 14;
  private static final double CLEAR = 0.3;

  /** Row 0 is the biofix; the sum is asked for at the end of row {@code asked}. */
  private record Plan(
      DayTable days, double lower, boolean biofixCounts, int asked, double requirement) {
    int from() {
      return biofixCounts ? 0 : 1;
    }
  }

  @Override
  public String code() {
    return "degree-days-date";
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
        DegreeDayMistake.BIOFIX_DAY_COUNTED,
        DegreeDayMistake.BIOFIX_DAY_LEFT_OUT,
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.MAXIMUM_FOR_MEAN,
        DegreeDayMistake.ONE_DAY_LATE,
        DegreeDayMistake.SUM_NOT_CARRIED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    var plan = draw(draw, scale);
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    var place = context.setting().place();
    var convention = plan.biofixCounts ? "biofix.counts" : "biofix.from.next";
    var givens =
        Givens.none()
            .withNumber("lower", plan.lower)
            .withNumber("requirement", plan.requirement)
            .withNumber("asked", plan.asked)
            .withText("convention", convention);
    return ExerciseBody.titled(words.say("date.title"))
        .story(
            words.say(
                "date.story",
                "place",
                place,
                "pest",
                pest,
                "biofix",
                words.day(plan.days.firstDay()),
                "lower",
                scale.degrees(plan.lower),
                "requirement",
                scale.exactSum(plan.requirement)))
        .story(words.say(convention) + " " + words.say("rule.mean"))
        .exhibit(plan.days.exhibit(scale))
        .givens(plan.days.in(givens))
        .part(
            words.say(
                "date.question.sum",
                "day",
                words.day(plan.days.day(plan.asked)),
                "unit",
                context.units().thermalTime().symbol()),
            earlier -> sum(scale, plan, place))
        .part(words.say("date.question.day"), earlier -> reached(scale, plan, place, earlier))
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
    for (int day = 0; day < DAYS; day++) {
      max.add((double) Math.round(lower + draw.whole(10, 18) * unit));
      min.add((double) Math.round(lower + draw.whole(-4, 4) * unit));
    }
    var days = new DayTable(LocalDate.of(2027, draw.whole(4, 6), draw.whole(1, 16)), min, max);
    boolean counts = draw.whole(0, 1) == 1;
    int asked = draw.whole(4, 5);
    int reached = asked + draw.whole(4, 6);
    double before = days.sum(scale, lower, counts ? 0 : 1, reached - 1);
    double after = days.sum(scale, lower, counts ? 0 : 1, reached);
    // Far enough from the sums at both ends that rounding does not move the day.
    double least = Math.ceil(before + CLEAR);
    double most = Math.floor(after - CLEAR);
    return new Plan(days, lower, counts, asked, draw.step(least, Math.max(least, most), 1));
  }

  private static SolvedPart sum(DegreeScale scale, Plan plan, String place) {
    var days = plan.days;
    var running = days.running(scale, plan.lower, place, plan.from());
    double right =
        scale.number(
            ThermalTime.ofDegreeDaysC(running.degreeDaysCAtStartOf(days.day(plan.asked + 1))));
    double biofixDay = days.degreeDays(scale, plan.lower, 0);
    double maxima = 0;
    for (int row = plan.from(); row <= plan.asked; row++) {
      maxima += days.max().get(row) - plan.lower;
    }
    var working =
        scale.step(
            Working.of(scale.words().say("date.title")),
            "date.sum",
            days.terms(scale, plan.lower, plan.from(), plan.asked),
            scale.sumText(right));
    return new SolvedPart(
        scale.answer(right),
        working,
        List.of(
            plan.biofixCounts
                ? scale.slip(DegreeDayMistake.BIOFIX_DAY_LEFT_OUT, right - biofixDay)
                : scale.slip(DegreeDayMistake.BIOFIX_DAY_COUNTED, right + biofixDay),
            scale.slip(
                DegreeDayMistake.THRESHOLD_FORGOTTEN, days.sumOfMeans(plan.from(), plan.asked)),
            scale.slip(DegreeDayMistake.MAXIMUM_FOR_MEAN, maxima)));
  }

  private static SolvedPart reached(
      DegreeScale scale, Plan plan, String place, EarlierAnswers earlier) {
    double sum = scale.number(earlier.thermalTime(0));
    var days = plan.days;
    double rest = plan.requirement - sum;
    if (rest <= 0) {
      throw new IllegalArgumentException("the sum of part a) is not below the requirement");
    }
    var right =
        days.running(scale, plan.lower, place, plan.asked + 1)
            .reached(scale.sum(rest))
            .orElseThrow(
                () -> new IllegalArgumentException("the requirement is not reached in the table"))
            .day();
    var slips = new ArrayList<TypicalSlip>();
    slips.add(slip(DegreeDayMistake.ONE_DAY_LATE, right.plusDays(1)));
    slips.add(slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, first(scale, plan, 0, rest)));
    var anew = first(scale, plan, plan.lower, plan.requirement);
    if (!anew.isAfter(days.day(days.size() - 1))) {
      slips.add(slip(DegreeDayMistake.SUM_NOT_CARRIED, anew));
    }
    var working = Working.of(scale.words().say("date.title"));
    for (int row = plan.asked + 1; !days.day(row).isAfter(right); row++) {
      double today = days.degreeDays(scale, plan.lower, row);
      working =
          working.step(
              scale.words().say("date.until", "day", scale.words().day(days.day(row))),
              "",
              scale.term(sum) + " + " + scale.term(today),
              scale.sumText(sum + today));
      sum += today;
    }
    working = scale.step(working, "date.reached", "", scale.words().day(right));
    return new SolvedPart(new DayAnswer(right, 0), working, slips);
  }

  /** The day on which the rest is there when adding anew; the day behind the table if never. */
  private static LocalDate first(DegreeScale scale, Plan plan, double lower, double rest) {
    var days = plan.days;
    double sum = 0;
    int row = plan.asked;
    while (sum < rest && row < days.size() - 1) {
      row++;
      sum += lower == 0 ? days.mean(row) : days.degreeDays(scale, lower, row);
    }
    return days.day(sum < rest ? days.size() : row);
  }

  private static TypicalSlip slip(DegreeDayMistake mistake, LocalDate day) {
    return new TypicalSlip(mistake, new DayAnswer(day, 0));
  }
}
