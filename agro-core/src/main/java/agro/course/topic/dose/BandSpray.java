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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.dose.TreatedShare;
import agro.dose.scaling.BandTreatment;
import agro.units.Area;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * Spraying in bands along the rows: treated share, treated land, product.
 *
 * @param rate product per treated land
 * @param band width of the band
 * @param spacing distance between the rows
 * @param area size of the field
 * @param field name of the field
 * @param context for whom
 */
record BandSpray(
    VolumePerArea rate,
    Length band,
    Length spacing,
    Area area,
    String field,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-band",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.ROUTINE),
        Set.of(
            DosingMistake.SHARE_INVERTED,
            DosingMistake.UNTREATED_SHARE,
            DosingMistake.WHOLE_FIELD_TREATED,
            DosingMistake.SHARE_TAKEN_TWICE,
            DosingMistake.RATE_DIVIDED_BY_AREA),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static BandSpray draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var rate = draw.sensible(new VolumePerArea(0.4), new VolumePerArea(4), units.rate(), 2);
    boolean inches = units.spacing() != LengthUnit.CENTIMETRE;
    double spacing = inches ? draw.step(18, 40, 1) : draw.step(45, 100, 5);
    double band = inches ? draw.step(5, 13, 1) : draw.step(12, 36, 1);
    var area = draw.sensible(new Area(4_000), new Area(60_000), units.land(), 2);
    return new BandSpray(
        rate,
        Length.of(band, units.spacing()),
        Length.of(spacing, units.spacing()),
        area,
        draw.oneOf(context.setting().fields()),
        context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private ExerciseBody body() {
    var units = units();
    var words = units.words();
    return ExerciseBody.titled(words.say("band.title"))
        .story(
            words.say(
                "band.story",
                "field",
                field,
                "area",
                words.exact(area, units.land()),
                "spacing",
                words.exact(spacing, units.spacing()),
                "band",
                words.exact(band, units.spacing()),
                "rate",
                words.exact(rate, units.rate())))
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("band", band)
                .withQuantity("spacing", spacing)
                .withQuantity("area", area))
        .part(words.say("band.a"), earlier -> share())
        .part(words.say("band.b", "unit", units.land().symbol()), this::treated)
        .part(words.say("band.c", "unit", units.measure().symbol()), this::product)
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart share() {
    var units = units();
    var words = units.words();
    double right = 100 * TreatedShare.ofBands(band, spacing).number();
    return units
        .part("band")
        .step(
            "band.a",
            words.exact(band, units.spacing()) + " ÷ " + words.exact(spacing, units.spacing()),
            words.number(right) + " %")
        .slip(DosingMistake.SHARE_INVERTED, PercentAnswer.rounded(100 * spacing.ratioTo(band), 1))
        .slip(DosingMistake.UNTREATED_SHARE, PercentAnswer.rounded(100 - right, 1))
        .answer(PercentAnswer.rounded(right, 1));
  }

  private SolvedPart treated(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    double percent = earlier.number(0);
    double field = area.in(units.land());
    return units
        .part("band")
        .step(
            "band.b",
            words.exact(area, units.land()) + " × " + words.number(percent) + " ÷ 100",
            words.show(area.times(percent / 100), units.land()))
        .slip(DosingMistake.UNTREATED_SHARE, units.area(field * (1 - percent / 100)))
        .slip(DosingMistake.WHOLE_FIELD_TREATED, units.area(field))
        .answer(units.area(field * percent / 100));
  }

  private SolvedPart product(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var treated = earlier.quantity(1, Area.class);
    var dose = units.product(rate);
    var right = DoseUnits.volume(BandTreatment.asOnBand(dose).on(treated));
    double number = rate.in(units.rate());
    return units
        .part("band")
        .step(
            "band.c",
            words.exact(rate, units.rate()) + " × " + words.show(treated, units.land()),
            words.show(right, units.measure()))
        .slip(DosingMistake.WHOLE_FIELD_TREATED, units.poured(DoseUnits.volume(dose.on(area))))
        .slip(DosingMistake.SHARE_TAKEN_TWICE, units.poured(right.times(earlier.number(0) / 100)))
        .slip(
            DosingMistake.RATE_DIVIDED_BY_AREA,
            units.poured(Volume.of(number / treated.in(units.land()), units.measure())))
        .answer(units.poured(right));
  }
}
