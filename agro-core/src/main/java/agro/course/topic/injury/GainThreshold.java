package agro.course.topic.injury;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.InjuryLevel;
import agro.source.SamplingBibliography;
import agro.units.MassPerArea;
import agro.working.Caution;
import java.util.Set;

/** How much produce pays a treatment, and how many pests eat so much. */
final class GainThreshold {

  private static final double PER_CENT = 100;

  private GainThreshold() {}

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-gain",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            InjuryMistake.BULK_PRICE_FOR_UNIT,
            InjuryMistake.PRICE_MULTIPLIED,
            InjuryMistake.UPSIDE_DOWN,
            InjuryMistake.SHARE_OF_THE_REST,
            InjuryMistake.CONTROL_LEFT_OUT,
            InjuryMistake.CONTROL_MULTIPLIED),
        GainThreshold::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var money = CourseMoney.of(context);
    var terms = TreatmentTerms.draw(draw, money);
    var yield = money.drawMass(draw, 15_000, 50_000);
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(InjuryExercises.class, "injury");
    var body = ExerciseBody.titled(words.say("gain.title")).cautions(Caution.all());
    body.source(SamplingBibliography.STONE_PEDIGO_1972);
    if (difficulty == Difficulty.BASIC) {
      return body.story(
              words.say(
                  "gain.story",
                  "crop",
                  crop,
                  "cost",
                  money.exactPerLand(terms.cost(), words),
                  "price",
                  money.givenPrice(terms.price(), words)))
          .givens(Givens.none().withNumber("cost", terms.cost()).withNumber("price", terms.price()))
          .part(
              words.say("gain.question", "unit", money.massPerLand().symbol()),
              earlier -> gain(terms, words))
          .build();
    }
    return body.story(terms.story(words, pest, crop))
        .story(words.say("gain.story.yield", "yield", money.exact(yield, words)))
        .givens(terms.givens().withQuantity("yield", yield))
        .source(SamplingBibliography.PEDIGO_1986)
        .part(
            words.say("gain.question", "unit", money.massPerLand().symbol()),
            earlier -> gain(terms, words))
        .part(
            words.say("gain.question.share"),
            earlier -> share(earlier.quantity(0, MassPerArea.class), yield, money, words))
        .part(
            words.say("gain.question.level"),
            earlier -> level(terms, earlier.quantity(0, MassPerArea.class), words))
        .build();
  }

  private static MeasuredAnswer<MassPerArea> mass(double number, CourseMoney money) {
    return MeasuredAnswer.of(MassPerArea.of(number, money.massPerLand()), money.massPerLand());
  }

  private static SolvedPart gain(TreatmentTerms terms, CourseWords words) {
    var money = terms.money();
    var gain = terms.level().gainThreshold().orElseThrow();
    double number = gain.in(money.massPerLand());
    var draft =
        SolutionDraft.titled(words, words.say("gain.title"))
            .step(
                "level.price",
                money.givenPrice(terms.price(), words),
                words.number(terms.unitPrice())
                    + " "
                    + money.sign()
                    + "/"
                    + money.harvest().symbol())
            .step(
                "gain",
                words.exact(terms.cost()) + " / " + words.number(terms.unitPrice()),
                money.show(gain, words))
            .slip(InjuryMistake.PRICE_MULTIPLIED, mass(terms.cost() * terms.unitPrice(), money))
            .slip(InjuryMistake.UPSIDE_DOWN, mass(1 / number, money));
    if (money.pricedInBulk()) {
      draft.slip(InjuryMistake.BULK_PRICE_FOR_UNIT, mass(number / money.harvestInBulk(), money));
    }
    return draft.answer(MeasuredAnswer.of(gain, money.massPerLand()));
  }

  private static SolvedPart share(
      MassPerArea gain, MassPerArea yield, CourseMoney money, CourseWords words) {
    double percent = PER_CENT * gain.ratioTo(yield);
    double rest = PER_CENT * gain.inBaseUnit() / (yield.inBaseUnit() - gain.inBaseUnit());
    return SolutionDraft.titled(words, words.say("gain.share.step"))
        .step(
            "gain.share",
            "100 × " + money.show(gain, words) + " / " + money.exact(yield, words),
            words.number(percent) + " %")
        .slip(InjuryMistake.SHARE_OF_THE_REST, PercentAnswer.rounded(rest, 2))
        .slip(InjuryMistake.UPSIDE_DOWN, PercentAnswer.rounded(PER_CENT / (percent / 100), 2))
        .answer(PercentAnswer.rounded(percent, 2));
  }

  private static SolvedPart level(TreatmentTerms terms, MassPerArea gain, CourseWords words) {
    var money = terms.money();
    // So much produce, at its price, is the cost of the adviser's formula.
    var cost = money.perBulk(terms.price()).times(gain);
    double level =
        InjuryLevel.of(
                cost,
                CropLoss.produce(terms.loss(), money.perBulk(terms.price())),
                terms.share(),
                terms.level().measure())
            .level();
    var unit = words.say("per.plant");
    double plain = level * terms.share();
    return SolutionDraft.titled(words, words.say("gain.level.step"))
        .step(
            "gain.level",
            money.show(gain, words)
                + " / ("
                + money.exact(terms.loss(), words)
                + " × "
                + words.exact(terms.share())
                + ")",
            words.number(level) + " " + unit)
        .slip(InjuryMistake.CONTROL_LEFT_OUT, NumberAnswer.computed(plain, 2, unit))
        .slip(
            InjuryMistake.CONTROL_MULTIPLIED, NumberAnswer.computed(plain * terms.share(), 2, unit))
        .slip(InjuryMistake.UPSIDE_DOWN, NumberAnswer.computed(1 / level, 2, unit))
        .answer(NumberAnswer.computed(level, 2, unit));
  }
}
