package agro.course.topic.rotation;

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
import agro.dose.ActiveAmount;
import agro.dose.ContentByVolume;
import agro.dose.ProductAmount;
import agro.dose.ProductState;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.working.Caution;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The maximum of an active ingredient over two products that hold it. */
final class ActiveOfSeason implements ExerciseType {

  private record Uses(
      MassPerVolume content,
      VolumePerArea dose,
      int sprays,
      MassPerVolume otherContent,
      VolumePerArea otherDose,
      MassPerArea maximum) {

    MassPerArea own() {
      return dose.times(content).times(sprays);
    }

    MassPerArea all() {
      return own().plus(otherDose.times(otherContent));
    }
  }

  /** Units of content, of active ingredient and of product per area. */
  private record Units(
      Unit<MassPerVolume> content, Unit<MassPerArea> active, Unit<VolumePerArea> dose) {
    static Units of(CourseContext context) {
      var units = context.units();
      boolean gallons = units.water().equals(VolumeUnit.US_GALLON);
      var mass = gallons ? MassUnit.POUND : MassUnit.GRAM;
      return new Units(
          MassPerVolume.unit(mass, units.water()),
          MassPerArea.unit(mass, units.land()),
          VolumePerArea.unit(units.measure(), units.land()));
    }
  }

  @Override
  public String code() {
    return "rotation-active";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.ACTIVE_FOR_PRODUCT,
        RotationMistake.ONLY_OWN_PRODUCT,
        RotationMistake.ONE_CONTENT_FOR_BOTH,
        RotationMistake.USED_FOR_LEFT,
        RotationMistake.MAXIMUM_FOR_EACH_PRODUCT,
        RotationMistake.MULTIPLIED_BY_CONTENT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = Units.of(context);
    var uses = draw(draw, units);
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(ActiveOfSeason.class, "rotation");
    return ExerciseBody.titled(words.say("active.title"))
        .story(
            words.say(
                "active.story",
                "field",
                field,
                "content",
                words.exact(uses.content(), units.content()),
                "other",
                words.exact(uses.otherContent(), units.content()),
                "maximum",
                words.exact(uses.maximum(), units.active())))
        .story(
            words.say(
                "active.use." + uses.sprays(),
                "dose",
                words.exact(uses.dose(), units.dose()),
                "other",
                words.exact(uses.otherDose(), units.dose())))
        .givens(
            Givens.none()
                .withQuantity("content", uses.content())
                .withQuantity("dose", uses.dose())
                .withNumber("sprays", uses.sprays())
                .withQuantity("otherContent", uses.otherContent())
                .withQuantity("otherDose", uses.otherDose())
                .withQuantity("maximum", uses.maximum()))
        .part(
            words.say("active.question.used", "unit", units.active().symbol()),
            earlier -> used(uses, context))
        .part(
            words.say("active.question.left", "unit", units.active().symbol()),
            earlier -> left(earlier.quantity(0, MassPerArea.class), uses, context))
        .part(
            words.say("active.question.product", "unit", units.dose().symbol()),
            earlier -> product(earlier.quantity(1, MassPerArea.class), uses, context))
        .cautions(Caution.all())
        .build();
  }

  private static Uses draw(ExerciseDraw draw, Units units) {
    boolean pounds = units.content().toBase(1) > 2;
    double content = pounds ? draw.step(1, 4, 0.25) : draw.step(100, 400, 10);
    double other = content;
    while (Math.abs(other / content - 1) < 0.15) {
      other = pounds ? draw.step(0.5, 4, 0.25) : draw.step(50, 400, 10);
    }
    var dose = draw.sensible(new VolumePerArea(0.2), new VolumePerArea(1), units.dose(), 2);
    var otherDose = draw.sensible(new VolumePerArea(0.2), new VolumePerArea(1), units.dose(), 2);
    int sprays = draw.whole(1, 3);
    var uses =
        new Uses(
            MassPerVolume.of(content, units.content()),
            dose,
            sprays,
            MassPerVolume.of(other, units.content()),
            otherDose,
            new MassPerArea(1));
    var all = uses.all();
    var maximum = draw.sensible(all.times(1.15), all.times(1.9), units.active(), 2);
    return new Uses(uses.content(), dose, sprays, uses.otherContent(), otherDose, maximum);
  }

