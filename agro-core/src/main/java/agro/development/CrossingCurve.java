package agro.development;

/**
 * A symmetric day whose area and share beyond a threshold are a function of one number each, so
 * that a block of days is computed in a few short loops.
 *
 * <p>With amplitude a and the distance u of a threshold from the nearer extreme (0 when the
 * threshold is outside the day), t = u / a runs from 0 at the extremes to 1 at the mean. The area
 * above a threshold c is max(0, M − c) + u g(t), M being the mean of the day: above the mean only
 * the tip of the curve counts, and below it the tip of the mirrored curve is what the straight line
 * lacks. The share of the day beyond the threshold, on the side of the nearer extreme, is f(t).
 *
 * <p>The loops are written for the JIT compiler of the JDK, which turns a short loop without
 * branches over whole arrays into vector instructions. Products and sums are written apart, because
 * {@code Math.fma} is no faster on a machine that has it and a thousand times slower on one that
 * does not.
 */
enum CrossingCurve {
  /**
   * Sine: g(t) = √t R(t) and f(t) = √t P(t). R and P are the polynomials of degree 10 and 12 with
   * the least greatest error on 0 to 1: 1.4e-12 and 5.1e-13, as the script {@code
   * sine-day-polynomials.py} beside the test data computes them from the power series of the
   * arccosine. On a day within ±60 °C the area is then off by less than 1e-10 °C·d.
   */
  SINE {
    @Override
    void areas(double[] distance, double[] depth, double[] straight, double[] areas, int days) {
      for (int i = 0; i < days; i++) {
        double t = depth[i];
        double high = (((((R10 * t + R9) * t + R8) * t + R7) * t + R6) * t + R5) * t + R4;
        double r = (((high * t + R3) * t + R2) * t + R1) * t + R0;
        areas[i] = distance[i] * Math.sqrt(t) * r + straight[i];
      }
    }

    @Override
    void shares(double[] depth, double[] shares, int days) {
      for (int i = 0; i < days; i++) {
        double t = depth[i];
        double high = (((((P12 * t + P11) * t + P10) * t + P9) * t + P8) * t + P7) * t + P6;
        double p = (((((high * t + P5) * t + P4) * t + P3) * t + P2) * t + P1) * t + P0;
        shares[i] = Math.sqrt(t) * p;
      }
    }
  },
  /** Straight lines between the extremes: g(t) = t / 4 and f(t) = t / 2, exactly. */
  TRIANGLE {
    @Override
    void areas(double[] distance, double[] depth, double[] straight, double[] areas, int days) {
      for (int i = 0; i < days; i++) {
        areas[i] = 0.25 * distance[i] * depth[i] + straight[i];
      }
    }

    @Override
    void shares(double[] depth, double[] shares, int days) {
      for (int i = 0; i < days; i++) {
        shares[i] = 0.5 * depth[i];
      }
    }
  };

  private static final double R0 = 0.3001054387203713;
  private static final double R1 = 0.015005271626787702;
  private static final double R2 = 0.002411573375726517;
  private static final double R3 = 0.0005580562557125356;
  private static final double R4 = 0.00015674822369801198;
  private static final double R5 = 4.257775343731757e-05;
  private static final double R6 = 3.203853796841012e-05;
  private static final double R7 = -2.0974777276846998e-05;
  private static final double R8 = 3.024524701244709e-05;
  private static final double R9 = -1.6219621106344912e-05;
  private static final double R10 = 5.1308401236382826e-06;

  private static final double P0 = 0.45015815807906107;
  private static final double P1 = 0.0375131796751291;
  private static final double P2 = 0.008440474310995781;
  private static final double P3 = 0.0025118569885493906;
  private static final double P4 = 0.0008568241158810595;
  private static final double P5 = 0.0003016016932401694;
  private static final double P6 = 0.00017601242501964737;
  private static final double P7 = -9.799826371453544e-05;
  private static final double P8 = 0.00029039428984091795;
  private static final double P9 = -0.00032325320993410874;
  private static final double P10 = 0.00026726851095609257;
  private static final double P11 = -0.0001224579532110344;
  private static final double P12 = 2.7939337678479825e-05;

  /**
   * Areas above a threshold: u g(t) and the straight part added up.
   *
   * @param distance u of each day in °C
   * @param depth t of each day
   * @param straight max(0, M − c) of each day in °C
   * @param areas where the areas in °C·d go
   * @param days number of days, from the beginning of the arrays
   */
  abstract void areas(
      double[] distance, double[] depth, double[] straight, double[] areas, int days);

  /**
   * Shares of the day beyond a threshold on the side of the nearer extreme, f(t), 0 to 1/2.
   *
   * @param depth t of each day
   * @param shares where the shares go
   * @param days number of days, from the beginning of the arrays
   */
  abstract void shares(double[] depth, double[] shares, int days);
}
