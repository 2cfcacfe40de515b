package agro.course.marking;

import agro.course.AnswerTolerance;
import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
import agro.course.CodesAnswer;
import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseTopic;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseBody;
import agro.course.ExerciseKey;
import agro.course.ExpectedAnswer;
import agro.course.GeneratorVersion;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.PartSolution;
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTime;
import agro.units.ThermalTimeUnit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerAreaUnit;
import agro.units.VolumeUnit;
import agro.working.TextLanguage;
import agro.working.Working;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** Small exercises with known answers, one for each kind of answer. */
final class MarkedExercises {

  /** A mistake of these exercises: everything twice. */
  enum Doubled implements Mistake {
    /** The result was doubled. */
    TWICE;

    @Override
    public String bundle() {
      return "marking";
    }

    @Override
    public String feedback(CourseWords words) {
      return "Twice as much.";
    }
  }

  private MarkedExercises() {}

  static ExpectedAnswer answer(String name) {
    return switch (name) {
      case "ml", "dense" -> millilitres(37.5);
      case "big" -> MeasuredAnswer.of(Volume.of(1500, ml()), ml());
      case "odd" -> MeasuredAnswer.of(Volume.of(1234.5, ml()), ml());
      case "rate" -> MeasuredAnswer.of(new VolumePerArea(200), VolumePerAreaUnit.LITRE_PER_HECTARE);
      case "gram" -> MeasuredAnswer.weighed(Mass.of(20, MassUnit.GRAM), MassUnit.GRAM);
      case "tonnes" -> MeasuredAnswer.of(Mass.of(3, MassUnit.TONNE), MassUnit.TONNE);
      case "area" -> MeasuredAnswer.of(Area.of(2.5, AreaUnit.HECTARE), AreaUnit.HECTARE);
      case "speed" ->
          MeasuredAnswer.of(
              Speed.of(5.4, SpeedUnit.KILOMETRE_PER_HOUR), SpeedUnit.KILOMETRE_PER_HOUR);
      case "floz" ->
          MeasuredAnswer.poured(
              Volume.of(12, VolumeUnit.US_FLUID_OUNCE), VolumeUnit.US_FLUID_OUNCE);
      case "gallons" -> MeasuredAnswer.of(Volume.of(2, VolumeUnit.US_GALLON), VolumeUnit.US_GALLON);
      case "litres" -> MeasuredAnswer.of(Volume.of(2, VolumeUnit.US_GALLON), VolumeUnit.LITRE);
      default -> other(name);
    };
  }

  private static ExpectedAnswer other(String name) {
    return switch (name) {
      case "dd" ->
          new ThermalTimeAnswer(
              ThermalTime.ofDegreeDaysC(123.4),
              ThermalTimeUnit.CELSIUS_DAY,
              AnswerTolerance.usual(123.4));
      case "temperature" ->
          new TemperatureAnswer(
              Temperature.ofCelsius(18.5), TemperatureUnit.CELSIUS, AnswerTolerance.decimals(1));
      case "percent" -> PercentAnswer.rounded(87.5, 1);
      case "pumps" -> NumberAnswer.whole(3, "pumps", "Pumpen");
      case "money" -> NumberAnswer.rounded(37.5, 2, "EUR");
      case "day" -> new DayAnswer(LocalDate.of(2026, 7, 3), 0);
      case "choice" ->
          new ChoiceAnswer(
              List.of(
                  new AnswerChoice("spray", "Treat now"),
                  new AnswerChoice("wait", "Do not treat"),
                  new AnswerChoice("look", "Look again")),
              "wait");
      case "codes" -> new CodesAnswer(Set.of("28", "5"));
      case "nocodes" -> new CodesAnswer(Set.of());
      default -> throw new IllegalArgumentException(name);
    };
  }

  static Exercise exercise(String name, TextLanguage language) {
    var answer = answer(name);
    var slips =
        name.equals("ml")
            ? List.of(new TypicalSlip(Doubled.TWICE, millilitres(75)))
            : List.<TypicalSlip>of();
    var givens =
        name.equals("dense")
            ? Givens.none().withQuantity("density", new Density(1.2))
            : Givens.none();
    var units = name.equals("floz") ? CourseUnits.US : CourseUnits.METRIC;
    return exercise(language, units, givens, earlier -> new SolvedPart(answer, working(), slips));
  }

  static Exercise exercise(
      TextLanguage language, CourseUnits units, Givens givens, PartSolution... parts) {
    var body = ExerciseBody.titled("Test").story("A story.").givens(givens);
    for (var part : parts) {
      body.part("How much?", part);
    }
    var context =
        new CourseContext(
            CourseSetting.osmereVale(language).withUnits(units), CourseWords.of(language), false);
    return new Exercise(
        new ExerciseKey("dose-test", Difficulty.BASIC, GeneratorVersion.FIRST, 8),
        CourseTopic.DOSE,
        body.build(),
        context);
  }

  static MeasuredAnswer<Volume> millilitres(double number) {
    return MeasuredAnswer.poured(Volume.of(number, ml()), ml());
  }

  static Working working() {
    return Working.of("Test").step("step", "a", "1", "1");
  }

  private static VolumeUnit ml() {
    return VolumeUnit.MILLILITRE;
  }
}
