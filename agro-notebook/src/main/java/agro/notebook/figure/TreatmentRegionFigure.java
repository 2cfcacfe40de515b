package agro.notebook.figure;

import agro.report.InputProblem;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.UncertainInjuryLevel;
import agro.sampling.injury.UncertainNumber;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * Where to treat, where to look on and where to leave, by the value of the produce and the density,
 * in shades of grey and in words. The shades stand for chances that treating pays.
 */
public final class TreatmentRegionFigure {

  /** Prices at which the regions over prices are computed. */
  private static final int PRICES = 41;

  private static final double LEAVE_BELOW = 0.1;
  private static final double TREAT_ABOVE = 0.9;

  private static final String CAPTION =
      "Leave: treating pays with a chance below 10 %. Treat: with a chance above 90 %. Between them"
          + " look on: count again before deciding. The density is taken as known, the other terms of"
          + " the level as uncertain. The product label and local law come first and override every"
          + " figure here.";

  private TreatmentRegionFigure() {}

  /**
   * Draws the regions by the value of the produce, which nobody knows on the day of the count, and
   * the density.
   *
   * @param level the injury level with its uncertain terms; the value is taken as known here
   * @param low lowest value, price for a tonne or worth of the crop for a hectare, above 0
   * @param high highest value, above the lowest
   * @return the figure
   * @throws InputProblem when the values are not in order
   */
  public static DrawnFigure byValue(UncertainInjuryLevel level, double low, double high) {
    if (!(low > 0 && high > low && Double.isFinite(high))) {
      throw InputProblem.of("values from " + low + " to " + high)
          .expected("two values above 0, the lowest first")
          .because("the regions are drawn from one to the other")
          .mend("take the worst and the best price of the last years");
    }
    boolean produce = level.best().loss() instanceof CropLoss.OfProduce;
    var values = new ArrayList<RegionPlot.Limits>();
    for (int i = 0; i < PRICES; i++) {
      double value = low + i * (high - low) / (PRICES - 1);
      var known =
          produce
              ? level.withPricePerTonne(UncertainNumber.exactly(value))
              : level.withCropValuePerHectare(UncertainNumber.exactly(value));
      var levels = known.distribution();
      values.add(
          new RegionPlot.Limits(
              value,
              levels.quantile(LEAVE_BELOW),
              levels.quantile(0.5),
              levels.quantile(TREAT_ABOVE)));
    }
    var currency = level.best().cost().currency().getCurrencyCode();
    var unit = currency + (produce ? "/t" : "/ha");
    var plot = new RegionPlot(values, level.best().measure().words());
    var sheet =
        new FigureSheet(
            "Treat, look on, leave",
            "Line: as likely to pay as not. Below the strip treating pays in fewer than 1 of"
                + " 10 cases, above it in more than 9.",
            List.of(
                plot.panel(
                    (produce ? "Price of the produce (" : "Value of the crop (") + unit + ")")));
    return new DrawnFigure(sheet, plot.alternative(unit), CAPTION, data(values, unit, level));
  }

  private static ResultTable data(
      List<RegionPlot.Limits> values, String unit, UncertainInjuryLevel level) {
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < values.size(); i += 4) {
      var each = values.get(i);
      rows.add(
          List.of(
              Cell.text(Numbers.significant(each.value(), 4)),
              Cell.text(Numbers.significant(each.leave(), 3)),
              Cell.text(Numbers.significant(each.even(), 3)),
              Cell.text(Numbers.significant(each.treat(), 3))));
    }
    var measure = level.best().measure().words();
    return ResultTable.of(
        "Regions by value",
        List.of(
            Column.of("Value", unit),
            Column.of("Leave up to", measure),
            Column.of("As likely as not at", measure),
            Column.of("Treat from", measure)),
        rows);
  }
}
