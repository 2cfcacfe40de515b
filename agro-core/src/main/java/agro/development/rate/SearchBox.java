package agro.development.rate;

/** Bounds of a search and, inside them, the part from which its starts are drawn. */
final class SearchBox {

  final double[] low;
  final double[] high;
  final double[] startLow;
  final double[] startHigh;
  private int filled;

  SearchBox(int parameters) {
    low = new double[parameters];
    high = new double[parameters];
    startLow = new double[parameters];
    startHigh = new double[parameters];
  }

  /** Adds the next parameter: bounds, then the range of starts. */
  SearchBox add(double least, double most, double from, double to) {
    low[filled] = least;
    high[filled] = most;
    startLow[filled] = Math.min(most, Math.max(least, Math.min(from, to)));
    startHigh[filled] = Math.min(most, Math.max(least, Math.max(from, to)));
    filled++;
    return this;
  }
}
