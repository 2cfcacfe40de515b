package agro.course.topic.units;

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
import agro.course.MeasuredAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Unit;
import java.util.EnumSet;
import java.util.Set;

/**
 * The size of a field that was paced: a triangle, or a trapezium with two parallel sides.
 *
 * @param course distance over which paces were counted
 * @param paces paces counted over it
 * @param first one side in paces
 * @param second the parallel side in paces; unused for a triangle
 * @param across distance between the sides, or height of the triangle, in paces
 * @param field name of the field
 * @param context for whom
 */
record PacedField(
    Length course,
    double paces,
    double first,
    double second,
    double across,
    String field,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-field-area",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            UnitMistake.PACE_INVERTED,
            UnitMistake.PACE_NOT_CONVERTED,
            UnitMistake.TRIANGLE_NOT_HALVED,
            UnitMistake.TRAPEZIUM_NOT_HALVED,
            UnitMistake.ONE_SIDE_ONLY,
            UnitMistake.PACE_NOT_SQUARED,
            UnitMistake.AREA_FACTOR_INVERTED,
            UnitMistake.ACRE_AND_HECTARE_MIXED_UP),
        (draw, difficulty, context) -> {
          var drawn = draw(draw, context);
          return difficulty == Difficulty.BASIC ? drawn.measured().triangle() : drawn.trapezium();
        });
  }

  private static PacedField draw(ExerciseDraw draw, CourseContext context) {
    boolean feet = context.units().course() == LengthUnit.FOOT;
    var course = feet ? Length.of(100, LengthUnit.FOOT) : new Length(50);
    double paces = feet ? draw.whole(36, 46) : draw.whole(58, 76);
    double first = draw.whole(70, 190);
    double second = draw.whole(70, 190);
    double across = draw.whole(50, 120);
    var field = draw.oneOf(context.setting().fields());
    return new PacedField(course, paces, first, second, across, field, context);
  }

  /** The field with sides in units of length, no longer in paces; a foot is a small unit. */
  private PacedField measured() {
    int scale = unit() == LengthUnit.FOOT ? 4 : 1;
    return new PacedField(
        course, paces, scale * first, scale * second, scale * across, field, context);
  }

  private CourseWords words() {
    return context.words().in(PacedField.class, "units");
  }

  private Unit<Length> unit() {
    return context.units().course();
  }

  private Unit<Area> square() {
    return unit() == LengthUnit.FOOT ? AreaUnit.SQUARE_FOOT : AreaUnit.SQUARE_METRE;
  }

  private Unit<Area> land() {
    return context.units().land();
  }

  private ExerciseBody triangle() {
    var words = words();
    return ExerciseBody.titled(words.say("area.title"))
        .story(
            words.say(
                "area.story.triangle",
                "field",
                field,
                "base",
                words.exact(first) + " " + unit().symbol(),
                "height",
                words.exact(across) + " " + unit().symbol()))
        .story(Factors.say(words, UnitSizes.in(words).and(land(), square())))
        .givens(Givens.none().withNumber("base", first).withNumber("height", across))
        .part(words.say("area.question", "unit", land().symbol()), earlier -> solveTriangle())
        .build();
  }

  private SolutionDraft part() {
    return SolutionDraft.titled(words(), words().say("area.title"));
  }

  private SolvedPart solveTriangle() {
    var words = words();
    var right = Length.of(first, unit()).times(Length.of(across, unit())).dividedBy(2);
    return part()
        .step(
            "area.triangle",
            words.exact(first) + " × " + words.exact(across) + " ÷ 2",
            words.show(right, square()))
        .step(
            "area.land",
            words.show(right, square()) + " ÷ " + words.number(squaresInLand()),
            words.show(right, land()))
        .slip(UnitMistake.TRIANGLE_NOT_HALVED, land(right.times(2)))
        .slip(UnitMistake.ACRE_AND_HECTARE_MIXED_UP, land(right.times(otherLand())))
        .answer(land(right));
  }

  private double squaresInLand() {
    return land().toBase(1) / square().toBase(1);
  }

  /** What becomes of a number of the class's land when it is worked out in hectares or acres. */
  private double otherLand() {
    var other = land() == AreaUnit.HECTARE ? AreaUnit.ACRE : AreaUnit.HECTARE;
    return land().toBase(1) / other.toBase(1);
  }

  private MeasuredAnswer<Area> land(Area area) {
    return MeasuredAnswer.of(area, land());
  }

  private ExerciseBody trapezium() {
    var words = words();
    return ExerciseBody.titled(words.say("area.title"))
        .story(
            words.say(
                "area.story.trapezium",
                "field",
                field,
                "course",
                words.exact(course, unit()),
                "paces",
                words.exact(paces),
                "first",
                words.exact(first),
                "second",
                words.exact(second),
                "across",
                words.exact(across)))
        .story(Factors.say(words, UnitSizes.in(words).and(land(), square())))
        .givens(
            Givens.none()
                .withNumber("paces", paces)
                .withNumber("first", first)
                .withNumber("second", second)
                .withNumber("across", across))
        .part(words.say("area.a", "unit", unit().symbol()), earlier -> solvePace())
        .part(words.say("area.b", "unit", square().symbol()), this::solveSquare)
        .part(words.say("area.c", "unit", land().symbol()), this::solveLand)
        .build();
  }

  private SolvedPart solvePace() {
    var words = words();
    var right = course.dividedBy(paces);
    return part()
        .step(
            "area.a",
            words.exact(course, unit()) + " ÷ " + words.exact(paces),
            words.show(right, unit()))
        .slip(
            UnitMistake.PACE_INVERTED,
            MeasuredAnswer.of(Length.of(paces / course.in(unit()), unit()), unit()))
        .answer(MeasuredAnswer.of(right, unit()));
  }

  private SolvedPart solveSquare(EarlierAnswers earlier) {
    var words = words();
    var pace = earlier.quantity(0, Length.class);
    var right = pace.times((first + second) / 2).times(pace.times(across));
    double inPaces = (first + second) / 2 * across;
    return part()
        .step(
            "area.b",
            "("
                + words.show(pace.times(first), unit())
                + " + "
                + words.show(pace.times(second), unit())
                + ") ÷ 2 × "
                + words.show(pace.times(across), unit()),
            words.show(right, square()))
        .slip(UnitMistake.TRAPEZIUM_NOT_HALVED, square(right.times(2)))
        .slip(UnitMistake.ONE_SIDE_ONLY, square(pace.times(first).times(pace.times(across))))
        .slip(UnitMistake.PACE_NOT_SQUARED, square(Area.of(inPaces * pace.in(unit()), square())))
        .slip(UnitMistake.PACE_NOT_CONVERTED, square(Area.of(inPaces, square())))
        .answer(square(right));
  }

  private MeasuredAnswer<Area> square(Area area) {
    return MeasuredAnswer.of(area, square());
  }

  private SolvedPart solveLand(EarlierAnswers earlier) {
    var words = words();
    var area = earlier.quantity(1, Area.class);
    double inverted = squaresInLand() / area.in(square());
    return part()
        .step(
            "area.land",
            words.show(area, square()) + " ÷ " + words.number(squaresInLand()),
            words.show(area, land()))
        .slip(UnitMistake.AREA_FACTOR_INVERTED, land(Area.of(inverted, land())))
        .slip(UnitMistake.ACRE_AND_HECTARE_MIXED_UP, land(area.times(otherLand())))
        .answer(land(area));
  }
}
