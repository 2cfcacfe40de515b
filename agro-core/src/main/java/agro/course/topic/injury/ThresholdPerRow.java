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
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.MeanDensity;
import agro.sampling.injury.UnitConversion;
import agro.source.Reference;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Unit;
import agro.working.Caution;
import java.util.List;
import java.util.Set;

/** A threshold for a plant held against counts along the row. */
final class ThresholdPerRow {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final SamplingUnit ROW = SamplingUnit.of(SamplingUnit.Kind.METRE_OF_ROW);

  private ThresholdPerRow() {}

  /** Threshold for a plant, distance of plants, stretches of row, their length, what was found. */
  private record Scouted(
      double threshold,
      Length plant,
      double stretches,
      double length,
      double found,
      Unit<Length> side,
      Unit<Length> spacing) {

    double plantsOnSide() {
      return Length.of(1, side).ratioTo(plant);
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-row",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.ROUTINE),
        Set.of(
            InjuryMistake.UPSIDE_DOWN,
            InjuryMistake.SPACING_NOT_CONVERTED,
            InjuryMistake.PLANTS_DIVIDED,
            InjuryMistake.PLANT_AS_ROW,
            InjuryMistake.LENGTH_LEFT_OUT,
            InjuryMistake.STRETCHES_LEFT_OUT,
            InjuryMistake.BACKWARDS),
        ThresholdPerRow::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scouted = scouted(draw, context.units().course() == LengthUnit.FOOT);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(InjuryExercises.class, "injury");
    var side = scouted.side().symbol();
    return ExerciseBody.titled(words.say("row.title"))
        .story(
            words.say(
                "row.story",
                "pest",
                pest,
                "field",
                field,
                "threshold",
                words.exact(scouted.threshold()),
                "plant",
                words.exact(scouted.plant(), scouted.spacing()),
                "stretches",
                words.exact(scouted.stretches()),
                "length",
                words.exact(scouted.length()) + " " + side,
                "found",
                words.exact(scouted.found())))
        .givens(
            Givens.none()
                .withNumber("threshold", scouted.threshold())
                .withQuantity("plant", scouted.plant())
                .withNumber("stretches", scouted.stretches())
                .withNumber("length", scouted.length())
                .withNumber("found", scouted.found()))
        .cautions(Caution.all())
        .source(Reference.commonPractice("A threshold is turned into the unit that was counted"))
        .part(words.say("row.question.plants", "side", side), e -> plants(scouted, words))
        .part(
            words.say("row.question.threshold", "side", side),
            e -> threshold(scouted, e.number(0), words))
        .part(words.say("row.question.mean", "side", side), e -> mean(scouted, words))
        .part(words.say("row.question.verdict"), e -> verdict(scouted, e, words))
        .build();
  }

  private static Scouted scouted(ExerciseDraw draw, boolean feet) {
    while (true) {
      double threshold = draw.step(0.4, 4, 0.1);
      var spacing = feet ? LengthUnit.INCH : LengthUnit.CENTIMETRE;
      var plant = Length.of(feet ? draw.whole(3, 10) : draw.step(8, 40, 2), spacing);
      var side = feet ? LengthUnit.FOOT : LengthUnit.METRE;
      double stretches = draw.whole(8, 15);
      double length = draw.oneOf(feet ? List.of(3.0, 5.0, 10.0) : List.of(2.0, 3.0, 5.0));
      double level = threshold * Length.of(1, side).ratioTo(plant);
      double found = Math.rint(level * stretches * length * (0.5 + draw.share()));
      if (Math.abs(found / (stretches * length) / level - 1) > 0.07 && found > 5) {
        return new Scouted(threshold, plant, stretches, length, found, side, spacing);
      }
    }
  }

  private static SolvedPart plants(Scouted scouted, CourseWords words) {
    double plants = scouted.plantsOnSide();
    var unit = words.say("plants");
    var side = scouted.side();
    return SolutionDraft.titled(words, words.say("row.plants.step"))
        .step(
            "row.plants",
            words.exact(Length.of(1, side).in(scouted.spacing()))
                + " / "
                + words.exact(scouted.plant().in(scouted.spacing())),
            words.number(plants) + " " + unit)
        .slip(InjuryMistake.UPSIDE_DOWN, NumberAnswer.computed(1 / plants, 2, unit))
        .slip(
            InjuryMistake.SPACING_NOT_CONVERTED,
            NumberAnswer.computed(1 / scouted.plant().in(scouted.spacing()), 3, unit))
        .answer(NumberAnswer.computed(plants, 2, unit));
  }

  private static SolvedPart threshold(Scouted scouted, double plants, CourseWords words) {
    var perPlant = new MeanDensity(PLANT, scouted.threshold(), 0);
    double perRow = perPlant.in(new UnitConversion(PLANT, ROW, plants, "spacing")).mean();
    return SolutionDraft.titled(words, words.say("row.threshold.step"))
        .step(
            "row.threshold",
            words.exact(scouted.threshold()) + " × " + words.number(plants),
            words.number(perRow))
        .slip(InjuryMistake.PLANTS_DIVIDED, NumberAnswer.computed(scouted.threshold() / plants, 2))
        .slip(InjuryMistake.PLANT_AS_ROW, NumberAnswer.computed(scouted.threshold(), 2))
        .answer(NumberAnswer.computed(perRow, 2));
  }

  private static SolvedPart mean(Scouted scouted, CourseWords words) {
    double found = scouted.found();
    double mean = found / (scouted.stretches() * scouted.length());
    return SolutionDraft.titled(words, words.say("row.mean.step"))
        .step(
            "row.mean",
            words.exact(found)
                + " / ("
                + words.exact(scouted.stretches())
                + " × "
                + words.exact(scouted.length())
                + ")",
            words.number(mean))
        .slip(InjuryMistake.LENGTH_LEFT_OUT, NumberAnswer.computed(found / scouted.stretches(), 2))
        .slip(InjuryMistake.STRETCHES_LEFT_OUT, NumberAnswer.computed(found / scouted.length(), 2))
        .answer(NumberAnswer.computed(mean, 2));
  }

  private static SolvedPart verdict(Scouted scouted, EarlierAnswers earlier, CourseWords words) {
    double threshold = earlier.number(1);
    double mean = earlier.number(2);
    var right = TreatingVerdict.of(mean >= threshold, words);
    boolean mixed = mean < threshold && mean >= scouted.threshold();
    return SolutionDraft.titled(words, words.say("threshold.verdict.step"))
        .step(
            "threshold.verdict",
            words.say(
                "threshold.against",
                "mean",
                words.number(mean),
                "threshold",
                words.number(threshold)),
            right.print(words))
        .slip(
            mixed ? InjuryMistake.PLANT_AS_ROW : InjuryMistake.BACKWARDS,
            TreatingVerdict.opposite(right))
        .answer(right);
  }
}
