package agro.course.topic.sampling;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.MeanDensity;
import agro.sampling.injury.UnitConversion;
import agro.source.Reference;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Unit;
import java.util.Set;

/** Pests on a unit of land from pests on a plant and the stand of plants. */
final class PestsPerArea {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final SamplingUnit SQUARE_METRE = SamplingUnit.of(SamplingUnit.Kind.SQUARE_METRE);

  private static final double SMALL_LAND = 1_000;

  private PestsPerArea() {}

  /** Rows, plants in the row, mean on a plant and size of the field. */
  private record Stand(Length row, Length plant, double mean, Area field) {}

  /** Units of land, of spacings, and the square that belongs to them. */
  private record Units(
      Unit<Area> land, Unit<Length> spacing, Unit<Length> side, Unit<Area> square) {
    static Units of(CourseContext context) {
      var units = context.units();
      boolean feet = units.course() == LengthUnit.FOOT;
      return new Units(
          units.land(),
          feet ? LengthUnit.INCH : LengthUnit.CENTIMETRE,
          feet ? LengthUnit.FOOT : LengthUnit.METRE,
          feet ? AreaUnit.SQUARE_FOOT : AreaUnit.SQUARE_METRE);
    }

    double squaresOnLand() {
      return Area.of(1, land).in(square);
    }

    /** Spacings in one side: 100 cm in a metre, 12 in in a foot. */
    double spacingsInSide() {
      return Length.of(1, side).in(spacing);
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-area",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            SamplingMistake.PLANT_AS_SQUARE,
            SamplingMistake.DIVIDED_BY_MEAN,
            SamplingMistake.LENGTH_FACTOR_NOT_SQUARED,
            SamplingMistake.ONE_SPACING_ONLY,
            SamplingMistake.ACRE_FOR_HECTARE,
            SamplingMistake.HECTARE_FOR_LAND_UNIT,
            SamplingMistake.DIVIDED_BY_FIELD,
            SamplingMistake.PLANTS_FOR_ANIMALS),
        PestsPerArea::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = Units.of(context);
    boolean feet = units.spacing() == LengthUnit.INCH;
    var stand =
        new Stand(
            Length.of(feet ? draw.step(18, 36, 2) : draw.step(45, 90, 5), units.spacing()),
            Length.of(feet ? draw.step(9, 20, 1) : draw.step(20, 50, 2), units.spacing()),
            draw.step(0.3, 8, 0.1),
            draw.sensible(
                Area.of(0.2, AreaUnit.HECTARE), Area.of(4, AreaUnit.HECTARE), units.land(), 2));
    double each = Area.of(1, units.land()).squareMetres();
    double plants = draw.sensible(2 * each, 9 * each, 2);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    var body =
        ExerciseBody.titled(words.say("area.title"))
            .story(
                words.say(
                    "area.story", "pest", pest, "field", field, "mean", words.exact(stand.mean())));
    var land = units.land();
    if (difficulty == Difficulty.BASIC) {
      return body.story(
              words.say(
                  "presence.story.stand", "stand", words.exact(plants), "land", land.symbol()))
          .givens(Givens.none().withNumber("mean", stand.mean()).withNumber("stand", plants))
          .source(Reference.commonPractice("Pests for an area are pests for a plant times plants"))
          .part(
              ask("area.question.pests", land, words),
              earlier -> pests(stand.mean(), plants, units, words))
          .build();
    }
    return routine(body, stand, units, words);
  }

  private static ExerciseBody routine(
      ExerciseBody.Builder body, Stand stand, Units units, CourseWords words) {
    var land = units.land();
    return body.story(
            words.say(
                "area.story.rows",
                "row",
                words.exact(stand.row(), units.spacing()),
                "plant",
                words.exact(stand.plant(), units.spacing()),
                "area",
                words.exact(stand.field(), land)))
        .story(
            words.say(
                "area.story.unit",
                "land",
                land.symbol(),
                "size",
                words.exact(Area.of(1, land), units.square())))
        .givens(
            Givens.none()
                .withNumber("mean", stand.mean())
                .withQuantity("row", stand.row())
                .withQuantity("plant", stand.plant())
                .withQuantity("field", stand.field()))
        .source(Reference.commonPractice("Pests for an area are pests for a plant times plants"))
        .part(ask("area.question.plants", land, words), earlier -> plants(stand, units, words))
        .part(
            ask("area.question.pests", land, words),
            earlier -> pests(stand.mean(), earlier.number(0), units, words))
        .part(words.say("area.question.field"), earlier -> field(stand, earlier, units, words))
        .build();
  }

