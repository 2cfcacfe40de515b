package agro.course.topic.injury;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.source.SamplingBibliography;
import agro.units.MassPerArea;
import agro.working.Caution;
import java.util.List;
import java.util.Set;

/** Whether a treatment pays at a number of pests, and at which price it just would. */
final class TreatmentWorth {

  private TreatmentWorth() {}

  /** Terms and mean number of pests. */
  private record Case(TreatmentTerms terms, double pests) {}

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-worth",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            InjuryMistake.PESTS_LEFT_OUT,
            InjuryMistake.UPSIDE_DOWN,
            InjuryMistake.BULK_PRICE_FOR_UNIT,
            InjuryMistake.PRICE_DIVIDED,
            InjuryMistake.CONTROL_LEFT_OUT,
            InjuryMistake.COST_NOT_TAKEN_OFF,
            InjuryMistake.COST_TAKEN_OFF_FIRST,
            InjuryMistake.COST_NOT_COUNTED,
            InjuryMistake.BACKWARDS,
            InjuryMistake.UNIT_PRICE_FOR_BULK),
        TreatmentWorth::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var terms = TreatmentTerms.draw(draw, CourseMoney.of(context));
    var given = new Case(terms, pests(draw, terms.level().level()));
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(InjuryExercises.class, "injury");
    var money = terms.money();
    var body =
        ExerciseBody.titled(words.say("worth.title"))
            .story(terms.story(words, pest, crop))
            .story(words.say("worth.story", "field", field, "pests", words.exact(given.pests())))
            .givens(terms.givens().withNumber("pests", given.pests()))
            .cautions(Caution.all())
            .source(SamplingBibliography.PEDIGO_1986)
            .part(
                words.say("worth.question.loss", "unit", money.massPerLand().symbol()),
                e -> loss(given, words))
            .part(
                money.ask("worth.question.money", words),
                e -> InsectDaysOfCounts.lostMoney(terms, e.quantity(0, MassPerArea.class), words))
            .part(money.ask("worth.question.gain", words), e -> gain(terms, e.number(1), words));
    if (difficulty == Difficulty.ROUTINE) {
      return body.part(words.say("worth.question.verdict"), e -> verdict(given, e, words)).build();
    }
    return body.part(
            words.say(
                "worth.question.price", "unit", money.sign() + "/" + words.symbol(money.bulk())),
            e -> price(given, e.quantity(0, MassPerArea.class), words))
        .build();
  }

  /** Clearly below or above the level, as often. */
  private static double pests(ExerciseDraw draw, double level) {
    while (true) {
      double pests = Math.rint(10 * level * (0.5 + draw.share())) / 10;
      if (pests > 0.1 && Math.abs(pests / level - 1) > 0.08) {
        return pests;
      }
    }
  }

  private static SolvedPart loss(Case given, CourseWords words) {
    var money = given.terms().money();
    var unit = money.massPerLand();
    var loss = given.terms().loss().times(given.pests());
    return SolutionDraft.titled(words, words.say("worth.loss.step"))
        .step(
            "worth.loss",
            words.exact(given.pests()) + " × " + money.exact(given.terms().loss(), words),
            money.show(loss, words))
        .slip(InjuryMistake.PESTS_LEFT_OUT, MeasuredAnswer.of(given.terms().loss(), unit))
        .slip(
            InjuryMistake.UPSIDE_DOWN,
            MeasuredAnswer.of(given.terms().loss().dividedBy(given.pests()), unit))
        .answer(MeasuredAnswer.of(loss, unit));
  }

  /** What a treatment saves less what it costs. */
  static SolvedPart gain(TreatmentTerms terms, double lost, CourseWords words) {
    var money = terms.money();
    double saved = lost * terms.share();
    double gain = saved - terms.cost();
    return SolutionDraft.titled(words, words.say("worth.gain.step"))
        .step(
            "worth.saved",
            words.number(lost) + " × " + words.exact(terms.share()),
            money.perLand(saved, words))
        .step(
            "worth.gain",
            words.number(saved) + " − " + words.exact(terms.cost()),
            money.perLand(gain, words))
        .slip(InjuryMistake.CONTROL_LEFT_OUT, answer(lost - terms.cost(), lost, money))
        .slip(InjuryMistake.COST_NOT_TAKEN_OFF, answer(saved, lost, money))
        .slip(
            InjuryMistake.COST_TAKEN_OFF_FIRST,
            answer((lost - terms.cost()) * terms.share(), lost, money))
        .answer(answer(gain, lost, money));
  }

  /** A difference is as exact as the amounts that it comes from. */
  private static ExpectedAnswer answer(double gain, double lost, CourseMoney money) {
    return new NumberAnswer(
        gain,
        money.decimals(),
        AnswerTolerance.usual(Math.max(Math.abs(gain), lost)),
        List.of(money.perLandWord()));
  }

  private static SolvedPart verdict(Case given, EarlierAnswers earlier, CourseWords words) {
    double gain = earlier.number(2);
    var right = TreatingVerdict.of(gain > 0, words);
    boolean saves = earlier.number(1) * given.terms().share() > 0;
    return SolutionDraft.titled(words, words.say("worth.verdict.step"))
        .step("worth.verdict", words.number(gain), right.print(words))
        .slip(
            gain <= 0 && saves ? InjuryMistake.COST_NOT_COUNTED : InjuryMistake.BACKWARDS,
            TreatingVerdict.opposite(right))
        .answer(right);
  }

  private static SolvedPart price(Case given, MassPerArea loss, CourseWords words) {
    var terms = given.terms();
    var money = terms.money();
    var unit = money.sign() + "/" + words.symbol(money.bulk());
    double number = loss.in(money.massPerLand());
    // The level is the density at which the price just pays; here the density is given instead.
    double perUnit = terms.cost() / (number * terms.share());
    double price = perUnit * money.harvestInBulk();
    var draft =
        SolutionDraft.titled(words, words.say("worth.price.step"))
            .step(
                "worth.price",
                words.exact(terms.cost())
                    + " / ("
                    + words.number(number)
                    + " × "
                    + words.exact(terms.share())
                    + ")",
                words.number(perUnit) + " " + money.sign() + "/" + money.harvest().symbol())
            .step(
                "worth.bulk",
                words.number(perUnit) + " × " + words.exact(money.harvestInBulk()),
                words.number(price) + " " + unit)
            .slip(
                InjuryMistake.CONTROL_LEFT_OUT,
                NumberAnswer.computed(price * terms.share(), 2, unit));
    if (money.pricedInBulk()) {
      draft.slip(InjuryMistake.UNIT_PRICE_FOR_BULK, NumberAnswer.computed(perUnit, 4, unit));
    }
    return draft.answer(NumberAnswer.computed(price, 2, unit));
  }
}
