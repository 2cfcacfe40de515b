package agro.stats.multiple;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.DoubleUnaryOperator;

/**
 * The distribution of an extreme of normal numbers as Chebyshev series of its logarithm, computed
 * once, piece by piece as they are asked for, and shared between threads.
 *
 * <p>Left of the piece with the median the logarithm of the chance below is kept (less the power of
 * w that vanishes at zero), elsewhere that of the chance above; the other one follows by its
 * complement, which is then the larger one and loses nothing.
 */
final class TailTable {

  /** The chance of more than this is below the smallest double for every extreme. */
  static final double FARTHEST = 56;

  private static final double[] BORDERS = {0, 1, 2, 3, 4, 5, 6, 8, 10, 13, 18, 26, 38, FARTHEST};
  private static final int TERMS = 24;
  private static final double NEGLIGIBLE = 3e-16;
  private static final double MEDIAN = Math.log(0.5);

  private final ExtremeOfNormals extreme;
  private final AtomicReferenceArray<Piece> right = new AtomicReferenceArray<>(BORDERS.length - 1);
  private final AtomicReferenceArray<Piece> left = new AtomicReferenceArray<>(BORDERS.length - 1);

  TailTable(ExtremeOfNormals extreme) {
    this.extreme = extreme;
  }

  /** Logarithm of the chance of at most w. */
  double logBelow(double w) {
    var piece = piece(w);
    if (piece == null) {
      return w > 0 && w >= FARTHEST ? 0 : Double.NEGATIVE_INFINITY;
    }
    double kept = piece.value(w);
    return piece.isAbove() ? complement(kept) : kept + vanishing(w);
  }

  /** Logarithm of the chance of more than w. */
  double logAbove(double w) {
    var piece = piece(w);
    if (piece == null) {
      return w > 0 && w >= FARTHEST ? Double.NEGATIVE_INFINITY : 0;
    }
    double kept = piece.value(w);
    return piece.isAbove() ? kept : complement(kept + vanishing(w));
  }

  /** Whether the extreme is never negative. */
  boolean isHalfLine() {
    return extreme.powerAtZero() > 0;
  }

  private double vanishing(double w) {
    int power = extreme.powerAtZero();
    return power == 0 ? 0 : power * Math.log(w);
  }

  private static double complement(double log) {
    return log > -1 ? Math.log(-Math.expm1(log)) : Math.log1p(-Math.exp(log));
  }

  /** The piece that holds w; none where the chance on one side is zero. */
  private Piece piece(double w) {
    double distance = Math.abs(w);
    if (distance >= FARTHEST || (w <= 0 && extreme.powerAtZero() > 0)) {
      return null;
    }
    int index = 0;
    while (BORDERS[index + 1] <= distance) {
      index++;
    }
    var pieces = w < 0 ? left : right;
    var piece = pieces.get(index);
    if (piece == null) {
      piece =
          w < 0
              ? compute(-BORDERS[index + 1], -BORDERS[index])
              : compute(BORDERS[index], BORDERS[index + 1]);
      pieces.set(index, piece);
    }
    return piece;
  }

  private Piece compute(double from, double to) {
    double middle = 0.5 * (from + to);
    double half = 0.5 * (to - from);
    boolean above = extreme.logBelow(middle) > MEDIAN;
    DoubleUnaryOperator kept = above ? extreme::logAbove : w -> extreme.logBelow(w) - vanishing(w);
    double[] series =
        Chebyshev.interpolate(u -> kept.applyAsDouble(middle + half * u), TERMS, NEGLIGIBLE);
    return new Piece(above, middle, half, series);
  }

  /** One stretch of the table. */
  private static final class Piece {
    private final boolean above;
    private final double middle;
    private final double half;
    private final double[] series;

    Piece(boolean above, double middle, double half, double[] series) {
      this.above = above;
      this.middle = middle;
      this.half = half;
      this.series = series;
    }

    boolean isAbove() {
      return above;
    }

    double value(double w) {
      return Chebyshev.sum(series, (w - middle) / half);
    }
  }
}
