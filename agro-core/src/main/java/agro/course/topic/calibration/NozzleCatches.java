package agro.course.topic.calibration;

import agro.course.CodesAnswer;
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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.sprayer.CatchTest;
import agro.dose.sprayer.CatchTestResult;
import agro.dose.sprayer.NozzleFinding;
import agro.dose.sprayer.NozzleFlow;
import agro.dose.sprayer.NozzleTolerance;
import agro.units.FlowRate;
import agro.units.Volume;
import agro.units.WorkTime;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;

/** Catches under all nozzles of a boom: mean, spread, nozzles that stand out, worn nozzles. */
final class NozzleCatches implements ExerciseType {

  private static final double STRICTER = 0.05;
  private static final double CLEAR_OF_LIMIT = 0.012;
  private static final List<Integer> SECONDS = List.of(15, 20, 30, 40);

  private record Test(List<Double> readings, int seconds, FlowRate fresh, CalibrationUnits units) {
    Volume reading(int nozzle) {
      return Volume.of(readings.get(nozzle), units.course().measure());
    }

    FlowRate flow(int nozzle) {
      return reading(nozzle).dividedBy(new WorkTime(seconds));
    }

    CatchTestResult asked() {
      var volumes = new Volume[readings.size()];
      for (int i = 0; i < volumes.length; i++) {
        volumes[i] = reading(i);
      }
      return CatchTest.ofRow(new WorkTime(seconds), volumes)
          .comparedWithNew(new NozzleFlow(fresh))
          .evaluate();
    }

    double departure(int nozzle, FlowRate from) {
      return flow(nozzle).ratioTo(from) - 1;
    }

    Set<String> nozzles(FlowRate from, DoublePredicate which) {
      var named = new TreeSet<String>();
      for (int i = 0; i < readings.size(); i++) {
        if (which.test(departure(i, from))) {
          named.add(String.valueOf(i + 1));
        }
      }
      return named;
    }

    boolean isClear() {
      double sum = readings.stream().mapToDouble(Double::doubleValue).sum();
      var unit = units.course().measure();
      var mean = Volume.of(sum / readings.size(), unit).dividedBy(new WorkTime(seconds));
      double limit = NozzleTolerance.TEN_PERCENT.share();
      return nozzles(mean, share -> Math.abs(Math.abs(share) - limit) < CLEAR_OF_LIMIT).isEmpty()
          && nozzles(fresh, share -> Math.abs(share - limit) < CLEAR_OF_LIMIT).isEmpty();
    }
  }

  @Override
  public String code() {
    return "calibration-catch";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE, Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.CATCH_TIME_AS_MINUTE,
        CalibrationMistake.PER_SECOND_AS_PER_MINUTE,
        CalibrationMistake.SUM_FOR_MEAN,
        CalibrationMistake.FIVE_PER_CENT_LIMIT,
        CalibrationMistake.ONLY_TOO_MUCH,
        CalibrationMistake.ONLY_TOO_LITTLE,
        CalibrationMistake.DIVIDED_BY_N,
        CalibrationMistake.RANGE_FOR_DEVIATION,
        CalibrationMistake.MEAN_FOR_NEW,
        CalibrationMistake.CLOGGED_AS_WORN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var test = draw(draw, new CalibrationUnits(context.units()));
    while (!test.isClear()) {
      test = draw(draw, test.units());
    }
    var drawn = test;
    var units = test.units();
    var result = test.asked();
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(NozzleCatches.class, "calibration");
    var givens =
        Givens.none()
            .withNumbers("readings", test.readings())
            .withNumber("seconds", test.seconds());
    var body =
        ExerciseBody.titled(words.say("catch.title"))
            .story(
                words.say(
                    "catch.story",
                    "field",
                    field,
                    "nozzles",
                    test.readings().size(),
                    "seconds",
                    test.seconds()))
            .exhibit(table(test, words))
            .part(
                words.say("catch.question.mean", "unit", units.flow().symbol()),
                earlier -> mean(drawn, result, words))
            .part(
                words.say("catch.question.outside"),
                earlier -> outside(drawn, earlier.quantity(0, FlowRate.class), words));
    if (difficulty == Difficulty.DEMANDING) {
      givens = givens.withQuantity("new", test.fresh());
      body.part(
              words.say("catch.question.spread"),
              earlier -> spread(drawn, result, earlier.quantity(0, FlowRate.class), words))
          .part(
              words.say("catch.question.worn", "flow", words.exact(test.fresh(), units.flow())),
              earlier -> worn(drawn, result, earlier.quantity(0, FlowRate.class), words));
    }
    return body.givens(givens).source(NozzleTolerance.TEN_PERCENT.source()).build();
  }