  private static SolvedPart plants(Stand stand, Units units, CourseWords words) {
    var each = stand.row().times(stand.plant());
    double plants = Area.of(1, units.land()).ratioTo(each);
    double factor = units.spacingsInSide();
    var unit = words.say("plants");
    double row = stand.row().in(units.spacing()) / factor;
    var draft =
        SolutionDraft.titled(words, words.say("area.plants.step"))
            .step(
                "area.each",
                words.show(stand.row(), units.side())
                    + " × "
                    + words.show(stand.plant(), units.side()),
                words.show(each, units.square()))
            .step(
                "area.plants",
                words.number(units.squaresOnLand()) + " / " + words.number(each.in(units.square())),
                many(plants, units.land(), words))
            .slip(
                SamplingMistake.LENGTH_FACTOR_NOT_SQUARED,
                NumberAnswer.computed(plants / factor, decimals(units.land()), unit))
            .slip(
                SamplingMistake.ONE_SPACING_ONLY,
                NumberAnswer.computed(units.squaresOnLand() / row, decimals(units.land()), unit));
    boolean hectare = units.land() == AreaUnit.HECTARE;
    double other = Area.of(1, hectare ? AreaUnit.ACRE : AreaUnit.HECTARE).in(units.land());
    return draft
        .slip(
            hectare ? SamplingMistake.ACRE_FOR_HECTARE : SamplingMistake.HECTARE_FOR_LAND_UNIT,
            NumberAnswer.computed(plants * other, decimals(units.land()), unit))
        .answer(NumberAnswer.computed(plants, decimals(units.land()), unit));
  }

  /** Decimals of plants on a unit of land: few stand on a land of a few steps. */
  static int decimals(Unit<Area> land) {
    return Area.of(1, land).squareMetres() < SMALL_LAND ? 1 : 0;
  }

  /** A number of plants or animals with one decimal more than is asked for, unless it is whole. */
  static String many(double number, Unit<Area> land, CourseWords words) {
    double whole = Math.rint(number);
    return Math.abs(number - whole) < 1e-9 * whole
        ? words.exact(whole)
        : words.number(number, decimals(land) + 1);
  }

  /** A question for a number on a unit of land. */
  static String ask(String key, Unit<Area> land, CourseWords words) {
    return words.say(
        key, "land", land.symbol(), "rounding", words.say("rounding." + decimals(land)));
  }

  /** Pests on a unit of land from the mean on a plant. */
  static double onLand(double mean, double plantsOnLand, Unit<Area> land) {
    double squareMetres = Area.of(1, land).squareMetres();
    var conversion = new UnitConversion(PLANT, SQUARE_METRE, plantsOnLand / squareMetres, "stand");
    return new MeanDensity(PLANT, mean, 0).in(conversion).mean() * squareMetres;
  }

  private static SolvedPart pests(double mean, double plants, Units units, CourseWords words) {
    double pests = onLand(mean, plants, units.land());
    var unit = words.say("per.land", "land", units.land().symbol());
    return SolutionDraft.titled(words, words.say("area.pests.step"))
        .step(
            "area.pests",
            many(plants, units.land(), words) + " × " + words.exact(mean),
            many(pests, units.land(), words) + " " + unit)
        .slip(
            SamplingMistake.PLANT_AS_SQUARE,
            NumberAnswer.computed(mean * units.squaresOnLand(), decimals(units.land()), unit))
        .slip(
            SamplingMistake.DIVIDED_BY_MEAN,
            NumberAnswer.computed(plants / mean, decimals(units.land()), unit))
        .answer(NumberAnswer.computed(pests, decimals(units.land()), unit));
  }

  private static SolvedPart field(
      Stand stand, EarlierAnswers earlier, Units units, CourseWords words) {
    double area = stand.field().in(units.land());
    double perLand = earlier.number(1);
    return SolutionDraft.titled(words, words.say("area.field.step"))
        .step(
            "area.field",
            many(perLand, units.land(), words) + " × " + words.exact(area),
            many(perLand * area, units.land(), words))
        .slip(SamplingMistake.DIVIDED_BY_FIELD, NumberAnswer.computed(perLand / area, 0))
        .slip(
            SamplingMistake.PLANTS_FOR_ANIMALS, NumberAnswer.computed(earlier.number(0) * area, 0))
        .answer(NumberAnswer.computed(perLand * area, 0));
  }
}
