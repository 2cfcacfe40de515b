package agro.course.topic.rotation;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.ApplicationLimit;
import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.programme.LabelRecord;
import agro.programme.Spraying;
import agro.programme.interval.LeftToUse;
import agro.programme.interval.SeasonQuestions;
import agro.programme.interval.SeasonRules;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.working.Block;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What the maxima of a label leave: number of sprays, amount, and full doses. */
final class LeftOfSeason implements ExerciseType {

  private static final String OWN = "A";
  private static final String OTHER = "B";

  /** Share of the full dose that one spray of the table has. */
  private static final double REDUCED = 0.8;

  private record Use(LocalDate day, String product, VolumePerArea dose) {
    boolean lastYear() {
      return day.getYear() < LabelledField.YEAR;
    }
  }

  private record Season(
      int most, VolumePerArea maximum, VolumePerArea dose, List<Use> uses, LocalDate today) {

    List<Use> own() {
      return uses.stream().filter(use -> use.product().equals(OWN) && !use.lastYear()).toList();
    }

    double sum(List<Use> which, Unit<VolumePerArea> unit) {
      return which.stream().mapToDouble(use -> use.dose().in(unit)).sum();
    }

    LeftToUse left() {
      var limits =
          LabelLimits.of(OWN)
              .with(ApplicationLimit.maximum(most).per(LimitScope.SEASON))
              .with(DoseLimit.maximum(LabelledField.exactly(maximum)).per(LimitScope.SEASON));
      var records =
          List.<LabelRecord>of(
              LabelledField.record(OWN, limits, "28"),
              LabelledField.record(OTHER, LabelLimits.of(OTHER), "5"));
      var sprays = new ArrayList<Spraying>();
      for (var use : uses) {
        sprays.add(
            LabelledField.spray(
                String.valueOf(sprays.size()), use.day(), use.product(), use.dose()));
      }
      return SeasonQuestions.of(
              SeasonRules.of(LabelledField.programme(records).withSprayings(sprays)))
          .howMuchIsLeft(LabelledField.FIELD, OWN, today);
    }
  }

