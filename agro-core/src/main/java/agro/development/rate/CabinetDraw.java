package agro.development.rate;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Means of cabinets drawn within each temperature. */
final class CabinetDraw implements RateDraw {

  private final double[] mean;
  private final double[][] deviations;

  CabinetDraw(RateFit fit, PointResiduals points) {
    var groups = new TreeMap<Double, ArrayList<Integer>>();
    for (int i = 0; i < points.observations(); i++) {
      groups.computeIfAbsent(points.celsius[i], key -> new ArrayList<>()).add(i);
    }
    mean = new double[points.observations()];
    deviations = new double[points.observations()][];
    for (var group : groups.values()) {
      int m = group.size();
      double sum = 0;
      for (int i : group) {
        sum += points.rates[i];
      }
      if (m < 2 && sum > 0) {
        throw InputProblem.of(
                "there is one cabinet at "
                    + agro.units.Numbers.plain(points.celsius[group.get(0)])
                    + " °C in \""
                    + fit.data().subject()
                    + "\"")
            .expected("two or more at each temperature with development")
            .because("cabinets are to be drawn within temperatures")
            .mend("draw residuals, which takes each cabinet's distance from the curve instead");
      }
      double[] apart = new double[m];
      for (int j = 0; j < m; j++) {
        double enlarged = m > 1 ? Math.sqrt(m / (m - 1.0)) : 0;
        apart[j] = enlarged * (points.rates[group.get(j)] - sum / m);
      }
      for (int i : group) {
        mean[i] = sum / m;
        deviations[i] = apart;
      }
    }
  }

  @Override
  public void draw(SplittableRandom random, double[] rates) {
    for (int i = 0; i < rates.length; i++) {
      rates[i] = mean[i] + deviations[i][random.nextInt(deviations[i].length)];
    }
  }
}
