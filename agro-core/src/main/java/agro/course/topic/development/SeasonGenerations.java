package agro.course.topic.development;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.rate.RateCurve;
import agro.source.Reference;
import agro.units.ThermalTime;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How many generations the warmth of a season allows. */
final class SeasonGenerations implements ExerciseType {

  private static final int FIRST_MONTH = 3;
  private static final List<Integer> LENGTHS = List.of(31, 30, 31, 30, 31, 31, 30, 31);
  private static final List<Integer> USUAL = List.of(4, 8, 13, 17, 20, 19, 15, 9);
  private static final int ATTEMPTS = 50;

  /** Mean temperatures of March to October, and what the first flight and a generation take. */
  private record Plan(
      List<Double> means, double lower, double firstFlight, double eggToAdult, double beforeEggs) {
    double sum() {
      double sum = 0;
      for (int i = 0; i < means.size(); i++) {
        sum += LENGTHS.get(i) * Math.max(0, means.get(i) - lower);
      }
      return sum;
    }

    double generations() {
      return (sum() - firstFlight) / (eggToAdult + beforeEggs);
    }

    boolean clear() {
      double part = generations() - Math.floor(generations());
      return generations() > 1 && part > 0.12 && part < 0.88;
    }
  }

  @Override
  public String code() {
    return "development-generations";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEVELOPMENT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DevelopmentMistake.NEGATIVE_MONTH_COUNTED,
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.ONE_DAY_A_MONTH,
        DevelopmentMistake.FIRST_FLIGHT_LEFT_OUT,
        DevelopmentMistake.BEFORE_EGGS_FORGOTTEN,
        DevelopmentMistake.REST_FOR_DONE,
        DevelopmentMistake.WHOLE_KEPT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "season.title");
    var plan = draw(draw, scale);
    var words = scale.words();
    var unit = context.units().thermalTime().symbol();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "season.story",
                "place",
                context.setting().place(),
                "pest",
                draw.oneOf(context.setting().pests()),
                "lower",
                scale.degrees(plan.lower),
                "first",
                scale.exactSum(plan.firstFlight),
                "adult",
                scale.exactSum(plan.eggToAdult),
                "eggs",
                scale.exactSum(plan.beforeEggs)))
        .exhibit(exhibit(scale, plan))
        .givens(
            Givens.none()
                .withNumbers("means", plan.means)
                .withNumber("lower", plan.lower)
                .withNumber("first flight", plan.firstFlight)
                .withNumber("egg to adult", plan.eggToAdult)
                .withNumber("before eggs", plan.beforeEggs))
        .part(words.say("season.question.sum", "unit", unit), earlier -> sum(scale, plan))
        .part(
            words.say("season.question.generations"), earlier -> generations(scale, plan, earlier))
        .part(words.say("season.question.last"), earlier -> last(scale, earlier))
        .source(
            Reference.commonPractice(
                "Generations of a season are its degree-days over those of one"))
        .build();
  }

  private static Plan draw(ExerciseDraw draw, DevelopmentScale scale) {
    boolean fahrenheit = scale.fahrenheit();
    Plan plan = null;
    for (int attempt = 0; attempt < ATTEMPTS && (plan == null || !plan.clear()); attempt++) {
      var means = new ArrayList<Double>();
      for (int usual : USUAL) {
        double celsius = usual + draw.step(-1, 2, 0.5);
        means.add(fahrenheit ? (double) Math.round(celsius * 1.8 + 32) : celsius);
      }
      double lower = fahrenheit ? draw.step(43, 48, 1) : draw.step(6, 9, 0.5);
      double unit = fahrenheit ? 2 : 1;
      plan =
          new Plan(
              means,
              lower,
              draw.step(80, 250, 10) * unit,
              draw.step(260, 450, 5) * unit,
              draw.step(40, 90, 5) * unit);
    }
    return plan;
  }

  private static Block exhibit(DevelopmentScale scale, Plan plan) {
    var words = scale.words();
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < LENGTHS.size(); i++) {
      rows.add(
          List.of(
              Cell.text(words.say("month." + (FIRST_MONTH + i))),
              Cell.text(String.valueOf(LENGTHS.get(i))),
              Cell.text(words.exact(plan.means.get(i)))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("season.table"),
            List.of(
                Column.of(words.say("season.month")),
                Column.of(words.say("season.days")),
                Column.of(words.say("season.mean"), scale.degree())),
            rows));
  }

  private static SolvedPart sum(DevelopmentScale scale, Plan plan) {
    // A requirement of one degree-day gives degree-days for each day.
    var daily = RateCurve.linear(scale.celsius(plan.lower), 1);
    double right = 0;
    double negative = 0;
    double means = 0;
    double once = 0;
    var terms = new ArrayList<String>();
    for (int i = 0; i < LENGTHS.size(); i++) {
      double mean = plan.means.get(i);
      int days = LENGTHS.get(i);
      double degreeDays = scale.number(ThermalTime.ofDegreeDaysC(daily.rate(scale.celsius(mean))));
      right += days * degreeDays;
      once += degreeDays;
      means += days * mean;
      negative += days * (mean - plan.lower);
      terms.add(days + " × " + scale.term(degreeDays));
    }
    return new SolvedPart(
        scale.sumAnswer(right),
        scale.step("season.sum", String.join(" + ", terms), scale.sumText(right)),
        List.of(
            scale.sumSlip(DevelopmentMistake.NEGATIVE_MONTH_COUNTED, negative),
            scale.sumSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, means),
            scale.sumSlip(DevelopmentMistake.ONE_DAY_A_MONTH, once)));
  }

  private static SolvedPart generations(DevelopmentScale scale, Plan plan, EarlierAnswers earlier) {
    double sum = scale.number(earlier.thermalTime(0));
    double generation = plan.eggToAdult + plan.beforeEggs;
    double right = (sum - plan.firstFlight) / generation;
    return new SolvedPart(
        NumberAnswer.rounded(right, 2),
        scale.step(
            "season.generations",
            "("
                + scale.term(sum)
                + " − "
                + scale.term(plan.firstFlight)
                + ") / ("
                + scale.term(plan.eggToAdult)
                + " + "
                + scale.term(plan.beforeEggs)
                + ")",
            scale.words().number(right, 2)),
        List.of(
            new TypicalSlip(
                DevelopmentMistake.FIRST_FLIGHT_LEFT_OUT,
                NumberAnswer.rounded(sum / generation, 2)),
            new TypicalSlip(
                DevelopmentMistake.BEFORE_EGGS_FORGOTTEN,
                NumberAnswer.rounded((sum - plan.firstFlight) / plan.eggToAdult, 2))));
  }

  private static SolvedPart last(DevelopmentScale scale, EarlierAnswers earlier) {
    double generations = earlier.number(1);
    if (!(generations >= 0)) {
      throw new IllegalArgumentException("no generation is complete");
    }
    double whole = Math.floor(generations);
    double right = 100 * (generations - whole);
    return new SolvedPart(
        PercentAnswer.rounded(right, 0),
        scale.step(
            "season.last",
            "("
                + scale.words().number(generations, 2)
                + " − "
                + scale.words().exact(whole)
                + ") × 100 %",
            scale.words().number(right, 0) + " %"),
        List.of(
            new TypicalSlip(
                DevelopmentMistake.REST_FOR_DONE, PercentAnswer.rounded(100 - right, 0)),
            new TypicalSlip(
                DevelopmentMistake.WHOLE_KEPT, PercentAnswer.rounded(100 * generations, 0))));
  }
}
