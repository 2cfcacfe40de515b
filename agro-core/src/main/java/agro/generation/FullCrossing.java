package agro.generation;

/** Variance components of a full crossing of weather, parameters and season. */
final class FullCrossing {

  private FullCrossing() {}

  /**
   * Splits the variance of a cube of dates into main effects and the rest.
   *
   * @param days dates by weather, parameters and season, all finite, the three axes of equal length
   */
  static SpreadSplit split(double[][][] days) {
    var n = days.length;
    var total = 0.0;
    var effect = new double[3][n];
    for (var w = 0; w < n; w++) {
      for (var p = 0; p < n; p++) {
        for (var s = 0; s < n; s++) {
          var value = days[w][p][s];
          total += value;
          effect[0][w] += value;
          effect[1][p] += value;
          effect[2][s] += value;
        }
      }
    }
    var mean = total / ((double) n * n * n);
    var main = new double[3];
    for (var axis = 0; axis < 3; axis++) {
      for (var i = 0; i < n; i++) {
        var distance = effect[axis][i] / ((double) n * n) - mean;
        main[axis] += distance * distance / n;
      }
    }
    var variance = 0.0;
    for (var plane : days) {
      for (var line : plane) {
        for (var value : line) {
          variance += (value - mean) * (value - mean) / ((double) n * n * n);
        }
      }
    }
    var rest = Math.max(0, variance - main[0] - main[1] - main[2]);
    return new SpreadSplit(main[0], main[1], main[2], rest);
  }
}
