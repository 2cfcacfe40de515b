package agro.development.rate;

import java.util.List;
import java.util.SplittableRandom;

/** Means of animals that were drawn with replacement within each cabinet. */
final class AnimalDraw implements RateDraw {

  private final double[] observed;
  private final double[][] middles;
  private final int[][] counts;

  AnimalDraw(RateFit fit) {
    int n = fit.points().size();
    observed = new double[n];
    middles = new double[n][];
    counts = new int[n][];
    var cabinets = RearingData.cabinets(fit.data().animals());
    for (int i = 0; i < n; i++) {
      var point = fit.points().get(i);
      observed[i] = point.rate();
      var animals =
          cabinets.getOrDefault(point.cabinet() + "\n" + point.celsius(), List.of()).stream()
              .filter(one -> one.fate() == RearingFate.DEVELOPED)
              .toList();
      middles[i] =
          animals.stream().mapToDouble(one -> 0.5 * (one.fromDays() + one.toDays())).toArray();
      counts[i] = animals.stream().mapToInt(RearedAnimals::animals).toArray();
    }
  }

  @Override
  public void draw(SplittableRandom random, double[] rates) {
    for (int i = 0; i < rates.length; i++) {
      rates[i] = observed[i] == 0 ? 0 : 1 / mean(random, middles[i], counts[i]);
    }
  }

  private static double mean(SplittableRandom random, double[] middles, int[] counts) {
    int n = 0;
    for (int count : counts) {
      n += count;
    }
    double sum = 0;
    for (int drawn = 0; drawn < n; drawn++) {
      int which = random.nextInt(n);
      int at = 0;
      while (which >= counts[at]) {
        which -= counts[at++];
      }
      sum += middles[at];
    }
    return sum / n;
  }
}
