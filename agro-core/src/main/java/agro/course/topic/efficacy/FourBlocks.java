package agro.course.topic.efficacy;

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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.efficacy.LiveCounts;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A table of four blocks: means first, then the efficacy of the means. */
final class FourBlocks implements ExerciseType {

  private static final int BLOCKS = 4;
  private static final EfficacyFormula FORMULA = EfficacyFormula.ABBOTT;

  @Override
  public String code() {
    return "efficacy-blocks";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.EFFICACY;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE, Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        EfficacyMistake.SUM_FOR_MEAN,
        EfficacyMistake.OTHER_COLUMN,
        EfficacyMistake.SURVIVORS_GIVEN,
        EfficacyMistake.DIVIDED_BY_TREATED,
        EfficacyMistake.MEAN_OF_PERCENTS,
        EfficacyMistake.MEANS_FOR_PERCENTS);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double level = draw.step(25, 70, 5);
    double left = draw.step(0.08, 0.35, 0.01);
    boolean uneven = difficulty == Difficulty.DEMANDING;
    var control = new ArrayList<Double>();
    var treated = new ArrayList<Double>();
    for (int i = 0; i < BLOCKS; i++) {
      double share = uneven ? draw.step(0.4, 1.7, 0.1) : 1;
      control.add((double) Math.max(4, draw.poisson(level * share)));
      treated.add((double) draw.poisson(level * share * left * draw.step(0.5, 1.6, 0.1)));
    }
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = EfficacyExercises.words(context.words());
    var body =
        ExerciseBody.titled(words.say("blocks.title"))
            .story(words.say("blocks.story", "field", field, "pest", pest))
            .exhibit(new Block.TableBlock(table(control, treated, words)))
            .givens(Givens.none().withNumbers("control", control).withNumbers("treated", treated))
            .part(
                words.say("blocks.question.control"),
                earlier -> mean(control, treated, true, words))
            .part(
                words.say("blocks.question.treated"),
                earlier -> mean(treated, control, false, words))
            .part(
                words.say("blocks.question.efficacy", "formula", FORMULA.title()),
                2,
                earlier -> efficacy(earlier.number(1), earlier.number(0), control, treated, words))
            .source(FORMULA.source());
    if (uneven) {
      body.part(
          words.say("blocks.question.each"),
          2,
          earlier -> each(earlier.number(2), control, treated, words));
    }
    return body.build();
  }

  private static List<Double> percents(List<Double> control, List<Double> treated) {
    var percents = new ArrayList<Double>();
    for (int i = 0; i < BLOCKS; i++) {
      percents.add(FORMULA.percent(LiveCounts.after(treated.get(i), control.get(i))));
    }
    return percents;
  }

  /** The other way of putting blocks together, which differs where blocks do. */
  private static SolvedPart each(
      double ofMeans, List<Double> control, List<Double> treated, CourseWords words) {
    var percents = percents(control, treated);
    double mean = sum(percents) / BLOCKS;
    return new SolvedPart(
        PercentAnswer.rounded(mean, 1),
        Working.of(words.say("blocks.title"))
            .step(
                words.say("step.each"),
                FORMULA.form(),
                "",
                String.join(" %; ", percents.stream().map(words::number).toList()) + " %")
            .step(
                words.say("step.mean.each"),
                words.say("formula.mean.each"),
                "("
                    + String.join(" + ", percents.stream().map(words::number).toList())
                    + ") / "
                    + BLOCKS,
                words.number(mean) + " %"),
        List.of(
            new TypicalSlip(EfficacyMistake.MEANS_FOR_PERCENTS, PercentAnswer.rounded(ofMeans, 1)),
            new TypicalSlip(
                EfficacyMistake.SURVIVORS_GIVEN, PercentAnswer.rounded(100 - mean, 1))));
  }

  private static ResultTable table(List<Double> control, List<Double> treated, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < BLOCKS; i++) {
      rows.add(
          List.of(
              Cell.text(String.valueOf(i + 1)),
              Cell.text(words.exact(control.get(i))),
              Cell.text(words.exact(treated.get(i)))));
    }
    return ResultTable.of(
        words.say("blocks.table"),
        List.of(
            ResultTable.Column.of(words.say("blocks.column.block")),
            ResultTable.Column.of(words.say("blocks.column.control")),
            ResultTable.Column.of(words.say("blocks.column.treated"))),
        rows);
  }

  private static double sum(List<Double> counts) {
    return counts.stream().mapToDouble(Double::doubleValue).sum();
  }

  private static SolvedPart mean(
      List<Double> counts, List<Double> others, boolean control, CourseWords words) {
    double mean = sum(counts) / BLOCKS;
    return new SolvedPart(
        NumberAnswer.rounded(mean, 2),
        Working.of(words.say("blocks.title"))
            .step(
                words.say(control ? "step.mean.control" : "step.mean.treated"),
                words.say("formula.mean"),
                "("
                    + String.join(" + ", counts.stream().map(words::exact).toList())
                    + ") / "
                    + BLOCKS,
                words.number(mean)),
        List.of(
            new TypicalSlip(EfficacyMistake.SUM_FOR_MEAN, NumberAnswer.rounded(sum(counts), 2)),
            new TypicalSlip(
                EfficacyMistake.OTHER_COLUMN, NumberAnswer.rounded(sum(others) / BLOCKS, 2))));
  }

  private static SolvedPart efficacy(
      double treatedMean,
      double controlMean,
      List<Double> control,
      List<Double> treated,
      CourseWords words) {
    double percent = FORMULA.percent(LiveCounts.after(treatedMean, controlMean));
    double meanOfPercents = sum(percents(control, treated)) / BLOCKS;
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("blocks.title"))
            .step(
                words.say("step.efficacy", "formula", FORMULA.title()),
                FORMULA.form(),
                "(1 − " + words.number(treatedMean) + " / " + words.number(controlMean) + ") · 100",
                words.number(percent) + " %"),
        List.of(
            new TypicalSlip(
                EfficacyMistake.SURVIVORS_GIVEN, PercentAnswer.rounded(100 - percent, 1)),
            new TypicalSlip(
                EfficacyMistake.DIVIDED_BY_TREATED,
                PercentAnswer.rounded(100 * (controlMean - treatedMean) / treatedMean, 1)),
            new TypicalSlip(
                EfficacyMistake.MEAN_OF_PERCENTS, PercentAnswer.rounded(meanOfPercents, 1))));
  }
}
