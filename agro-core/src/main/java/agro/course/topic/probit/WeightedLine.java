package agro.course.topic.probit;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.course.handwork.HandProbit;
import agro.course.handwork.RegressionSums;
import agro.course.sheet.ProbitLine;
import agro.trial.bioassay.BioassayData;
import agro.trial.bioassay.DoseAxis;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.EndPoint;
import agro.units.MassPerVolumeUnit;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** From the sums of one cycle of the calculation by hand to slope and lethal dose. */
final class WeightedLine implements ExerciseType {

  @Override
  public String code() {
    return "probit-weighted";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.PROBIT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        ProbitMistake.NOT_WEIGHTED,
        ProbitMistake.OTHER_VARIABLE,
        ProbitMistake.SUMS_NOT_CENTRED,
        ProbitMistake.SLOPE_UPSIDE_DOWN,
        ProbitMistake.ANTILOG_FORGOTTEN,
        ProbitMistake.NATURAL_ANTILOG);
  }

  private static final int DOSES = 5;

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double slope = draw.step(1.8, 3, 0.1);
    double half = draw.sensible(3, 12, 2);
    int animals = 10 * draw.whole(3, 6);
    var groups = new ArrayList<DoseGroup>();
    for (int i = 0; i < DOSES; i++) {
      double dose = (1 << i) * Math.rint(half) / 4;
      double chance =
          ProbitLine.percent(ProbitLine.HALF + slope * StrictMath.log10(dose / half)) / 100;
      int dead = Math.min(animals - 1, Math.max(1, draw.binomial(animals, chance)));
      groups.add(DoseGroup.of(dose, animals, dead));
    }
    var pest = draw.oneOf(context.setting().pests());
    var words = ProbitExercises.words(context.words());
    var sums = sums(groups);
    return ExerciseBody.titled(words.say("weighted.title"))
        .story(words.say("weighted.story", "pest", pest, "animals", animals))
        .exhibit(new Block.TableBlock(kills(groups, words)))
        .story(
            words.say(
                "weighted.sums",
                "w",
                words.exact(sums.w()),
                "wx",
                words.exact(sums.wx()),
                "wy",
                words.exact(sums.wy()),
                "wxx",
                words.exact(sums.wxx()),
                "wxy",
                words.exact(sums.wxy())))
        .givens(
            Givens.none()
                .withNumber("w", sums.w())
                .withNumber("wx", sums.wx())
                .withNumber("wy", sums.wy())
                .withNumber("wxx", sums.wxx())
                .withNumber("wxy", sums.wxy()))
        .part(
            words.say("weighted.question.x"),
            earlier -> mean(sums.wx(), sums.wy(), sums.w(), "x", words))
        .part(
            words.say("weighted.question.y"),
            earlier -> mean(sums.wy(), sums.wx(), sums.w(), "y", words))
        .part(words.say("weighted.question.slope"), 2, earlier -> slope(sums, words))
        .part(
            words.say("weighted.question.half"),
            2,
            earlier -> half(earlier.number(0), earlier.number(1), earlier.number(2), words))
        .source(HandProbit.textbook())
        .build();
  }

  /** The sums of the first cycle, with as many decimals as a student gets to see. */
  private static RegressionSums sums(List<DoseGroup> groups) {
    var data =
        BioassayData.of(
            "",
            new DoseAxis.Concentration(MassPerVolumeUnit.MILLIGRAM_PER_LITRE),
            EndPoint.DEAD,
            groups);
    var sums = HandProbit.of(data).cycles(1).last().sums();
    return new RegressionSums(
        cut(sums.w()),
        cut(sums.wx()),
        cut(sums.wy()),
        cut(sums.wxx()),
        cut(sums.wxy()),
        cut(sums.wyy()));
  }

  private static double cut(double sum) {
    return Math.rint(1e4 * sum) / 1e4;
  }

  private static ResultTable kills(List<DoseGroup> groups, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (var group : groups) {
      rows.add(
          List.of(
              Cell.text(words.exact(group.dose())),
              Cell.text(words.exact(group.exposed())),
              Cell.text(words.exact(group.responded()))));
    }
    return ResultTable.of(
        words.say("weighted.table"),
        List.of(
            ResultTable.Column.of(words.say("weighted.column.dose"), ProbitExercises.UNIT.symbol()),
            ResultTable.Column.of(words.say("weighted.column.animals")),
            ResultTable.Column.of(words.say("weighted.column.dead"))),
        rows);
  }

  private static SolvedPart mean(
      double sum, double other, double weights, String of, CourseWords words) {
    return new SolvedPart(
        NumberAnswer.rounded(sum / weights, 3),
        Working.of(words.say("weighted.title"))
            .step(
                words.say("weighted.step." + of),
                "Σnw" + of + " / Σnw",
                words.exact(sum) + " / " + words.exact(weights),
                words.number(sum / weights, 4)),
        List.of(
            new TypicalSlip(ProbitMistake.NOT_WEIGHTED, NumberAnswer.rounded(sum / DOSES, 3)),
            new TypicalSlip(
                ProbitMistake.OTHER_VARIABLE, NumberAnswer.rounded(other / weights, 3))));
  }

  private static SolvedPart slope(RegressionSums sums, CourseWords words) {
    double slope = sums.sxy() / sums.sxx();
    return new SolvedPart(
        NumberAnswer.rounded(slope, 2),
        Working.of(words.say("weighted.title"))
            .step(
                "Sxx",
                "Σnwx² − (Σnwx)² / Σnw",
                words.exact(sums.wxx())
                    + " − "
                    + words.exact(sums.wx())
                    + "² / "
                    + words.exact(sums.w()),
                words.number(sums.sxx(), 4))
            .step(
                "Sxy",
                "Σnwxy − Σnwx · Σnwy / Σnw",
                words.exact(sums.wxy())
                    + " − "
                    + words.exact(sums.wx())
                    + " · "
                    + words.exact(sums.wy())
                    + " / "
                    + words.exact(sums.w()),
                words.number(sums.sxy(), 4))
            .step(
                words.say("two.step.slope"),
                "b = Sxy / Sxx",
                words.number(sums.sxy(), 4) + " / " + words.number(sums.sxx(), 4),
                words.number(slope, 3)),
        List.of(
            new TypicalSlip(
                ProbitMistake.SUMS_NOT_CENTRED, NumberAnswer.rounded(sums.wxy() / sums.wxx(), 2)),
            new TypicalSlip(ProbitMistake.SLOPE_UPSIDE_DOWN, NumberAnswer.rounded(1 / slope, 2))));
  }

  private static SolvedPart half(double meanX, double meanY, double slope, CourseWords words) {
    double log = meanX + (ProbitLine.HALF - meanY) / slope;
    double dose = Math.pow(10, log);
    var slips = new ArrayList<TypicalSlip>();
    if (log > 0) {
      slips.add(new TypicalSlip(ProbitMistake.ANTILOG_FORGOTTEN, ProbitExercises.dose(log)));
    }
    slips.add(new TypicalSlip(ProbitMistake.NATURAL_ANTILOG, ProbitExercises.dose(Math.exp(log))));
    return new SolvedPart(
        ProbitExercises.dose(dose),
        Working.of(words.say("weighted.title"))
            .step(
                words.say("line.step.log"),
                words.say("weighted.formula.log"),
                words.number(meanX, 4)
                    + " + (5 − "
                    + words.number(meanY, 4)
                    + ") / "
                    + words.number(slope, 3),
                words.number(log, 4))
            .step(
                words.say("line.step.antilog"),
                "LD50 = 10^log LD50",
                "10^" + words.number(log, 4),
                words.number(dose) + " " + ProbitExercises.UNIT.symbol()),
        slips);
  }
}