  private static SolvedPart used(Uses uses, CourseContext context) {
    var units = Units.of(context);
    var words = context.words().in(ActiveOfSeason.class, "rotation");
    var found = uses.all();
    double product =
        uses.dose().in(units.dose()) * uses.sprays() + uses.otherDose().in(units.dose());
    var oneContent = uses.own().plus(uses.otherDose().times(uses.content()));
    var slips =
        List.of(
            slip(
                RotationMistake.ACTIVE_FOR_PRODUCT, MassPerArea.of(product, units.active()), units),
            slip(RotationMistake.ONLY_OWN_PRODUCT, uses.own(), units),
            slip(RotationMistake.ONE_CONTENT_FOR_BOTH, oneContent, units));
    var other = uses.otherDose().times(uses.otherContent());
    var working =
        Working.of(words.say("active.title"))
            .step(
                words.say("active.step", "product", "A"),
                words.say("active.formula"),
                uses.sprays()
                    + " × "
                    + words.exact(uses.dose(), units.dose())
                    + " × "
                    + words.exact(uses.content(), units.content()),
                words.show(uses.own(), units.active()))
            .step(
                words.say("active.step", "product", "B"),
                words.say("active.formula"),
                words.exact(uses.otherDose(), units.dose())
                    + " × "
                    + words.exact(uses.otherContent(), units.content()),
                words.show(other, units.active()))
            .step(
                words.say("active.step.used"),
                "",
                words.show(uses.own(), units.active()) + " + " + words.show(other, units.active()),
                words.show(found, units.active()));
    return new SolvedPart(MeasuredAnswer.of(found, units.active()), working, slips);
  }

  private static TypicalSlip slip(RotationMistake mistake, MassPerArea active, Units units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(active, units.active()));
  }

  private static SolvedPart left(MassPerArea used, Uses uses, CourseContext context) {
    var units = Units.of(context);
    var words = context.words().in(ActiveOfSeason.class, "rotation");
    var found = uses.maximum().minus(used);
    var slips =
        List.of(
            slip(RotationMistake.USED_FOR_LEFT, used, units),
            slip(
                RotationMistake.MAXIMUM_FOR_EACH_PRODUCT, uses.maximum().minus(uses.own()), units));
    var working =
        Working.of(words.say("active.title"))
            .step(
                words.say("active.step.left"),
                words.say("left.formula.left"),
                words.exact(uses.maximum(), units.active())
                    + " − "
                    + words.show(used, units.active()),
                words.show(found, units.active()));
    return new SolvedPart(MeasuredAnswer.of(found, units.active()), working, slips);
  }

  private static SolvedPart product(MassPerArea active, Uses uses, CourseContext context) {
    var units = Units.of(context);
    var words = context.words().in(ActiveOfSeason.class, "rotation");
    var found = carrying(active, uses.content());
    double perContent = units.content().toBase(1) * units.dose().toBase(1);
    double factor = units.active().toBase(1) * 1000 / perContent;
    var slips =
        List.of(
            product(
                RotationMistake.ACTIVE_FOR_PRODUCT,
                VolumePerArea.of(active.in(units.active()), units.dose()),
                units),
            product(
                RotationMistake.MULTIPLIED_BY_CONTENT,
                VolumePerArea.of(
                    active.in(units.active()) * uses.content().in(units.content()), units.dose()),
                units),
            product(
                RotationMistake.ONE_CONTENT_FOR_BOTH,
                carrying(active, uses.otherContent()),
                units));
    var working =
        Working.of(words.say("active.title"))
            .step(
                words.say("active.step.product"),
                words.say("active.formula.product"),
                words.show(active, units.active())
                    + " / "
                    + words.exact(uses.content(), units.content())
                    + " × "
                    + words.number(factor)
                    + " "
                    + context.units().measure().symbol()
                    + "/"
                    + context.units().water().symbol(),
                words.show(found, units.dose()));
    return new SolvedPart(MeasuredAnswer.of(found, units.dose()), working, slips);
  }

  /** Product per area that holds so much active ingredient. */
  private static VolumePerArea carrying(MassPerArea active, MassPerVolume content) {
    var hectare = Area.of(1, AreaUnit.HECTARE);
    Mass onHectare = active.times(hectare);
    var product =
        new ContentByVolume(content)
            .productFor(
                ActiveAmount.of(onHectare.in(MassUnit.GRAM), MassUnit.GRAM), ProductState.LIQUID);
    return ((ProductAmount.Liquid) product).range().low().dividedBy(hectare);
  }

  private static TypicalSlip product(RotationMistake mistake, VolumePerArea dose, Units units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(dose, units.dose()));
  }
}
