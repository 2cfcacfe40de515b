package agro.course.topic.injury;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.InsectDays;
import agro.source.SamplingBibliography;
import agro.units.MassPerArea;
import agro.working.Block;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Insect-days from counts on several days, and what they cost. */
final class InsectDaysOfCounts {

  private static final int YEAR = 2025;

  private InsectDaysOfCounts() {}

  /** Days and mean counts, with the terms of a treatment whose loss is one for an insect-day. */
  private record Season(List<LocalDate> dates, List<Double> means, TreatmentTerms terms) {
    double days(int interval) {
      return (double) dates.get(interval + 1).toEpochDay() - dates.get(interval).toEpochDay();
    }

    double allDays() {
      return (double) dates.get(dates.size() - 1).toEpochDay() - dates.get(0).toEpochDay();
    }

    InsectDays insectDays() {
      return InsectDays.of(SamplingUnit.of(SamplingUnit.Kind.PLANT), dates, means);
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-insect-days",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            InjuryMistake.DAYS_LEFT_OUT,
            InjuryMistake.LAST_INTERVAL_LEFT_OUT,
            InjuryMistake.FIRST_COUNT_OF_INTERVAL,
            InjuryMistake.MEAN_TIMES_DAYS,
            InjuryMistake.DIVIDED_BY_COUNTS,
            InjuryMistake.ONE_DAY_TOO_MANY,
            InjuryMistake.UPSIDE_DOWN,
            InjuryMistake.PER_DAY_FOR_ALL,
            InjuryMistake.BULK_PRICE_FOR_UNIT,
            InjuryMistake.PRICE_DIVIDED,
            InjuryMistake.CONTROL_LEFT_OUT,
            InjuryMistake.COST_NOT_TAKEN_OFF,
            InjuryMistake.COST_TAKEN_OFF_FIRST),
        InsectDaysOfCounts::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var season = season(draw, CourseMoney.of(context));
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(InjuryExercises.class, "injury");
    var body =
        ExerciseBody.titled(words.say("days.title"))
            .story(words.say("days.story", "pest", pest, "crop", crop))
            .exhibit(table(season, words))
            .source(SamplingBibliography.RUPPEL_1983)
            .part(words.say("days.question"), earlier -> total(season, words));
    var givens = Givens.none().withNumbers("means", season.means());
    for (int i = 0; i < season.dates().size(); i++) {
      givens = givens.withDay("day" + i, season.dates().get(i));
    }
    if (difficulty == Difficulty.ROUTINE) {
      return body.givens(givens)
          .part(words.say("days.question.mean"), e -> perDay(season, e.number(0), words))
          .build();
    }
    var terms = season.terms();
    var money = terms.money();
    return body.story(
            words.say(
                "days.story.loss",
                "loss",
                money.exact(terms.loss(), words),
                "price",
                money.givenPrice(terms.price(), words),
                "cost",
                money.exactPerLand(terms.cost(), words),
                "control",
                words.exact(terms.control())))
        .givens(
            givens
                .withNumber("cost", terms.cost())
                .withNumber("price", terms.price())
                .withQuantity("loss", terms.loss())
                .withNumber("control", terms.control()))
        .cautions(Caution.all())
        .part(
            words.say("days.question.loss", "unit", money.massPerLand().symbol()),
            e -> loss(season, e.number(0), words))
        .part(
            money.ask("days.question.money", words),
            e -> lostMoney(terms, e.quantity(1, MassPerArea.class), words))
        .part(
            money.ask("days.question.gain", words),
            e -> TreatmentWorth.gain(terms, e.number(2), words))
        .build();
  }

  private static Season season(ExerciseDraw draw, CourseMoney money) {
    int counts = draw.whole(5, 6);
    var dates = new ArrayList<LocalDate>();
    var means = new ArrayList<Double>();
    var day = LocalDate.of(YEAR, 6, draw.whole(1, 20));
    double peak = draw.step(3, 9, 0.5);
    int top = draw.whole(2, counts - 2);
    for (int i = 0; i < counts; i++) {
      dates.add(day);
      double height = Math.max(0.15, 1 - 0.35 * Math.abs(i - top)) * (0.8 + 0.4 * draw.share());
      means.add(Math.rint(10 * peak * height) / 10);
      day = day.plusDays(draw.whole(3, 9));
    }
    var terms =
        new TreatmentTerms(
            money,
            money.drawPerLand(draw, 40, 150),
            money.drawPrice(draw, 150, 700),
            money.drawMass(draw, 2, 15),
            draw.step(60, 95, 5));
    return new Season(List.copyOf(dates), List.copyOf(means), terms);
  }

