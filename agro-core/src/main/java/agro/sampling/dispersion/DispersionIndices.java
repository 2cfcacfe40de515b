package agro.sampling.dispersion;

import agro.sampling.CountSample;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.special.Gamma;

/**
 * How much the counts of a sample vary, beside what chance alone would give. With n units, mean m,
 * variance s² (n − 1 in the denominator) and sums Σx and Σx².
 *
 * @param sample the counts, at least one animal
 */
public record DispersionIndices(CountSample sample) implements Presentable {

  private static final double TAIL = 0.025;

  /**
   * Refuses a sample without animals.
   *
   * @throws agro.report.InputProblem when all counts are zero
   */
  public DispersionIndices {
    Objects.requireNonNull(sample, "sample");
    sample.requireAnimals("an index of dispersion");
  }

  /**
   * The indices of a sample.
   *
   * @param sample the counts
   * @return the indices
   * @throws agro.report.InputProblem when all counts are zero
   */
  public static DispersionIndices of(CountSample sample) {
    return new DispersionIndices(sample);
  }

  /**
   * Variance over mean, s² / m: 1 for counts at random, more for animals in clumps.
   *
   * @return 0 or more
   */
  public double varianceToMean() {
    return sample.variance() / sample.mean();
  }

  /**
   * Index of dispersion, (n − 1) s² / m, which is chi-squared on n − 1 degrees of freedom when
   * counts are at random.
   *
   * @return 0 or more
   */
  public double indexOfDispersion() {
    return (sample.size() - 1) * varianceToMean();
  }

  /**
   * Chance of an index as large as this one or larger when counts are at random.
   *
   * @return 0 to 1
   */
  public double chanceOfLarger() {
    return Gamma.regularizedGammaQ(0.5 * (sample.size() - 1), 0.5 * indexOfDispersion());
  }

  /**
   * Chance of an index as small as this one or smaller when counts are at random.
   *
   * @return 0 to 1
   */
  public double chanceOfSmaller() {
    return Gamma.regularizedGammaP(0.5 * (sample.size() - 1), 0.5 * indexOfDispersion());
  }

  /**
   * Normal deviate of the index for large n: √(2 I) − √(2(n − 1) − 1).
   *
   * @return about 0 at random
   */
  public double normalDeviate() {
    return Math.sqrt(2 * indexOfDispersion()) - Math.sqrt(2.0 * (sample.size() - 1) - 1);
  }

  /**
   * Clumping by David and Moore, s² / m − 1.
   *
   * @return 0 at random
   */
  public double clumping() {
    return varianceToMean() - 1;
  }

  /**
   * Green's index, (s² / m − 1) / (Σx − 1): 0 at random, 1 when all animals sit in one unit.
   *
   * @return NaN for a single animal
   */
  public double green() {
    return sample.total() == 1 ? Double.NaN : clumping() / (sample.total() - 1);
  }

  /**
   * Morisita's index, n (Σx² − Σx) / ((Σx)² − Σx): 1 at random.
   *
   * @return NaN for a single animal
   */
  public double morisita() {
    double total = sample.total();
    return total == 1
        ? Double.NaN
        : sample.size() * (sample.squares() - total) / (total * total - total);
  }

  /**
   * Morisita's index at the lower limit of chance (2.5 %).
   *
   * @return NaN for a single animal
   */
  public double morisitaUniform() {
    return morisitaAt(TAIL);
  }

  /**
   * Morisita's index at the upper limit of chance (97.5 %).
   *
   * @return NaN for a single animal
   */
  public double morisitaClumped() {
    return morisitaAt(1 - TAIL);
  }

  private double morisitaAt(double share) {
    double total = sample.total();
    if (total == 1) {
      return Double.NaN;
    }
    double quantile =
        new ChiSquaredDistribution(sample.size() - 1.0).inverseCumulativeProbability(share);
    return (quantile - sample.size() + total) / (total - 1);
  }

  /**
   * Morisita's index standardised to −1 to 1: beyond ±0.5 chance alone is unlikely (5 %).
   *
   * @return NaN for a single animal
   */
  public double standardisedMorisita() {
    double index = morisita();
    double uniform = morisitaUniform();
    double clumped = morisitaClumped();
    if (index >= clumped && clumped > 1) {
      return 0.5 + 0.5 * (index - clumped) / (sample.size() - clumped);
    }
    if (index >= 1) {
      return 0.5 * (index - 1) / (clumped - 1);
    }
    return index > uniform
        ? -0.5 * (index - 1) / (uniform - 1)
        : -0.5 + 0.5 * (index - uniform) / uniform;
  }