  /** One nozzle far above, one far below, one rather high, the rest near a nominal catch. */
  private static Test draw(ExerciseDraw draw, CalibrationUnits units) {
    int seconds = draw.oneOf(SECONDS);
    int nozzles = draw.whole(6, 8);
    double step = units.gallons() ? 0.1 : 5;
    double flow = draw.step(0.8, 1.8, 0.1);
    double usual = new Volume(flow * seconds / 60).in(units.course().measure());
    var shares = new ArrayList<Double>();
    shares.add(draw.step(1.13, 1.2, 0.01));
    shares.add(draw.step(0.8, 0.87, 0.01));
    shares.add(draw.step(1.06, 1.09, 0.005));
    while (shares.size() < nozzles) {
      shares.add(draw.step(0.97, 1.03, 0.01));
    }
    var readings =
        draw.some(shares, nozzles).stream()
            .map(share -> Math.round(share * usual / step) * step)
            .map(reading -> Math.round(10 * reading) / 10.0)
            .toList();
    double fresh = Math.round(1000 * new FlowRate(0.96 * flow).in(units.flow())) / 1000.0;
    return new Test(readings, seconds, FlowRate.of(fresh, units.flow()), units);
  }

  private static Block table(Test test, CourseWords words) {
    var measure = test.units().course().measure();
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < test.readings().size(); i++) {
      rows.add(
          List.of(
              Cell.text(String.valueOf(i + 1)), Cell.text(words.exact(test.readings().get(i)))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("catch.table"),
            List.of(
                ResultTable.Column.of(words.say("catch.column.nozzle")),
                ResultTable.Column.of(words.say("catch.column.caught"), measure.symbol())),
            rows));
  }

  private static SolvedPart mean(Test test, CatchTestResult result, CourseWords words) {
    var units = test.units();
    var measure = units.course().measure();
    var found = result.meanFlow().flow();
    double sum = test.readings().stream().mapToDouble(Double::doubleValue).sum();
    int nozzles = test.readings().size();
    var mean = Volume.of(sum / nozzles, measure);
    var slips = new ArrayList<>(BoomVolume.flowSlips(mean, test.seconds(), units));
    slips.add(
        new TypicalSlip(
            CalibrationMistake.SUM_FOR_MEAN,
            MeasuredAnswer.of(found.times(nozzles), units.flow())));
    var working =
        Working.of(words.say("catch.title"))
            .step(
                words.say("catch.step.mean"),
                words.say("catch.formula.mean"),
                test.readings().stream()
                        .map(words::exact)
                        .collect(Collectors.joining(" + ", "(", ")"))
                    + " / "
                    + nozzles,
                words.show(mean, measure))
            .step(
                words.say("boom.step.flow"),
                words.say("boom.formula.flow"),
                words.show(mean, measure) + " × 60 / " + test.seconds(),
                words.show(mean.times(60.0 / test.seconds()), measure)
                    + " / min = "
                    + words.show(found, units.flow()));
    return new SolvedPart(MeasuredAnswer.of(found, units.flow()), working, slips);
  }

