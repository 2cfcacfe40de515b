package agro.programme.window;

import java.util.Arrays;

/** Equally likely values of a share. */
record ShareSpread(double mean, double low, double high, double chanceWanted) {

  private static final double TAIL = 0.1;
  private static final double ROUNDING = 1e-12;

  static ShareSpread of(double[] shares, double wanted) {
    var sorted = shares.clone();
    Arrays.sort(sorted);
    double sum = 0;
    int enough = 0;
    for (double share : sorted) {
      sum += share;
      enough += share >= wanted - ROUNDING ? 1 : 0;
    }
    int last = sorted.length - 1;
    return new ShareSpread(
        sum / sorted.length,
        sorted[(int) (TAIL * last)],
        sorted[last - (int) (TAIL * last)],
        (double) enough / sorted.length);
  }

  /** Index of the greatest value of each course: the first of equal ones; -1 where all are zero. */
  static int best(double[][] shares, int course) {
    int best = -1;
    double most = ROUNDING;
    for (int i = 0; i < shares.length; i++) {
      if (shares[i][course] > most + ROUNDING) {
        most = shares[i][course];
        best = i;
      }
    }
    return best;
  }
}
