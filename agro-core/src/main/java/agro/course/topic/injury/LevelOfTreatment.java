package agro.course.topic.injury;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.source.SamplingBibliography;
import agro.working.Caution;
import java.util.Set;

/** The injury level from its terms, in one formula. */
final class LevelOfTreatment {

  private LevelOfTreatment() {}

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-formula",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.BASIC),
        Set.of(
            InjuryMistake.CONTROL_LEFT_OUT,
            InjuryMistake.CONTROL_MULTIPLIED,
            InjuryMistake.BULK_PRICE_FOR_UNIT,
            InjuryMistake.UPSIDE_DOWN),
        LevelOfTreatment::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var terms = TreatmentTerms.draw(draw, CourseMoney.of(context));
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(InjuryExercises.class, "injury");
    return ExerciseBody.titled(words.say("level.title"))
        .story(terms.story(words, pest, crop))
        .givens(terms.givens())
        .cautions(Caution.all())
        .source(SamplingBibliography.PEDIGO_1986)
        .part(words.say("level.question"), earlier -> solve(terms, words))
        .build();
  }

  private static SolvedPart solve(TreatmentTerms terms, CourseWords words) {
    var money = terms.money();
    double level = terms.level().level();
    double plain = level * terms.share();
    var unit = words.say("per.plant");
    var draft =
        SolutionDraft.titled(words, words.say("level.title"))
            .step(
                "level.price",
                money.price(terms.price(), words),
                words.number(terms.unitPrice())
                    + " "
                    + money.sign()
                    + "/"
                    + money.harvest().symbol())
            .step(
                "level",
                words.exact(terms.cost())
                    + " / ("
                    + words.number(terms.unitPrice())
                    + " × "
                    + words.exact(terms.lossNumber())
                    + " × "
                    + words.exact(terms.share())
                    + ")",
                words.number(level) + " " + unit)
            .slip(InjuryMistake.CONTROL_LEFT_OUT, NumberAnswer.computed(plain, 2, unit))
            .slip(
                InjuryMistake.CONTROL_MULTIPLIED,
                NumberAnswer.computed(plain * terms.share(), 2, unit))
            .slip(InjuryMistake.UPSIDE_DOWN, NumberAnswer.computed(1 / level, 2, unit));
    if (money.pricedInBulk()) {
      // So small a level needs more decimals to be told from none.
      draft.slip(
          InjuryMistake.BULK_PRICE_FOR_UNIT,
          NumberAnswer.computed(level / money.harvestInBulk(), 4, unit));
    }
    return draft.answer(NumberAnswer.computed(level, 2, unit));
  }
}