  @Override
  public String code() {
    return "rotation-left";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.OTHER_PRODUCT_COUNTED,
        RotationMistake.LAST_YEAR_COUNTED,
        RotationMistake.MAXIMUM_AS_LEFT,
        RotationMistake.USED_FOR_LEFT,
        RotationMistake.FULL_DOSES_COUNTED,
        RotationMistake.ONLY_THE_NUMBER,
        RotationMistake.ROUNDED_UP);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var unit = VolumePerArea.unit(context.units().measure(), context.units().land());
    var season = season(draw, unit);
    var left = season.left();
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(LeftOfSeason.class, "rotation");
    var givens =
        Givens.none()
            .withNumber("most", season.most())
            .withQuantity("maximum", season.maximum())
            .withQuantity("dose", season.dose());
    for (int i = 0; i < season.uses().size(); i++) {
      var use = season.uses().get(i);
      givens =
          givens
              .withDay("day" + i, use.day())
              .withText("product" + i, use.product())
              .withQuantity("dose" + i, use.dose());
    }
    return ExerciseBody.titled(words.say("left.title"))
        .story(
            words.say(
                "left.story",
                "field",
                field,
                "most",
                season.most(),
                "maximum",
                words.exact(season.maximum(), unit),
                "dose",
                words.exact(season.dose(), unit),
                "year",
                LabelledField.YEAR))
        .exhibit(table(season, unit, words))
        .givens(givens)
        .part(words.say("left.question.number"), earlier -> number(season, left, words))
        .part(
            words.say("left.question.amount", "unit", unit.symbol()),
            earlier -> amount(season, left, unit, words))
        .part(
            words.say("left.question.full"),
            earlier ->
                full(
                    season.dose(),
                    earlier.number(0),
                    earlier.quantity(1, VolumePerArea.class),
                    unit,
                    words))
        .cautions(Caution.all())
        .build();
  }

  private static Season season(ExerciseDraw draw, Unit<VolumePerArea> unit) {
    double high = new VolumePerArea(2.5).in(unit);
    double step = high > 1000 ? 50 : high > 100 ? 10 : 5;
    double dose = step * draw.whole(3, high > 100 ? 12 : 6);
    int used = draw.whole(2, 3);
    int left = draw.whole(3, 4);
    var uses = new ArrayList<Use>();
    int day = draw.whole(0, 20);
    uses.add(use(LabelledField.day(day + 60).minusYears(1), OWN, dose, unit));
    uses.add(use(LabelledField.day(day + 80).minusYears(1), OWN, dose, unit));
    int reduced = draw.whole(0, used - 1);
    int other = draw.whole(0, used - 1);
    for (int i = 0; i < used; i++) {
      uses.add(use(LabelledField.day(day), OWN, i == reduced ? REDUCED * dose : dose, unit));
      day += draw.whole(8, 15);
      if (i == other) {
        uses.add(use(LabelledField.day(day), OTHER, step * draw.whole(3, 6), unit));
        day += draw.whole(8, 15);
      }
    }
    double sum = (used - 1 + REDUCED) * dose;
    double more = draw.step(1.2, left - 1.2, 0.1) * dose;
    double maximum = step / 5 * Math.round((sum + more) / step * 5);
    return new Season(
        used + left,
        VolumePerArea.of(maximum, unit),
        VolumePerArea.of(dose, unit),
        List.copyOf(uses),
        LabelledField.day(day));
  }

  private static Use use(LocalDate day, String product, double dose, Unit<VolumePerArea> unit) {
    return new Use(day, product, VolumePerArea.of(Math.round(10 * dose) / 10.0, unit));
  }

  private static Block table(Season season, Unit<VolumePerArea> unit, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (var use : season.uses()) {
      rows.add(
          List.of(
              Cell.text(words.day(use.day()) + " " + use.day().getYear()),
              Cell.text(words.say("product", "name", use.product())),
              Cell.text(words.exact(use.dose().in(unit)))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("left.table"),
            List.of(
                ResultTable.Column.of(words.say("column.day")),
                ResultTable.Column.of(words.say("column.product")),
                ResultTable.Column.of(words.say("column.dose"), unit.symbol())),
            rows));
  }

  private static SolvedPart number(Season season, LeftToUse left, CourseWords words) {
    long found = Math.round(left.applications().orElseThrow());
    int used = season.own().size();
    long before = season.uses().stream().filter(Use::lastYear).count();
    long others = season.uses().stream().filter(use -> use.product().equals(OTHER)).count();
    var slips =
        List.of(
            number(RotationMistake.OTHER_PRODUCT_COUNTED, found - others),
            number(RotationMistake.LAST_YEAR_COUNTED, found - before),
            number(RotationMistake.MAXIMUM_AS_LEFT, season.most()));
    var working =
        Working.of(words.say("left.title"))
            .step(words.say("left.step.used", "year", LabelledField.YEAR), "", "", "" + used)
            .step(
                words.say("left.step.number"),
                words.say("left.formula.left"),
                season.most() + " − " + used,
                String.valueOf(found));
    return new SolvedPart(NumberAnswer.whole(found), working, slips);
  }

  private static TypicalSlip number(RotationMistake mistake, long number) {
    return new TypicalSlip(mistake, NumberAnswer.whole(number));
  }

  private static SolvedPart amount(
      Season season, LeftToUse left, Unit<VolumePerArea> unit, CourseWords words) {
    // The line of the amount stands below that of the number, in litres per hectare.
    var found = new VolumePerArea(left.lines().get(1).number());
    var own = season.own();
    double used = season.sum(own, unit);
    double maximum = season.maximum().in(unit);
    var before = season.uses().stream().filter(Use::lastYear).toList();
    var others = season.uses().stream().filter(use -> use.product().equals(OTHER)).toList();
    var slips = new ArrayList<TypicalSlip>();
    slips.add(amount(RotationMistake.USED_FOR_LEFT, used, unit));
    slips.add(
        amount(
            RotationMistake.FULL_DOSES_COUNTED,
            maximum - own.size() * season.dose().in(unit),
            unit));
    double withOthers = maximum - used - season.sum(others, unit);
    if (withOthers > 0) {
      slips.add(amount(RotationMistake.OTHER_PRODUCT_COUNTED, withOthers, unit));
    }
    double withLastYear = maximum - used - season.sum(before, unit);
    if (withLastYear > 0) {
      slips.add(amount(RotationMistake.LAST_YEAR_COUNTED, withLastYear, unit));
    }
    var sum =
        String.join(" + ", own.stream().map(use -> words.exact(use.dose().in(unit))).toList());
    var working =
        Working.of(words.say("left.title"))
            .step(
                words.say("left.step.sum", "year", LabelledField.YEAR),
                "",
                sum,
                words.number(used) + " " + unit.symbol())
            .step(
                words.say("left.step.amount"),
                words.say("left.formula.left"),
                words.exact(maximum) + " − " + words.number(used),
                words.show(found, unit));
    return new SolvedPart(MeasuredAnswer.of(found, unit), working, slips);
  }

  private static TypicalSlip amount(
      RotationMistake mistake, double amount, Unit<VolumePerArea> unit) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(VolumePerArea.of(amount, unit), unit));
  }

  private static SolvedPart full(
      VolumePerArea dose,
      double number,
      VolumePerArea left,
      Unit<VolumePerArea> unit,
      CourseWords words) {
    double doses = left.ratioTo(dose);
    long whole = (long) Math.floor(doses + 1e-9);
    long found = Math.min(Math.round(number), whole);
    var slips =
        List.of(
            number(RotationMistake.ONLY_THE_NUMBER, Math.round(number)),
            number(
                RotationMistake.ROUNDED_UP,
                Math.min(Math.round(number), (long) Math.ceil(doses - 1e-9))));
    var working =
        Working.of(words.say("left.title"))
            .step(
                words.say("left.step.doses"),
                words.say("left.formula.doses"),
                words.show(left, unit) + " / " + words.exact(dose, unit),
                words.number(doses))
            .step(
                words.say("left.step.full"),
                words.say("left.formula.full"),
                "min(" + whole + "; " + Math.round(number) + ")",
                String.valueOf(found));
    return new SolvedPart(NumberAnswer.whole(found), working, slips);
  }
}
