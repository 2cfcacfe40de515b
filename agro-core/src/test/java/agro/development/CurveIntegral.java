package agro.development;

import agro.weather.curve.CurveDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Degree-days by Gaussian integration of the rate at each moment, written from the definitions of
 * curves and cutoffs and not from the library: split where a curve has its pieces and where it
 * crosses a threshold, which bisection finds.
 */
final class CurveIntegral {

  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16, -1, 1);

  /** The logarithm is far from a polynomial over a night. */
  private static final int PARTS_OF_A_NIGHT = 5;

  /**
   * A smooth, monotone piece of a day's curve: a base and what is added to it. Where a curve is
   * flat at an extreme, that extreme is the base, so that a crossing beside it is found to all
   * digits.
   */
  private record Piece(double from, double to, double base, DoubleUnaryOperator added, int parts) {
    Piece(double from, double to, double base, DoubleUnaryOperator added) {
      this(from, to, base, added, 1);
    }

    double celsius(double hour) {
      return base + added.applyAsDouble(hour);
    }

    double over(double level, double hour) {
      return added.applyAsDouble(hour) - (level - base);
    }
  }

  private CurveIntegral() {}

  /** Degree-days by each cutoff. */
  static Map<UpperCutoff, Double> degreeDays(
      DegreeDayMethod method, CurveDay day, double lower, double upper) {
    var sums = new EnumMap<UpperCutoff, Double>(UpperCutoff.class);
    for (var cutoff : UpperCutoff.values()) {
      sums.put(cutoff, 0.0);
    }
    for (var piece : pieces(method, day)) {
      if (piece.to() > piece.from()) {
        addPiece(sums, piece, lower, upper);
      }
    }
    sums.replaceAll((cutoff, sum) -> Math.max(0, sum / 24));
    return sums;
  }

  private static List<Piece> pieces(DegreeDayMethod method, CurveDay day) {
    double low = day.minCelsius();
    double high = day.maxCelsius();
    double end = day.nextMinCelsius();
    return switch (method) {
      case SINGLE_SINE -> sines(low, high, low);
      case DOUBLE_SINE -> sines(low, high, end);
      case SINGLE_TRIANGLE -> lines(low, high, low);
      case DOUBLE_TRIANGLE -> lines(low, high, end);
      case SINE_AND_DECAY -> sineAndDecay(low, high, end, day.dayLengthHours());
      default -> throw new IllegalArgumentException("no curve: " + method);
    };
  }

  private static List<Piece> sines(double low, double high, double end) {
    return List.of(
        new Piece(0, 6, low, t -> (high - low) * square(Math.sin(Math.PI * t / 24))),
        new Piece(6, 12, high, t -> (low - high) * square(Math.sin(Math.PI * (12 - t) / 24))),
        new Piece(12, 18, high, t -> (end - high) * square(Math.sin(Math.PI * (t - 12) / 24))),
        new Piece(18, 24, end, t -> (high - end) * square(Math.sin(Math.PI * (24 - t) / 24))));
  }

  private static double square(double x) {
    return x * x;
  }

  private static List<Piece> lines(double low, double high, double end) {
    return List.of(
        new Piece(0, 12, low, t -> (high - low) * t / 12),
        new Piece(12, 24, high, t -> (end - high) * (t - 12) / 12));
  }

  private static List<Piece> sineAndDecay(double low, double high, double end, double length) {
    double rise = high - low;
    double top = 0.5 * length + 2;
    double steep = Math.min(length, top / 3);
    double sunset = low + rise * Math.sin(Math.PI * length / (length + 4));
    double flatEnd = Math.min(24, length + 1);
    DoubleUnaryOperator belowTop =
        t -> -2 * rise * square(Math.sin(0.5 * Math.PI * (t - top) / (length + 4)));
    return List.of(
        new Piece(0, steep, low, t -> rise * Math.sin(Math.PI * t / (length + 4))),
        new Piece(steep, Math.min(top, length), high, belowTop),
        new Piece(Math.min(top, length), length, high, belowTop),
        new Piece(length, flatEnd, sunset, t -> 0),
        new Piece(
            flatEnd,
            24,
            sunset,
            t -> (end - sunset) / Math.log(24 - length) * Math.log(t - length),
            PARTS_OF_A_NIGHT));
  }

  /** Between two crossings one branch of the rate holds. */
  private static void addPiece(
      Map<UpperCutoff, Double> sums, Piece piece, double lower, double upper) {
    var cuts = new ArrayList<Double>(List.of(piece.from(), piece.to()));
    for (double level : new double[] {lower, upper}) {
      boolean rising = piece.over(level, piece.from()) < 0;
      if (rising != piece.over(level, piece.to()) < 0) {
        cuts.add(crossing(piece, level, rising));
      }
    }
    cuts.sort(null);
    for (int i = 1; i < cuts.size(); i++) {
      double from = cuts.get(i - 1);
      double to = cuts.get(i);
      double middle = 0.5 * (from + to);
      if (piece.over(lower, middle) > 0) {
        addSegment(
            sums,
            piece.over(upper, middle) > 0,
            upper - lower,
            to - from,
            over(piece, lower, from, to));
      }
    }
  }

  /** The rate above the upper threshold is a sum of a constant and the height above the lower. */
  private static void addSegment(
      Map<UpperCutoff, Double> sums, boolean hot, double width, double hours, double aboveLower) {
    sums.merge(UpperCutoff.NONE, aboveLower, Double::sum);
    sums.merge(UpperCutoff.HORIZONTAL, hot ? width * hours : aboveLower, Double::sum);
    sums.merge(
        UpperCutoff.INTERMEDIATE, hot ? 2 * width * hours - aboveLower : aboveLower, Double::sum);
    sums.merge(UpperCutoff.VERTICAL, hot ? 0.0 : aboveLower, Double::sum);
  }

  private static double crossing(Piece piece, double level, boolean rising) {
    double low = piece.from();
    double high = piece.to();
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (piece.over(level, middle) < 0 == rising) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static double over(Piece piece, double lower, double from, double to) {
    double sum = 0;
    double half = 0.5 * (to - from) / piece.parts();
    for (int part = 0; part < piece.parts(); part++) {
      double middle = from + (2 * part + 1) * half;
      sum += half * RULE.integrate(x -> piece.celsius(middle + half * x) - lower);
    }
    return sum;
  }
}