  private static Block table(Season season, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < season.dates().size(); i++) {
      rows.add(
          List.of(
              Cell.text(words.day(season.dates().get(i))),
              Cell.text(words.number(season.means().get(i), 1))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("days.table"),
            List.of(Column.of(words.say("days.date")), Column.of(words.say("days.mean"))),
            rows));
  }

  private static SolvedPart total(Season season, CourseWords words) {
    var insectDays = season.insectDays();
    double total = insectDays.total();
    var means = season.means();
    var draft = SolutionDraft.titled(words, words.say("days.title"));
    double stairs = 0;
    for (int i = 0; i + 1 < means.size(); i++) {
      double area = season.days(i) * (means.get(i) + means.get(i + 1)) / 2;
      stairs += season.days(i) * means.get(i);
      draft.step(
          "days.interval",
          words.exact(season.days(i))
              + " × ("
              + words.number(means.get(i), 1)
              + " + "
              + words.number(means.get(i + 1), 1)
              + ") / 2",
          words.number(area));
    }
    double sum = means.stream().mapToDouble(Double::doubleValue).sum();
    var sums = insectDays.cumulative();
    return draft
        .step("days.sum", "", words.number(total))
        .slip(InjuryMistake.DAYS_LEFT_OUT, NumberAnswer.computed(sum, 1))
        .slip(
            InjuryMistake.LAST_INTERVAL_LEFT_OUT,
            NumberAnswer.computed(sums.get(sums.size() - 2), 1))
        .slip(InjuryMistake.FIRST_COUNT_OF_INTERVAL, NumberAnswer.computed(stairs, 1))
        .slip(
            InjuryMistake.MEAN_TIMES_DAYS,
            NumberAnswer.computed(sum / means.size() * season.allDays(), 1))
        .answer(NumberAnswer.computed(total, 1));
  }

  private static SolvedPart perDay(Season season, double total, CourseWords words) {
    double days = season.allDays();
    var unit = words.say("per.plant");
    return SolutionDraft.titled(words, words.say("days.mean.step"))
        .step(
            "days.mean",
            words.number(total) + " / " + words.exact(days),
            words.number(total / days) + " " + unit)
        .slip(
            InjuryMistake.DIVIDED_BY_COUNTS,
            NumberAnswer.computed(total / season.means().size(), 2, unit))
        .slip(InjuryMistake.ONE_DAY_TOO_MANY, NumberAnswer.computed(total / (days + 1), 2, unit))
        .answer(NumberAnswer.computed(total / days, 2, unit));
  }

  private static SolvedPart loss(Season season, double total, CourseWords words) {
    var terms = season.terms();
    var money = terms.money();
    var unit = money.massPerLand();
    var loss = terms.loss().times(total);
    return SolutionDraft.titled(words, words.say("days.loss.step"))
        .step(
            "days.loss",
            words.number(total) + " × " + money.exact(terms.loss(), words),
            money.show(loss, words))
        .slip(
            InjuryMistake.PER_DAY_FOR_ALL,
            MeasuredAnswer.of(terms.loss().times(total / season.allDays()), unit))
        .slip(
            InjuryMistake.UPSIDE_DOWN,
            MeasuredAnswer.of(MassPerArea.of(total / terms.lossNumber(), unit), unit))
        .answer(MeasuredAnswer.of(loss, unit));
  }

  /** What produce that is lost is worth. */
  static SolvedPart lostMoney(TreatmentTerms terms, MassPerArea loss, CourseWords words) {
    var money = terms.money();
    double lost = money.perBulk(terms.price()).times(loss).in(money.land());
    double number = loss.in(money.massPerLand());
    var draft =
        SolutionDraft.titled(words, words.say("worth.money.step"))
            .step(
                "level.price",
                money.givenPrice(terms.price(), words),
                words.number(terms.unitPrice())
                    + " "
                    + money.sign()
                    + "/"
                    + money.harvest().symbol())
            .step(
                "worth.money",
                words.number(number) + " × " + words.number(terms.unitPrice()),
                money.perLand(lost, words))
            .slip(InjuryMistake.PRICE_DIVIDED, money.answer(number / terms.unitPrice()));
    if (money.pricedInBulk()) {
      draft.slip(InjuryMistake.BULK_PRICE_FOR_UNIT, money.answer(lost * money.harvestInBulk()));
    }
    return draft.answer(money.answer(lost));
  }
}
