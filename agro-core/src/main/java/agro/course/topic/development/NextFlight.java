package agro.course.topic.development;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
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
import agro.development.Span;
import agro.development.ThermalRequirement;
import agro.source.Reference;
import agro.working.Caution;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The next flight from the last one: the requirement has to span flight to flight. */
final class NextFlight implements ExerciseType {

  private static final int ATTEMPTS = 50;

  /** Requirements of the parts of a generation above one threshold, and the weather ahead. */
  private record Plan(
      double lower, double egg, double grown, double beforeEggs, double mean, LocalDate flight) {
    double days() {
      return (egg + grown + beforeEggs) / (mean - lower);
    }

    boolean clear() {
      double part = days() - Math.floor(days());
      return part > 0.15 && part < 0.85;
    }
  }

  /** What the parts could be put together to. */
  private enum Together {
    LARVA_AND_PUPA,
    EGG_TO_ADULT,
    GENERATION;

    String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  @Override
  public String code() {
    return "development-next-flight";
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
        DevelopmentMistake.BEFORE_EGGS_FORGOTTEN,
        DevelopmentMistake.EGG_LEFT_OUT,
        DevelopmentMistake.BEFORE_EGGS_TWICE,
        DevelopmentMistake.BEFORE_EGGS_SUBTRACTED,
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.THRESHOLD_ADDED,
        DevelopmentMistake.PART_DAY_DROPPED,
        DevelopmentMistake.ONE_DAY_LATE);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "flight.title");
    var plan = draw(draw, scale);
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "flight.story",
                "place",
                context.setting().place(),
                "pest",
                pest,
                "flight",
                words.day(plan.flight),
                "lower",
                scale.degrees(plan.lower),
                "egg",
                scale.exactSum(plan.egg),
                "grown",
                scale.exactSum(plan.grown),
                "eggs",
                scale.exactSum(plan.beforeEggs),
                "mean",
                scale.degrees(plan.mean)))
        .givens(
            Givens.none()
                .withNumber("lower", plan.lower)
                .withNumber("egg", plan.egg)
                .withNumber("larva and pupa", plan.grown)
                .withNumber("before eggs", plan.beforeEggs)
                .withNumber("mean", plan.mean)
                .withDay("flight", plan.flight))
        .part(words.say("flight.question.span"), earlier -> span(scale))
        .part(
            words.say(
                "flight.question.requirement", "unit", context.units().thermalTime().symbol()),
            earlier -> requirement(scale, plan, pest, earlier))
        .part(words.say("flight.question.days"), earlier -> days(scale, plan, pest, earlier))
        .part(words.say("flight.question.date"), earlier -> date(scale, plan, earlier))
        .cautions(Caution.all())
        .source(Reference.commonPractice("From flight to flight is one generation"))
        .build();
  }

  private static Plan draw(ExerciseDraw draw, DevelopmentScale scale) {
    boolean fahrenheit = scale.fahrenheit();
    double unit = fahrenheit ? 2 : 1;
    var flight = LocalDate.of(2027, draw.whole(5, 7), draw.whole(1, 25));
    Plan plan = null;
    for (int attempt = 0; attempt < ATTEMPTS && (plan == null || !plan.clear()); attempt++) {
      plan =
          new Plan(
              fahrenheit ? draw.step(43, 50, 1) : draw.step(6, 10, 0.5),
              draw.step(40, 90, 5) * unit,
              draw.step(200, 380, 10) * unit,
              draw.step(35, 80, 5) * unit,
              fahrenheit ? draw.step(63, 75, 1) : draw.step(17, 23, 0.5),
              flight);
    }
    return plan;
  }

  private static SolvedPart span(DevelopmentScale scale) {
    var choices = new ArrayList<AnswerChoice>();
    for (var together : Together.values()) {
      choices.add(
          new AnswerChoice(together.code(), scale.words().say("flight.choice." + together.code())));
    }
    var right = new ChoiceAnswer(choices, Together.GENERATION.code());
    return new SolvedPart(
        right,
        scale.step("flight.span", "", right.print(scale.words())),
        List.of(
            new TypicalSlip(
                DevelopmentMistake.BEFORE_EGGS_FORGOTTEN,
                right.withCode(Together.EGG_TO_ADULT.code())),
            new TypicalSlip(
                DevelopmentMistake.EGG_LEFT_OUT, right.withCode(Together.LARVA_AND_PUPA.code()))));
  }

  /** The library adds up only parts that make a named span above one threshold. */
  private static ThermalRequirement together(
      DevelopmentScale scale, Plan plan, String pest, String choice) {
    var grown = scale.requirement(pest, Span.LARVA_AND_PUPA, plan.lower, scale.sum(plan.grown));
    if (choice.equals(Together.LARVA_AND_PUPA.code())) {
      return grown;
    }
    var adult = scale.requirement(pest, Span.EGG, plan.lower, scale.sum(plan.egg)).plus(grown);
    return choice.equals(Together.EGG_TO_ADULT.code())
        ? adult
        : adult.plus(
            scale.requirement(
                pest, Span.ADULT_TO_FIRST_EGG, plan.lower, scale.sum(plan.beforeEggs)));
  }

  private static SolvedPart requirement(
      DevelopmentScale scale, Plan plan, String pest, EarlierAnswers earlier) {
    var together = together(scale, plan, pest, earlier.choice(0));
    double right = scale.number(together.requirement());
    var substitution =
        switch (together.span()) {
          case LARVA_AND_PUPA -> "";
          case EGG_TO_ADULT -> scale.term(plan.egg) + " + " + scale.term(plan.grown);
          default ->
              scale.term(plan.egg)
                  + " + "
                  + scale.term(plan.grown)
                  + " + "
                  + scale.term(plan.beforeEggs);
        };
    var slips = new ArrayList<TypicalSlip>();
    if (together.span() == Span.GENERATION) {
      slips.add(scale.sumSlip(DevelopmentMistake.BEFORE_EGGS_FORGOTTEN, right - plan.beforeEggs));
      slips.add(
          scale.sumSlip(DevelopmentMistake.BEFORE_EGGS_SUBTRACTED, right - 2 * plan.beforeEggs));
    }
    slips.add(scale.sumSlip(DevelopmentMistake.BEFORE_EGGS_TWICE, right + plan.beforeEggs));
    return new SolvedPart(
        scale.sumAnswer(right),
        scale.step("flight.requirement", substitution, scale.sumText(right)),
        slips);
  }

  private static SolvedPart days(
      DevelopmentScale scale, Plan plan, String pest, EarlierAnswers earlier) {
    var sum = earlier.thermalTime(1);
    double number = scale.number(sum);
    double right =
        scale
            .requirement(pest, Span.FLIGHT_TO_FLIGHT, plan.lower, sum)
            .daysAt(scale.celsius(plan.mean));
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step(
            "constant",
            scale.term(number)
                + " / ("
                + scale.term(plan.mean)
                + " − "
                + scale.term(plan.lower)
                + ")",
            scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, number / plan.mean),
            scale.daysSlip(DevelopmentMistake.THRESHOLD_ADDED, number / (plan.mean + plan.lower))));
  }

  private static SolvedPart date(DevelopmentScale scale, Plan plan, EarlierAnswers earlier) {
    double days = earlier.number(2);
    if (!(days > 0 && days < 366)) {
      throw new IllegalArgumentException("no flight comes after " + days + " days");
    }
    int whole = (int) Math.ceil(days);
    var right = plan.flight.plusDays(whole);
    var slips = new ArrayList<TypicalSlip>();
    if (whole > days) {
      slips.add(
          new TypicalSlip(
              DevelopmentMistake.PART_DAY_DROPPED, new DayAnswer(right.minusDays(1), 0)));
    }
    slips.add(
        new TypicalSlip(DevelopmentMistake.ONE_DAY_LATE, new DayAnswer(right.plusDays(1), 0)));
    return new SolvedPart(
        new DayAnswer(right, 0),
        scale.step(
            "flight.date",
            scale.words().day(plan.flight) + " + " + whole,
            scale.words().day(right)),
        slips);
  }
}
