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
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.source.Reference;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Degree-days between two visits to a trap, and the catch for each hundred of them. */
final class BetweenVisits implements ExerciseType {

  private static final int DAYS = 10;
  private static final double HUNDRED = 100;

  /** Visits in the mornings of rows {@code from} and {@code to}. */
  private record Plan(LocalDate first, List<Double> sums, int from, int to, int caught) {
    double between(int low, int high) {
      return sums.subList(low, high).stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  @Override
  public String code() {
    return "degree-days-visits";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.VISIT_DAY_COUNTED,
        DegreeDayMistake.VISIT_DAY_LEFT_OUT,
        DegreeDayMistake.ALL_DAYS_COUNTED,
        DegreeDayMistake.CATCH_FOR_EACH_DAY,
        DegreeDayMistake.QUOTIENT_TURNED,
        DegreeDayMistake.HUNDRED_FORGOTTEN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    var sums = new ArrayList<Double>();
    for (int day = 0; day < DAYS; day++) {
      sums.add(scale.fahrenheit() ? draw.step(6, 22, 0.5) : draw.step(3, 12.5, 0.5));
    }
    int from = draw.whole(1, 2);
    var first = LocalDate.of(2027, draw.whole(5, 8), draw.whole(1, 20));
    var plan =
        new Plan(first, List.copyOf(sums), from, from + draw.whole(5, 7), draw.whole(12, 90));
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    var unit = context.units().thermalTime().symbol();
    var body =
        ExerciseBody.titled(words.say("visits.title"))
            .story(
                words.say(
                    "visits.story",
                    "field",
                    draw.oneOf(context.setting().fields()),
                    "pest",
                    pest,
                    "from",
                    words.day(first.plusDays(plan.from)),
                    "to",
                    words.day(first.plusDays(plan.to)),
                    "count",
                    plan.caught))
            .exhibit(exhibit(scale, plan))
            .givens(
                Givens.none()
                    .withDay("first", first)
                    .withNumbers("degree-days", plan.sums)
                    .withNumber("from", plan.from)
                    .withNumber("to", plan.to)
                    .withNumber("caught", plan.caught))
            .part(words.say("visits.question.sum", "unit", unit), earlier -> sum(scale, plan))
            .source(Reference.commonPractice("A morning visit counts the days before it"));
    if (difficulty == Difficulty.ROUTINE) {
      body.part(
          words.say("visits.question.catch", "unit", unit),
          earlier -> perHundred(scale, plan, earlier));
    }
    return body.build();
  }

  private static Block exhibit(DegreeScale scale, Plan plan) {
    var words = scale.words();
    var rows = new ArrayList<List<Cell>>();
    for (int day = 0; day < DAYS; day++) {
      rows.add(
          List.of(
              Cell.text(words.day(plan.first.plusDays(day))),
              Cell.text(words.exact(plan.sums.get(day)))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("visits.table"),
            List.of(
                Column.of(words.say("table.day")),
                Column.of(words.say("visits.column"), scale.units().thermalTime().symbol())),
            rows));
  }

  private static SolvedPart sum(DegreeScale scale, Plan plan) {
    double right = plan.between(plan.from, plan.to);
    var terms =
        plan.sums.subList(plan.from, plan.to).stream()
            .map(scale::term)
            .collect(Collectors.joining(" + "));
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            Working.of(scale.words().say("visits.title")), "visits", terms, scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.VISIT_DAY_COUNTED, plan.between(plan.from, plan.to + 1)),
            scale.slip(DegreeDayMistake.VISIT_DAY_LEFT_OUT, plan.between(plan.from + 1, plan.to)),
            scale.slip(DegreeDayMistake.ALL_DAYS_COUNTED, plan.between(0, plan.to))));
  }

  private static SolvedPart perHundred(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double sum = scale.number(earlier.thermalTime(0));
    if (!(sum > 0)) {
      throw new IllegalArgumentException("no catch can be divided by a sum of " + sum);
    }
    double right = plan.caught / sum * HUNDRED;
    var working =
        scale.step(
            Working.of(scale.words().say("visits.title")),
            "visits.catch",
            plan.caught + " / " + scale.term(sum) + " × 100",
            scale.words().number(right, 1));
    return new SolvedPart(
        NumberAnswer.rounded(right, 1),
        working,
        List.of(
            slip(DegreeDayMistake.CATCH_FOR_EACH_DAY, (double) plan.caught / (plan.to - plan.from)),
            slip(DegreeDayMistake.QUOTIENT_TURNED, sum / plan.caught * HUNDRED),
            slip(DegreeDayMistake.HUNDRED_FORGOTTEN, plan.caught / sum)));
  }

  private static TypicalSlip slip(DegreeDayMistake mistake, double number) {
    return new TypicalSlip(mistake, NumberAnswer.rounded(number, 1));
  }
}
