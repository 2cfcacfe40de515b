package agro.notebook.figure;

import agro.development.rate.DerivedPoint;
import agro.development.rate.RateCurve;
import agro.development.rate.RateFit;
import agro.development.rate.RateIntervals;
import agro.development.rate.RatePoint;
import agro.notebook.figure.ChartPanel.Side;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Rates and fitted curves by temperature, each curve named at the right. */
final class RatePlot {

  private static final int HEIGHT = 460;
  private static final int AXIS_HEIGHT = 46;
  private static final int LEFT_ROOM = 58;
  private static final int POINTS = 401;
  private static final double MARGIN = 3;

  /** Room for names as a share of the temperatures that are drawn. */
  private static final double NAMES = 0.42;

  /** Curves that are told apart by colour; the others are grey. */
  private static final int COLOURED = 3;

  private final List<RateFit> fits;
  private final List<RatePoint> points;
  private final double low;
  private final double high;
  private final double top;

  /** The fits with the most important one first. */
  RatePlot(List<RateFit> fits) {
    this.fits = fits;
    points = mostPoints(fits);
    low = points.stream().mapToDouble(RatePoint::celsius).min().orElse(0) - MARGIN;
    high = points.stream().mapToDouble(RatePoint::celsius).max().orElse(40) + MARGIN;
    var greatest = points.stream().mapToDouble(RatePoint::rate).max().orElse(0);
    for (var fit : fits) {
      var rate = fit.curve().derived(DerivedPoint.GREATEST_RATE).orElse(0);
      greatest = Math.max(greatest, Math.min(rate, 1.5 * greatest));
    }
    top = 1.1 * greatest;
  }

  private static List<RatePoint> mostPoints(List<RateFit> fits) {
    return fits.stream()
        .map(RateFit::points)
        .max(Comparator.comparingInt(List::size))
        .orElse(List.of());
  }

  List<RatePoint> points() {
    return points;
  }

  ChartPanel panel(RateIntervals band) {
    var right = high + NAMES * (high - low);
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "");
    panel.ranges(low, right, FigureLook.BELOW_ZERO * top, top);
    panel.withoutYTicks().leftRoom(LEFT_ROOM);
    var step = NumberAxis.step(low, high);
    NumberAxis.rule(panel, step);
    // Written here, for the chart leaves all numbers out beside some ends of an axis.
    var rise = NumberAxis.step(0, 1.6 * top);
    NumberAxis.levels(panel, rise, high);
    panel.words(
        "Rate of development (1/d)", low, 0.985 * top, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
    panel.box(high, right, FigureLook.BELOW_ZERO * top, top, FigureLook.PAPER);
    NumberAxis.label(panel, step, high, "Constant temperature (°C)");
    if (band != null) {
      band(panel, band);
    }
    for (var i = fits.size() - 1; i >= 0; i--) {
      curve(panel, fits.get(i).curve(), i);
    }
    for (var point : points) {
      panel.mark(
          point.celsius(),
          point.rate(),
          FigureLook.INK,
          point.rate() > 0 ? FigureMark.OBSERVATION : FigureMark.BOUND);
    }
    names(panel);
    return panel;
  }

  private void band(ChartPanel panel, RateIntervals intervals) {
    var celsius = new double[POINTS];
    var lower = new double[POINTS];
    var upper = new double[POINTS];
    for (var i = 0; i < POINTS; i++) {
      celsius[i] = low + i * (high - low) / (POINTS - 1);
      var limits = intervals.rateAt(celsius[i]).orElseThrow();
      lower[i] = Math.min(top, limits.low());
      upper[i] = Math.min(top, limits.high());
    }
    panel.band(celsius, lower, upper, FigureLook.PALE_BLUE);
  }

  private void curve(ChartPanel panel, RateCurve curve, int place) {
    var celsius = new double[POINTS];
    var rates = new double[POINTS];
    for (var i = 0; i < POINTS; i++) {
      celsius[i] = low + i * (high - low) / (POINTS - 1);
      var rate = curve.rate(celsius[i]);
      rates[i] = rate <= top ? rate : Double.NaN;
    }
    panel.curve(celsius, rates, colour(place), stroke(place));
  }

  private static Color colour(int place) {
    return switch (place) {
      case 0 -> FigureLook.BLUE;
      case 1 -> FigureLook.VERMILION;
      case 2 -> FigureLook.INK;
      default -> FigureLook.MIDDLE_GREY;
    };
  }

  private static BasicStroke stroke(int place) {
    return switch (place) {
      case 0 -> FigureLook.solid(2.5);
      case 1 -> FigureLook.dashed(2.5);
      case 2 -> FigureLook.dotted(2);
      default -> place % 2 == 0 ? FigureLook.solid(1.2) : FigureLook.dashed(1.2);
    };
  }

  /**
   * A name and the place of the curve that it points to.
   *
   * @param place place of the fit
   * @param celsius temperature of the point
   * @param rate rate of the point
   */
  private record Anchor(int place, double celsius, double rate) {}

  /**
   * Names stand below each other, and lines lead from the falling limbs to them. Limbs further left
   * have names further up, so that no two lines cross.
   */
  private void names(ChartPanel panel) {
    var anchors = new ArrayList<Anchor>();
    for (var i = 0; i < fits.size(); i++) {
      anchors.add(anchor(i));
    }
    anchors.sort(
        Comparator.comparingDouble(Anchor::celsius)
            .thenComparing(Comparator.comparingDouble(Anchor::rate).reversed()));
    anchors.sort(
        Comparator.comparingInt(
            (Anchor one) -> one.celsius() >= high && one.rate() > 0.6 * top ? 0 : 1));
    var rows = Math.max(anchors.size(), 8);
    var x = high + 0.09 * (high - low);
    var first = anchors.size() == 1 ? anchors.get(0).rate() : 0.96 * top;
    for (var i = 0; i < anchors.size(); i++) {
      var one = anchors.get(i);
      var y = first - i * 0.94 * top / rows;
      panel.curve(
          new double[] {one.celsius(), x},
          new double[] {one.rate(), y},
          FigureLook.LIGHT_GREY,
          FigureLook.solid(1));
      panel.words(
          fits.get(one.place()).curve().model().words(),
          x,
          y,
          Side.RIGHT,
          one.place() == 0 ? FigureLook.BOLD : FigureLook.TEXT,
          one.place() < COLOURED ? colour(one.place()) : FigureLook.DARK_GREY);
    }
  }

  /** Where the curve has fallen to a part of its height, or where it leaves the picture. */
  private Anchor anchor(int place) {
    var curve = fits.get(place).curve();
    var optimum = curve.derived(DerivedPoint.OPTIMUM).orElse(high);
    var part = 0.5 * curve.rate(Math.min(optimum, high));
    for (var t = Math.min(optimum, high); t < high; t += 0.02) {
      var rate = curve.rate(t);
      if (rate < part) {
        return new Anchor(place, t, rate);
      }
    }
    for (var t = high; t > low; t -= 0.02) {
      if (curve.rate(t) <= top) {
        return new Anchor(place, t, curve.rate(t));
      }
    }
    return new Anchor(place, high, 0);
  }
}
