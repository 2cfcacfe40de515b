package agro.notebook.figure;

import agro.trial.analysis.AnalysedTrial;
import agro.trial.analysis.AnalysisRoute;
import agro.trial.analysis.PlotResidual;
import agro.trial.analysis.TreatmentMean;
import agro.trial.analysis.TreatmentMeans;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Means of a trial with every block behind them: the plots, the mean with its limits, its letters,
 * and as a bar the smallest difference that the trial could have shown. The axis is ruled on the
 * scale of the analysis, so that the bar is as long everywhere as it counts there, and numbered in
 * the values that were assessed.
 */
public final class TrialMeansFigure {

  private TrialMeansFigure() {}

  /**
   * Draws the means of the treatments, all factors combined.
   *
   * @param analysed the analysis of a trial
   * @return the figure
   */
  public static DrawnFigure of(AnalysedTrial analysed) {
    return of(analysed, analysed.treatmentMeans());
  }

  /**
   * Draws the means of one factor or combination.
   *
   * @param analysed the analysis of a trial
   * @param means means of this analysis
   * @return the figure
   */
  public static DrawnFigure of(AnalysedTrial analysed, TreatmentMeans means) {
    var sheet =
        new FigureSheet(
            FigureWords.sentence(analysed.subject().title()) + ": every plot behind its mean",
            key(analysed, means),
            List.of(new TrialMeansPlot(analysed, means).panel()));
    return new DrawnFigure(
        sheet, alternative(analysed, means), caption(analysed, means), data(analysed, means));
  }

  static String axisWords(AnalysedTrial analysed) {
    var subject = analysed.subject();
    return FigureWords.sentence(subject.values().response().name())
        + (subject.unit().isEmpty() ? "" : " (" + subject.unit() + ")");
  }

  private static String key(AnalysedTrial analysed, TreatmentMeans means) {
    boolean blocks =
        analysed.plots().stream().allMatch(plot -> !plot.plot().block().isEmpty())
            && analysed.plots().stream().allMatch(plot -> plot.plot().block().length() <= 2);
    boolean ranks = analysed.subject().route() == AnalysisRoute.RANKS;
    return (blocks ? "Numbers: the plots by their block. " : "Rings: the plots. ")
        + (ranks ? "Diamond: median." : "Diamond and bar: mean with its limits.")
        + (means.method().isEmpty()
            ? ""
            : means.means().stream().anyMatch(mean -> mean.mark().contains("*"))
                ? " Star: differs from the control."
                : " Means that share no letter differ.");
  }

  private static String alternative(AnalysedTrial analysed, TreatmentMeans means) {
    return means.means().stream()
            .map(mean -> words(analysed, means, mean))
            .collect(
                Collectors.joining(
                    "; ",
                    axisWords(analysed)
                        + " by "
                        + means.title()
                        + ", mean with limits, letters, least and greatest plot: ",
                    ". "))
        + difference(analysed, means);
  }

  private static String words(AnalysedTrial analysed, TreatmentMeans means, TreatmentMean mean) {
    var plots =
        TrialMeansPlot.plotsOf(analysed, means, mean.label()).stream()
            .mapToDouble(PlotResidual::value)
            .summaryStatistics();
    return mean.label()
        + " "
        + (mean.mean().isPresent() ? number(mean.mean().getAsDouble()) : "not known")
        + mean.limits()
            .map(limits -> " (" + number(limits.low()) + " to " + number(limits.high()) + ")")
            .orElse("")
        + (mean.mark().isEmpty() ? "" : ", " + mean.mark())
        + (plots.getCount() == 0
            ? ""
            : ", plots " + number(plots.getMin()) + " to " + number(plots.getMax()));
  }

  private static String number(double value) {
    return Double.isFinite(value) ? Numbers.significant(value, 3) : "unbounded";
  }

  private static String difference(AnalysedTrial analysed, TreatmentMeans means) {
    return means
        .significantDifference()
        .map(
            one ->
                "Smallest significant difference "
                    + (one.isOneNumber()
                        ? number(one.largest())
                        : number(one.smallest()) + " to " + number(one.largest()))
                    + " on the scale of the analysis"
                    + (MeansScale.of(analysed).isPlain()
                        ? "."
                        : ", " + analysed.subject().transformation().words() + "."))
        .orElse("");
  }

  private static String caption(AnalysedTrial analysed, TreatmentMeans means) {
    var subject = analysed.subject();
    var scale =
        MeansScale.of(analysed).isPlain()
            ? ""
            : " The test was on the scale of the "
                + subject.transformation().words()
                + ": means are carried back and are no arithmetic means, and the axis is ruled so"
                + " that a difference is as long everywhere as it counts there.";
    return subject.trial()
        + ", "
        + subject.design().words()
        + "; "
        + subject.route().words()
        + ": "
        + analysed.sentence()
        + "."
        + (means.method().isEmpty()
            ? ""
            : " Compared by "
                + means.method()
                + " at "
                + Numbers.plain(100 * subject.level())
                + " %. Means that were not shown to differ were not shown to be equal.")
        + scale
        + " The product label and local law come first and override every figure here.";
  }

  private static ResultTable data(AnalysedTrial analysed, TreatmentMeans means) {
    var rows = new ArrayList<List<Cell>>();
    for (var mean : means.means()) {
      for (var plot : TrialMeansPlot.plotsOf(analysed, means, mean.label())) {
        rows.add(
            List.of(
                Cell.text(mean.label()),
                Cell.text(plot.plot().block()),
                Cell.text(plot.plot().name()),
                Cell.number(plot.value(), 3),
                Cell.number(mean.mean().orElse(Double.NaN), 3),
                Cell.text(mean.mark())));
      }
    }
    var unit = analysed.subject().unit();
    return ResultTable.of(
        "Plots and means",
        List.of(
            Column.of(means.title()),
            Column.of("Block"),
            Column.of("Plot"),
            Column.of("Value", unit),
            Column.of("Mean", unit),
            Column.of("Mark")),
        rows);
  }
}
