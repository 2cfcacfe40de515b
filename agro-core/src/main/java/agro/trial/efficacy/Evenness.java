package agro.trial.efficacy;

import agro.source.Reference;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * How evenly a pest stood on the plots before the treatment. It counts as uneven when the means of
 * treatments differ by more than a quarter, or by more than a tenth which the analysis of variance
 * in blocks finds at 5 %.
 *
 * @param leastMean smallest mean of a treatment, per unit
 * @param greatestMean greatest mean of a treatment, per unit
 * @param p chance of such differences by the draw of plots alone; nothing where blocks are not
 *     complete or do not scatter
 */
public record Evenness(double leastMean, double greatestMean, OptionalDouble p) {

  /** Where the rule comes from. */
  static final Reference RULE =
      Reference.commonPractice(
          "a pest stands unevenly when means before the treatment differ by more than a quarter, or"
              + " by more than a tenth at 5 %");

  private static final double QUARTER = 1.25;
  private static final double TENTH = 1.1;
  private static final double SIGNIFICANT = 0.05;

  static Evenness of(EfficacyData data) {
    var names = new ArrayList<>(data.treated());
    names.add(data.control());
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (var name : names) {
      double mean = mean(data.of(name));
      least = Math.min(least, mean);
      greatest = Math.max(greatest, mean);
    }
    return new Evenness(least, greatest, chance(data, names));
  }

  private static double mean(List<PlotCounts> plots) {
    return plots.stream()
        .filter(plot -> plot.before().isPresent())
        .mapToDouble(plot -> plot.before().getAsDouble() / plot.unitsBefore())
        .sorted()
        .average()
        .orElse(Double.NaN);
  }

  /** Analysis of variance of complete blocks, on the means of cells. */
  private static OptionalDouble chance(EfficacyData data, List<String> treatments) {
    var blocks = data.blocks();
    int t = treatments.size();
    int b = blocks.size();
    double[][] cells = new double[t][b];
    double[] byTreatment = new double[t];
    double[] byBlock = new double[b];
    double all = 0;
    for (int i = 0; i < t; i++) {
      for (int j = 0; j < b; j++) {
        var block = blocks.get(j);
        cells[i][j] =
            mean(
                data.of(treatments.get(i)).stream()
                    .filter(plot -> plot.block().equals(block))
                    .toList());
        byTreatment[i] += cells[i][j] / b;
        byBlock[j] += cells[i][j] / t;
        all += cells[i][j] / b / t;
      }
    }
    double between = 0;
    double left = 0;
    for (int i = 0; i < t; i++) {
      between += b * (byTreatment[i] - all) * (byTreatment[i] - all);
      for (int j = 0; j < b; j++) {
        double residual = cells[i][j] - byTreatment[i] - byBlock[j] + all;
        left += residual * residual;
      }
    }
    double freedom = (t - 1.0) * (b - 1);
    double ratio = between / (t - 1) / (left / freedom);
    return b > 1 && left > 0 && Double.isFinite(ratio)
        ? OptionalDouble.of(1 - new FDistribution(t - 1.0, freedom).cumulativeProbability(ratio))
        : OptionalDouble.empty();
  }

  /**
   * Greatest mean of a treatment over the smallest.
   *
   * @return 1 or more; infinite when a treatment had none, and 1 when none had any
   */
  public double ratio() {
    return greatestMean == 0 ? 1 : greatestMean / leastMean;
  }

  /**
   * Whether the pest stood evenly by the rule.
   *
   * @return true or false
   */
  public boolean isEven() {
    boolean significant = p.isPresent() && p.getAsDouble() < SIGNIFICANT;
    return ratio() <= (significant ? TENTH : QUARTER);
  }

  /**
   * What was found.
   *
   * @return a phrase
   */
  public String words() {
    return "the means of the treatments lie between "
        + Numbers.significant(leastMean, 3)
        + " and "
        + Numbers.significant(greatestMean, 3)
        + (p.isPresent()
            ? p.getAsDouble() < 0.001
                ? " (P < 0.001)"
                : " (P = " + Numbers.fixed(p.getAsDouble(), 3) + ")"
            : "");
  }
}