  private static SolvedPart outside(Test test, FlowRate mean, CourseWords words) {
    double limit = NozzleTolerance.TEN_PERCENT.share();
    var found = test.nozzles(mean, share -> Math.abs(share) > limit);
    var slips =
        List.of(
            codes(
                CalibrationMistake.FIVE_PER_CENT_LIMIT,
                test.nozzles(mean, share -> Math.abs(share) > STRICTER)),
            codes(CalibrationMistake.ONLY_TOO_MUCH, test.nozzles(mean, share -> share > limit)),
            codes(CalibrationMistake.ONLY_TOO_LITTLE, test.nozzles(mean, share -> share < -limit)));
    var unit = test.units().flow();
    var working =
        Working.of(words.say("catch.title"))
            .step(
                words.say("catch.step.limits"),
                words.say("catch.formula.limits"),
                words.exact(1 - limit)
                    + " × "
                    + words.show(mean, unit)
                    + "; "
                    + words.exact(1 + limit)
                    + " × "
                    + words.show(mean, unit),
                words.show(mean.times(1 - limit), unit)
                    + "; "
                    + words.show(mean.times(1 + limit), unit))
            .step(words.say("catch.step.compare"), "", "", departures(test, mean, words))
            .step(words.say("catch.step.outside"), "", "", new CodesAnswer(found).print(words));
    return new SolvedPart(new CodesAnswer(found), working, slips);
  }

  private static String departures(Test test, FlowRate from, CourseWords words) {
    var all = new ArrayList<String>();
    for (int i = 0; i < test.readings().size(); i++) {
      all.add((i + 1) + ": " + words.number(100 * test.departure(i, from), 1) + " %");
    }
    return String.join("; ", all);
  }

  private static TypicalSlip codes(CalibrationMistake mistake, Set<String> codes) {
    return new TypicalSlip(mistake, new CodesAnswer(codes));
  }

  private static SolvedPart spread(
      Test test, CatchTestResult result, FlowRate mean, CourseWords words) {
    var unit = test.units().flow();
    int nozzles = test.readings().size();
    var deviation = result.standardDeviation().orElseThrow();
    double found = 100 * deviation.ratioTo(mean);
    var readings = test.readings().stream().mapToDouble(Double::doubleValue).summaryStatistics();
    var range =
        Volume.of(readings.getMax() - readings.getMin(), test.units().course().measure())
            .dividedBy(new WorkTime(test.seconds()));
    var slips =
        List.of(
            new TypicalSlip(
                CalibrationMistake.DIVIDED_BY_N,
                PercentAnswer.rounded(found * Math.sqrt((nozzles - 1.0) / nozzles), 1)),
            new TypicalSlip(
                CalibrationMistake.RANGE_FOR_DEVIATION,
                PercentAnswer.rounded(100 * range.ratioTo(mean), 1)));
    var working =
        Working.of(words.say("catch.title"))
            .step(
                words.say("catch.step.deviation"),
                words.say("catch.formula.deviation"),
                "",
                words.show(deviation, unit))
            .step(
                words.say("catch.step.spread"),
                words.say("catch.formula.spread"),
                "100 × " + words.show(deviation, unit) + " / " + words.show(mean, unit),
                words.number(found, 1) + " %");
    return new SolvedPart(PercentAnswer.rounded(found, 1), working, slips);
  }

  private static SolvedPart worn(
      Test test, CatchTestResult result, FlowRate mean, CourseWords words) {
    double limit = NozzleTolerance.TEN_PERCENT.share();
    var found = result.worn().stream().map(NozzleFinding::nozzle).collect(Collectors.toSet());
    var clogged = new TreeSet<>(found);
    clogged.addAll(test.nozzles(test.fresh(), share -> share < -limit));
    var slips =
        List.of(
            codes(CalibrationMistake.MEAN_FOR_NEW, test.nozzles(mean, share -> share > limit)),
            codes(CalibrationMistake.CLOGGED_AS_WORN, clogged));
    var unit = test.units().flow();
    var working =
        Working.of(words.say("catch.title"))
            .step(
                words.say("catch.step.wear"),
                words.say("catch.formula.wear"),
                words.exact(1 + limit) + " × " + words.exact(test.fresh(), unit),
                words.show(test.fresh().times(1 + limit), unit))
            .step(
                words.say("catch.step.compare.new"), "", "", departures(test, test.fresh(), words))
            .step(words.say("catch.step.worn"), "", "", new CodesAnswer(found).print(words));
    return new SolvedPart(new CodesAnswer(found), working, slips);
  }
}
