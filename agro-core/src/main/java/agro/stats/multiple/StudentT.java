package agro.stats.multiple;

import java.util.List;

/** Tails and quantiles of Student's t, with full relative precision. */
final class StudentT {

  private static final TailTable NORMAL =
      new TailTable(new MaximumOfNormals(true, List.of(MaximumOfNormals.Loading.of(0, 1))));

  private final Studentised absolute;

  StudentT(double degreesOfFreedom) {
    this.absolute = new Studentised(NORMAL, degreesOfFreedom);
  }

  /** Chance of so large a t in the direction of the alternative. */
  double tail(double t, Alternative alternative) {
    double size = Math.abs(t);
    double both = size == 0 ? 1 : absolute.above(size);
    return switch (alternative) {
      case TWO_SIDED -> both;
      case LARGER -> t >= 0 ? 0.5 * both : 1 - 0.5 * both;
      case SMALLER -> t <= 0 ? 0.5 * both : 1 - 0.5 * both;
    };
  }

  /** The t (absolute t when two-sided) that is exceeded with a chance below one half. */
  double critical(double chance, Alternative alternative) {
    double both = alternative == Alternative.TWO_SIDED ? chance : 2 * chance;
    return both <= 1 ? absolute.quantile(both, 1 - both) : -absolute.quantile(2 - both, both - 1);
  }
}
