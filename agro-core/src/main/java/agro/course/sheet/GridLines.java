package agro.course.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Lines of an uneven axis: between two labels the interval is divided as finely as the eye can
 * still tell the lines apart.
 */
final class GridLines {

  /** Least distance of two lines, in millimetres. */
  private static final double LEAST = 1.25;

  private static final double[] STEPS = {
    0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5
  };

  /** A line between labels, or a label's own. */
  record GridLine(double value, Weight weight) {}

  /** How strong a line is. */
  enum Weight {
    LABELLED,
    HALF,
    FINE
  }

  private GridLines() {}

  /**
   * The lines of an axis.
   *
   * @param labels values with a label, ascending, the first and last at the ends of the axis
   * @param place place of a value in millimetres, rising or falling
   */
  static List<GridLine> of(List<Double> labels, DoubleUnaryOperator place) {
    var lines = new ArrayList<GridLine>();
    lines.add(new GridLine(labels.get(0), Weight.LABELLED));
    for (int i = 1; i < labels.size(); i++) {
      double from = labels.get(i - 1);
      double to = labels.get(i);
      int parts = parts(from, to, place);
      for (int k = 1; k < parts; k++) {
        double value = from + (to - from) * k / parts;
        lines.add(new GridLine(value, isHalf(k, parts) ? Weight.HALF : Weight.FINE));
      }
      lines.add(new GridLine(to, Weight.LABELLED));
    }
    return List.copyOf(lines);
  }

  private static boolean isHalf(int part, int parts) {
    if (parts > 5 && parts % 5 == 0) {
      return part % 5 == 0;
    }
    return 2 * part == parts;
  }

  private static int parts(double from, double to, DoubleUnaryOperator place) {
    for (double step : STEPS) {
      double ratio = (to - from) / step;
      int parts = (int) Math.rint(ratio);
      if (parts >= 1 && Math.abs(ratio - parts) < 1e-6 && isLegible(from, to, parts, place)) {
        return parts;
      }
    }
    return 1;
  }

  private static boolean isLegible(double from, double to, int parts, DoubleUnaryOperator place) {
    if (parts > 100) {
      return false;
    }
    double before = place.applyAsDouble(from);
    for (int k = 1; k <= parts; k++) {
      double here = place.applyAsDouble(from + (to - from) * k / parts);
      if (Math.abs(here - before) < LEAST) {
        return false;
      }
      before = here;
    }
    return true;
  }
}
