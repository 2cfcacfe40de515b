package agro.stats.glm;

/** Score and expected information of a model with coefficients of their own for each cut point. */
final class ParallelCutsScore {

  private final OrdinalSearch search;
  private final int k;
  private final int size;
  private final double[] score;
  private final double[] information;

  ParallelCutsScore(OrdinalSearch search) {
    this.search = search;
    this.k = 1 + search.columns;
    this.size = search.cuts * k;
    this.score = new double[size];
    this.information = new double[size * size];
    for (int i = 0; i < search.scores.size(); i++) {
      if (search.scores.frequency(i) > 0) {
        addRow(i);
      }
    }
  }

  private void addRow(int i) {
    int cuts = search.cuts;
    double eta = search.predictor(search.parameters(), i);
    double[] p = new double[cuts + 1];
    double[] slope = new double[cuts];
    for (int c = 0; c <= cuts; c++) {
      double high = search.high(search.parameters(), c) - eta;
      p[c] = search.between(search.low(search.parameters(), c) - eta, high);
      if (c < cuts) {
        slope[c] = search.link.slope(high);
      }
    }
    double weight = search.scores.frequency(i);
    int code = search.scores.code(i);
    for (int j = 0; j < cuts; j++) {
      double u = j == code ? slope[j] / p[j] : j == code - 1 ? -slope[j] / p[j + 1] : 0;
      double own = slope[j] * slope[j] * (1 / p[j] + 1 / p[j + 1]);
      double next = j + 1 < cuts ? -slope[j] * slope[j + 1] / p[j + 1] : 0;
      for (int a = 0; a < k; a++) {
        double xa = weight * entry(i, a);
        score[j * k + a] += u * xa;
        for (int b = 0; b < k; b++) {
          double xx = xa * entry(i, b);
          information[(j * k + a) * size + j * k + b] += own * xx;
          if (j + 1 < cuts) {
            information[((j + 1) * k + a) * size + j * k + b] += next * xx;
            information[(j * k + a) * size + (j + 1) * k + b] += next * xx;
          }
        }
      }
    }
  }

  private double entry(int row, int a) {
    return a == 0 ? 1 : -search.x[row * search.columns + a - 1];
  }

  /** Score test when the chosen coefficients are free to differ between cut points. */
  DevianceRow test(String name, boolean[] free) {
    int count = 0;
    for (boolean each : free) {
      count += each ? 1 : 0;
    }
    int cuts = search.cuts;
    int total = cuts + search.columns + count * (cuts - 1);
    double[][] map = new double[total][size];
    int at = 0;
    for (int j = 0; j < cuts; j++) {
      map[at++][j * k] = 1;
    }
    for (int c = 0; c < search.columns; c++) {
      for (int j = 0; j < cuts; j++) {
        map[at][j * k + 1 + c] = 1;
      }
      at++;
      for (int j = 1; j < cuts && free[c]; j++) {
        map[at++][j * k + 1 + c] = 1;
      }
    }
    double[] u = new double[total];
    double[] v = new double[total * total];
    for (int a = 0; a < total; a++) {
      double[] times = new double[size];
      for (int r = 0; r < size; r++) {
        u[a] += map[a][r] * score[r];
        for (int s = 0; s < size && map[a][r] != 0; s++) {
          times[s] += map[a][r] * information[r * size + s];
        }
      }
      for (int b = 0; b <= a; b++) {
        for (int s = 0; s < size; s++) {
          v[a * total + b] += times[s] * map[b][s];
        }
      }
    }
    int df = count * (cuts - 1);
    var factor = PositiveDefinite.of(v, total);
    double statistic = factor.isRegular() ? factor.quadratic(u, 0) : 0;
    return DevianceRow.of(
        name, factor.isRegular() ? df : 0, statistic, 0, 1, Double.POSITIVE_INFINITY);
  }
}
