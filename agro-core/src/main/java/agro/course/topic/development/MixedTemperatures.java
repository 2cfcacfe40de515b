package agro.course.topic.development;

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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.rate.RearingMean;
import agro.source.Reference;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A stage that passes through three temperatures: rates add up, durations do not. */
final class MixedTemperatures implements ExerciseType {

  private static final int ATTEMPTS = 50;

  /** Durations at three temperatures and the days spent at the first two. */
  private record Plan(
      List<Double> celsius, List<Double> durations, int cool, int mild, LocalDate start) {
    double share() {
      return cool / durations.get(0) + mild / durations.get(1);
    }

    double rest() {
      return (1 - share()) * durations.get(2);
    }

    boolean clear() {
      double part = rest() - Math.floor(rest());
      return share() > 0.3 && share() < 0.8 && part > 0.15 && part < 0.85;
    }
  }

  @Override
  public String code() {
    return "development-mixed";
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
        DevelopmentMistake.DAYS_AVERAGED,
        DevelopmentMistake.RATES_AVERAGED,
        DevelopmentMistake.DONE_FOR_REST,
        DevelopmentMistake.WHOLE_FOR_REST,
        DevelopmentMistake.PART_DAY_DROPPED,
        DevelopmentMistake.DAYS_BEFORE_LEFT_OUT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "mixed.title");
    var plan = draw(draw, scale);
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "mixed.story",
                "pest",
                draw.oneOf(context.setting().pests()),
                "start",
                words.day(plan.start),
                "cool",
                plan.cool,
                "coolAt",
                scale.degrees(plan.celsius.get(0)),
                "mild",
                plan.mild,
                "mildAt",
                scale.degrees(plan.celsius.get(1)),
                "warmAt",
                scale.degrees(plan.celsius.get(2))))
        .exhibit(exhibit(scale, plan))
        .givens(
            Givens.none()
                .withNumbers("temperatures", plan.celsius)
                .withNumbers("durations", plan.durations)
                .withNumber("cool", plan.cool)
                .withNumber("mild", plan.mild)
                .withDay("start", plan.start))
        .part(words.say("mixed.question.share"), earlier -> share(scale, plan))
        .part(
            words.say("mixed.question.rest", "at", scale.degrees(plan.celsius.get(2))),
            earlier -> rest(scale, plan, earlier))
        .part(words.say("mixed.question.date"), earlier -> date(scale, plan, earlier))
        .source(Reference.commonPractice("Rates of development at changing temperatures add up"))
        .build();
  }

  private static Plan draw(ExerciseDraw draw, DevelopmentScale scale) {
    boolean fahrenheit = scale.fahrenheit();
    var start = LocalDate.of(2027, draw.whole(4, 7), draw.whole(1, 20));
    Plan plan = null;
    for (int attempt = 0; attempt < ATTEMPTS && (plan == null || !plan.clear()); attempt++) {
      double lower = fahrenheit ? draw.step(44, 51, 0.5) : draw.step(6.5, 10.5, 0.5);
      double requirement = draw.step(120, 320, 1) * (fahrenheit ? 1.8 : 1);
      var at =
          fahrenheit
              ? List.of(draw.step(57, 62, 1), draw.step(65, 70, 1), draw.step(74, 81, 1))
              : List.of(draw.step(14, 16, 1), draw.step(18, 21, 1), draw.step(23, 27, 1));
      var durations =
          at.stream().map(one -> DevelopmentScale.tenth(requirement / (one - lower))).toList();
      int cool = Math.max(2, (int) (durations.get(0) * draw.step(0.15, 0.35, 0.05)));
      int mild = Math.max(2, (int) (durations.get(1) * draw.step(0.15, 0.45, 0.05)));
      plan = new Plan(at, durations, cool, mild, start);
    }
    return plan;
  }

  private static Block exhibit(DevelopmentScale scale, Plan plan) {
    var words = scale.words();
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < plan.celsius.size(); i++) {
      rows.add(
          List.of(
              Cell.text(words.exact(plan.celsius.get(i))),
              Cell.text(words.exact(plan.durations.get(i)))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("table.durations"),
            List.of(
                Column.of(words.say("table.temperature"), scale.degree()),
                Column.of(words.say("table.duration"), words.say("days.short"))),
            rows));
  }

  private static SolvedPart share(DevelopmentScale scale, Plan plan) {
    double first = plan.cool * rate(scale, plan, 0);
    double second = plan.mild * rate(scale, plan, 1);
    double right = 100 * (first + second);
    double meanDuration = (plan.durations.get(0) + plan.durations.get(1)) / 2;
    var substitution =
        "("
            + plan.cool
            + " / "
            + scale.term(plan.durations.get(0))
            + " + "
            + plan.mild
            + " / "
            + scale.term(plan.durations.get(1))
            + ") × 100 %";
    return new SolvedPart(
        PercentAnswer.rounded(right, 1),
        scale.step("mixed.share", substitution, scale.words().number(right, 1) + " %"),
        List.of(
            percent(DevelopmentMistake.DAYS_AVERAGED, 100 * (plan.cool + plan.mild) / meanDuration),
            percent(DevelopmentMistake.RATES_AVERAGED, right / 2)));
  }

  private static double rate(DevelopmentScale scale, Plan plan, int row) {
    return RearingMean.of(scale.celsius(plan.celsius.get(row)), plan.durations.get(row)).rate();
  }

  private static TypicalSlip percent(DevelopmentMistake mistake, double percent) {
    return new TypicalSlip(mistake, PercentAnswer.rounded(percent, 1));
  }

  private static SolvedPart rest(DevelopmentScale scale, Plan plan, EarlierAnswers earlier) {
    double done = earlier.number(0);
    if (!(done >= 0 && done < 100)) {
      throw new IllegalArgumentException("nothing is left of a stage that is done");
    }
    double right = (1 - done / 100) / rate(scale, plan, 2);
    double whole = plan.durations.get(2);
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step(
            "mixed.rest",
            "(1 − " + scale.words().number(done / 100) + ") × " + scale.term(whole),
            scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.DONE_FOR_REST, done / 100 * whole),
            scale.daysSlip(DevelopmentMistake.WHOLE_FOR_REST, whole)));
  }

  private static SolvedPart date(DevelopmentScale scale, Plan plan, EarlierAnswers earlier) {
    double rest = earlier.number(1);
    if (!(rest > 0 && rest < 366)) {
      throw new IllegalArgumentException("no stage ends after " + rest + " days");
    }
    int days = (int) Math.ceil(rest);
    var right = plan.start.plusDays(plan.cool + plan.mild + (long) days);
    var slips = new ArrayList<TypicalSlip>();
    if (days > rest) {
      slips.add(
          new TypicalSlip(
              DevelopmentMistake.PART_DAY_DROPPED, new DayAnswer(right.minusDays(1), 0)));
    }
    slips.add(
        new TypicalSlip(
            DevelopmentMistake.DAYS_BEFORE_LEFT_OUT, new DayAnswer(plan.start.plusDays(days), 0)));
    return new SolvedPart(
        new DayAnswer(right, 0),
        scale.step(
            "mixed.date",
            scale.words().day(plan.start) + " + " + plan.cool + " + " + plan.mild + " + " + days,
            scale.words().day(right)),
        slips);
  }
}
