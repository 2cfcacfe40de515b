package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.trial.bioassay.LethalDose;
import agro.trial.bioassay.LimitShape;
import agro.trial.bioassay.ShareCount;
import agro.units.Numbers;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Comparator;
import java.util.List;

/** Shares by dose with curves, bands, exact limits upright and limits of lethal doses level. */
final class DoseResponsePlot {

  private static final int HEIGHT = 480;
  private static final int AXIS_HEIGHT = 46;
  private static final int LEFT_ROOM = 58;
  private static final int POINTS = 97;
  private static final double TOP = 104;
  private static final double BOTTOM = -3;
  private static final double MARGIN = 0.05;

  /** Room for controls left of the doses, and between the marks of two series, of the range. */
  private static final double CONTROL = 0.08;

  private static final double BESIDE = 0.006;

  /** Room for the words of a lethal dose, of the axis. */
  private static final double WORDS = 0.1;

  /** How far beyond the doses tested the limits of a lethal dose are followed, of the range. */
  private static final double BEYOND = 0.45;

  private final List<DoseCurve> curves;
  private final boolean logarithm;
  private final double first;
  private final double last;
  private final double range;
  private double low;
  private double high;

  DoseResponsePlot(List<DoseCurve> curves) {
    this.curves = curves;
    logarithm = curves.get(0).isOnLogarithm();
    first = least(curves);
    last = curves.stream().mapToDouble(one -> one.place(one.highestDose())).max().orElse(1);
    range = last - first;
    low = first;
    high = last;
    curves.forEach(one -> one.doses().forEach(dose -> include(one, dose)));
    low -= MARGIN * range;
    high += MARGIN * range;
    roomForWords();
  }

  /** The words of a lethal dose stand right of its interval. */
  private void roomForWords() {
    for (var curve : curves) {
      for (var dose : curve.doses()) {
        double end = curve.place(dose.limits().high());
        if (end <= high && end > low + (1 - WORDS) * (high - low)) {
          high = low + (end - low) / (1 - WORDS);
        }
      }
    }
  }

  private static double least(List<DoseCurve> curves) {
    return curves.stream().mapToDouble(one -> one.place(one.lowestDose())).min().orElse(0);
  }

  private void include(DoseCurve curve, LethalDose dose) {
    for (double each : new double[] {dose.dose(), dose.limits().low(), dose.limits().high()}) {
      double place = curve.place(each);
      if (place >= first - BEYOND * range && place <= last + BEYOND * range) {
        low = Math.min(low, place);
        high = Math.max(high, place);
      }
    }
  }