  /**
   * Mean crowding, m + s² / m − 1: the mean number of other animals in an animal's unit, estimated
   * for the field.
   *
   * @return the estimate
   */
  public double meanCrowding() {
    return sample.mean() + clumping();
  }

  /**
   * Mean crowding in the sample itself, Σx(x − 1) / Σx.
   *
   * @return 0 or more
   */
  public double meanCrowdingInSample() {
    return (double) (sample.squares() - sample.total()) / sample.total();
  }

  /**
   * Patchiness, mean crowding over mean: 1 at random.
   *
   * @return the ratio
   */
  public double patchiness() {
    return meanCrowding() / sample.mean();
  }

  /**
   * What the index of dispersion says, at 5 % two-sided.
   *
   * @return a sentence without a full stop
   */
  public String verdict() {
    if (chanceOfLarger() < TAIL) {
      return "more uneven than chance: the animals sit in clumps";
    }
    return chanceOfSmaller() < TAIL
        ? "more even than chance"
        : "no more and no less even than chance would make them";
  }

  /**
   * The steps to variance over mean, as on a blackboard.
   *
   * @return mean, variance, ratio and test
   */
  public Working working() {
    int n = sample.size();
    return Working.of("Dispersion of " + sample.label())
        .step(
            "mean",
            "m = Σx / n",
            sample.total() + " / " + n,
            plain(sample.mean()) + " for each " + sample.unit())
        .step(
            "variance",
            "s² = (Σx² − (Σx)² / n) / (n − 1)",
            "(" + sample.squares() + " − " + sample.total() + "² / " + n + ") / " + (n - 1),
            plain(sample.variance()))
        .step(
            "variance over mean",
            "s² / m",
            plain(sample.variance()) + " / " + plain(sample.mean()),
            plain(varianceToMean()))
        .step(
            "index of dispersion",
            "I = (n − 1) s² / m",
            (n - 1) + " × " + plain(varianceToMean()),
            plain(indexOfDispersion()) + " on " + (n - 1) + " degrees of freedom",
            SamplingBibliography.DISPERSION_INDEX);
  }

  private static String plain(double value) {
    return Numbers.fixed(value, 4);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    add(rows, "Variance over mean, s²/m", varianceToMean(), "1");
    add(
        rows,
        "Index of dispersion, (n − 1) s²/m",
        indexOfDispersion(),
        Integer.toString(sample.size() - 1));
    add(rows, "Clumping (David and Moore)", clumping(), "0");
    add(rows, "Green's index", green(), "0");
    add(rows, "Morisita's index", morisita(), "1");
    add(rows, "Morisita's index, standardised", standardisedMorisita(), "0");
    add(rows, "Mean crowding (Lloyd)", meanCrowding(), "the mean");
    add(rows, "Patchiness (Lloyd)", patchiness(), "1");
    return Presentation.titled("Dispersion of " + sample.label())
        .fact("Units", sample.size() + " × " + sample.unit())
        .fact("Mean", Numbers.fixed(sample.mean(), 3) + " for each " + sample.unit())
        .fact("Verdict", verdict())
        .fact(
            "Chance of a larger index",
            chanceOfLarger() < 0.001 ? "below 0.001" : Numbers.fixed(chanceOfLarger(), 3))
        .table(
            ResultTable.of(
                "Indices",
                List.of(Column.of("Index"), Column.of("Value"), Column.of("At random")),
                rows))
        .sources(
            List.of(
                SamplingBibliography.DISPERSION_INDEX,
                SamplingBibliography.DAVID_MOORE_1954,
                SamplingBibliography.GREEN_1966,
                SamplingBibliography.MORISITA_1962,
                SamplingBibliography.SMITH_GILL_1975,
                SamplingBibliography.LLOYD_1967))
        .build();
  }

  private static void add(List<List<Cell>> rows, String name, double value, String atRandom) {
    rows.add(List.of(Cell.text(name), Cell.number(value, 4), Cell.text(atRandom)));
  }
}
