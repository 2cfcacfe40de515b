package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import java.util.Arrays;
import java.util.List;

/** Three regions of density over the value of the produce. */
final class RegionPlot {

  private static final int HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;

  /** Where the words stand, as a share of the values. */
  private static final double WORDS = 0.62;

  /**
   * The bounds of the regions at one value.
   *
   * @param value price, or worth of the crop
   * @param leave density up to which the field is left
   * @param even density at which treating is as likely to pay as not
   * @param treat density from which it is treated
   */
  record Limits(double value, double leave, double even, double treat) {}

  private final List<Limits> limits;
  private final String measure;

  RegionPlot(List<Limits> limits, String measure) {
    this.limits = limits;
    this.measure = measure;
  }

  private Limits at(double share) {
    return limits.get((int) Math.round(share * (limits.size() - 1)));
  }

  ChartPanel panel(String xTitle) {
    int n = limits.size();
    double[] x = limits.stream().mapToDouble(Limits::value).toArray();
    double[] leave = limits.stream().mapToDouble(Limits::leave).toArray();
    double[] even = limits.stream().mapToDouble(Limits::even).toArray();
    double[] treat = limits.stream().mapToDouble(Limits::treat).toArray();
    double top = 1.25 * at(0).treat();
    double[] ceiling = new double[n];
    Arrays.fill(ceiling, top);
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, FigureWords.sentence(measure));
    panel.ranges(x[0], x[n - 1], FigureLook.BELOW_ZERO * top, top);
    panel.band(x, leave, treat, FigureLook.PALE);
    panel.band(x, treat, ceiling, FigureLook.LIGHT_GREY);
    NumberAxis.label(panel, NumberAxis.step(x[0], x[n - 1]), xTitle);
    panel.curve(x, leave, FigureLook.QUIET_INK, FigureLook.solid(1.2));
    panel.curve(x, even, FigureLook.INK, FigureLook.dashed(2));
    panel.curve(x, treat, FigureLook.QUIET_INK, FigureLook.solid(1.2));
    var place = at(WORDS);
    words(panel, "treat", place.value(), (place.treat() + top) / 2);
    words(panel, "leave", place.value(), place.leave() / 2);
    words(panel, "look on", place.value(), (place.even() + place.treat()) / 2);
    return panel;
  }

  private static void words(ChartPanel panel, String text, double x, double y) {
    panel.words(text, x, y, Side.CENTRE, FigureLook.BOLD, FigureLook.INK);
  }

  String alternative(String unit) {
    return "Three regions by value and density. "
        + sentence(at(0), unit)
        + " "
        + sentence(at(1), unit);
  }

  private String sentence(Limits each, String unit) {
    return "At "
        + Numbers.significant(each.value(), 4)
        + " "
        + unit
        + ": leave up to "
        + Numbers.significant(each.leave(), 3)
        + ", treat from "
        + Numbers.significant(each.treat(), 3)
        + " "
        + measure
        + ".";
  }
}