  ChartPanel panel() {
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "");
    panel.ranges(left(), high, BOTTOM, TOP).withoutYTicks().leftRoom(LEFT_ROOM);
    axes(panel);
    for (int i = curves.size() - 1; i >= 0; i--) {
      band(panel, curves.get(i), i);
    }
    for (int i = curves.size() - 1; i >= 0; i--) {
      natural(panel, curves.get(i), i);
      curve(panel, curves.get(i), i);
    }
    for (int i = 0; i < curves.size(); i++) {
      groups(panel, curves.get(i), i);
    }
    for (int i = 0; i < curves.size(); i++) {
      counts(panel, curves.get(i), i);
      for (var dose : curves.get(i).doses()) {
        interval(panel, curves.get(i), dose, i);
      }
    }
    names(panel);
    return panel;
  }

  private boolean hasControls() {
    return logarithm && curves.stream().anyMatch(one -> one.counts().containsKey(0.0));
  }

  private double left() {
    return hasControls() ? low - 1.6 * CONTROL * (high - low) : low;
  }

  private double controlPlace() {
    return low - 0.9 * CONTROL * (high - low);
  }

  private void axes(ChartPanel panel) {
    for (int percent = 0; percent <= 100; percent += 10) {
      panel.stroke(left(), percent, high, percent, FigureLook.GRID, FigureLook.solid(1));
      if (percent % 20 == 0) {
        panel.words(percent + " %", left(), percent, Side.LEFT, FigureLook.SMALL, FigureLook.INK);
      }
    }
    var ticks = logarithm ? DoseTicks.ofLogarithm(low, high) : DoseTicks.ofPlain(low, high);
    for (double tick : ticks) {
      double place = curves.get(0).place(tick);
      panel.upright(place, FigureLook.GRID, FigureLook.solid(1));
      panel.words(
          DoseTicks.words(tick), place, BOTTOM, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    panel.stroke(low, BOTTOM, high, BOTTOM, FigureLook.QUIET_INK, FigureLook.solid(1));
    if (hasControls()) {
      double half = 0.5 * CONTROL * (high - low);
      double place = controlPlace();
      panel.stroke(
          place - half, BOTTOM, place + half, BOTTOM, FigureLook.QUIET_INK, FigureLook.solid(1));
      panel.words("control", place, BOTTOM, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    panel.words(
        axisName(), 0.5 * (low + high), BOTTOM, Side.FAR_BELOW, FigureLook.TEXT, FigureLook.INK);
  }

  private String axisName() {
    var axis = curves.get(0).fit().data().axis();
    return FigureWords.sentence(axis.words())
        + (axis.unit().isEmpty() ? "" : " (" + axis.unit() + ")")
        + (logarithm ? ", log scale" : "");
  }

  private static Color colour(int place) {
    return switch (place) {
      case 0 -> FigureLook.BLUE;
      case 1 -> FigureLook.VERMILION;
      case 2 -> FigureLook.INK;
      default -> FigureLook.DARK_GREY;
    };
  }

  private static Color pale(int place) {
    return switch (place) {
      case 0 -> FigureLook.PALE_BLUE;
      case 1 -> FigureLook.PALE_VERMILION;
      default -> FigureLook.GRID;
    };
  }

  private static BasicStroke stroke(int place) {
    return switch (place % 3) {
      case 0 -> FigureLook.solid(2.5);
      case 1 -> FigureLook.dashed(2.5);
      default -> FigureLook.dotted(2.2);
    };
  }

  private static FigureMark mark(int place) {
    return switch (place % 4) {
      case 0 -> FigureMark.DISC;
      case 1 -> FigureMark.SQUARE;
      case 2 -> FigureMark.TRIANGLE;
      default -> FigureMark.BAR;
    };
  }

  /** From the lowest to the highest dose tested, and on to the lethal doses that are drawn. */
  private double[] places(DoseCurve curve) {
    double from = curve.place(curve.lowestDose());
    double to = curve.place(curve.highestDose());
    for (var dose : curve.doses()) {
      from = Math.min(from, Math.max(low, curve.place(dose.dose())));
      to = Math.max(to, Math.min(high, curve.place(dose.dose())));
    }
    double more = 0.5 * MARGIN * range;
    var places = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      places[i] = from - more + i * (to - from + 2 * more) / (POINTS - 1);
    }
    return places;
  }

  private void band(ChartPanel panel, DoseCurve curve, int place) {
    var x = places(curve);
    var lower = new double[POINTS];
    var upper = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      var point = curve.at(curve.dose(x[i]));
      lower[i] = 100 * point.low();
      upper[i] = 100 * point.high();
    }
    panel.band(x, lower, upper, pale(place));
  }

  private void curve(ChartPanel panel, DoseCurve curve, int place) {
    var x = places(curve);
    var share = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      share[i] = 100 * curve.at(curve.dose(x[i])).share();
    }
    panel.curve(x, share, colour(place), stroke(place));
  }

  private void natural(ChartPanel panel, DoseCurve curve, int place) {
    double share = 100 * curve.fit().naturalMortality();
    if (share > 0) {
      panel.curve(
          new double[] {left(), high},
          new double[] {share, share},
          colour(place),
          FigureLook.dotted(1.2));
    }
  }

  private double beside(int place) {
    return BESIDE * (high - low) * (place - 0.5 * (curves.size() - 1));
  }

  private double placeOf(DoseCurve curve, double dose) {
    return logarithm && dose == 0 ? controlPlace() : curve.place(dose);
  }

  /** Single vials or days in grey, side by side, so that equal shares are seen apart. */
  private void groups(ChartPanel panel, DoseCurve curve, int place) {
    curve
        .singleGroups()
        .forEach(
            (dose, groups) -> {
              for (int i = 0; i < groups.size(); i++) {
                double shift = BESIDE * (high - low) * 0.7 * (i - 0.5 * (groups.size() - 1));
                panel.mark(
                    placeOf(curve, dose) + shift,
                    100 * groups.get(i).share(),
                    place == 0 ? FigureLook.MIDDLE_GREY : FigureLook.LIGHT_GREY,
                    FigureMark.BOUND);
              }
            });
  }

  private void counts(ChartPanel panel, DoseCurve curve, int place) {
    curve
        .counts()
        .forEach((dose, count) -> count(panel, placeOf(curve, dose), count, curve, place));
  }

  private void count(ChartPanel panel, double x, ShareCount count, DoseCurve curve, int place) {
    var limits = count.limits(curve.fit().choices().confidence());
    double at = x + beside(place);
    panel.curve(
        new double[] {at, at},
        new double[] {100 * limits.low(), 100 * limits.high()},
        colour(place),
        FigureLook.solid(1.3));
    panel.mark(at, 100 * count.share(), colour(place), mark(place));
  }

  private void interval(ChartPanel panel, DoseCurve curve, LethalDose dose, int place) {
    double y = 100 * curve.level(dose);
    double from = inside(curve.place(dose.limits().low()));
    double to = inside(curve.place(dose.limits().high()));
    double x = curve.place(dose.dose());
    if (dose.limits().shape() == LimitShape.OUTSIDE) {
      bar(panel, low, from, y);
      bar(panel, to, high, y);
    } else {
      bar(panel, from, to, y);
    }
    for (double end : new double[] {from, to}) {
      if (end > low && end < high) {
        panel.curve(
            new double[] {end, end},
            new double[] {y - 1.6, y + 1.6},
            FigureLook.INK,
            FigureLook.solid(1.8));
      }
    }
    if (x >= low && x <= high) {
      panel.curve(
          new double[] {x, x},
          new double[] {y, BOTTOM},
          FigureLook.QUIET_INK,
          FigureLook.dotted(1));
      panel.mark(x, y, colour(place), FigureMark.MEDIAN);
    }
    words(panel, dose, x, to, y);
  }

  private void words(ChartPanel panel, LethalDose dose, double x, double to, double y) {
    var words = "LD" + Numbers.plain(dose.percent()) + " " + Numbers.significant(dose.dose(), 3);
    if (x < low || x > high) {
      panel.words(
          words + ", outside the figure",
          x < low ? low : high,
          y + 3.2,
          x < low ? Side.RIGHT : Side.LEFT,
          FigureLook.SMALL,
          FigureLook.INK);
    } else if (dose.limits().shape() != LimitShape.BOUNDED || to >= high) {
      panel.words(words, x, y - 3.2, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    } else {
      panel.words(words, Math.max(x, to), y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    }
  }

  private double inside(double place) {
    return Math.max(low, Math.min(high, place));
  }

  /** A limit that does not exist ends at the edge of the figure, in an arrow. */
  private void bar(ChartPanel panel, double from, double to, double y) {
    panel.curve(
        new double[] {from, to}, new double[] {y, y}, FigureLook.INK, FigureLook.solid(2.2));
    if (to >= high) {
      panel.mark(high - 0.015 * (high - low), y, FigureLook.INK, FigureMark.GOES_ON);
    }
    if (from <= low) {
      panel.mark(low + 0.015 * (high - low), y, FigureLook.INK, FigureMark.GOES_BACK);
    }
  }

  /** Names stand left of the steep part; those of natural mortality above their line. */
  private void names(ChartPanel panel) {
    panel.words(
        "Animals responding", left(), TOP - 0.5, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
    double stacked =
        100 * curves.stream().mapToDouble(one -> one.fit().naturalMortality()).max().orElse(0)
            + 2.6;
    for (var curve : byNaturalMortality()) {
      double share = 100 * curve.fit().naturalMortality();
      if (share > 0) {
        panel.words(
            "natural mortality "
                + (curve.name().isEmpty() ? "" : "of " + curve.name() + " ")
                + Numbers.fixed(share, 1)
                + " %",
            high,
            stacked,
            Side.LEFT,
            FigureLook.SMALL,
            colour(curves.indexOf(curve)));
        stacked += 4.4;
      }
    }
    for (int i = 0; i < curves.size(); i++) {
      name(panel, curves.get(i), i);
    }
  }

  private List<DoseCurve> byNaturalMortality() {
    return curves.stream()
        .sorted(Comparator.comparingDouble(one -> one.fit().naturalMortality()))
        .toList();
  }

  private void name(ChartPanel panel, DoseCurve curve, int place) {
    if (curve.name().isEmpty()) {
      return;
    }
    double level = 72 - 7.0 * (place % 3);
    for (double x : places(curve)) {
      var point = curve.at(curve.dose(x));
      if (100 * point.high() >= level) {
        panel.words(
            curve.name(),
            x - 0.008 * (high - low),
            level,
            Side.LEFT,
            FigureLook.BOLD,
            colour(place));
        return;
      }
    }
  }
}
