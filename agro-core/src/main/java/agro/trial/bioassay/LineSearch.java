package agro.trial.bioassay;

import agro.stats.NormalTail;
import agro.stats.glm.LinkFunction;

/**
 * Maximum likelihood of one straight line a + b x under a known natural mortality, written out for
 * its two parameters: no matrix is made. Newton's steps on the observed information, Fisher's on
 * the expected one where the other is not positive definite; a step that lowers the likelihood is
 * halved. Garwood 1941, Biometrika 32:46-58, for the two kinds of step (from memory).
 */
final class LineSearch {

  private static final double PER_ROOT_TWO_PI = 1 / Math.sqrt(2 * Math.PI);
  private static final int MOST_STEPS = 60;
  private static final int MOST_HALVINGS = 30;
  private static final double CLOSE = 1e-12;
  private static final double SINGULAR = 1e-13;
  private static final double SLACK = 1e-12;

  private final LinkFunction link;
  private final double[] x;
  private final double[] exposed;
  private final double[] responded;
  private final double natural;
  private double centre;

  /** Intercept and slope; of the centred line while searching. */
  double a;

  double b;
  double logLikelihood;
  private double scoreA;
  private double scoreB;

  /** Expected information. */
  double expectedAa;

  double expectedAb;
  double expectedBb;
  double expectedDeterminant;

  /** Observed information. */
  double observedAa;

  double observedAb;
  double observedBb;
  double observedDeterminant;
  int steps;
  boolean converged;

  LineSearch(LinkFunction link, double[] x, double[] exposed, double[] responded, double natural) {
    this.link = link;
    this.x = x;
    this.exposed = exposed;
    this.responded = responded;
    this.natural = natural;
  }

  /** Searches; the information then belongs to the line as written, not to the centred one. */
  LineSearch search() {
    start();
    evaluate(a, b);
    while (steps < MOST_STEPS && !converged && Double.isFinite(logLikelihood)) {
      steps++;
      step();
    }
    uncentre();
    return this;
  }

  private void start() {
    double weights = 0;
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      weights += exposed[i];
      sum += exposed[i] * x[i];
    }
    centre = sum / weights;
    double sxx = 0;
    double sxy = 0;
    double sy = 0;
    for (int i = 0; i < x.length; i++) {
      double share = (responded[i] + 0.5) / (exposed[i] + 1);
      double y = roughly(Math.max((share - natural) / (1 - natural), 0.5 / (exposed[i] + 1)));
      double w = exposed[i];
      sxx += w * (x[i] - centre) * (x[i] - centre);
      sxy += w * (x[i] - centre) * y;
      sy += w * y;
    }
    a = sy / weights;
    b = sxx > 0 ? sxy / sxx : 0;
  }

  /** The linear predictor of a share, good enough to start from. */
  private double roughly(double share) {
    if (link == LinkFunction.COMPLEMENTARY_LOG_LOG) {
      return Math.log(-Math.log(1 - share));
    }
    double logit = Math.log(share / (1 - share));
    return link == LinkFunction.LOGIT ? logit : 0.6 * logit;
  }

  private void step() {
    boolean newton =
        observedAa > 0
            && determinant(observedAa, observedAb, observedBb) > SINGULAR * observedAa * observedBb;
    double aa = newton ? observedAa : expectedAa;
    double ab = newton ? observedAb : expectedAb;
    double bb = newton ? observedBb : expectedBb;
    double determinant = determinant(aa, ab, bb);
    double stepA = (bb * scoreA - ab * scoreB) / determinant;
    double stepB = (aa * scoreB - ab * scoreA) / determinant;
    double decrement = stepA * scoreA + stepB * scoreB;
    if (!Double.isFinite(decrement)) {
      steps = MOST_STEPS;
      return;
    }
    double fromA = a;
    double fromB = b;
    double before = logLikelihood;
    double share = 1;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      a = fromA + share * stepA;
      b = fromB + share * stepB;
      evaluate(a, b);
      if (logLikelihood >= before - SLACK * Math.abs(before)) {
        converged = decrement < CLOSE && share == 1;
        return;
      }
      share *= 0.5;
    }
    a = fromA;
    b = fromB;
    evaluate(a, b);
    converged = decrement < 1e-9;
    steps = MOST_STEPS;
  }

  private static double determinant(double aa, double ab, double bb) {
    return aa * bb - ab * ab;
  }

  private void evaluate(double intercept, double slope) {
    logLikelihood = 0;
    scoreA = 0;
    scoreB = 0;
    expectedAa = 0;
    expectedAb = 0;
    expectedBb = 0;
    observedAa = 0;
    observedAb = 0;
    observedBb = 0;
    for (int i = 0; i < x.length; i++) {
      double z = x[i] - centre;
      add(z, intercept + slope * z, exposed[i], responded[i]);
    }
  }

  private void add(double z, double eta, double n, double r) {
    if (link == LinkFunction.PROBIT) {
      double density = Math.exp(-0.5 * eta * eta) * PER_ROOT_TWO_PI;
      double tail = NormalTail.above(Math.abs(eta));
      double mean = eta < 0 ? tail : 1 - tail;
      double complement = eta < 0 ? 1 - tail : tail;
      add(z, n, r, mean, complement, density, -eta * density);
    } else {
      add(z, n, r, link.mean(eta), link.complement(eta), link.slope(eta), link.curvature(eta));
    }
  }

  private void add(
      double z,
      double n,
      double r,
      double mean,
      double complement,
      double density,
      double curvature) {
    double rest = 1 - natural;
    double q = rest * complement;
    double p = natural == 0 ? mean : natural + rest * mean;
    double slope = rest * density;
    double alive = n - r;
    double perP = 0;
    double perQ = 0;
    double squares = 0;
    if (r > 0) {
      logLikelihood += r * Math.log(p);
      perP = r / p;
      squares += perP / p;
    }
    if (alive > 0) {
      logLikelihood += alive * Math.log(q);
      perQ = alive / q;
      squares += perQ / q;
    }
    double score = slope * (perP - perQ);
    double expected = slope == 0 ? 0 : n * slope / p * (slope / q);
    double observed = slope == 0 ? 0 : slope * slope * squares - rest * curvature * (perP - perQ);
    scoreA += score;
    scoreB += score * z;
    expectedAa += expected;
    expectedAb += expected * z;
    expectedBb += expected * z * z;
    observedAa += observed;
    observedAb += observed * z;
    observedBb += observed * z * z;
  }

  /** The determinants do not change, but could not be found so well from the shifted numbers. */
  private void uncentre() {
    expectedDeterminant = determinant(expectedAa, expectedAb, expectedBb);
    observedDeterminant = determinant(observedAa, observedAb, observedBb);
    a -= b * centre;
    expectedBb += centre * (2 * expectedAb + centre * expectedAa);
    expectedAb += centre * expectedAa;
    observedBb += centre * (2 * observedAb + centre * observedAa);
    observedAb += centre * observedAa;
  }
}
