package agro.demo;

/**
 * Counts on cabbages in twelve plots of the vale, from a nearly clean one to a crowded one. Aphids
 * stand in clumps and are more at the edge; larvae are fewer and spread more evenly.
 */
final class ScoutingBook {

  private static final int PLOTS = 12;
  private static final int EDGE_PLANTS = 8;
  private static final int PLANTS = 24;
  private static final double APHID_EXPONENT = 0.9;
  private static final double LARVA_EXPONENT = 2.5;
  private static final double EDGE_FACTOR = 1.6;
  private static final double MUMMIES = 0.12;

  private final long seed;

  ScoutingBook(long seed) {
    this.seed = seed;
  }

  /** The table, one line for each plant and pest. */
  String table() {
    var lines = new StringBuilder("field,part,date,unit,pest,count,parasitised\n");
    for (int plot = 1; plot <= PLOTS; plot++) {
      var draws = Draws.of(seed, "scouting plot " + plot);
      // From 0.4 to 20 aphids and from 0.1 to 2.4 larvae, by even steps of the logarithm.
      double step = (plot - 1) / (PLOTS - 1.0);
      double aphids = 0.4 * StrictMath.pow(50, step);
      double larvae = 0.1 * StrictMath.pow(24, step);
      for (int plant = 1; plant <= PLANTS; plant++) {
        boolean edge = plant <= EDGE_PLANTS;
        int count = clumped(draws, edge ? EDGE_FACTOR * aphids : aphids, APHID_EXPONENT);
        int mummies = 0;
        for (int i = 0; i < count; i++) {
          mummies += draws.uniform() < MUMMIES ? 1 : 0;
        }
        line(lines, plot, edge, "cabbage aphid", count + "," + mummies);
        line(lines, plot, edge, "diamondback moth", clumped(draws, larvae, LARVA_EXPONENT) + ",");
      }
    }
    return lines.toString();
  }

  private static void line(
      StringBuilder lines, int plot, boolean edge, String pest, String counts) {
    lines
        .append(plot <= PLOTS / 2 ? "Mill Field plot " : "Sand Lane plot ")
        .append(plot <= PLOTS / 2 ? plot : plot - PLOTS / 2)
        .append(edge ? ",edge," : ",middle,")
        .append(OsmereVale.ISSUE_DATE)
        .append(",plant,")
        .append(pest)
        .append(',')
        .append(counts)
        .append('\n');
  }

  /** A count from a negative binomial distribution. */
  static int clumped(Draws draws, double mean, double exponent) {
    return draws.poisson(mean / exponent * gamma(draws, exponent));
  }

  /** Gamma draw of scale 1 by the method of Marsaglia and Tsang (2000). */
  private static double gamma(Draws draws, double shape) {
    double boost = 1;
    double above = shape;
    if (shape < 1) {
      boost = StrictMath.pow(1 - draws.uniform(), 1 / shape);
      above = shape + 1;
    }
    double d = above - 1.0 / 3;
    double c = 1 / StrictMath.sqrt(9 * d);
    while (true) {
      double x = draws.gaussian();
      double v = (1 + c * x) * (1 + c * x) * (1 + c * x);
      if (v > 0
          && StrictMath.log(1 - draws.uniform())
              < 0.5 * x * x + d - d * v + d * StrictMath.log(v)) {
        return boost * d * v;
      }
    }
  }
}
