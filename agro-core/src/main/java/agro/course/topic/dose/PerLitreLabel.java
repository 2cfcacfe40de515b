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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.dose.ProductAmount;
import agro.dose.ProductPerSprayVolume;
import agro.dose.SprayVolume;
import agro.dose.WrittenAmount;
import agro.source.Reference;
import agro.units.VolumePerArea;
import agro.units.VolumePerVolume;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * A label that doses by the litre or gallon of spray: what the land gets depends on the sprayer.
 *
 * @param strength product per spray
 * @param assumed spray volume that the label assumes
 * @param own spray volume of the sprayer
 * @param context for whom
 */
record PerLitreLabel(
    VolumePerVolume strength, VolumePerArea assumed, VolumePerArea own, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-per-litre",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            DosingMistake.SPRAY_DIVIDED_BY_STRENGTH,
            DosingMistake.PER_LITRE_TAKEN_PER_LAND,
            DosingMistake.LABEL_VOLUME_FOR_OWN,
            DosingMistake.OWN_VOLUME_FOR_LABEL,
            DosingMistake.RATIO_INVERTED,
            DosingMistake.DEPARTURE_FOR_SHARE,
            DosingMistake.STRENGTH_KEPT,
            DosingMistake.STRENGTH_CHANGED_WRONG_WAY),
        (draw, difficulty, context) -> draw(draw, context).body(difficulty == Difficulty.ROUTINE));
  }

  private static PerLitreLabel draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var strength =
        draw.sensible(new VolumePerVolume(0.5), new VolumePerVolume(6), units.strength(), 2);
    var assumed = draw.sensible(new VolumePerArea(250), new VolumePerArea(1000), units.spray(), 2);
    // A sprayer that brings out much less or more than the label assumes would be another method.
    var own = draw.sensible(assumed.times(0.45), assumed.times(1.3), units.spray(), 2);
    return new PerLitreLabel(strength, assumed, own, context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private ExerciseBody body(boolean whole) {
    var units = units();
    var words = units.words();
    var body =
        ExerciseBody.titled(words.say("litre.title"))
            .story(
                words.say(
                    "litre.story",
                    "strength",
                    words.exact(strength, units.strength()),
                    "assumed",
                    words.exact(assumed, units.spray()),
                    "own",
                    words.exact(own, units.spray())))
            .givens(
                Givens.none()
                    .withQuantity("strength", strength)
                    .withQuantity("assumed", assumed)
                    .withQuantity("own", own))
            .part(
                words.say("litre.a", "unit", units.rate().symbol()),
                earlier -> dose(own, assumed, DosingMistake.LABEL_VOLUME_FOR_OWN));
    if (whole) {
      body.part(
              words.say("litre.b", "unit", units.rate().symbol()),
              earlier -> dose(assumed, own, DosingMistake.OWN_VOLUME_FOR_LABEL))
          .part(words.say("litre.c"), this::share)
          .part(words.say("litre.d", "unit", units.strength().symbol()), this::needed);
    }
    return body.source(Reference.commonPractice("Doses per volume of spray"))
        .cautions(Caution.all())
        .build();
  }

  private VolumePerArea sprayed(VolumePerArea spray) {
    var units = units();
    var label =
        new ProductPerSprayVolume(
            ProductAmount.liquid(strength.in(units.strength()), units.measure()),
            WrittenAmount.one(units.water()));
    var dose = label.sprayedAt(new SprayVolume(spray)).perHectare();
    return new VolumePerArea(DoseUnits.volume(dose).litres());
  }

  private SolvedPart dose(VolumePerArea spray, VolumePerArea other, DosingMistake mixedUp) {
    var units = units();
    var words = units.words();
    var right = sprayed(spray);
    double number = strength.in(units.strength());
    return units
        .part("litre")
        .step(
            "litre.dose",
            words.exact(strength, units.strength()) + " × " + words.exact(spray, units.spray()),
            words.show(right, units.rate()))
        .slip(DosingMistake.SPRAY_DIVIDED_BY_STRENGTH, rate(spray.in(units.spray()) / number))
        .slip(DosingMistake.PER_LITRE_TAKEN_PER_LAND, rate(number))
        .slip(mixedUp, rate(sprayed(other).in(units.rate())))
        .answer(rate(right.in(units.rate())));
  }

  private MeasuredAnswer<VolumePerArea> rate(double number) {
    var unit = units().rate();
    return MeasuredAnswer.of(VolumePerArea.of(number, unit), unit);
  }

  private SolvedPart share(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var given = earlier.quantity(0, VolumePerArea.class);
    var meant = earlier.quantity(1, VolumePerArea.class);
    double right = 100 * given.ratioTo(meant);
    return units
        .part("litre")
        .step(
            "litre.c",
            words.show(given, units.rate()) + " ÷ " + words.show(meant, units.rate()),
            words.number(right) + " %")
        .slip(DosingMistake.RATIO_INVERTED, PercentAnswer.rounded(100 * meant.ratioTo(given), 1))
        .slip(DosingMistake.DEPARTURE_FOR_SHARE, PercentAnswer.rounded(right - 100, 1))
        .answer(PercentAnswer.rounded(right, 1));
  }

  private SolvedPart needed(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var meant = earlier.quantity(1, VolumePerArea.class);
    var perLitre = units.product(meant).inSpray(new SprayVolume(own)).perLitre();
    var right = new VolumePerVolume(DoseUnits.volume(perLitre).litres() * 1000);
    return units
        .part("litre")
        .step(
            "litre.d",
            words.show(meant, units.rate()) + " ÷ " + words.exact(own, units.spray()),
            words.show(right, units.strength()))
        .slip(DosingMistake.STRENGTH_KEPT, strength(strength))
        .slip(
            DosingMistake.STRENGTH_CHANGED_WRONG_WAY,
            strength(strength.times(own.ratioTo(assumed))))
        .answer(strength(right));
  }

  private MeasuredAnswer<VolumePerVolume> strength(VolumePerVolume value) {
    return MeasuredAnswer.of(value, units().strength());
  }
}
