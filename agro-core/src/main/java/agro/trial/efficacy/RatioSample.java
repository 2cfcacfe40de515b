package agro.trial.efficacy;

import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;

/**
 * The share that is left, as a ratio of means: (Ta / Tb) / (Ca / Cb) over blocks, or over plots in
 * a trial without blocks, where treated and control are drawn apart.
 */
final class RatioSample {

  private final double[] tb;
  private final double[] ta;
  private final double[] cb;
  private final double[] ca;
  private final boolean paired;

  private RatioSample(double[][] rows, boolean paired) {
    tb = rows[0];
    ta = rows[1];
    cb = rows[2];
    ca = rows[3];
    this.paired = paired;
  }

  static RatioSample of(BlockRatios ratios) {
    if (ratios.size() != 1) {
      return new RatioSample(ratios.densities(), true);
    }
    var all = ratios.together();
    return new RatioSample(
        new double[][] {
          before(all, true), after(all, true), before(all, false), after(all, false),
        },
        false);
  }

  private static double[] before(FourCounts all, boolean treated) {
    return (treated ? all.treated() : all.control())
        .stream()
            .mapToDouble(p -> all.before() ? FourCounts.beforeOf(p) / p.unitsBefore() : 1)
            .toArray();
  }

  private static double[] after(FourCounts all, boolean treated) {
    return (treated ? all.treated() : all.control())
        .stream().mapToDouble(p -> p.after() / p.unitsAfter()).toArray();
  }

  boolean isPaired() {
    return paired;
  }

  /** Number of blocks, or of plots of the group with fewer. */
  int size() {
    return Math.min(ta.length, ca.length);
  }

  LiveCounts means(boolean before) {
    return before
        ? LiveCounts.of(mean(tb), mean(ta), mean(cb), mean(ca))
        : LiveCounts.after(mean(ta), mean(ca));
  }

  double ratio() {
    return mean(ta) / mean(tb) * (mean(cb) / mean(ca));
  }

  /** Ratio of a draw with replacement; NaN where it has no value. */
  double drawnRatio(int[] treated, int[] control) {
    double left = sum(ta, treated) / sum(tb, treated);
    double there = sum(ca, control) / sum(cb, control);
    return there > 0 && Double.isFinite(left) ? left / there : Double.NaN;
  }

  /** Mean of the efficacies of drawn blocks; NaN where one has no value. */
  double drawnMeanOfBlocks(int[] blocks) {
    double sum = 0;
    for (int block : blocks) {
      sum += blockEfficacy(block);
    }
    return sum / blocks.length;
  }

  double blockEfficacy(int block) {
    double there = ca[block] / cb[block];
    double left = ta[block] / tb[block];
    return there > 0 && Double.isFinite(left / there) ? 100 * (1 - left / there) : Double.NaN;
  }

  int[][] draw(SplittableRandom random) {
    int[] treated = draw(random, ta.length);
    return new int[][] {treated, paired ? treated : draw(random, ca.length)};
  }

  private static int[] draw(SplittableRandom random, int size) {
    int[] places = new int[size];
    for (int i = 0; i < size; i++) {
      places[i] = random.nextInt(size);
    }
    return places;
  }

  /** Standard error of the logarithm of the ratio, and its degrees of freedom. */
  double[] logError() {
    if (paired) {
      return new double[] {error(deviations(1, -1)), size() - 1.0};
    }
    double t = square(error(deviations(1, 0)));
    double c = square(error(deviations(0, -1)));
    double freedom = (t + c) * (t + c) / (t * t / (ta.length - 1) + c * c / (ca.length - 1));
    return new double[] {Math.sqrt(t + c), freedom};
  }

  private double[] deviations(int ofTreated, int ofControl) {
    int n = ofTreated == 0 ? ca.length : ta.length;
    double[] u = new double[n];
    for (int i = 0; i < n; i++) {
      u[i] = ofTreated == 0 ? 0 : ofTreated * (ta[i] / mean(ta) - tb[i] / mean(tb));
      u[i] += ofControl == 0 ? 0 : ofControl * (ca[i] / mean(ca) - cb[i] / mean(cb));
    }
    return u;
  }

  private static double error(double[] deviations) {
    double sum = 0;
    for (double u : deviations) {
      sum += u * u;
    }
    return Math.sqrt(sum / deviations.length / (deviations.length - 1.0));
  }

  /** Acceleration of Efron's limits from leaving out one block, or one plot, at a time. */
  double acceleration(boolean meanOfBlocks) {
    double[] sums = new double[2];
    DoubleBinaryOperator add =
        (cube, influence) -> {
          sums[0] += influence * influence;
          return cube + influence * influence * influence;
        };
    double cubes = influences(true, meanOfBlocks, add);
    if (!paired) {
      cubes += influences(false, meanOfBlocks, add);
    }
    return cubes / (6 * Math.pow(sums[0], 1.5));
  }

  private double influences(boolean treated, boolean meanOfBlocks, DoubleBinaryOperator add) {
    int n = treated ? ta.length : ca.length;
    double[] without = new double[n];
    double mean = 0;
    for (int i = 0; i < n; i++) {
      int[] left = allBut(n, i);
      if (meanOfBlocks) {
        without[i] = drawnMeanOfBlocks(left);
      } else if (paired) {
        without[i] = 100 * (1 - drawnRatio(left, left));
      } else {
        without[i] =
            100
                * (1
                    - (treated
                        ? drawnRatio(left, allBut(ca.length, -1))
                        : drawnRatio(allBut(ta.length, -1), left)));
      }
      mean += without[i] / n;
    }
    double cubes = 0;
    for (double one : without) {
      cubes = add.applyAsDouble(cubes, (n - 1.0) / n * (mean - one));
    }
    return cubes;
  }

  private static int[] allBut(int n, int out) {
    int[] places = new int[out < 0 ? n : n - 1];
    int k = 0;
    for (int i = 0; i < n; i++) {
      if (i != out) {
        places[k++] = i;
      }
    }
    return places;
  }

  private static double sum(double[] values, int[] places) {
    double sum = 0;
    for (int place : places) {
      sum += values[place];
    }
    return sum / places.length;
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double square(double value) {
    return value * value;
  }
}
