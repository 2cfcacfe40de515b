package agro.notebook.figure;

import agro.development.DegreeDayModel;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Temperature;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Degree-days of days of one range by their mean temperature, by the model and by the average. */
final class AverageComparison {

  private static final int HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;
  private static final int STEPS = 200;

  private final DegreeDayModel model;
  private final double rangeC;
  private final double lower;
  private final double fromC;
  private final double toC;

  AverageComparison(DegreeDayModel model, double rangeC) {
    this.model = model;
    this.rangeC = rangeC;
    lower = model.thresholds().lower().celsius();
    var reach = Math.max(5, rangeC);
    fromC = lower - reach;
    toC =
        (model.cutoff().needsUpperThreshold()
                ? model.thresholds().upper().map(Temperature::celsius).orElse(lower)
                : lower)
            + reach;
  }

  double atThreshold() {
    return byModel(lower);
  }

  private double byModel(double mean) {
    return model.degreeDaysC(mean - rangeC / 2, mean + rangeC / 2);
  }

  private double byAverage(double mean) {
    return Math.max(0, mean - lower);
  }

  ChartPanel panel() {
    var mean = new double[STEPS + 1];
    var sine = new double[STEPS + 1];
    var average = new double[STEPS + 1];
    var top = 1.0;
    for (var i = 0; i <= STEPS; i++) {
      mean[i] = fromC + (toC - fromC) * i / STEPS;
      sine[i] = byModel(mean[i]);
      average[i] = byAverage(mean[i]);
      top = Math.max(top, Math.max(sine[i], average[i]));
    }
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Degree-days of the day (°C·d)");
    panel.ranges(fromC, toC, FigureLook.BELOW_ZERO * top, 1.1 * top);
    var step = NumberAxis.step(fromC, toC);
    NumberAxis.rule(panel, step);
    NumberAxis.label(panel, step, "Mean temperature of the day (°C)");
    panel.band(mean, average, sine, FigureLook.PALE_BLUE);
    panel.curve(mean, average, FigureLook.INK, FigureLook.dashed(2));
    panel.curve(mean, sine, FigureLook.BLUE, FigureLook.solid(2.5));
    panel.upright(lower, FigureLook.MIDDLE_GREY, FigureLook.dotted(1.5));
    panel.words(
        "lower threshold " + model.thresholds().lower(),
        lower,
        1.04 * top,
        Side.LEFT,
        FigureLook.SMALL,
        FigureLook.QUIET_INK);
    names(panel, top);
    return panel;
  }

  private void names(ChartPanel panel, double top) {
    panel.words(
        model.method().words() + ", here " + FigureWords.degreeDaysFine(atThreshold()),
        lower,
        Math.max(0.05 * top, atThreshold() + 0.05 * top),
        Side.LEFT,
        FigureLook.BOLD,
        FigureLook.BLUE);
    var at = lower + 0.28 * (toC - lower);
    panel.words(
        "plain average",
        at,
        Math.max(0.05 * top, byAverage(at) - 0.05 * top),
        Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
  }

  ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    for (var mean = Math.ceil(fromC); mean <= toC; mean++) {
      rows.add(
          List.of(
              Cell.number(mean, 1),
              Cell.number(byModel(mean), 2),
              Cell.number(byAverage(mean), 2),
              Cell.number(byModel(mean) - byAverage(mean), 2)));
    }
    return ResultTable.of(
        "Degree-days of a day by its mean temperature",
        List.of(
            Column.of("Mean temperature", "°C"),
            Column.of(FigureWords.sentence(model.method().words()), FigureWords.DEGREE_DAYS),
            Column.of("Plain average", FigureWords.DEGREE_DAYS),
            Column.of("Difference", FigureWords.DEGREE_DAYS)),
        rows);
  }
}
