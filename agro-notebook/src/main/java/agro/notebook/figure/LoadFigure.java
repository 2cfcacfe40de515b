package agro.notebook.figure;

import agro.trial.load.LoadMeasure;
import agro.trial.load.TrialLoad;
import agro.units.Numbers;
import agro.working.ResultTable;
import java.util.stream.Collectors;

/**
 * The pest on the plots of a trial from count to count, a panel for each treatment; the shaded area
 * under the mean curve is the load.
 */
public final class LoadFigure {

  private LoadFigure() {}

  /**
   * Draws the curves of the plots and the area under their mean.
   *
   * @param load the loads of the plots
   * @return the figure
   */
  public static DrawnFigure of(TrialLoad load) {
    var sheet =
        new FigureSheet(
            "Pest load by treatment: " + load.settings().measure().words(),
            "Thin: one plot. Thick: mean of the plots. "
                + (load.settings().measure() == LoadMeasure.STAIRS
                    ? "Numbers: the load, whose stairs go half a step beyond the first and last count."
                    : "Shade: the area under the mean."),
            new LoadPlot(load).panels());
    return new DrawnFigure(sheet, alternative(load), caption(load), data(load));
  }

  static String printed(TrialLoad load, double value) {
    return switch (load.settings().measure()) {
      case AREA, STAIRS -> Numbers.fixed(value, value < 20 ? 1 : 0);
      case MEAN_PER_DAY -> Numbers.fixed(value, 2);
      case RELATIVE_AREA -> Numbers.fixed(value, 3);
    };
  }

  static String shortUnit(TrialLoad load) {
    return switch (load.settings().measure()) {
      case AREA, STAIRS -> "pest-days";
      case MEAN_PER_DAY -> "in the mean over days";
      case RELATIVE_AREA -> "of the greatest area";
    };
  }

  static String heightWords(TrialLoad load) {
    return load.settings().measure() == LoadMeasure.RELATIVE_AREA
        ? "Value"
        : "Pests per " + load.settings().unit().words();
  }

  private static String alternative(TrialLoad load) {
    return load.meansByTreatment().entrySet().stream()
        .map(
            mean ->
                mean.getKey()
                    + " "
                    + printed(load, mean.getValue())
                    + " ("
                    + range(load, mean.getKey())
                    + ")")
        .collect(
            Collectors.joining(
                "; ",
                "Mean load by treatment in "
                    + load.unitWords()
                    + ", in brackets the least and the greatest plot: ",
                "."));
  }

  private static String range(TrialLoad load, String treatment) {
    var values =
        load.plots().stream()
            .filter(plot -> plot.treatment().equals(treatment))
            .mapToDouble(plot -> plot.value())
            .summaryStatistics();
    return printed(load, values.getMin()) + " to " + printed(load, values.getMax());
  }

  private static String caption(TrialLoad load) {
    return "Counts of the plots from "
        + FigureWords.longDay(load.days().get(0))
        + " to "
        + FigureWords.longDay(load.days().get(load.days().size() - 1))
        + ", joined by "
        + load.settings().between().words()
        + ". Load in "
        + load.unitWords()
        + "; the load of a treatment is the mean of its plots."
        + (load.notes().isEmpty()
            ? ""
            : " " + FigureWords.sentence(String.join("; ", load.notes())) + ".");
  }

  private static ResultTable data(TrialLoad load) {
    return load.table();
  }
}
