package agro.course.topic.injury;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.EconomicThreshold;
import agro.sampling.injury.PestMeasure;
import agro.sampling.injury.ThresholdLeadTime;
import agro.source.SamplingBibliography;
import agro.working.Caution;
import java.util.Set;

/** The threshold at which to act, so that a growing pest does not reach its injury level. */
final class ThresholdBeforeLevel {

  private ThresholdBeforeLevel() {}

  /** Terms, days in which numbers double, days until a treatment acts. */
  private record Growing(TreatmentTerms terms, double doubling, double lead) {}

  /** Terms, two counts so many days apart, days until a treatment acts. */
  private record Counted(
      TreatmentTerms terms, double earlier, double later, double days, double lead) {}

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-threshold",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            InjuryMistake.BULK_PRICE_FOR_UNIT,
            InjuryMistake.UPSIDE_DOWN,
            InjuryMistake.CONTROL_LEFT_OUT,
            InjuryMistake.CONTROL_MULTIPLIED,
            InjuryMistake.GROWTH_FORWARD,
            InjuryMistake.GROWTH_IN_A_LINE,
            InjuryMistake.DOUBLING_EVERY_DAY,
            InjuryMistake.COMMON_LOGARITHM,
            InjuryMistake.DAYS_LEFT_OUT_OF_RATE,
            InjuryMistake.DIFFERENCE_AS_RATE,
            InjuryMistake.LEVEL_FOR_THRESHOLD,
            InjuryMistake.BACKWARDS),
        ThresholdBeforeLevel::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var terms = TreatmentTerms.draw(draw, CourseMoney.of(context));
    double lead = draw.whole(2, 6);
    double doubling = draw.step(3, 8, 0.5);
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(InjuryExercises.class, "injury");
    var body =
        ExerciseBody.titled(words.say("threshold.title"))
            .cautions(Caution.all())
            .source(SamplingBibliography.PEDIGO_1986)
            .source(SamplingBibliography.PEDIGO_1996);
    return difficulty == Difficulty.ROUTINE
        ? routine(body, new Growing(terms, doubling, lead), words, terms.story(words, pest, crop))
        : demanding(body, counted(draw, terms, lead), words, terms.story(words, pest, crop));
  }

  private static ExerciseBody routine(
      ExerciseBody.Builder body, Growing growing, CourseWords words, String story) {
    var terms = growing.terms();
    return body.story(story)
        .story(
            words.say(
                "threshold.story.doubling",
                "doubling",
                words.exact(growing.doubling()),
                "lead",
                words.exact(growing.lead())))
        .givens(
            terms
                .givens()
                .withNumber("doubling", growing.doubling())
                .withNumber("lead", growing.lead()))
        .part(
            terms.money().ask("threshold.question.money", words), earlier -> perPest(terms, words))
        .part(words.say("level.question"), earlier -> level(terms, earlier.number(0), words))
        .part(
            words.say("threshold.question"), earlier -> doubled(growing, earlier.number(1), words))
        .build();
  }

  /** Counts that grow by a fifth to threefold, the later one on either side of the threshold. */
  private static Counted counted(ExerciseDraw draw, TreatmentTerms terms, double lead) {
    double level = terms.level().level();
    while (true) {
      double days = draw.whole(4, 9);
      double rate = draw.step(0.06, 0.2, 0.01);
      double threshold = level * StrictMath.exp(-rate * lead);
      double later = Math.rint(10 * threshold * (0.5 + draw.share())) / 10;
      double earlier = Math.rint(10 * later * StrictMath.exp(-rate * days)) / 10;
      if (earlier > 0.1 && later > 1.1 * earlier) {
        double real = level * StrictMath.pow(earlier / later, lead / days);
        if (Math.abs(later / real - 1) > 0.06 && Math.abs(later / level - 1) > 0.06) {
          return new Counted(terms, earlier, later, days, lead);
        }
      }
    }
  }

  private static ExerciseBody demanding(
      ExerciseBody.Builder body, Counted counted, CourseWords words, String story) {
    var terms = counted.terms();
    return body.story(story)
        .story(
            words.say(
                "threshold.story.counts",
                "earlier",
                words.exact(counted.earlier()),
                "days",
                words.exact(counted.days()),
                "later",
                words.exact(counted.later()),
                "lead",
                words.exact(counted.lead())))
        .givens(
            terms
                .givens()
                .withNumber("earlier", counted.earlier())
                .withNumber("later", counted.later())
                .withNumber("days", counted.days())
                .withNumber("lead", counted.lead()))
        .part(
            terms.money().ask("threshold.question.money", words), earlier -> perPest(terms, words))
        .part(words.say("level.question"), earlier -> level(terms, earlier.number(0), words))
        .part(words.say("threshold.question.rate"), earlier -> rate(counted, words))
        .part(words.say("threshold.question"), earlier -> threshold(counted, earlier, words))
        .part(words.say("threshold.question.verdict"), earlier -> verdict(counted, earlier, words))
        .build();
  }

  /** Money that one pest on each plant costs on a unit of land. */
  static SolvedPart perPest(TreatmentTerms terms, CourseWords words) {
    var money = terms.money();
    double perPest = terms.cropLoss().perPest().in(money.land());
    var draft =
        SolutionDraft.titled(words, words.say("pest.money.step"))
            .step(
                "level.price",
                money.price(terms.price(), words),
                words.number(terms.unitPrice())
                    + " "
                    + money.sign()
                    + "/"
                    + money.harvest().symbol())
            .step(
                "pest.money",
                words.number(terms.unitPrice()) + " × " + words.exact(terms.lossNumber()),
                money.perLand(perPest, words))
            .slip(InjuryMistake.UPSIDE_DOWN, money.answer(terms.lossNumber() / terms.unitPrice()));
    if (money.pricedInBulk()) {
      draft.slip(InjuryMistake.BULK_PRICE_FOR_UNIT, money.answer(perPest * money.harvestInBulk()));
    }
    return draft.answer(money.answer(perPest));
  }

  /** The level from the money that one pest costs. */
  static SolvedPart level(TreatmentTerms terms, double perPest, CourseWords words) {
    double level = terms.level(perPest);
    double plain = level * terms.share();
    var unit = words.say("per.plant");
    return SolutionDraft.titled(words, words.say("level.title"))
        .step(
            "level.money",
            words.exact(terms.cost())
                + " / ("
                + words.number(perPest)
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

  private static double threshold(double level, double rate, double lead) {
    return new EconomicThreshold(
            level,
            PestMeasure.pestsPer(SamplingUnit.of(SamplingUnit.Kind.PLANT)),
            new EconomicThreshold.Rule.Growth(rate, ThresholdLeadTime.ofDays(lead)))
        .threshold();
  }

  private static SolvedPart doubled(Growing growing, double level, CourseWords words) {
    double days = growing.lead();
    double doubling = growing.doubling();
    double rate = EconomicThreshold.rateOfDoubling(doubling);
    double threshold = threshold(level, rate, days);
    var unit = words.say("per.plant");
    return SolutionDraft.titled(words, words.say("threshold.step"))
        .step(
            "threshold.doubling",
            words.number(level)
                + " / 2^("
                + words.exact(days)
                + " / "
                + words.exact(doubling)
                + ")",
            words.number(threshold) + " " + unit)
        .slip(
            InjuryMistake.GROWTH_FORWARD, NumberAnswer.computed(level * level / threshold, 2, unit))
        .slip(
            InjuryMistake.GROWTH_IN_A_LINE,
            NumberAnswer.computed(level / (1 + days / doubling), 2, unit))
        .slip(
            InjuryMistake.DOUBLING_EVERY_DAY,
            NumberAnswer.computed(level / Math.pow(2, days), 2, unit))
        .answer(NumberAnswer.computed(threshold, 2, unit));
  }

  private static SolvedPart rate(Counted counted, CourseWords words) {
    double rate = EconomicThreshold.growthRate(counted.earlier(), counted.later(), counted.days());
    double ratio = counted.later() / counted.earlier();
    return SolutionDraft.titled(words, words.say("threshold.rate.step"))
        .step(
            "threshold.rate",
            "ln("
                + words.exact(counted.later())
                + " / "
                + words.exact(counted.earlier())
                + ") / "
                + words.exact(counted.days()),
            words.number(rate))
        .slip(
            InjuryMistake.COMMON_LOGARITHM,
            NumberAnswer.computed(Math.log10(ratio) / counted.days(), 4))
        .slip(InjuryMistake.DAYS_LEFT_OUT_OF_RATE, NumberAnswer.computed(Math.log(ratio), 4))
        .slip(
            InjuryMistake.DIFFERENCE_AS_RATE,
            NumberAnswer.computed((ratio - 1) / counted.days(), 4))
        .answer(NumberAnswer.computed(rate, 4));
  }

  private static SolvedPart threshold(Counted counted, EarlierAnswers earlier, CourseWords words) {
    double level = earlier.number(1);
    double rate = earlier.number(2);
    double lead = counted.lead();
    double threshold = threshold(level, rate, lead);
    double inLine = level * (1 - rate * lead);
    var unit = words.say("per.plant");
    var draft = SolutionDraft.titled(words, words.say("threshold.step"));
    if (inLine > 0) {
      draft.slip(InjuryMistake.GROWTH_IN_A_LINE, NumberAnswer.computed(inLine, 2, unit));
    }
    return draft
        .step(
            "threshold.growth",
            words.number(level) + " × e^(−" + words.number(rate) + " × " + words.exact(lead) + ")",
            words.number(threshold) + " " + unit)
        .slip(
            InjuryMistake.GROWTH_FORWARD,
            NumberAnswer.computed(level * Math.exp(rate * lead), 2, unit))
        .answer(NumberAnswer.computed(threshold, 2, unit));
  }

  private static SolvedPart verdict(Counted counted, EarlierAnswers earlier, CourseWords words) {
    double threshold = earlier.number(3);
    double level = earlier.number(1);
    double now = counted.later();
    var right = TreatingVerdict.of(now >= threshold, words);
    var waits = now >= threshold && now < level;
    return SolutionDraft.titled(words, words.say("threshold.verdict.step"))
        .step(
            "threshold.verdict",
            words.say(
                "threshold.against",
                "mean",
                words.exact(now),
                "threshold",
                words.number(threshold)),
            right.print(words))
        .slip(
            waits ? InjuryMistake.LEVEL_FOR_THRESHOLD : InjuryMistake.BACKWARDS,
            TreatingVerdict.opposite(right))
        .answer(right);
  }
}
