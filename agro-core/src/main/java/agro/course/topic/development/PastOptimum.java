package agro.course.topic.development;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
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
import agro.course.TypicalSlip;
import agro.development.rate.LineMethod;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Rearing data with one temperature past the optimum, which must not enter the straight line. */
final class PastOptimum implements ExerciseType {

  private static final int POINTS = 4;

  @Override
  public String code() {
    return "development-optimum";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEVELOPMENT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DevelopmentMistake.SLOWEST_LEFT_OUT,
        DevelopmentMistake.FASTEST_LEFT_OUT,
        DevelopmentMistake.ALL_POINTS_FITTED,
        DevelopmentMistake.DAYS_ON_A_LINE,
        DevelopmentMistake.SIGN_FORGOTTEN,
        DevelopmentMistake.DAYS_AVERAGED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "optimum.title");
    var table = draw(draw, scale);
    var words = scale.words();
    var choices = new ArrayList<AnswerChoice>();
    for (int row = 0; row < POINTS; row++) {
      choices.add(new AnswerChoice(code(row), scale.degrees(table.at().get(row))));
    }
    return ExerciseBody.titled(scale.title())
        .story(words.say("optimum.story", "pest", draw.oneOf(context.setting().pests())))
        .exhibit(table.exhibit(scale))
        .givens(table.in(Givens.none()))
        .part(words.say("optimum.question.point"), earlier -> point(scale, table, choices))
        .part(
            words.say("optimum.question.slope", "unit", scale.degree()),
            earlier -> slope(scale, table, earlier))
        .part(
            words.say("squares.question.lower", "unit", scale.degree()),
            earlier -> LeastSquaresLine.lower(scale, kept(table, earlier), earlier.number(1)))
        .source(LineMethod.LEAST_SQUARES.source())
        .build();
  }

  private static String code(int row) {
    return "t" + (row + 1);
  }

  private static RearingTable draw(ExerciseDraw draw, DevelopmentScale scale) {
    boolean fahrenheit = scale.fahrenheit();
    double lower = fahrenheit ? draw.step(45, 53, 0.5) : draw.step(7, 11.5, 0.5);
    double requirement = draw.step(130, 420, 1) * (fahrenheit ? 1.8 : 1);
    double coolest = fahrenheit ? draw.step(59, 63, 1) : draw.step(15, 17, 1);
    double step = fahrenheit ? draw.step(9, 10, 1) : draw.step(5, 6, 1);
    var at = new ArrayList<Double>();
    var days = new ArrayList<Double>();
    for (int i = 0; i < POINTS; i++) {
      double one = coolest + i * step;
      // Past the optimum an animal takes longer than at the temperature before.
      double longer =
          i == POINTS - 1 ? draw.step(1.6, 2.2, 0.05) : 1 + draw.step(-0.04, 0.04, 0.01);
      at.add(one);
      days.add(DevelopmentScale.tenth(requirement / (one - lower) * longer));
    }
    return new RearingTable(at, days);
  }

  private static SolvedPart point(
      DevelopmentScale scale, RearingTable table, List<AnswerChoice> choices) {
    int last = POINTS - 1;
    var right = new ChoiceAnswer(choices, code(last));
    var rates = table.days().stream().map(one -> scale.words().number(1 / one)).toList();
    var working = scale.step("rates", "", String.join("; ", rates));
    return new SolvedPart(
        right,
        scale.step(working, "optimum", "", right.print(scale.words())),
        List.of(
            new TypicalSlip(DevelopmentMistake.SLOWEST_LEFT_OUT, right.withCode(code(0))),
            new TypicalSlip(DevelopmentMistake.FASTEST_LEFT_OUT, right.withCode(code(last - 1)))));
  }

  private static RearingTable kept(RearingTable table, EarlierAnswers earlier) {
    for (int row = 0; row < POINTS; row++) {
      if (code(row).equals(earlier.choice(0))) {
        return table.without(row);
      }
    }
    throw new IllegalArgumentException("no temperature is called " + earlier.choice(0));
  }

  private static SolvedPart slope(
      DevelopmentScale scale, RearingTable table, EarlierAnswers earlier) {
    var kept = kept(table, earlier);
    return new SolvedPart(
        RearingTable.slope(kept.rates().slope()),
        kept.slopeSteps(scale, scale.working()),
        List.of(
            new TypicalSlip(
                DevelopmentMistake.ALL_POINTS_FITTED, RearingTable.slope(table.rates().slope())),
            new TypicalSlip(
                DevelopmentMistake.DAYS_ON_A_LINE, RearingTable.slope(kept.durations().slope()))));
  }
}
