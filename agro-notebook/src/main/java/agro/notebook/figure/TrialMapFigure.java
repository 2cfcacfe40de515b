package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.trial.FieldTrial;
import agro.trial.PlotPlace;
import agro.trial.PlotValue;
import agro.trial.PlotValues;
import agro.trial.TrialPlot;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The field of a trial as it lies: every plot at its row and column with its treatment, the blocks
 * outlined, and, where values are given, shaded by them, so that a slope of the ground is seen.
 */
public final class TrialMapFigure {

  private static final int ROW_HEIGHT = 62;
  private static final double LETTER_POINTS = 7.2;
  private static final int PALEST = 0xFF;
  private static final int DARKEST = 0xB4;

  private final String heading;
  private final List<TrialPlot> plots;
  private final Map<TrialPlot, Double> values;
  private final String variable;
  private final int rows;
  private final int columns;
  private final List<String> treatments;

  private TrialMapFigure(
      String heading, List<TrialPlot> plots, Map<TrialPlot, Double> values, String variable) {
    this.heading = heading;
    this.plots = plots.stream().filter(plot -> plot.place().isPresent()).toList();
    this.values = values;
    this.variable = variable;
    rows = this.plots.stream().mapToInt(plot -> place(plot).row()).max().orElse(1);
    columns = this.plots.stream().mapToInt(plot -> place(plot).column()).max().orElse(1);
    treatments = plots.stream().map(TrialPlot::treatment).distinct().sorted().toList();
  }

  /**
   * Draws the plots with their treatments.
   *
   * @param trial a trial of one site and year, whose plots have rows and columns
   * @return the figure; it says so where no places are written down
   */
  public static DrawnFigure of(FieldTrial trial) {
    return new TrialMapFigure("The field of " + trial.name(), trial.plots(), Map.of(), "").figure();
  }

  /**
   * Draws the plots with their treatments, shaded by their values.
   *
   * @param values values of one site and year, whose plots have rows and columns
   * @return the figure; it says so where no places are written down
   */
  public static DrawnFigure of(PlotValues values) {
    var means = new TreeMap<TrialPlot, Double>(TrialPlot.IN_ORDER);
    for (PlotValue value : values.values()) {
      means.put(value.plot(), value.mean());
    }
    var plots = new ArrayList<>(values.plots());
    plots.addAll(values.missing());
    var words = values.response().heading() + values.date().map(day -> ", " + day).orElse("");
    return new TrialMapFigure("The field: " + words, plots, means, words).figure();
  }

  private static PlotPlace place(TrialPlot plot) {
    return plot.place().orElseThrow();
  }

  private DrawnFigure figure() {
    var panel = plots.isEmpty() ? empty() : panel();
    var sheet =
        new FigureSheet(
            heading,
            plots.isEmpty()
                ? "No places of plots are written down."
                : "Row 1 at the top." + (values.isEmpty() ? "" : " Darker: higher value."),
            List.of(panel));
    return new DrawnFigure(sheet, alternative(), caption(), data());
  }

  private static ChartPanel empty() {
    var panel = new ChartPanel(100, 4, "").withoutYTicks();
    panel.ranges(0, 1, 0, 1);
    return panel.words(
        "No rows and columns of plots", 0.5, 0.5, Side.CENTRE, FigureLook.TEXT, FigureLook.INK);
  }

  private boolean lettersFit() {
    int longest = treatments.stream().mapToInt(String::length).max().orElse(1);
    return longest * LETTER_POINTS < (double) FigureLook.CHART_WIDTH / columns - 12;
  }

  private ChartPanel panel() {
    var panel = new ChartPanel(ROW_HEIGHT * rows + 12, 6, "").withoutYTicks();
    panel.ranges(0, columns, 0, rows);
    for (var plot : plots) {
      double x = place(plot).column() - 1.0;
      double y = (double) rows - place(plot).row();
      panel.box(x, x + 1, y, y + 1, grey(plot));
    }
    for (var plot : plots) {
      draw(panel, plot);
    }
    outlines(panel);
    return panel;
  }

  private void draw(ChartPanel panel, TrialPlot plot) {
    double x = place(plot).column() - 1.0;
    double y = (double) rows - place(plot).row();
    var value = values.get(plot);
    panel.words(
        plot.name(), x + 0.03, y + 0.82, Side.RIGHT, FigureLook.SMALL, FigureLook.QUIET_INK);
    panel.words(
        lettersFit() ? plot.treatment() : Integer.toString(number(plot)),
        x + 0.5,
        y + (values.isEmpty() ? 0.45 : 0.5),
        Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.INK);
    if (!values.isEmpty()) {
      panel.words(
          value == null ? "no value" : Numbers.significant(value, 3),
          x + 0.5,
          y + 0.2,
          Side.CENTRE,
          FigureLook.TEXT,
          FigureLook.INK);
    }
  }

