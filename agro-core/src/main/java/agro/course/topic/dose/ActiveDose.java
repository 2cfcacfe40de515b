package agro.course.topic.dose;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.dose.ActiveAmount;
import agro.dose.ActivePerArea;
import agro.dose.ContentByVolume;
import agro.dose.ProductState;
import agro.dose.StrengthConversion;
import agro.dose.WrittenAmount;
import agro.units.Area;
import agro.units.MassPerArea;
import agro.units.MassPerVolume;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * Active ingredient and product: the product for a dose of active ingredient, and a second product
 * of another strength that gives the same dose.
 *
 * @param rate product A per land
 * @param strong content of product A
 * @param other content of product B
 * @param area size of the field
 * @param field name of the field
 * @param context for whom
 */
record ActiveDose(
    VolumePerArea rate,
    MassPerVolume strong,
    MassPerVolume other,
    Area area,
    String field,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-active",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            DosingMistake.CONTENT_MULTIPLIED,
            DosingMistake.CONTENT_DIVIDED,
            DosingMistake.ACTIVE_FOR_PRODUCT,
            DosingMistake.LARGE_UNIT_AS_SMALL,
            DosingMistake.CONTENT_OF_OTHER_PRODUCT,
            DosingMistake.PROPORTION_REVERSED,
            DosingMistake.RATE_DIVIDED_BY_AREA,
            DosingMistake.RATE_TAKEN_AS_TOTAL),
        (draw, difficulty, context) ->
            difficulty == Difficulty.BASIC
                ? draw(draw, context).basic(draw)
                : draw(draw, context).routine());
  }

  private static ActiveDose draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var rate = draw.sensible(new VolumePerArea(0.3), new VolumePerArea(3), units.rate(), 2);
    var strong = draw.sensible(new MassPerVolume(80), new MassPerVolume(500), units.content(), 2);
    var other = draw.sensible(strong.times(0.6), strong.times(1.6), units.content(), 2);
    var area = draw.sensible(new Area(2_000), new Area(40_000), units.land(), 2);
    return new ActiveDose(
        rate, strong, other, area, draw.oneOf(context.setting().fields()), context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private Unit<MassPerArea> activeRate() {
    return MassPerArea.unit(units().active(), units().land());
  }

  /** Active ingredient in some litres of the product on a hectare. */
  private MassPerArea ofProduct(double litres) {
    return new VolumePerArea(litres).times(strong);
  }

  private ExerciseBody basic(ExerciseDraw draw) {
    var units = units();
    var words = units.words();
    var wanted = draw.sensible(ofProduct(0.2), ofProduct(4), activeRate(), 2);
    return ExerciseBody.titled(words.say("active.title"))
        .story(
            words.say(
                "active.story.wanted",
                "active",
                words.exact(wanted, activeRate()),
                "content",
                words.exact(strong, units.content())))
        .story(sizes())
        .givens(Givens.none().withQuantity("wanted", wanted).withQuantity("content", strong))
        .part(
            words.say("active.question", "unit", units.rate().symbol()),
            earlier -> product(wanted, strong, null))
        .cautions(Caution.all())
        .build();
  }

  private String sizes() {
    var units = units();
    return units.given(UnitSizes.in(units.words()).and(units.water(), units.measure()));
  }

  private VolumePerArea productFor(MassPerArea wanted, MassPerVolume content) {
    var active =
        new ActivePerArea(
            ActiveAmount.of(wanted.in(activeRate()), units().active()),
            WrittenAmount.one(units().land()));
    var product =
        new StrengthConversion(active, new ContentByVolume(content), ProductState.LIQUID)
            .evaluate()
            .product();
    return new VolumePerArea(DoseUnits.volume(product.perHectare()).litres());
  }

  /** Product for active ingredient; where there is another product, its content is a slip. */
  private SolvedPart product(MassPerArea wanted, MassPerVolume content, MassPerVolume mixedUp) {
    var units = units();
    var words = units.words();
    var right = productFor(wanted, content);
    var part =
        units
            .part("active")
            .step(
                "active.product",
                words.show(wanted, activeRate()) + " ÷ " + words.exact(content, units.content()),
                words.show(right, units.spray()) + " = " + words.show(right, units.rate()));
    double number = wanted.in(activeRate());
    double inContent = content.in(units.content());
    if (mixedUp == null) {
      double small = units.water().toBase(1) / units.measure().toBase(1);
      part.slip(DosingMistake.CONTENT_MULTIPLIED, rate(number * inContent))
          .slip(DosingMistake.ACTIVE_FOR_PRODUCT, rate(number))
          .slip(DosingMistake.LARGE_UNIT_AS_SMALL, rate(right.in(units.rate()) / small));
    } else {
      part.slip(
              DosingMistake.CONTENT_OF_OTHER_PRODUCT,
              rate(productFor(wanted, mixedUp).in(units.rate())))
          .slip(
              DosingMistake.PROPORTION_REVERSED,
              rate(rate.in(units.rate()) * content.ratioTo(mixedUp)));
    }
    return part.answer(rate(right.in(units.rate())));
  }

  private MeasuredAnswer<VolumePerArea> rate(double number) {
    var unit = units().rate();
    return MeasuredAnswer.of(VolumePerArea.of(number, unit), unit);
  }

  private ExerciseBody routine() {
    var units = units();
    var words = units.words();
    return ExerciseBody.titled(words.say("active.title"))
        .story(
            words.say(
                "active.story.two",
                "rate",
                words.exact(rate, units.rate()),
                "strong",
                words.exact(strong, units.content()),
                "other",
                words.exact(other, units.content())))
        .story(words.say("field.measures", "field", field, "area", words.exact(area, units.land())))
        .story(sizes())
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("strong", strong)
                .withQuantity("other", other)
                .withQuantity("area", area))
        .part(words.say("active.a", "unit", activeRate().symbol()), earlier -> active())
        .part(
            words.say("active.b", "unit", units.rate().symbol()),
            earlier -> product(earlier.quantity(0, MassPerArea.class), other, strong))
        .part(words.say("active.c", "unit", units.measure().symbol()), this::field)
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart active() {
    var units = units();
    var words = units.words();
    var amount = units.product(rate).active(new ContentByVolume(strong)).perHectare();
    var right = new MassPerArea(amount.range().low().kilograms());
    double perWater = rate.in(units.spray());
    return units
        .part("active")
        .step(
            "active.active",
            words.show(rate, units.spray()) + " × " + words.exact(strong, units.content()),
            words.show(right, activeRate()))
        .slip(DosingMistake.ACTIVE_FOR_PRODUCT, mass(rate.in(units.rate())))
        .slip(DosingMistake.CONTENT_DIVIDED, mass(perWater / strong.in(units.content())))
        .answer(mass(right.in(activeRate())));
  }

  private MeasuredAnswer<MassPerArea> mass(double number) {
    return MeasuredAnswer.of(MassPerArea.of(number, activeRate()), activeRate());
  }

  private SolvedPart field(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var dose = earlier.quantity(1, VolumePerArea.class);
    var right = DoseUnits.volume(units.product(dose).on(area));
    double number = dose.in(units.rate());
    return units
        .part("active")
        .step(
            "field",
            words.show(dose, units.rate()) + " × " + words.exact(area, units.land()),
            words.show(right, units.measure()))
        .slip(
            DosingMistake.RATE_DIVIDED_BY_AREA,
            units.poured(Volume.of(number / area.in(units.land()), units.measure())))
        .slip(DosingMistake.RATE_TAKEN_AS_TOTAL, units.poured(Volume.of(number, units.measure())))
        .answer(units.poured(right));
  }
}
