package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.PlanCharacteristics;
import agro.sampling.sequential.PlanCurve;
import agro.sampling.sequential.WaldLines;
import agro.units.Numbers;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Operating characteristic and mean number of units above one axis of means. */
final class PlanPlot {

  private static final int HEIGHT = 270;
  private static final int AXIS_HEIGHT = 46;
  private static final int NO_AXIS = 6;

  /** Room for three digits, so that both panels keep one scale of means. */
  private static final int LEFT_ROOM = 62;

  /** Where the names stand, as shares of the axis, where the chance is near zero. */
  private static final double KEY_FROM = 0.74;

  private static final double KEY_TO = 0.80;

  /** Means that begin below this share of their range are drawn from zero. */
  private static final double NEAR_ZERO = 0.2;

  private static final double LINE_OF_WORDS = 10;

  private final List<String> names;
  private final List<PlanCurve> curves;
  private final double low;
  private final double high;

  PlanPlot(Map<String, PlanCurve> named) {
    names = List.copyOf(named.keySet());
    curves = List.copyOf(named.values());
    high = end(true);
    low = end(false) < NEAR_ZERO * high ? 0 : end(false);
  }

  private double end(boolean highest) {
    var means =
        curves.stream()
            .flatMap(curve -> curve.points().stream())
            .mapToDouble(PlanCharacteristics::mean)
            .summaryStatistics();
    return highest ? means.getMax() : means.getMin();
  }

  ChartPanel chances() {
    var panel = new ChartPanel(HEIGHT, NO_AXIS, "Called low (%)").leftRoom(LEFT_ROOM);
    panel.decimals("0");
    panel.ranges(low, high, 100 * FigureLook.BELOW_ZERO, 104);
    means(panel, true);
    curves(panel, point -> 100 * point.chanceLow());
    if (curves.size() > 1) {
      key(panel);
    }
    return panel;
  }

  private void key(ChartPanel panel) {
    double from = low + KEY_FROM * (high - low);
    double to = low + KEY_TO * (high - low);
    for (int i = 0; i < curves.size(); i++) {
      double y = 95 - i * LINE_OF_WORDS;
      panel.curve(new double[] {from, to}, new double[] {y, y}, colour(i), stroke(i));
      panel.words(
          names.get(i), to, y, Side.RIGHT, i == 0 ? FigureLook.BOLD : FigureLook.TEXT, colour(i));
    }
  }

  ChartPanel units() {
    double most =
        curves.stream().mapToDouble(curve -> PlanFigure.longest(curve).meanUnits()).max().orElse(1);
    var panel =
        new ChartPanel(HEIGHT + 20, AXIS_HEIGHT, "Mean number of units").leftRoom(LEFT_ROOM);
    panel.ranges(low, high, FigureLook.BELOW_ZERO * most, 1.18 * most);
    means(panel, false);
    curves(panel, PlanCharacteristics::meanUnits);
    NumberAxis.label(panel, NumberAxis.step(low, high), "Mean of the field (for each unit)");
    for (int i = 0; i < curves.size(); i++) {
      var top = PlanFigure.longest(curves.get(i));
      panel.words(
          curves.size() > 1 ? names.get(i) : Numbers.fixed(top.meanUnits(), 0) + " units",
          top.mean(),
          top.meanUnits(),
          Side.ABOVE,
          FigureLook.SMALL,
          colour(i));
    }
    return panel;
  }

  /** The means of the test, named once. */
  private void means(ChartPanel panel, boolean named) {
    NumberAxis.rule(panel, NumberAxis.step(low, high));
    // The chart numbers an axis only when something of its own ends between the ends of the axis.
    panel.level(0, FigureLook.QUIET_INK, FigureLook.solid(1));
    for (double mean : testedMeans()) {
      if (mean > low && mean < high) {
        panel.upright(mean, FigureLook.QUIET_INK, FigureLook.dotted(1.5));
        if (named) {
          panel.words(
              Numbers.significant(mean, 3),
              mean,
              50,
              Side.RIGHT,
              FigureLook.SMALL,
              FigureLook.QUIET_INK);
        }
      }
    }
  }

  String subheading() {
    return testedMeans().isEmpty()
        ? "Exact values."
        : "Exact values. Dotted: where the plan is to tell low from high.";
  }

  /** None for a plan on shares of units, whose curve may stand above means of animals. */
  private List<Double> testedMeans() {
    var bounds = curves.get(0).plan().bounds();
    if (bounds instanceof WaldLines lines) {
      return lines.family() instanceof CountFamily.Presence
          ? List.of()
          : List.of(lines.lowMean(), lines.highMean());
    }
    return List.of(bounds.middle());
  }

  private void curves(ChartPanel panel, ToDoubleFunction<PlanCharacteristics> value) {
    for (int i = curves.size() - 1; i >= 0; i--) {
      var points = curves.get(i).points();
      panel.curve(
          points.stream().mapToDouble(PlanCharacteristics::mean).toArray(),
          points.stream().mapToDouble(value).toArray(),
          colour(i),
          stroke(i));
    }
  }

  private static Color colour(int place) {
    return switch (place) {
      case 0 -> FigureLook.BLUE;
      case 1 -> FigureLook.VERMILION;
      case 2 -> FigureLook.INK;
      default -> FigureLook.DARK_GREY;
    };
  }

  private static BasicStroke stroke(int place) {
    return switch (place) {
      case 0 -> FigureLook.solid(2.5);
      case 1 -> FigureLook.dashed(2.5);
      case 2 -> FigureLook.dotted(2);
      default -> FigureLook.solid(1.2);
    };
  }
}
