package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.report.InputProblem;
import agro.trial.bioassay.DoseRatio;
import agro.trial.bioassay.LimitShape;
import agro.trial.bioassay.SeriesComparison;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Ratios of doses between series with their limits on a log axis, beside a line at 1. */
public final class DoseRatioFigure {

  private static final int ROW_HEIGHT = 34;
  private static final int FRAME = 44;
  private static final int AXIS_HEIGHT = 46;
  private static final double MARGIN = 0.06;
  private static final double NAMES = 0.46;
  private static final double WORDS = 0.5;
  private static final double FAR = 1.5;

  private DoseRatioFigure() {}

  /**
   * Draws the ratios of lethal doses of all series to one of them.
   *
   * @param comparison the comparison
   * @param reference name of the series that the others are compared with
   * @param percents levels of the lethal doses, each above 0 and below 100
   * @return the figure
   * @throws InputProblem when there is no such series, a level is out of range, or no level is
   *     given
   */
  public static DrawnFigure of(SeriesComparison comparison, String reference, double... percents) {
    var ratios = new ArrayList<DoseRatio>();
    for (double percent : percents) {
      ratios.addAll(comparison.resistanceRatios(reference, percent));
    }
    return of(ratios);
  }

  /**
   * Draws ratios of any kind, one below the other.
   *
   * @param ratios at least one
   * @return the figure
   * @throws InputProblem when there is no ratio
   */
  public static DrawnFigure of(List<DoseRatio> ratios) {
    if (ratios.isEmpty()) {
      throw InputProblem.of("no ratio")
          .expected("at least one")
          .because("there is nothing to draw")
          .mend("name at least one level, for example 50");
    }
    var confidence = Numbers.plain(100 * ratios.get(0).confidence()) + " %";
    var sheet =
        new FigureSheet(
            "Ratios of doses",
            "Diamond: ratio. Bar: " + confidence + " limits. Line: equal doses.",
            List.of(panel(ratios)));
    return new DrawnFigure(sheet, alternative(ratios), caption(ratios), data(ratios));
  }

  private static ChartPanel panel(List<DoseRatio> ratios) {
    double low = 0;
    double high = 0;
    for (var each : ratios) {
      double place = Math.log10(each.ratio());
      for (double end : new double[] {each.limits().low(), each.limits().high(), each.ratio()}) {
        double at = Math.log10(end);
        if (Math.abs(at - place) <= FAR) {
          low = Math.min(low, at);
          high = Math.max(high, at);
        }
      }
    }
    double range = Math.max(high - low, 0.2);
    low -= MARGIN * range;
    high += MARGIN * range;
    var panel = new ChartPanel(FRAME + ROW_HEIGHT * ratios.size(), AXIS_HEIGHT, "");
    double left = low - NAMES * (high - low);
    panel.ranges(left, high + WORDS * (high - low), 0, ratios.size()).withoutYTicks().leftRoom(8);
    for (double tick : DoseTicks.ofLogarithm(low, high)) {
      double place = Math.log10(tick);
      panel.upright(place, FigureLook.GRID, FigureLook.solid(1));
      panel.words(DoseTicks.words(tick), place, 0, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    panel.upright(0, FigureLook.DARK_GREY, FigureLook.dashed(1.5));
    panel.stroke(low, 0, high, 0, FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.words(
        "Ratio, log scale", 0.5 * (low + high), 0, Side.FAR_BELOW, FigureLook.TEXT, FigureLook.INK);
    for (int i = 0; i < ratios.size(); i++) {
      row(panel, ratios.get(i), ratios.size() - i - 0.5, low, high);
    }
    return panel;
  }

  private static void row(ChartPanel panel, DoseRatio ratio, double y, double low, double high) {
    double from = Math.max(low, Math.log10(ratio.limits().low()));
    double to = Math.min(high, Math.log10(ratio.limits().high()));
    if (ratio.limits().shape() == LimitShape.OUTSIDE) {
      bar(panel, low, from, y, low, high);
      bar(panel, to, high, y, low, high);
    } else {
      bar(panel, from, to, y, low, high);
    }
    panel.mark(Math.log10(ratio.ratio()), y, FigureLook.BLUE, FigureMark.MEDIAN);
    panel.words(name(ratio), panel.xLow(), y, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
    panel.words(
        Numbers.significant(ratio.ratio(), 3)
            + (ratio.limits().isBounded() ? " (" + limits(ratio) + ")" : " (unbounded)"),
        high,
        y,
        Side.RIGHT,
        ratio.isDifferentFromOne() ? FigureLook.BOLD : FigureLook.TEXT,
        FigureLook.INK);
  }

  private static void bar(
      ChartPanel panel, double from, double to, double y, double low, double high) {
    panel.curve(
        new double[] {from, to}, new double[] {y, y}, FigureLook.INK, FigureLook.solid(2.2));
    if (from <= low) {
      panel.mark(low, y, FigureLook.INK, FigureMark.GOES_BACK);
    }
    if (to >= high) {
      panel.mark(high, y, FigureLook.INK, FigureMark.GOES_ON);
    }
  }

  private static String name(DoseRatio ratio) {
    return (ratio.kind() == DoseRatio.Kind.LETHAL_DOSE_RATIO
            ? "LD" + Numbers.plain(ratio.percent()) + " of "
            : "potency of ")
        + ratio.series()
        + " / "
        + ratio.reference();
  }

  private static String limits(DoseRatio ratio) {
    return ratio.limits().words(value -> Numbers.significant(value, 3));
  }

  private static String alternative(List<DoseRatio> ratios) {
    var text = new StringBuilder("Ratios of doses on a log axis.");
    for (var each : ratios) {
      text.append(' ').append(FigureWords.sentence(each.words()));
      text.append(each.isDifferentFromOne() ? ": not 1." : ": 1 is not refuted.");
    }
    return text.toString();
  }

  private static String caption(List<DoseRatio> ratios) {
    boolean potency =
        ratios.stream().anyMatch(each -> each.kind() == DoseRatio.Kind.RELATIVE_POTENCY);
    boolean lethal =
        ratios.stream().anyMatch(each -> each.kind() == DoseRatio.Kind.LETHAL_DOSE_RATIO);
    return (lethal
            ? "A lethal-dose ratio above 1: the series stands more than the reference; limits by the"
                + " logarithm of the ratio, after Robertson and Preisler. "
            : "")
        + (potency
            ? "A relative potency above 1: the series needs less than the reference; parallel"
                + " lines, limits after Fieller. "
            : "")
        + "Bold: the limits leave out 1. A bioassay says nothing about a rate in the field.";
  }

  private static ResultTable data(List<DoseRatio> ratios) {
    var rows = new ArrayList<List<Cell>>();
    for (var each : ratios) {
      rows.add(
          List.of(Cell.text(name(each)), Cell.number(each.ratio(), 3), Cell.text(limits(each))));
    }
    var confidence = Numbers.plain(100 * ratios.get(0).confidence()) + " % limits";
    return ResultTable.of(
        "Ratios of doses",
        List.of(Column.of("Ratio of"), Column.of("Ratio"), Column.of(confidence)),
        rows);
  }
}
