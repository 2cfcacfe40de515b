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
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.EconomicThreshold;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.PestMeasure;
import agro.source.SamplingBibliography;
import agro.units.Area;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import java.util.Set;

/** An injury level for a loss in per cent, with the cost of product, passage and environment. */
final class LevelWithCosts {

  private static final double PER_CENT = 100;
  private static final double RATIO = 0.75;

  private LevelWithCosts() {}

  /** Rate, price of the product, cost of bringing it out, crop value, loss and control in %. */
  private record Costs(
      CourseMoney money,
      VolumePerArea rate,
      Unit<Volume> measure,
      Unit<Volume> water,
      double productPrice,
      double passage,
      double value,
      double percent,
      double control,
      double environment) {

    /** Product for one unit of land, in the unit of its price. */
    double product() {
      return rate.times(Area.of(1, money.land())).in(water);
    }

    double cost() {
      return product() * productPrice + passage;
    }

    InjuryLevel level(double cost) {
      return InjuryLevel.of(
          money.perLand(cost),
          CropLoss.share(percent / PER_CENT, money.perLand(value)),
          control / PER_CENT,
          PestMeasure.pestsPer(SamplingUnit.of(SamplingUnit.Kind.PLANT)));
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-costs",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.DEMANDING),
        Set.of(
            InjuryMistake.PASSAGE_LEFT_OUT,
            InjuryMistake.MEASURE_NOT_CONVERTED,
            InjuryMistake.CONTROL_LEFT_OUT,
            InjuryMistake.CONTROL_MULTIPLIED,
            InjuryMistake.PERCENT_AS_NUMBER,
            InjuryMistake.ENVIRONMENT_ALONE,
            InjuryMistake.ENVIRONMENT_SUBTRACTED,
            InjuryMistake.RATIO_DIVIDED,
            InjuryMistake.REST_OF_RATIO),
        LevelWithCosts::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var costs = costs(draw, context);
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(InjuryExercises.class, "injury");
    var money = costs.money();
    return ExerciseBody.titled(words.say("costs.title"))
        .story(
            words.say(
                "costs.story",
                "pest",
                pest,
                "crop",
                crop,
                "rate",
                words.exact(costs.rate(), VolumePerArea.unit(costs.measure(), money.land())),
                "price",
                words.exact(costs.productPrice())
                    + " "
                    + money.sign()
                    + "/"
                    + costs.water().symbol()
                    + CourseMoney.sizes(UnitSizes.in(words).and(costs.water(), costs.measure())),
                "passage",
                money.exactPerLand(costs.passage(), words)))
        .story(
            words.say(
                "costs.story.crop",
                "value",
                money.exactPerLand(costs.value(), words),
                "percent",
                words.exact(costs.percent()),
                "control",
                words.exact(costs.control()),
                "environment",
                money.exactPerLand(costs.environment(), words)))
        .givens(
            Givens.none()
                .withQuantity("rate", costs.rate())
                .withNumber("productPrice", costs.productPrice())
                .withNumber("passage", costs.passage())
                .withNumber("value", costs.value())
                .withNumber("percent", costs.percent())
                .withNumber("control", costs.control())
                .withNumber("environment", costs.environment()))
        .cautions(Caution.all())
        .source(SamplingBibliography.HIGLEY_WINTERSTEEN_1992)
        .source(SamplingBibliography.FIXED_RATIO_THRESHOLD)
        .part(money.ask("costs.question.cost", words), e -> cost(costs, words))
        .part(words.say("level.question"), e -> level(costs, e.number(0), words))
        .part(words.say("costs.question.environment"), e -> environment(costs, e.number(0), words))
        .part(words.say("costs.question.ratio"), e -> ratio(costs, e.number(2), words))
        .build();
  }

  private static Costs costs(ExerciseDraw draw, CourseContext context) {
    var money = CourseMoney.of(context);
    var units = context.units();
    double litres = Volume.of(1, units.water()).litres();
    while (true) {
      var costs =
          new Costs(
              money,
              draw.sensible(
                  new VolumePerArea(0.15),
                  new VolumePerArea(0.9),
                  VolumePerArea.unit(units.measure(), money.land()),
                  2),
              units.measure(),
              units.water(),
              draw.sensible(40 * litres, 160 * litres, 2),
              money.drawPerLand(draw, 15, 40),
              money.drawPerLand(draw, 2500, 9000),
              draw.step(0.5, 3, 0.1),
              draw.step(60, 95, 5),
              money.drawPerLand(draw, 8, 30));
      double level = costs.level(costs.cost()).level();
      if (level > 0.5 && level < 6) {
        return costs;
      }
    }
  }

  private static SolvedPart cost(Costs costs, CourseWords words) {
    var money = costs.money();
    double product = costs.product();
    double spent = product * costs.productPrice();
    double measured =
        costs.rate().in(VolumePerArea.unit(costs.measure(), money.land())) * costs.productPrice();
    return SolutionDraft.titled(words, words.say("costs.cost.step"))
        .step(
            "costs.product",
            words.exact(costs.rate(), VolumePerArea.unit(costs.measure(), money.land())),
            words.show(Volume.of(product, costs.water()), costs.water()))
        .step(
            "costs.cost",
            words.number(product)
                + " × "
                + words.exact(costs.productPrice())
                + " + "
                + words.exact(costs.passage()),
            money.perLand(costs.cost(), words))
        .slip(InjuryMistake.PASSAGE_LEFT_OUT, money.answer(spent))
        .slip(InjuryMistake.MEASURE_NOT_CONVERTED, money.answer(measured + costs.passage()))
        .answer(money.answer(costs.cost()));
  }

  private static String below(Costs costs, CourseWords words) {
    return words.exact(costs.value())
        + " × "
        + words.exact(costs.percent() / PER_CENT)
        + " × "
        + words.exact(costs.control() / PER_CENT);
  }

  private static SolvedPart level(Costs costs, double cost, CourseWords words) {
    double level = costs.level(cost).level();
    double share = costs.control() / PER_CENT;
    var unit = words.say("per.plant");
    return SolutionDraft.titled(words, words.say("level.title"))
        .step(
            "costs.level",
            words.number(cost) + " / (" + below(costs, words) + ")",
            words.number(level) + " " + unit)
        .slip(InjuryMistake.CONTROL_LEFT_OUT, NumberAnswer.computed(level * share, 2, unit))
        .slip(
            InjuryMistake.CONTROL_MULTIPLIED, NumberAnswer.computed(level * share * share, 2, unit))
        .slip(InjuryMistake.PERCENT_AS_NUMBER, NumberAnswer.computed(level / PER_CENT, 3, unit))
        .answer(NumberAnswer.computed(level, 2, unit));
  }

  private static SolvedPart environment(Costs costs, double cost, CourseWords words) {
    var plain = costs.level(cost);
    double level = plain.withEnvironmentalCost(costs.money().perLand(costs.environment())).level();
    double alone = costs.level(costs.environment()).level();
    var unit = words.say("per.plant");
    var draft = SolutionDraft.titled(words, words.say("costs.environment.step"));
    if (plain.level() > alone) {
      draft.slip(
          InjuryMistake.ENVIRONMENT_SUBTRACTED,
          NumberAnswer.computed(plain.level() - alone, 2, unit));
    }
    return draft
        .step(
            "costs.environment",
            "("
                + words.number(cost)
                + " + "
                + words.exact(costs.environment())
                + ") / ("
                + below(costs, words)
                + ")",
            words.number(level) + " " + unit)
        .slip(InjuryMistake.ENVIRONMENT_ALONE, NumberAnswer.computed(alone, 2, unit))
        .answer(NumberAnswer.computed(level, 2, unit));
  }

  private static SolvedPart ratio(Costs costs, double level, CourseWords words) {
    double threshold =
        new EconomicThreshold(
                level,
                costs.level(costs.cost()).measure(),
                new EconomicThreshold.Rule.FixedRatio(RATIO))
            .threshold();
    var unit = words.say("per.plant");
    return SolutionDraft.titled(words, words.say("threshold.step"))
        .step(
            "costs.ratio",
            words.exact(RATIO) + " × " + words.number(level),
            words.number(threshold) + " " + unit)
        .slip(InjuryMistake.RATIO_DIVIDED, NumberAnswer.computed(level / RATIO, 2, unit))
        .slip(InjuryMistake.REST_OF_RATIO, NumberAnswer.computed(level * (1 - RATIO), 2, unit))
        .answer(NumberAnswer.computed(threshold, 2, unit));
  }
}
