package agro.development.rate;

import java.util.SplittableRandom;

/** Fitted rates with residuals of points drawn at random; rates of zero stay zero. */
final class ResidualDraw implements RateDraw {

  private final double[] fitted;
  private final double[] root;
  private final boolean[] zero;
  private final double[] pool;

  ResidualDraw(RateFit fit, PointResiduals points, double[] optimum) {
    int n = points.observations();
    fitted = new double[n];
    root = points.root;
    zero = new boolean[n];
    int alive = 0;
    for (int i = 0; i < n; i++) {
      fitted[i] = points.fitted(i, optimum);
      zero[i] = points.rates[i] == 0;
      alive += zero[i] ? 0 : 1;
    }
    int left = alive - fit.freeParameters();
    double enlarged = Math.sqrt((double) alive / Math.max(1, left));
    pool = new double[alive];
    for (int i = 0, at = 0; i < n; i++) {
      if (!zero[i]) {
        pool[at++] = enlarged * root[i] * (points.rates[i] - fitted[i]);
      }
    }
  }

  @Override
  public void draw(SplittableRandom random, double[] rates) {
    for (int i = 0; i < rates.length; i++) {
      rates[i] = zero[i] ? 0 : fitted[i] + pool[random.nextInt(pool.length)] / root[i];
    }
  }
}