  private int number(TrialPlot plot) {
    return treatments.indexOf(plot.treatment()) + 1;
  }

  /** Thin lines between plots, thick ones where the block changes. */
  private void outlines(ChartPanel panel) {
    var byPlace = new TreeMap<String, TrialPlot>();
    plots.forEach(plot -> byPlace.put(place(plot).row() + "/" + place(plot).column(), plot));
    for (int row = 1; row <= rows + 1; row++) {
      for (int column = 1; column <= columns + 1; column++) {
        var here = byPlace.get(row + "/" + column);
        double x = column - 1.0;
        double y = (double) rows - row + 1;
        side(panel, here, byPlace.get(row - 1 + "/" + column), new double[] {x, x + 1, y, y});
        side(panel, here, byPlace.get(row + "/" + (column - 1)), new double[] {x, x, y - 1, y});
      }
    }
  }

  private void side(ChartPanel panel, TrialPlot one, TrialPlot other, double[] ends) {
    if (one == null && other == null) {
      return;
    }
    boolean border = one == null || other == null || !one.block().equals(other.block());
    edge(
        panel,
        new double[] {ends[0], ends[1]},
        new double[] {ends[2], ends[3]},
        border ? 2.5 : 0.8);
  }

  private static void edge(ChartPanel panel, double[] x, double[] y, double width) {
    panel.curve(x, y, FigureLook.DARK_GREY, FigureLook.solid(width));
  }

  private Color grey(TrialPlot plot) {
    var value = values.get(plot);
    if (value == null) {
      return FigureLook.PAPER;
    }
    var all = values.values().stream().mapToDouble(one -> one).summaryStatistics();
    double width = all.getMax() - all.getMin();
    double share = width > 0 ? (value - all.getMin()) / width : 0;
    int grey = (int) Math.round(PALEST - share * (PALEST - DARKEST));
    return new Color(grey, grey, grey);
  }

  private String alternative() {
    if (plots.isEmpty()) {
      return "No map can be drawn, because no rows and columns of plots are written down.";
    }
    var byRow = new TreeMap<Integer, List<TrialPlot>>();
    plots.forEach(
        plot -> byRow.computeIfAbsent(place(plot).row(), r -> new ArrayList<>()).add(plot));
    return byRow.entrySet().stream()
        .map(
            row ->
                "row "
                    + row.getKey()
                    + ": "
                    + row.getValue().stream()
                        .sorted(Comparator.comparing(plot -> place(plot).column()))
                        .map(this::words)
                        .collect(Collectors.joining(", ")))
        .collect(Collectors.joining("; ", "Map of the field. ", "."));
  }

  private String words(TrialPlot plot) {
    var value = values.get(plot);
    return plot.name()
        + " "
        + plot.treatment()
        + (value == null ? "" : " " + Numbers.significant(value, 3));
  }

  private String caption() {
    var key =
        lettersFit()
            ? ""
            : " Treatments: "
                + treatments.stream()
                    .map(name -> treatments.indexOf(name) + 1 + " " + name)
                    .collect(Collectors.joining("; "))
                + ".";
    return (values.isEmpty() ? "Plots and treatments." : "Means of the plots: " + variable + ".")
        + " Thick lines are borders of blocks; the map keeps rows and columns, not the shape of the"
        + " plots."
        + key;
  }

  private ResultTable data() {
    var rowsOfTable = new ArrayList<List<Cell>>();
    for (var plot : plots) {
      rowsOfTable.add(
          List.of(
              Cell.number(place(plot).row(), 0),
              Cell.number(place(plot).column(), 0),
              Cell.text(plot.name()),
              Cell.text(plot.block()),
              Cell.text(plot.treatment()),
              values.containsKey(plot) ? Cell.number(values.get(plot), 3) : Cell.notKnown()));
    }
    return ResultTable.of(
        "Plots on the map",
        List.of(
            Column.of("Row"),
            Column.of("Column"),
            Column.of("Plot"),
            Column.of("Block"),
            Column.of("Treatment"),
            Column.of("Value")),
        rowsOfTable);
  }
}
