package agro.course.topic.dose;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Set;

/** How much of a liquid product a field needs: rate times area. */
final class ProductForField implements ExerciseType {

  @Override
  public String code() {
    return "dose-field";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DOSE;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DosingMistake.RATE_DIVIDED_BY_AREA,
        DosingMistake.RATE_TAKEN_AS_TOTAL,
        DosingMistake.HECTARE_FOR_ACRE,
        DosingMistake.ACRE_FOR_HECTARE);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = context.units();
    var rateUnit = VolumePerArea.unit(units.measure(), units.land());
    var rate = draw.sensible(new VolumePerArea(0.1), new VolumePerArea(3), rateUnit, 2);
    var area =
        draw.sensible(
            Area.of(0.2, AreaUnit.HECTARE), Area.of(4, AreaUnit.HECTARE), units.land(), 2);
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(ProductForField.class, "dose");
    return ExerciseBody.titled(words.say("field.title"))
        .story(
            words.say(
                "field.story",
                "field",
                field,
                "area",
                words.exact(area, units.land()),
                "rate",
                words.exact(rate, rateUnit)))
        .givens(Givens.none().withQuantity("rate", rate).withQuantity("area", area))
        .part(
            words.say("field.question", "unit", units.measure().symbol()),
            earlier -> solve(rate, area, context))
        .cautions(Caution.all())
        .build();
  }

  private static SolvedPart solve(VolumePerArea rate, Area area, CourseContext context) {
    var units = context.units();
    var words = context.words().in(ProductForField.class, "dose");
    // The adviser's own arithmetic; the slips are what comes out of the mistakes.
    var product = rate.times(area);
    var unit = units.measure();
    var rateUnit = VolumePerArea.unit(unit, units.land());
    var slips = new ArrayList<TypicalSlip>();
    slips.add(
        new TypicalSlip(
            DosingMistake.RATE_DIVIDED_BY_AREA,
            MeasuredAnswer.poured(
                Volume.of(rate.in(rateUnit) / area.in(units.land()), unit), unit)));
    slips.add(
        new TypicalSlip(
            DosingMistake.RATE_TAKEN_AS_TOTAL,
            MeasuredAnswer.poured(Volume.of(rate.in(rateUnit), unit), unit)));
    // A figure was converted to the other unit of land and used with the area in its own.
    double hectaresInAcre = AreaUnit.ACRE.toBase(1) / AreaUnit.HECTARE.toBase(1);
    if (units.land() == AreaUnit.ACRE) {
      slips.add(
          new TypicalSlip(
              DosingMistake.HECTARE_FOR_ACRE,
              MeasuredAnswer.poured(product.dividedBy(hectaresInAcre), unit)));
    } else if (units.land() == AreaUnit.HECTARE) {
      slips.add(
          new TypicalSlip(
              DosingMistake.ACRE_FOR_HECTARE,
              MeasuredAnswer.poured(product.times(hectaresInAcre), unit)));
    }
    var working =
        Working.of(words.say("field.title"))
            .step(
                words.say("field.step"),
                words.say("field.formula"),
                words.exact(rate, rateUnit) + " × " + words.exact(area, units.land()),
                words.show(product, unit));
    return new SolvedPart(MeasuredAnswer.poured(product, unit), working, slips);
  }
}
