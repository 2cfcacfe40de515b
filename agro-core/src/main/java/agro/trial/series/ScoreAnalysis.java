package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.multiple.PValueAdjustment;
import agro.trial.FieldTrial;
import agro.trial.PlotValues;
import agro.trial.ResponseKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/**
 * How scores on an ordinal scale are analysed: by ranks of the medians of plots, and by the
 * proportional-odds model. Plants within a plot give its median and its shares; they are never
 * replicates.
 *
 * @param level level of letters
 * @param adjustment how the chances of pairs by ranks are adjusted
 */
public record ScoreAnalysis(double level, PValueAdjustment adjustment) {

  /**
   * Checks the level.
   *
   * @throws InputProblem when it is not between 0 and 1
   */
  public ScoreAnalysis {
    Objects.requireNonNull(adjustment, "adjustment");
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("the level " + level)
          .expected("a chance between 0 and 1, such as 0.05")
          .because("letters follow from decisions at that level")
          .mend("write 5 % as 0.05");
    }
  }

  /**
   * Level 5 %, Holm's adjustment.
   *
   * @return the settings
   */
  public static ScoreAnalysis withDefaults() {
    return new ScoreAnalysis(0.05, PValueAdjustment.HOLM);
  }

  /**
   * These settings at another level.
   *
   * @param other the level
   * @return new settings
   */
  public ScoreAnalysis atLevel(double other) {
    return new ScoreAnalysis(other, adjustment);
  }

  /**
   * These settings with another adjustment.
   *
   * @param other the adjustment
   * @return new settings
   */
  public ScoreAnalysis with(PValueAdjustment other) {
    return new ScoreAnalysis(level, other);
  }

  /**
   * Analyses the scores of the only day.
   *
   * @param trial the trial; of several sites, each is a block or a set of blocks
   * @param variable name of the score
   * @return the analysis
   * @throws InputProblem for the reasons of {@link #evaluate(PlotValues)}, or when there are
   *     several days
   */
  public ScoredTrial evaluate(FieldTrial trial, String variable) {
    return evaluate(trial.variable(variable).onTheOnlyDay());
  }

  /**
   * Analyses the scores of one day.
   *
   * @param trial the trial
   * @param variable name of the score
   * @param date the day
   * @return the analysis
   * @throws InputProblem for the reasons of {@link #evaluate(PlotValues)}
   */
  public ScoredTrial evaluate(FieldTrial trial, String variable, LocalDate date) {
    return evaluate(trial.variable(variable).on(date));
  }

  /**
   * Analyses the scores of plots.
   *
   * @param values scores of one day
   * @return the analysis
   * @throws InputProblem when the variable is no score, a score is off its scale, all plots have
   *     one score, there is one treatment, or treatments have no replicates
   */
  public ScoredTrial evaluate(PlotValues values) {
    check(values);
    var plots = values.values().stream().map(PlotScore::of).toList();
    requireReplicates(plots);
    var ranks = RankTest.of(plots, adjustment);
    var notes = new ArrayList<String>();
    values.missing().forEach(plot -> notes.add(plot.label() + " has no score and is left out"));
    if (values.values().stream().anyMatch(each -> each.subSamples() > 1)) {
      notes.add("plants give the median and the shares of their plot; the plot is the replicate");
    }
    Optional<OddsModel> model = Optional.empty();
    try {
      model = Optional.of(OddsModel.of(plots, level));
    } catch (InputProblem noModel) {
      notes.add(
          "no proportional-odds model: " + noModel.read() + ", but it needs " + noModel.expected());
    }
    return new ScoredTrial(this, values, plots, grades(plots), ranks, model, notes);
  }

  private static List<Double> grades(List<PlotScore> plots) {
    var grades = new TreeSet<Double>();
    plots.forEach(each -> grades.addAll(each.scores()));
    return List.copyOf(grades);
  }

  private static void check(PlotValues values) {
    var response = values.response();
    if (response.kind() != ResponseKind.SCORE) {
      throw InputProblem.of(response.name() + " is declared as a " + response.kind().words())
          .expected("a score")
          .because("ranks waste what counts and measures tell")
          .mend("declare it as a score with its lowest and highest grade, or analyse its means");
    }
    var seen = new HashSet<Double>();
    for (var value : values.values()) {
      for (double score : value.subSampleValues()) {
        if (score < response.least() || score > response.most()) {
          throw InputProblem.of(value.plot().label() + " with the score " + PlainFigure.of(score))
              .expected(
                  "a grade from "
                      + PlainFigure.of(response.least())
                      + " to "
                      + PlainFigure.of(response.most()))
              .because("a grade off the scale has no place in the order")
              .mend("correct the score, or declare the scale that was used");
        }
      }
      seen.add(PlotScore.of(value).median());
    }
    if (seen.size() < 2) {
      throw InputProblem.of(
              seen.isEmpty()
                  ? "no scores"
                  : "all plots with the score " + PlainFigure.of(seen.iterator().next()))
          .expected("plots whose scores differ")
          .because("equal scores have one rank, and nothing is left to compare")
          .mend(
              "say in words that no difference was seen, or take shares of plants or a finer scale");
    }
    var treatments = new LinkedHashSet<>(values.treatments());
    if (treatments.size() < 2) {
      throw InputProblem.of("one treatment, " + treatments)
          .expected("at least two treatments")
          .because("a treatment is compared with another one")
          .mend("check whether the treatments were read from the right column");
    }
  }

  private static void requireReplicates(List<PlotScore> plots) {
    var treatments = plots.stream().map(each -> each.plot().treatment()).distinct().count();
    if (plots.size() <= treatments) {
      throw SummaryAnalysis.noReplicates(plots.size(), (int) treatments);
    }
  }

  /**
   * The share of plants at a grade or above it, in per cent: one number for each plot, which may be
   * averaged and analysed as any other.
   *
   * @param values scores of one day, several plants in a plot
   * @param grade the grade from which plants count
   * @return one share for each plot
   * @throws InputProblem when plots have one score each
   */
  public static PlotFigures shareAtLeast(PlotValues values, double grade) {
    if (values.values().stream().allMatch(each -> each.subSamples() == 1)) {
      throw InputProblem.of("plots with one score each")
          .expected("scores of several plants in each plot")
          .because("a share of one is 0 or 100 %")
          .mend("analyse the scores by ranks, or a grade and above as a count out of n");
    }
    return new PlotFigures(
        values.response().name() + " of " + PlainFigure.of(grade) + " or more, share of plants",
        "%",
        values.values().stream()
            .map(each -> new PlotFigure(each.plot(), 100 * PlotScore.of(each).shareAtLeast(grade)))
            .toList(),
        values.missing().stream().map(plot -> plot.label() + " has no score").toList());
  }
}
