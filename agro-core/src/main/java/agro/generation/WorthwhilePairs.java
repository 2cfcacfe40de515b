package agro.generation;

import java.util.Arrays;

/**
 * Pairs of start and interval that lie near a pair of a coarser grid that weighs something. Only
 * these need their likelihood; the others weigh nothing.
 */
final class WorthwhilePairs {

  private final double[] starts;
  private final double[] intervals;
  private final boolean[][] heavy;

  /**
   * Marks the pairs of the coarse grid.
   *
   * @param logWeight logarithm of the weight by start and interval
   * @param below how far below the greatest weight a pair weighs nothing
   */
  WorthwhilePairs(double[] starts, double[] intervals, double[][] logWeight, double below) {
    this.starts = starts;
    this.intervals = intervals;
    var best = Arrays.stream(logWeight).flatMapToDouble(Arrays::stream).max().orElseThrow();
    heavy = new boolean[starts.length][intervals.length];
    for (var i = 0; i < starts.length; i++) {
      for (var j = 0; j < intervals.length; j++) {
        heavy[i][j] = logWeight[i][j] > best - below;
      }
    }
  }

  /** Whether one of the coarse pairs around a pair weighs something. */
  boolean near(double start, double interval) {
    var i = cell(starts, start);
    var j = cell(intervals, interval);
    var nextI = Math.min(i + 1, starts.length - 1);
    var nextJ = Math.min(j + 1, intervals.length - 1);
    return heavy[i][j] || heavy[i][nextJ] || heavy[nextI][j] || heavy[nextI][nextJ];
  }

  private static int cell(double[] axis, double value) {
    var place = Arrays.binarySearch(axis, value);
    return place >= 0 ? place : Math.max(0, -place - 2);
  }
}
