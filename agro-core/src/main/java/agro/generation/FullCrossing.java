package agro.generation;

/** Variance components of a full crossing of known temperatures, weather, parameters and season. */
final class FullCrossing {

  private static final int AXES = 4;

  private FullCrossing() {}

  /**
   * Splits the variance of a cube of dates into main effects and the rest.
   *
   * @param days dates by weather, parameters and season, all finite, the three axes of equal length
   */
  static SpreadSplit split(double[][][] days) {
    return split(new double[][][][] {days});
  }

  /**
   * Splits the variance of dates over four axes into main effects and the rest.
   *
   * @param days dates by error of known temperatures, weather, parameters and season, all finite;
   *     the last three axes of equal length
   */
  static SpreadSplit split(double[][][][] days) {
    var n = days[0].length;
    var lengths = new int[] {days.length, n, n, n};
    var effect = new double[AXES][];
    for (var axis = 0; axis < AXES; axis++) {
      effect[axis] = new double[lengths[axis]];
    }
    var total = sum(days, effect);
    var cells = (double) days.length * n * n * n;
    var mean = total / cells;
    var main = new double[AXES];
    for (var axis = 0; axis < AXES; axis++) {
      for (var sum : effect[axis]) {
        var distance = sum * lengths[axis] / cells - mean;
        main[axis] += distance * distance / lengths[axis];
      }
    }
    var rest = variance(days, mean) - main[0] - main[1] - main[2] - main[3];
    return new SpreadSplit(main[1], main[2], main[3], main[0], Math.max(0, rest));
  }

  /** Adds up all cells, and for each axis those of each of its places. */
  private static double sum(double[][][][] days, double[][] effect) {
    var total = 0.0;
    for (var k = 0; k < days.length; k++) {
      for (var w = 0; w < days[k].length; w++) {
        for (var p = 0; p < days[k][w].length; p++) {
          for (var s = 0; s < days[k][w][p].length; s++) {
            var value = days[k][w][p][s];
            total += value;
            effect[0][k] += value;
            effect[1][w] += value;
            effect[2][p] += value;
            effect[3][s] += value;
          }
        }
      }
    }
    return total;
  }

  private static double variance(double[][][][] days, double mean) {
    var sum = 0.0;
    var cells = 0L;
    for (var cube : days) {
      for (var plane : cube) {
        for (var line : plane) {
          for (var value : line) {
            sum += (value - mean) * (value - mean);
            cells++;
          }
        }
      }
    }
    return sum / cells;
  }
}
